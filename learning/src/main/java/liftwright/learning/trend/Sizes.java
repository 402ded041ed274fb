package liftwright.learning.trend;

/**
 * How far one part was from what was declared, test by test.
 *
 * @param part which
 * @param tests numbers of the tests that tell
 * @param si departures, Ω of a joint, else shares
 * @param covariance of them, shared doubt included
 * @param square what is left of all readings, in deviations squared
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
record Sizes(WornPart part, int[] tests, double[] si, double[][] covariance, double square) {

    /** Those of some of its tests, by their places among them. */
    Sizes between(int from, int to) {
        int n = to - from;
        double[][] part = new double[n][];
        for (int k = 0; k < n; k++) {
            part[k] = java.util.Arrays.copyOfRange(covariance[from + k], from, to);
        }
        return new Sizes(
                this.part,
                java.util.Arrays.copyOfRange(tests, from, to),
                java.util.Arrays.copyOfRange(si, from, to),
                part,
                square);
    }
}
