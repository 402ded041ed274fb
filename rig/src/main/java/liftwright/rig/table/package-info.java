/** Measured rows and commands that stand in tables beside a rig file, in SI. */
@NullMarked
package liftwright.rig.table;

import org.jspecify.annotations.NullMarked;
