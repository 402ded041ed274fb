package liftwright.answer;

/**
 * The three values of a verdict (JCGM 106), and the lack of one. Only {@link #HOLDS} clears.
 *
 * <p>{@link #NOT_JUDGED} stands in an answer that is not whole yet: the doubt was not computed, or
 * not far enough to tell. No whole answer has it.
 */
public enum Outcome {
    HOLDS("met"),
    DOES_NOT_HOLD("not met"),
    CANNOT_BE_TOLD("cannot be told"),
    NOT_JUDGED("not judged");

    private final String label;

    Outcome(String label) {
        this.label = label;
    }

    /** As it opens an answer, and in JSON. */
    public String label() {
        return label;
    }

    /** The lesser of two, where a doubt can only take away. */
    public Outcome downgradedTo(Outcome other) {
        return this == HOLDS ? other : this;
    }
}
