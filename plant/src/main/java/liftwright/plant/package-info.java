@NullMarked
package liftwright.plant;

import org.jspecify.annotations.NullMarked;
