@NullMarked
package liftwright.plant.body;

import org.jspecify.annotations.NullMarked;
