/** What tests found of a rig in place of what it declares, as data. */
@NullMarked
package liftwright.rig.correction;

import org.jspecify.annotations.NullMarked;
