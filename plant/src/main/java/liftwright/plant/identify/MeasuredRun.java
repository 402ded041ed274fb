package liftwright.plant.identify;

import java.util.Arrays;
import liftwright.rig.table.CellTests;

/**
 * One test beside the model: how its rows count. A row's voltage is in doubt by the scatter of the
 * rows and by half a percent of charge along the curve, which near empty is more. Rows of one run
 * hang together, so a run counts as twenty readings at most; the start, that is rest voltage and
 * charge there, is in doubt by 15 mV and is common to all rows of a run (its offset is taken out as
 * the covariance D² + τ² 11ᵀ says [JCGM102]).
 */
final class MeasuredRun {

    /** Rows that a run counts as at most. */
    static final double MOST = 20;

    private static final double CHARGE_DOUBT = 0.005;

    final TestRows rows;
    final CellRun run;
    final int counted;

    /** Fall of voltage per share of charge at each row, V. */
    private final double[] slopeV;

    private final double[] deviation;

    MeasuredRun(CellTests.Run test, double aboutAs) {
        rows = TestRows.of(test);
        run = new CellRun(rows.timeS, rows.currentA, aboutAs);
        counted = rows.counted();
        int n = rows.size();
        slopeV = new double[n];
        deviation = new double[n];
        for (int k = 1; k + 1 < n; k++) {
            double passed = (rows.passedAs[k + 1] - rows.passedAs[k - 1]) / aboutAs;
            // Too little charge passed to tell a slope of the curve from the drop at a jump.
            slopeV[k] =
                    passed > CHARGE_DOUBT
                            ? Math.abs(rows.voltageV[k + 1] - rows.voltageV[k - 1]) / passed
                            : 0;
        }
        if (n > 1) {
            slopeV[n - 1] = slopeV[n - 2];
        }
    }

    /** Sets what one row scatters by, V. */
    void scatter(double volt) {
        for (int k = 0; k < deviation.length; k++) {
            deviation[k] = Math.hypot(volt, CHARGE_DOUBT * slopeV[k]);
        }
    }

    double deviationV(int row) {
        return deviation[row];
    }

    /** Independent readings that the run counts as. */
    double readings() {
        return Math.min(counted, MOST);
    }

    /**
     * Residuals of the model's last run, in standard deviations and independent.
     *
     * @param startDoubtV τ, V
     * @return where the next run's rows begin
     */
    int whitened(double startDoubtV, double[] into, int at) {
        double along = 0;
        double square = 0;
        int i = at;
        for (int k = 0; k < rows.size(); k++) {
            if (rows.counts[k]) {
                double one = 1 / deviation[k];
                into[i] = (run.voltageV[k] - rows.voltageV[k]) * one;
                along += into[i] * one;
                square += one * one;
                i++;
            }
        }
        double weight = Math.sqrt(readings() / counted);
        // Readings that hang together tell the common offset as well as that many would.
        double own = square * weight * weight;
        double part =
                square == 0
                        ? 0
                        : (1 - 1 / Math.sqrt(1 + startDoubtV * startDoubtV * own)) * along / square;
        i = at;
        for (int k = 0; k < rows.size(); k++) {
            if (rows.counts[k]) {
                into[i] = weight * (into[i] - part / deviation[k]);
                i++;
            }
        }
        return i;
    }

    void follow(CellModel cell) {
        run.follow(cell, rows.startCharge, rows.kelvin);
    }

    /** Share of a full cell's charge that passed. */
    double depth(double capacityAs) {
        return rows.passedInAllAs() / capacityAs;
    }

    double greatestA() {
        return Arrays.stream(rows.currentA).map(Math::abs).max().orElse(0);
    }
}
