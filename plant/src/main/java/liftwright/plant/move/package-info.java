/** Moves parts of a rig to places of the drawn rig, as changes of its file. */
@NullMarked
package liftwright.plant.move;

import org.jspecify.annotations.NullMarked;
