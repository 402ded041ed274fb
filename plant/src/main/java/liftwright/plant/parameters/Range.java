package liftwright.plant.parameters;

/** What a value can be at all, whatever its tolerance says. */
public enum Range {
    ANY(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, "any number"),
    NOT_NEGATIVE(0, Double.POSITIVE_INFINITY, "not negative"),
    POSITIVE(Double.MIN_VALUE, Double.POSITIVE_INFINITY, "above 0"),
    /** A duty. */
    DUTY(0, 1, "from 0 to 1"),
    /** An open share: above 0 and up to 1. */
    SHARE(Double.MIN_VALUE, 1, "above 0 and up to 1");

    private final double least;
    private final double greatest;
    private final String words;

    Range(double least, double greatest, String words) {
        this.least = least;
        this.greatest = greatest;
        this.words = words;
    }

    double least() {
        return least;
    }

    double greatest() {
        return greatest;
    }

    String words() {
        return words;
    }

    /** Whether a value, SI, can be at all. */
    public boolean contains(double value) {
        return value >= least && value <= greatest;
    }
}
