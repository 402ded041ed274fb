package liftwright.logbook.reading;

import java.util.List;
import java.util.OptionalInt;

/**
 * Finds that voltage and current of one part stand some rows apart, as where a logger asks its
 * sensors in turn: a current's rise and the sag it makes belong to one moment. Told, never mended:
 * which of the two is late, the log does not say.
 */
final class OutOfStep {

    /** Farthest that is looked for, rows. */
    static final int FARTHEST = 8;

    private static final int FEWEST = 60;

    /** The sag must be plain at the other lag, and less plain in the same row. */
    private static final double PLAIN = 0.45;

    private static final double BETTER = 0.15;

    private OutOfStep() {}

    /**
     * By how many rows the voltage comes later than the current that makes it sag; empty where they
     * are in step or it cannot be told.
     */
    static OptionalInt rows(List<double[]> current, List<double[]> voltage) {
        int all = best(current, voltage, 0, 1);
        if (all == 0
                || all != best(current, voltage, 0, 0.5)
                || all != best(current, voltage, 0.5, 1)) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(all);
    }

    /** The lag of the plainest sag in a part of each stretch; 0 where it is no other. */
    private static int best(
            List<double[]> current, List<double[]> voltage, double from, double to) {
        double inStep = 0;
        double most = 0;
        int best = 0;
        int pairs = 0;
        for (int lag = -FARTHEST; lag <= FARTHEST; lag++) {
            var sums = new Sums();
            for (int s = 0; s < current.size(); s++) {
                add(current.get(s), voltage.get(s), lag, from, to, sums);
            }
            double sag = -sums.correlation();
            if (lag == 0) {
                inStep = sag;
                pairs = sums.n;
            }
            if (sag > most) {
                most = sag;
                best = lag;
            }
        }
        boolean told =
                pairs >= FEWEST
                        && most >= Math.max(PLAIN, 5 / Math.sqrt(pairs))
                        && most - inStep >= BETTER;
        return told ? best : 0;
    }

    private static void add(
            double[] current, double[] voltage, int lag, double from, double to, Sums sums) {
        int first = Math.max(1, (int) (from * current.length));
        int last = (int) (to * current.length);
        for (int k = first; k < last; k++) {
            int other = k + lag;
            if (other >= 1 && other < voltage.length) {
                double rise = current[k] - current[k - 1];
                double sag = voltage[other] - voltage[other - 1];
                if (Double.isFinite(rise) && Double.isFinite(sag)) {
                    sums.add(rise, sag);
                }
            }
        }
    }

    /** Of pairs, for their correlation. */
    static final class Sums {
        int n;
        private double x;
        private double y;
        private double xx;
        private double yy;
        private double xy;

        void add(double a, double b) {
            n++;
            x += a;
            y += b;
            xx += a * a;
            yy += b * b;
            xy += a * b;
        }

        /** 0 where one of the two does not change. */
        double correlation() {
            double sxx = xx - x * x / Math.max(1, n);
            double syy = yy - y * y / Math.max(1, n);
            double sxy = xy - x * y / Math.max(1, n);
            boolean still = !(sxx > 1e-12 * xx) || !(syy > 1e-12 * yy);
            return still ? 0 : sxy / Math.sqrt(sxx * syy);
        }
    }
}
