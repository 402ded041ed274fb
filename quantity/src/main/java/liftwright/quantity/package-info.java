@NullMarked
package liftwright.quantity;

import org.jspecify.annotations.NullMarked;
