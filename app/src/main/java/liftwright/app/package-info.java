@NullMarked
package liftwright.app;

import org.jspecify.annotations.NullMarked;
