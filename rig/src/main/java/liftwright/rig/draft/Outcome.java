package liftwright.rig.draft;

/**
 * What came of asking a draft for something. Whatever it is, the draft as it stands comes along.
 */
public sealed interface Outcome {

    DraftView view();

    /** It is done, and kept in the journal. */
    record Done(DraftView view) implements Outcome {}

    /** It was asked of a text that is another by now. Nothing was done. */
    record Stale(DraftView view, String sentence) implements Outcome {}

    /** It cannot be done. Nothing was done. */
    record Refused(DraftView view, String sentence) implements Outcome {}

    /** The file on disk is another than the one this text was made from. Nothing was done. */
    record Conflicting(DraftView view, String sentence) implements Outcome {}
}
