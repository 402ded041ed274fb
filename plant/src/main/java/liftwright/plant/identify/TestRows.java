package liftwright.plant.identify;

import java.util.ArrayList;
import java.util.List;
import liftwright.physics.CellLaw;
import liftwright.rig.table.CellTest;
import liftwright.rig.table.CellTests;

/**
 * A test of a cell made ready for a fit: rows enough to follow the current, charge summed over all
 * of them, and rows that a logger wrote out of step taken out.
 *
 * <p>Loggers write a row while the load changes: the new voltage beside the old current, or the old
 * voltage beside the new current. Paired with its neighbour such a row gives 1 mΩ instead of 30.
 * Where current jumps, the row that made the voltage's jump happen before or after it does not
 * count; the row still says when the current changed.
 */
final class TestRows {

    /** Of the greatest current: a change from row to row that is a jump of the load. */
    private static final double JUMP = 0.05;

    /** A jump of voltage that is told from noise, V. */
    private static final double LEAST_JUMP_V = 0.005;

    /** Longest gap between rows kept, as a share of the test. */
    private static final double LONGEST = 1 / 60.0;

    /** Gap allowed between rows kept, as a share of the time since the last jump. */
    private static final double GROWTH = 0.15;

    final String file;
    final double startCharge;
    final double[] timeS;
    final double[] currentA;
    final double[] voltageV;
    final double[] kelvin;

    /** Charge given since the first row, A·s. */
    final double[] passedAs;

    /** Whether a row's voltage counts. */
    final boolean[] counts;

    final boolean warmed;

    /** Lines of the file that were taken out. */
    final List<Integer> outOfStep;

    private TestRows(
            CellTests.Run run, List<Integer> kept, double[] passed, List<Integer> outOfStep) {
        List<CellTest.Row> rows = run.test().rows();
        file = run.test().file();
        startCharge = run.chargeAtStart();
        this.outOfStep = List.copyOf(outOfStep);
        int n = kept.size();
        timeS = new double[n];
        currentA = new double[n];
        voltageV = new double[n];
        kelvin = new double[n];
        passedAs = new double[n];
        counts = new boolean[n];
        boolean any = false;
        double last =
                rows.stream()
                        .flatMapToDouble(row -> row.temperatureK().stream())
                        .findFirst()
                        .orElse(CellLaw.REFERENCE_K);
        for (int k = 0; k < n; k++) {
            CellTest.Row row = rows.get(kept.get(k));
            timeS[k] = row.timeS();
            currentA[k] = row.currentA();
            voltageV[k] = row.voltageV();
            any |= row.temperatureK().isPresent();
            last = row.temperatureK().orElse(last);
            kelvin[k] = last;
            passedAs[k] = passed[kept.get(k)];
            counts[k] = !outOfStep.contains(row.line());
        }
        warmed = any;
    }

    static TestRows of(CellTests.Run run) {
        List<CellTest.Row> rows = run.test().rows();
        double greatest = 0;
        double[] passed = new double[rows.size()];
        for (int k = 0; k < rows.size(); k++) {
            greatest = Math.max(greatest, Math.abs(rows.get(k).currentA()));
            if (k > 0) {
                CellTest.Row before = rows.get(k - 1);
                CellTest.Row row = rows.get(k);
                passed[k] =
                        passed[k - 1]
                                + (row.timeS() - before.timeS())
                                        * (row.currentA() + before.currentA())
                                        / 2;
            }
        }
        return new TestRows(run, kept(rows, greatest), passed, outOfStep(rows, greatest));
    }

    private static boolean jumps(List<CellTest.Row> rows, int to, double greatest) {
        double change = rows.get(to).currentA() - rows.get(to - 1).currentA();
        return Math.abs(change) > JUMP * greatest;
    }

    private static List<Integer> kept(List<CellTest.Row> rows, double greatest) {
        double longest = LONGEST * (rows.getLast().timeS() - rows.getFirst().timeS());
        List<Integer> kept = new ArrayList<>();
        double jumpS = rows.getFirst().timeS();
        for (int k = 0; k < rows.size(); k++) {
            double time = rows.get(k).timeS();
            boolean here = k > 0 && jumps(rows, k, greatest);
            boolean next = k + 1 < rows.size() && jumps(rows, k + 1, greatest);
            if (here) {
                jumpS = time;
            }
            boolean ends = k == 0 || k == rows.size() - 1;
            double gap = Math.min(longest, GROWTH * (time - jumpS));
            if (ends || here || next || time - rows.get(kept.getLast()).timeS() >= gap) {
                kept.add(k);
            }
        }
        return kept;
    }

    private static List<Integer> outOfStep(List<CellTest.Row> rows, double greatest) {
        List<Integer> lines = new ArrayList<>();
        for (int k = 1; k + 2 < rows.size(); k++) {
            if (!jumps(rows, k + 1, greatest)) {
                continue;
            }
            double whole = rows.get(k + 2).voltageV() - rows.get(k - 1).voltageV();
            if (Math.abs(whole) < LEAST_JUMP_V) {
                continue;
            }
            if ((rows.get(k).voltageV() - rows.get(k - 1).voltageV()) / whole > 0.5) {
                lines.add(rows.get(k).line());
            } else if ((rows.get(k + 2).voltageV() - rows.get(k + 1).voltageV()) / whole > 0.5) {
                lines.add(rows.get(k + 1).line());
            }
        }
        return lines;
    }

    int size() {
        return timeS.length;
    }

    /** How many rows' voltage counts. */
    int counted() {
        int sum = 0;
        for (boolean one : counts) {
            sum += one ? 1 : 0;
        }
        return sum;
    }

    /** Charge given from the first row to the last, A·s. */
    double passedInAllAs() {
        return passedAs[passedAs.length - 1];
    }

    /** Whether the first row is one without load. */
    boolean startsAtRest() {
        double greatest = 0;
        for (double current : currentA) {
            greatest = Math.max(greatest, Math.abs(current));
        }
        return Math.abs(currentA[0]) <= JUMP * greatest;
    }
}
