package liftwright.physics;

/** A curve given by points: linear between them, the end values held beyond the ends. */
public final class LinearTable {

    private LinearTable() {}

    /**
     * Value of the curve.
     *
     * @param points arguments, strictly rising, at least one
     * @param values at each
     * @param at argument asked for
     */
    public static double value(double[] points, double[] values, double at) {
        int last = points.length - 1;
        if (at <= points[0]) {
            return values[0];
        }
        if (at >= points[last]) {
            return values[last];
        }
        int low = 0;
        int high = last;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (points[middle] <= at) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double share = (at - points[low]) / (points[high] - points[low]);
        return values[low] + share * (values[high] - values[low]);
    }
}
