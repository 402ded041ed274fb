@NullMarked
package liftwright.plant.parameters;

import org.jspecify.annotations.NullMarked;
