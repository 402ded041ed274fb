/**
 * What could stand at a place of a rig file, as an editor offers it; all of it from {@code Shape}.
 */
@NullMarked
package liftwright.rig.complete;

import org.jspecify.annotations.NullMarked;
