package liftwright.trials.proof;

/**
 * What was read while all was steady before a press.
 *
 * @param mean of the readings
 * @param scatter standard deviation of one reading; of few readings larger, since few tell it badly
 * @param meanDoubt standard deviation of the mean
 * @param alike by how much neighbours are alike: the variance of a mean of n is {@code alike / n}
 *     of that of one, ≥ 1
 * @param held how many rows in a row repeat one reading, ≥ 1: telemetry that is logged faster than
 *     it is read
 */
record Level(double mean, double scatter, double meanDoubt, double alike, int held) {

    static Level of(Samples before) {
        double[] y = before.value();
        int n = y.length;
        double mean = 0;
        for (double each : y) {
            mean += each / n;
        }
        double square = 0;
        double next = 0;
        for (int k = 0; k < n; k++) {
            square += (y[k] - mean) * (y[k] - mean);
            next += k > 0 ? (y[k] - mean) * (y[k - 1] - mean) : 0;
        }
        double few = 1 + 3.0 / (n - 1);
        double scatter = few * Math.sqrt(square / (n - 1));
        double likeness = square > 0 ? next / square : 0;
        // What n readings leave unknown of the likeness is added; beyond 0.95 a mean tells nothing.
        double bounded = Math.clamp(likeness + 1 / Math.sqrt(n), 0, 0.95);
        double alike = (1 + bounded) / (1 - bounded);
        return new Level(
                mean, scatter, scatter * Math.sqrt(Math.min(1, alike / n)), alike, held(y));
    }

    /**
     * The longest repetition, where readings scatter at all: a display that stands tells nothing.
     */
    private static int held(double[] y) {
        int longest = 1;
        int run = 1;
        int changes = 0;
        for (int k = 1; k < y.length; k++) {
            run = y[k] == y[k - 1] ? run + 1 : 1;
            changes += y[k] == y[k - 1] ? 0 : 1;
            longest = Math.max(longest, run);
        }
        return changes < 2 ? 1 : longest;
    }
}
