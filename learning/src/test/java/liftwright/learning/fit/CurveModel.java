package liftwright.learning.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.parameters.Range;
import liftwright.plant.recording.Signal;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.RigPath;

/**
 * A small plant of a formula: thrust grows with the square of throttle, current with its cube, a
 * part warms towards an end. What it has not is drawn: drifts with heavy tails, noise, errors.
 */
final class CurveModel implements Model {

    /**
     * Gain of thrust, of current, what both share, rise and time of warming, a number of no use.
     */
    static final int UNKNOWNS = 6;

    static final double[] NOMINAL = {100, 40, 1, 30, 25, 5};
    static final double[] WIDE = {10, 6, 0.1, 9, 8, 2};

    final ParameterTable table;
    final List<Compared> channels = new ArrayList<>();
    final double[] truth = new double[UNKNOWNS];

    CurveModel(long seed, int blocks, double offShare) {
        SplittableRandom random = new SplittableRandom(seed);
        table = table();
        for (int k = 0; k < UNKNOWNS; k++) {
            truth[k] = NOMINAL[k] + WIDE[k] / 2 * random.nextGaussian();
        }
        double[] times = new double[blocks];
        for (int k = 0; k < blocks; k++) {
            times[k] = 60.0 * (k + 0.5) / blocks;
        }
        Signal[] signals = {Signal.THRUST, Signal.CURRENT, Signal.TEMPERATURE};
        double[] left = {0.03, 0.04, 0.1};
        double[] error = {0.5, 0.4, 0.6};
        double[] start = {0, 0, 290};
        double[][] clean = new double[3][blocks];
        shape(truth, times, clean);
        for (int c = 0; c < 3; c++) {
            double[] measured = new double[blocks];
            double[] noise = new double[blocks];
            double drift = random.nextGaussian();
            double always = 0.7 * random.nextGaussian();
            double bias = 0.9 * error[c] / 2 * random.nextGaussian();
            for (int k = 0; k < blocks; k++) {
                drift = 0.85 * drift + Math.sqrt(1 - 0.85 * 0.85) * random.nextGaussian();
                double way = clean[c][k] - start[c];
                double off = offShare * left[c] / 2 * way * (always + 0.7 * drift);
                noise[k] = 0.1 * error[c];
                double wild = random.nextDouble() < 0.02 ? 25 : 1;
                measured[k] = clean[c][k] + off + bias + wild * noise[k] * random.nextGaussian();
            }
            channels.add(
                    new Compared(
                            signals[c],
                            "all",
                            times,
                            measured,
                            noise,
                            error[c],
                            0,
                            left[c],
                            0,
                            start[c]));
        }
    }

    static ParameterTable table() {
        ParameterRows rows = new ParameterRows();
        for (int k = 0; k < UNKNOWNS; k++) {
            rows.row(
                    RigPath.of("thing", "n" + k),
                    "number " + k,
                    new Quantity(
                            NOMINAL[k],
                            Dimension.NONE,
                            new Tolerance(
                                    WIDE[k],
                                    WIDE[k],
                                    Tolerance.Form.NORMAL,
                                    Tolerance.Scope.SHARED)),
                    Range.ANY);
        }
        return rows.table();
    }

    static double throttle(double timeS) {
        return 0.3 + 0.14 * Math.floor(timeS / 12);
    }

    static void shape(double[] p, double[] times, double[][] out) {
        for (int k = 0; k < times.length; k++) {
            double x = throttle(times[k]);
            out[0][k] = p[0] * p[2] * x * x;
            out[1][k] = p[1] * p[2] * x * x * x;
            out[2][k] = 290 + p[3] * (1 - Math.exp(-times[k] / Math.max(1, p[4])));
        }
    }

    @Override
    public List<Compared> channels() {
        return channels;
    }

    @Override
    public ParameterTable parameters() {
        return table;
    }

    @Override
    public Predictor predictor() {
        return (p, out) -> {
            shape(p, channels.getFirst().timesS(), out);
            return true;
        };
    }
}
