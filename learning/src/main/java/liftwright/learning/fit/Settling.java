package liftwright.learning.fit;

import java.util.Locale;
import java.util.Optional;
import liftwright.numerics.CentralDifferences;
import liftwright.numerics.LeastSquares;
import liftwright.numerics.LeastSquaresFit;
import liftwright.plant.recording.Signal;

/**
 * Whether a part that warmed came near its end: a rise that still goes on fits any end value. Held
 * against is one exponential, T = T₀ + R (1 − e^(−t/τ)), from the last start of the rise on; where
 * its end is not told to a tenth, no end is told.
 */
public final class Settling {

    /** A rise smaller than this is none, K. */
    private static final double LEAST_K = 3;

    /** Of the end, standard deviation over the rise. */
    private static final double TOLD = 0.1;

    private static final int LEAST_BLOCKS = 6;

    private Settling() {}

    /** That a temperature tells no end value, in words; empty where it does, or nothing warmed. */
    public static Optional<String> note(Compared channel) {
        if (channel.signal() != Signal.TEMPERATURE || channel.size() < LEAST_BLOCKS) {
            return Optional.empty();
        }
        double[] t = channel.timesS();
        double[] kelvin = channel.measuredSi();
        int top = 0;
        int foot = 0;
        for (int k = 0; k < kelvin.length; k++) {
            top = kelvin[k] > kelvin[top] ? k : top;
        }
        for (int k = 0; k <= top; k++) {
            foot = kelvin[k] <= kelvin[foot] ? k : foot;
        }
        double rise = kelvin[top] - kelvin[foot];
        int n = top - foot + 1;
        if (rise < LEAST_K || n < LEAST_BLOCKS) {
            return Optional.empty();
        }
        return isTold(t, kelvin, foot, n, rise)
                ? Optional.empty()
                : Optional.of(
                        String.format(
                                Locale.ROOT,
                                "%s rose by %.0f K and had not settled: it tells no end value",
                                channel.name(),
                                rise));
    }

    /** Whether the end of a rise is told to a tenth of it. */
    static boolean isTold(double[] t, double[] kelvin, int foot, int n, double rise) {
        double longS = t[foot + n - 1] - t[foot];
        double error = Math.max(0.02 * rise, 0.3);
        boolean[] positive = {false, true, true};
        LeastSquares fit =
                new LeastSquares(
                                n,
                                positive,
                                new CentralDifferences(
                                        (x, rows) -> {
                                            for (int i = 0; i < n; i++) {
                                                double since = t[foot + i] - t[foot];
                                                double at = x[0] - x[1] * Math.expm1(-since / x[2]);
                                                rows[i] = (at - kelvin[foot + i]) / error;
                                            }
                                        },
                                        positive,
                                        new double[] {1, 1, 1}))
                        .tolerance(1e-9)
                        .prior(1, Math.log(2 * rise), 1.5)
                        .prior(2, Math.log(longS), 1.5);
        LeastSquaresFit found = fit.fit(new double[] {kelvin[foot], 1.2 * rise, longS / 2});
        // What the law leaves out is alike from block to block: a few count, not all.
        double alike = Math.sqrt(Math.max(1, n / 6.0));
        double end = found.value(1);
        return found.status() == LeastSquaresFit.Status.CONVERGED
                && alike * found.deviation(1) <= TOLD
                && end <= 1.6 * rise;
    }
}
