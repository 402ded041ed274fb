@NullMarked
package liftwright.numerics;

import org.jspecify.annotations.NullMarked;
