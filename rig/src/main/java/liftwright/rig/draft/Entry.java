package liftwright.rig.draft;

import java.util.List;

/** One thing that happened to a draft, as the journal keeps it. */
sealed interface Entry {

    /**
     * Where a journal begins.
     *
     * @param disk the file as it was last seen on disk
     * @param toText from there to the text as it stands
     * @param undo what can be taken back, the last first
     * @param redo what can be done again, the next first
     * @param unsaved what the disk does not have, in the order in which it was done
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared, never shown
    record Start(byte[] disk, Patch toText, List<Step> undo, List<Step> redo, List<Mark> unsaved)
            implements Entry {
        public Start {
            undo = List.copyOf(undo);
            redo = List.copyOf(redo);
            unsaved = List.copyOf(unsaved);
        }
    }

    /**
     * Something that the disk does not have.
     *
     * @param place of its step: n for the n-th of those to take back, −n for the n-th of those to
     *     do again, 0 where it is among neither
     * @param back whether it is the taking back of that step
     * @param how it came about
     */
    record Mark(int place, boolean back, How how) {}

    /** The text was edited. */
    record Edit(String label, How how, Patch text) implements Entry {}

    /** The last edit was taken back. */
    record Undo(String label, Patch text) implements Entry {}

    /** What was taken back was done again. */
    record Redo(String label, Patch text) implements Entry {}

    /**
     * The file changed on disk, and the text with it.
     *
     * @param disk from the file as it was seen before
     * @param text from the text before to the one with the disk's changes
     */
    record Taken(String label, Patch disk, Patch text) implements Entry {}

    /** The file changed on disk, and the text stayed: it is the one to save over that. */
    record Seen(Patch disk) implements Entry {}
}
