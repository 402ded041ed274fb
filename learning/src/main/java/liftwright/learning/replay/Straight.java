package liftwright.learning.replay;

import java.util.ArrayDeque;
import java.util.BitSet;

/**
 * Leaves of many points those that straight lines need (the algorithm of Douglas and Peucker,
 * 1973): every point left out lies within a tolerance of the line between its neighbours.
 */
final class Straight {

    private Straight() {}

    /**
     * @param timesS rising
     * @param values at each time, one or several
     * @param tolerance greatest distance in any of the values
     * @return numbers of the points that stay, the first and the last among them
     */
    static int[] points(double[] timesS, double[][] values, double tolerance) {
        BitSet stays = new BitSet(timesS.length);
        stays.set(0);
        stays.set(timesS.length - 1);
        ArrayDeque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {0, timesS.length - 1});
        while (!open.isEmpty()) {
            int[] stretch = open.pop();
            int worst = worst(timesS, values, stretch[0], stretch[1], tolerance);
            if (worst >= 0) {
                stays.set(worst);
                open.push(new int[] {stretch[0], worst});
                open.push(new int[] {worst, stretch[1]});
            }
        }
        return stays.stream().toArray();
    }

    /** The point farthest from the line; −1 where all lie within the tolerance. */
    private static int worst(
            double[] timesS, double[][] values, int from, int to, double tolerance) {
        int worst = -1;
        double most = tolerance;
        for (int k = from + 1; k < to; k++) {
            double share = (timesS[k] - timesS[from]) / (timesS[to] - timesS[from]);
            for (int of = 0; of < values[k].length; of++) {
                double line = values[from][of] + share * (values[to][of] - values[from][of]);
                double off = Math.abs(values[k][of] - line);
                if (off > most) {
                    most = off;
                    worst = k;
                }
            }
        }
        return worst;
    }
}
