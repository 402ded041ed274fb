/** The working copy of a rig file: edits, undo, and a journal so that none is lost. */
@NullMarked
package liftwright.rig.draft;

import org.jspecify.annotations.NullMarked;
