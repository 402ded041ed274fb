package liftwright.plant.heat;

import java.util.Arrays;

/**
 * How a run is cut into cells along itself: finest at its ends, where a joint's heat bends the
 * temperature within a fin length, each cell so much longer than its outer neighbour.
 */
final class LineGrid {

    /** Cells of a run; odd. */
    static final int CELLS = 7;

    /** Length of the end cells over the fin length. */
    private static final double END = 0.2;

    private LineGrid() {}

    /**
     * Shares of the length, in order; they sum to 1.
     *
     * @param lengthM of the run, m
     * @param finM its fin length, m
     */
    static double[] shares(double lengthM, double finM) {
        double[] shares = new double[CELLS];
        double end = END * finM;
        if (!(end * CELLS < lengthM)) {
            Arrays.fill(shares, 1.0 / CELLS);
            return shares;
        }
        double growth = growth(lengthM / end);
        double size = end / lengthM;
        double sum = 0;
        for (int k = 0; k < CELLS; k++) {
            int fromEnd = Math.min(k, CELLS - 1 - k);
            shares[k] = size * Math.pow(growth, fromEnd);
            sum += shares[k];
        }
        for (int k = 0; k < CELLS; k++) {
            shares[k] /= sum;
        }
        return shares;
    }

    /** Growth at which the cells add up to so many end cells; by bisection. */
    private static double growth(double ends) {
        double low = 1;
        double high = 2;
        while (sum(high) < ends) {
            high *= 2;
        }
        for (int k = 0; k < 60; k++) {
            double middle = (low + high) / 2;
            if (sum(middle) < ends) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static double sum(double growth) {
        double sum = 0;
        for (int k = 0; k < CELLS; k++) {
            sum += Math.pow(growth, Math.min(k, CELLS - 1 - k));
        }
        return sum;
    }
}
