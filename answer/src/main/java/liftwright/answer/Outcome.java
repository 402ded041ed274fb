package liftwright.answer;

/** The three values of a verdict (JCGM 106). Only {@link #HOLDS} clears. */
public enum Outcome {
    HOLDS("met"),
    DOES_NOT_HOLD("not met"),
    CANNOT_BE_TOLD("cannot be told");

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
