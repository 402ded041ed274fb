/** From what a file says to the rig it describes: groups, twins and feeds written out. */
@NullMarked
package liftwright.rig.shape.bind;

import org.jspecify.annotations.NullMarked;
