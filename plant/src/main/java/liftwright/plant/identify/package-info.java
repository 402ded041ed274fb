/** From measured rows to coefficients with their joint covariance. */
@NullMarked
package liftwright.plant.identify;

import org.jspecify.annotations.NullMarked;
