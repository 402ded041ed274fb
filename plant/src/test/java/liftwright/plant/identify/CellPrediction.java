package liftwright.plant.identify;

import java.util.Arrays;
import java.util.Locale;
import liftwright.numerics.CounterStream;
import liftwright.numerics.JointFactor;
import liftwright.rig.table.CellTests;

/**
 * A run that told nothing, computed from its current alone: the cell starts at the measured
 * temperature and warms itself. The end is where voltage falls to the last measured one, or the
 * cell is empty. Bands are the central 95 % of 400 draws of what the fit left in doubt.
 */
final class CellPrediction {

    private static final int DRAWS = 400;
    private static final int BEYOND = 60;

    final CellTests.Run test;
    private final CellFit fit;
    private final TestRows rows;
    private final double[] timeS;
    private final double[] currentA;
    private final CellRun run;
    private final double lastV;

    final double measuredEndS;
    final double endS;

    /** Over the rows that were computed and measured, that is to the earlier end, V. */
    final double rmsV;

    /** Over all measured rows, V. */
    final double rmsOfAllV;

    final double energyError;
    final int inside;
    final int counted;

    CellPrediction(CellFit fit, CellTests.Run test) {
        this.fit = fit;
        this.test = test;
        rows = TestRows.of(test);
        int n = rows.size();
        // The last current goes on for 30 % of the time, so that a late end is seen.
        timeS = Arrays.copyOf(rows.timeS, n + BEYOND);
        currentA = Arrays.copyOf(rows.currentA, n + BEYOND);
        for (int k = n; k < n + BEYOND; k++) {
            timeS[k] = timeS[n - 1] * (1 + 0.005 * (k - n + 1));
            currentA[k] = currentA[n - 1];
        }
        measuredEndS = timeS[n - 1];
        lastV = rows.voltageV[n - 1];
        run = new CellRun(timeS, currentA, fit.cell().capacityAs);
        double[] values = fit.values().stream().mapToDouble(CellFit.Value::value).toArray();
        follow(values);
        endS = end(0);
        double[] computed = run.voltageV.clone();
        double square = 0;
        double squareOfAll = 0;
        int both = 0;
        double energy = 0;
        double measured = 0;
        for (int k = 1; k < timeS.length; k++) {
            double h = timeS[k] - timeS[k - 1];
            if (timeS[k] <= endS) {
                energy += computed[k] * currentA[k] * h;
            }
            if (k < n) {
                double off = rows.voltageV[k] - computed[k];
                squareOfAll += off * off;
                measured += rows.voltageV[k] * currentA[k] * h;
                if (timeS[k] <= endS) {
                    square += off * off;
                    both++;
                }
            }
        }
        rmsV = Math.sqrt(square / both);
        rmsOfAllV = Math.sqrt(squareOfAll / (n - 1));
        energyError = energy / measured - 1;
        counted = n - 1;
        inside = inBand(draws(values));
    }

    private void follow(double[] values) {
        double startK = rows.kelvin[0];
        run.follow(cell(values), test.chargeAtStart(), fit.warming().orElseThrow(), startK, startK);
    }

    private CellModel cell(double[] values) {
        CellModel from = fit.cell();
        CellModel to =
                new CellModel(CellModel.list(from.openCharge), CellModel.list(from.shapeCharge));
        System.arraycopy(from.openVolt, 0, to.openVolt, 0, to.openVolt.length);
        System.arraycopy(from.shapeFactor, 0, to.shapeFactor, 0, to.shapeFactor.length);
        to.capacityAs = from.capacityAs;
        for (int k = 0; k < values.length; k++) {
            switch (fit.values().get(k).unknown()) {
                case CAPACITY -> to.capacityAs = values[k];
                case RESISTANCE -> to.instantOhm = values[k];
                case TEMPERATURE -> to.temperatureCoefficientK = values[k];
                case FAST_RESISTANCE -> to.slowOhm[0] = values[k];
                case FAST_TIME -> to.slowS[0] = values[k];
                case SLOW_RESISTANCE -> to.slowOhm[1] = values[k];
                case SLOW_TIME -> to.slowS[1] = values[k];
            }
        }
        return to;
    }

    private double end(double offsetV) {
        for (int k = 1; k < timeS.length; k++) {
            double over = run.voltageV[k] + offsetV - lastV;
            double before = Math.max(0, run.voltageV[k - 1] + offsetV - lastV);
            if (over <= 0) {
                return between(k, before / Math.max(1e-9, before - over));
            }
            if (run.charge[k] <= 0) {
                return between(k, run.charge[k - 1] / (run.charge[k - 1] - run.charge[k]));
            }
        }
        return timeS[timeS.length - 1];
    }

    private double between(int k, double share) {
        return timeS[k - 1] + share * (timeS[k] - timeS[k - 1]);
    }

    private double[][] draws(double[] values) {
        boolean[] positive = new boolean[values.length];
        for (int k = 0; k < values.length; k++) {
            positive[k] = fit.values().get(k).unknown().positive();
        }
        JointFactor joint = JointFactor.of(values, positive, fit.covariance());
        double[][] volt = new double[DRAWS][counted + 1];
        for (int d = 0; d < DRAWS; d++) {
            double[] drawn = new double[values.length];
            joint.draw(7, 11, d, drawn, 0);
            follow(drawn);
            double offset = fit.openCircuitDeviationV() * CounterStream.normal(7, 12, d);
            for (int k = 0; k <= counted; k++) {
                volt[d][k] =
                        run.voltageV[k]
                                + offset
                                + fit.scatterV() * CounterStream.normal(7, 13, d, k);
            }
        }
        return volt;
    }

    private int inBand(double[][] volt) {
        int held = 0;
        for (int k = 1; k <= counted; k++) {
            int row = k;
            double[] at = Arrays.stream(volt).mapToDouble(one -> one[row]).sorted().toArray();
            double low = at[(int) (0.025 * DRAWS)];
            double high = at[(int) (0.975 * DRAWS)];
            held += rows.voltageV[k] >= low && rows.voltageV[k] <= high ? 1 : 0;
        }
        return held;
    }

    double endError() {
        return endS / measuredEndS - 1;
    }

    /**
     * What a builder does without a model: rated capacity at constant current gives the end.
     *
     * @param ratedAs charge on the label, A·s
     */
    double endErrorByHand(double ratedAs) {
        double mean = rows.passedInAllAs() / measuredEndS;
        return ratedAs * test.chargeAtStart() / mean / measuredEndS - 1;
    }

    /** Rest voltage at the rated charge left, less current times the ohms of the first second. */
    double rmsByHandV(double ratedAs, double ohm) {
        double square = 0;
        for (int k = 1; k <= counted; k++) {
            double left = test.chargeAtStart() - rows.passedAs[k] / ratedAs;
            double off = rows.voltageV[k] - fit.cell().openV(left) + ohm * currentA[k];
            square += off * off;
        }
        return Math.sqrt(square / counted);
    }

    String line() {
        return String.format(
                Locale.ROOT,
                "%s: %.0f mV rms to the earlier end, %.0f mV over all; end %+.1f %%, energy %+.1f"
                        + " %%; %d of %d rows in the band",
                test.test().file(),
                1e3 * rmsV,
                1e3 * rmsOfAllV,
                100 * endError(),
                100 * energyError,
                inside,
                counted);
    }
}
