@NullMarked
package liftwright.plant.supply;

import org.jspecify.annotations.NullMarked;
