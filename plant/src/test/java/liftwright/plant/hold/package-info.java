/** Tests of what holds a rig down. */
@NullMarked
package liftwright.plant.hold;

import org.jspecify.annotations.NullMarked;
