/** What a value of a rig file can be, and how it is read: the grammar without the words. */
@NullMarked
package liftwright.rig.shape.kind;

import org.jspecify.annotations.NullMarked;
