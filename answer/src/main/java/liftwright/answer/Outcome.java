package liftwright.answer;

/** The three values of a verdict (JCGM 106). Only {@link #HOLDS} clears. */
public enum Outcome {
    HOLDS("holds", "met"),
    DOES_NOT_HOLD("does not hold", "not met"),
    CANNOT_BE_TOLD("cannot be told", "cannot be told");

    private final String words;
    private final String label;

    Outcome(String words, String label) {
        this.words = words;
        this.label = label;
    }

    /** As it stands in a sentence. */
    public String words() {
        return words;
    }

    /** As it stands alone, and in JSON. */
    public String label() {
        return label;
    }

    /** The lesser of two, where a doubt can only take away. */
    public Outcome downgradedTo(Outcome other) {
        return this == HOLDS ? other : this;
    }
}
