@NullMarked
package liftwright.plant.thrust;

import org.jspecify.annotations.NullMarked;
