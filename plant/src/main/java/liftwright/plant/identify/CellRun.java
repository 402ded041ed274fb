package liftwright.plant.identify;

import java.util.Arrays;
import liftwright.physics.CellLaw;

/**
 * A cell under a given current from rest: voltage at every row, and temperature where it is known
 * how the cell warms. Between rows current runs straight.
 *
 * <p>The steps inside depend on the rows alone, so that a fit sees a smooth model; they are short
 * enough that the factors of charge and temperature, held at the middle of a step, cost less than
 * 0.3 mV (held by a test against an integrator of high order). Below no charge the end values of
 * the curves hold: who asks when the cell is empty looks at {@link #charge}.
 */
final class CellRun {

    /**
     * How a cell warms: one lump.
     *
     * @param heatCapacityJpK J/K
     * @param toAirWpK heat to the air per kelvin, W/K
     */
    record Warming(double heatCapacityJpK, double toAirWpK) {}

    /** Longest step inside as a share of the charge of a full cell. */
    private static final double CHARGE_STEP = 0.003;

    private final double[] timeS;
    private final double[] currentA;
    private final int[] steps;
    private final double[] slowV = new double[CellModel.PAIRS];

    /** At each row: what the last run gave. */
    final double[] voltageV;

    final double[] charge;
    final double[] kelvin;

    /** Drop by all resistances, V. */
    final double[] dropV;

    /**
     * @param timeS rising, s
     * @param currentA out of the cell at each time, A
     * @param aboutAs charge of a full cell, about; sets the steps
     */
    CellRun(double[] timeS, double[] currentA, double aboutAs) {
        int n = timeS.length;
        this.timeS = timeS;
        this.currentA = currentA;
        steps = new int[n];
        for (int k = 1; k < n; k++) {
            double most = Math.max(Math.abs(currentA[k]), Math.abs(currentA[k - 1]));
            double share = (timeS[k] - timeS[k - 1]) * most / aboutAs;
            steps[k] = (int) Math.max(1, Math.ceil(share / CHARGE_STEP));
        }
        voltageV = new double[n];
        charge = new double[n];
        kelvin = new double[n];
        dropV = new double[n];
    }

    /**
     * Follows the current at temperatures that were measured.
     *
     * @param startCharge share of charge at the first row
     * @param measuredK at each row, straight between, K
     */
    void follow(CellModel cell, double startCharge, double[] measuredK) {
        begin(cell, startCharge, measuredK[0]);
        for (int k = 1; k < timeS.length; k++) {
            double left = charge[k - 1];
            double h = (timeS[k] - timeS[k - 1]) / steps[k];
            double rise = (currentA[k] - currentA[k - 1]) / steps[k];
            double warmer = (measuredK[k] - measuredK[k - 1]) / steps[k];
            for (int n = 0; n < steps[k]; n++) {
                double near = currentA[k - 1] + n * rise;
                double next = left - h * (near + rise / 2) / cell.capacityAs;
                slow(
                        cell,
                        near,
                        near + rise,
                        cell.factor((left + next) / 2, measuredK[k - 1] + (n + 0.5) * warmer),
                        h);
                left = next;
            }
            record(cell, k, left, measuredK[k]);
        }
    }

    /**
     * Follows the current while the cell warms itself.
     *
     * @param startK temperature at the first row, K
     * @param airK of the air, K
     */
    void follow(CellModel cell, double startCharge, Warming warming, double startK, double airK) {
        begin(cell, startCharge, startK);
        for (int k = 1; k < timeS.length; k++) {
            double left = charge[k - 1];
            double warm = kelvin[k - 1];
            double h = (timeS[k] - timeS[k - 1]) / steps[k];
            double rise = (currentA[k] - currentA[k - 1]) / steps[k];
            for (int n = 0; n < steps[k]; n++) {
                double near = currentA[k - 1] + n * rise;
                double next = left - h * (near + rise / 2) / cell.capacityAs;
                double middle = (left + next) / 2;
                double before = heatW(cell, near, cell.factor(middle, warm));
                double halfway = lump(warming, warm, airK, before, h / 2);
                double factor = cell.factor(middle, halfway);
                before = heatW(cell, near, factor);
                slow(cell, near, near + rise, factor, h);
                double after = heatW(cell, near + rise, factor);
                warm = lump(warming, warm, airK, (before + after) / 2, h);
                left = next;
            }
            record(cell, k, left, warm);
        }
    }

    private static double lump(
            Warming warming, double kelvin, double airK, double heatW, double forS) {
        return CellLaw.lumpAfterK(
                kelvin, airK, heatW, warming.heatCapacityJpK, warming.toAirWpK, forS);
    }

    private void begin(CellModel cell, double startCharge, double startK) {
        Arrays.fill(slowV, 0);
        record(cell, 0, startCharge, startK);
    }

    private void record(CellModel cell, int k, double left, double warm) {
        charge[k] = left;
        kelvin[k] = warm;
        double drop = cell.instantOhm * cell.factor(left, warm) * currentA[k];
        for (double slow : slowV) {
            drop += slow;
        }
        dropV[k] = drop;
        voltageV[k] = cell.openV(left) - drop;
    }

    private void slow(CellModel cell, double nearA, double farA, double factor, double h) {
        for (int j = 0; j < slowV.length; j++) {
            slowV[j] =
                    CellLaw.pairAfterV(
                            slowV[j],
                            nearA,
                            farA,
                            cell.slowOhm[j] * factor,
                            cell.slowS[j] * factor,
                            h);
        }
    }

    private double heatW(CellModel cell, double nowA, double factor) {
        double heat = nowA * nowA * cell.instantOhm * factor;
        for (int j = 0; j < slowV.length; j++) {
            if (cell.slowOhm[j] > 0) {
                heat += slowV[j] * slowV[j] / (cell.slowOhm[j] * factor);
            }
        }
        return heat;
    }
}
