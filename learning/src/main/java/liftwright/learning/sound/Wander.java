package liftwright.learning.sound;

/**
 * How far a line's ratio strays within a window, from the line itself: variance of a value against
 * the mean of those half a window to either side. Of a ratio that walks at random a fifth of it is
 * what a window's mean misses of its middle, roughly; tests hold what comes of it.
 */
final class Wander {

    private static final int LAG = Tracker.HOPS / 2;
    private static final int REACH = 8;

    private Wander() {}

    /**
     * Variance for each peak of a line.
     *
     * @param share of the variance that is an error: more beside other lines, which pull at it
     */
    static double[] of(Line line, double share) {
        int n = line.frames().size();
        double[] square = new double[n];
        boolean[] known = new boolean[n];
        double all = 0;
        int count = 0;
        for (int k = LAG; k + LAG < n; k++) {
            if (line.frames().get(k + LAG) - line.frames().get(k - LAG) > 2 * LAG + 1) {
                continue;
            }
            double d =
                    line.peaks().get(k).ratio()
                            - (line.peaks().get(k - LAG).ratio()
                                            + line.peaks().get(k + LAG).ratio())
                                    / 2;
            square[k] = d * d;
            known[k] = true;
            all += square[k];
            count++;
        }
        double whole = count == 0 ? 1e-6 : all / count;
        double[] variance = new double[n];
        for (int k = 0; k < n; k++) {
            double sum = 2 * whole; // two readings' worth of the whole line steady a short stretch
            int terms = 2;
            for (int j = Math.max(0, k - REACH); j <= Math.min(n - 1, k + REACH); j++) {
                if (known[j]) {
                    sum += square[j];
                    terms++;
                }
            }
            variance[k] = share * sum / terms;
        }
        return variance;
    }
}
