package liftwright.logbook.engine;

import java.time.Duration;

/**
 * How much an answer may be.
 *
 * @param rows most rows; the rest is cut off, and that is told
 * @param bytes most bytes of all values together; likewise
 * @param time after which the statement is stopped and the answer is an error
 */
public record Limits(int rows, int bytes, Duration time) {

    /** For a statement of the user: 10,000 rows, 8 MB, 20 s. */
    public static final Limits OF_A_QUESTION = new Limits(10_000, 8 << 20, Duration.ofSeconds(20));

    /** For a statement of the program's own. */
    public static final Limits OF_OURS = new Limits(1_000_000, 64 << 20, Duration.ofMinutes(10));

    /**
     * @throws IllegalArgumentException where one is not above nought
     */
    public Limits {
        if (rows < 1 || bytes < 1 || time.toMillis() < 1 || time.toMillis() > Integer.MAX_VALUE) {
            throw new IllegalArgumentException("limits of an answer: " + rows + ", " + bytes);
        }
    }

    /** The same with another time. */
    public Limits within(Duration other) {
        return new Limits(rows, bytes, other);
    }
}
