package liftwright.review.stand;

/**
 * One row of a budget.
 *
 * @param item what it is
 * @param distribution how the error is taken to lie
 * @param standardN standard uncertainty of the thrust by it alone, N: sensitivity times standard
 *     uncertainty of the input
 * @param guessed whether it is a bound of common practice and nothing that was declared
 */
record Contribution(StandItem item, Distribution distribution, double standardN, boolean guessed) {

    /** How an error lies, and what the half-width of a normal one covers. */
    enum Distribution {
        NORMAL("normal"),
        RECTANGLE("rectangle"),
        /** The difference of two rectangles: display at the tare and at the reading. */
        TRIANGLE("triangle"),
        STUDENT("Student’s t");

        private final String words;

        Distribution(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }
}
