package liftwright.review;

/** How far an answer has come. */
public enum Stage {
    /**
     * The declared values alone: every number without its band. Nothing was drawn, so the outcome
     * is "not judged", unless the declared values themselves could not be computed.
     */
    NOMINAL("nominal"),

    /**
     * Bands of the first {@link #FIRST_DRAWS} draws of the whole answer. The outcome is told where
     * the end of the band that is held against the demand is further from it than two of its own
     * Monte-Carlo errors; what is closer, and what lies astride, is "not judged": more draws, and
     * the search for the measurement that would tell, are work of the whole answer. So an outcome
     * that is told here comes out otherwise in the whole answer only where those errors mislead, of
     * which two of them leave a few in a hundred. There are no remedies yet.
     */
    BANDED("banded"),

    /** Everything, as the command line tells it. */
    WHOLE("whole");

    /** Draws of a banded answer. */
    public static final int FIRST_DRAWS = 256;

    private final String label;

    Stage(String label) {
        this.label = label;
    }

    /** In one word, for machines and people. */
    public String label() {
        return label;
    }
}
