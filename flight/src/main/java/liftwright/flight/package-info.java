/**
 * Will it hold: the rig flown before it flies. Motion on the same plant and supply as every other
 * answer, sensors, estimator and controller at their own rates, profiles that are flown, and many
 * flights with every tolerance drawn. Pure: it knows no file.
 */
@NullMarked
package liftwright.flight;

import org.jspecify.annotations.NullMarked;
