@NullMarked
package liftwright.plant.balance;

import org.jspecify.annotations.NullMarked;
