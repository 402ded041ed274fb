/** Rig files on disk, and what reading one gives. */
@NullMarked
package liftwright.rig.file;

import org.jspecify.annotations.NullMarked;
