package liftwright.review.stand;

/**
 * One row of a budget.
 *
 * @param item what it is
 * @param distribution how the error of the thrust by it alone is taken to lie
 * @param guessed whether it is a bound of common practice and nothing that was declared
 */
record Contribution(StandItem item, Distribution distribution, boolean guessed) {

    /** Standard uncertainty of the thrust by it alone, N. */
    double standardN() {
        return distribution.standardN();
    }
}
