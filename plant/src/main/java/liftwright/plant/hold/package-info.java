/** What holds a rig down: stands and their bolts under any of its fans, and who stands in it. */
@NullMarked
package liftwright.plant.hold;

import org.jspecify.annotations.NullMarked;
