package liftwright.plant.identify;

import java.util.List;
import liftwright.numerics.StudentT;

/**
 * How far one run lies from what all runs say: an offset of voltage, a factor of all resistances
 * and a factor of capacity of each run's own, with spreads found by expectation and maximisation of
 * random effects [LAIRD82]. The laws leave out much (resistance falls with current, cells differ);
 * this is what it costs in a run that nobody saw yet.
 *
 * <p>Few runs tell little of a spread, so it starts from what is usual and counts as {@value
 * #BEFORE} runs: 10 mV, 5 % of resistance, 1 % of capacity (from memory, of runs of one cell type).
 * Student's t widens what rests on few.
 *
 * @param offsetV standard deviation, V
 * @param resistance standard deviation of ln R
 * @param capacity standard deviation of ln Q
 */
record RunSpread(double offsetV, double resistance, double capacity) {

    private static final int BEFORE = 4;
    private static final double[] USUAL = {0.010, 0.05, 0.01};
    private static final int EFFECTS = USUAL.length;
    private static final int ROUNDS = 50;

    /** To either side of a charge, for the slope of rest voltage. */
    private static final double ASIDE = 0.005;

    /** A run that goes through this share of charge tells of resistance and capacity. */
    private static final double TELLS = 0.3;

    /**
     * @param runs with the model's last run in them
     */
    static RunSpread of(List<MeasuredRun> runs, CellModel cell) {
        double[] square = new double[EFFECTS];
        for (int e = 0; e < EFFECTS; e++) {
            square[e] = USUAL[e] * USUAL[e];
        }
        int telling = (int) runs.stream().filter(run -> run.depth(cell.capacityAs) > TELLS).count();
        for (int round = 0; round < ROUNDS; round++) {
            double[] sum = new double[EFFECTS];
            for (MeasuredRun run : runs) {
                add(run, cell, square, sum);
            }
            for (int e = 0; e < EFFECTS; e++) {
                square[e] = (BEFORE * USUAL[e] * USUAL[e] + sum[e]) / (BEFORE + runs.size());
            }
        }
        double wider = StudentT.within(0.95, BEFORE + telling) / StudentT.within(0.95, 1e6);
        return new RunSpread(
                wider * Math.sqrt(square[0]),
                wider * Math.sqrt(square[1]),
                wider * Math.sqrt(square[2]));
    }

    /** What it adds to the covariance of two values: all resistances of a run go together. */
    double covariance(CellUnknown one, CellUnknown other) {
        if (one == CellUnknown.CAPACITY && other == CellUnknown.CAPACITY) {
            return capacity * capacity;
        }
        return resists(one) && resists(other) ? resistance * resistance : 0;
    }

    private static boolean resists(CellUnknown unknown) {
        return switch (unknown) {
            case RESISTANCE, FAST_RESISTANCE, SLOW_RESISTANCE -> true;
            case CAPACITY, TEMPERATURE, FAST_TIME, SLOW_TIME -> false;
        };
    }

    /** Adds the expected squares of one run's effects, row by row (recursive least squares). */
    private static void add(MeasuredRun run, CellModel cell, double[] square, double[] sum) {
        double[] mean = new double[EFFECTS];
        double[][] covariance = new double[EFFECTS][EFFECTS];
        for (int e = 0; e < EFFECTS; e++) {
            covariance[e][e] = square[e];
        }
        double rowsPerReading = run.counted / run.readings();
        double[] told = new double[EFFECTS];
        for (int k = 0; k < run.rows.size(); k++) {
            if (!run.rows.counts[k]) {
                continue;
            }
            double[] by = effects(run, cell, k);
            double rest = run.rows.voltageV[k] - run.run.voltageV[k];
            double variance = run.deviationV(k) * run.deviationV(k) * rowsPerReading;
            for (int e = 0; e < EFFECTS; e++) {
                told[e] = 0;
                for (int f = 0; f < EFFECTS; f++) {
                    told[e] += covariance[e][f] * by[f];
                }
                variance += told[e] * by[e];
                rest -= mean[e] * by[e];
            }
            // Symmetric: told is needed whole before the covariance changes.
            for (int e = 0; e < EFFECTS; e++) {
                mean[e] += told[e] * rest / variance;
                for (int f = 0; f < EFFECTS; f++) {
                    covariance[e][f] -= told[e] * told[f] / variance;
                }
            }
        }
        for (int e = 0; e < EFFECTS; e++) {
            sum[e] += mean[e] * mean[e] + covariance[e][e];
        }
    }

    /** Change of a row's voltage with offset, ln R and ln Q, V. */
    private static double[] effects(MeasuredRun run, CellModel cell, int row) {
        double left = run.run.charge[row];
        double slope = (cell.openV(left + ASIDE) - cell.openV(left - ASIDE)) / (2 * ASIDE);
        return new double[] {
            1, -run.run.dropV[row], slope * run.rows.passedAs[row] / cell.capacityAs
        };
    }
}
