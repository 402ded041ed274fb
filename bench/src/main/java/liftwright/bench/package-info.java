@NullMarked
package liftwright.bench;

import org.jspecify.annotations.NullMarked;
