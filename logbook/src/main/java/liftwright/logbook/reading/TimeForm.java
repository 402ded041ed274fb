package liftwright.logbook.reading;

/** How the times of a log are written. */
public enum TimeForm {
    /** Seconds since some moment. */
    SECONDS("s"),
    MILLISECONDS("ms"),
    MICROSECONDS("us"),
    MINUTES("min"),
    /** {@code 14:03:07.25} of a day; past midnight it goes on. */
    CLOCK("clock"),
    /** {@code 2026-03-14T14:03:07.25}, with or without a zone; without, UTC. */
    DATE_AND_CLOCK("date and clock"),
    /** Seconds since 1970-01-01T00:00Z. */
    EPOCH_SECONDS("epoch s"),
    /** Milliseconds since 1970-01-01T00:00Z. */
    EPOCH_MILLISECONDS("epoch ms");

    private final String word;

    TimeForm(String word) {
        this.word = word;
    }

    /** As in a map of a log. */
    public String word() {
        return word;
    }
}
