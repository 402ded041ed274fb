package liftwright.rig.draft;

/** One thing that happened to a draft, as the journal keeps it. */
sealed interface Entry {

    /**
     * Where a journal begins.
     *
     * @param disk the file as it was last seen on disk
     * @param toText from there to the text as it stands
     * @param how what lies between them
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared, never shown
    record Start(byte[] disk, Patch toText, How how) implements Entry {}

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
