/** Rotors in time at fixed steps, and the commands that reach them late. */
@NullMarked
package liftwright.plant.drive;

import org.jspecify.annotations.NullMarked;
