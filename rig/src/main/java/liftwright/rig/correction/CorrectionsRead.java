package liftwright.rig.correction;

/**
 * The corrections that lie beside a rig file, as they count for a rig.
 *
 * @param content what they say
 * @param digest names them, as answers tell it: {@code none} without any
 * @param ofAnotherRevision whether the rig file or a table of it was another when they were made;
 *     they then count, and no verdict becomes better by them
 */
public record CorrectionsRead(Corrections content, String digest, boolean ofAnotherRevision) {

    /** There are none, or they are left out of account. */
    public static final CorrectionsRead NONE = new CorrectionsRead(Corrections.NONE, "none", false);

    public boolean isEmpty() {
        return content.isEmpty();
    }
}
