/** Reading, checking and describing rig files by one table of keys. */
@NullMarked
package liftwright.rig.shape;

import org.jspecify.annotations.NullMarked;
