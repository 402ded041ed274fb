package liftwright.flight.sense;

/** Allan deviation of a series, from its definition: half the mean square of steps of means. */
final class AllanDeviation {

    private AllanDeviation() {}

    /** Overlapping means of {@code tau} each. */
    static double of(double[] rate, double dtS, double tauS) {
        int m = (int) Math.rint(tauS / dtS);
        double[] sum = new double[rate.length + 1];
        for (int i = 0; i < rate.length; i++) {
            sum[i + 1] = sum[i] + rate[i];
        }
        double squares = 0;
        int count = 0;
        for (int i = 0; i + 2 * m <= rate.length; i++) {
            double step = (sum[i + 2 * m] - 2 * sum[i + m] + sum[i]) / m;
            squares += step * step;
            count++;
        }
        return Math.sqrt(squares / (2 * count));
    }
}
