package liftwright.plant.heat;

import liftwright.physics.FuseCurve;

/**
 * One step of heat by the method ROS2 (Verwer, Spee, Blom and Hundsdorfer, A second-order
 * Rosenbrock method applied to photochemical dispersion problems, SIAM J. Sci. Comput. 20, 1999):
 * L-stable with γ = 1 − 1/√2, of order 2 with any slope, two stages on one elimination, at the two
 * ends of the step. The first stage alone predicts the far end, where the network is asked what
 * flows there.
 *
 * <p>The error of a step is what it misses of the trapezoidal rule on its ends, smoothed by the
 * same elimination so that stiff shells do not count beyond their due. Allocates nothing; for one
 * thread.
 */
public final class HeatStep {

    private static final double GAMMA = 1 - Math.sqrt(0.5);

    private final HeatNumbers n;
    private final HeatSolver solver;
    private final double[] first;
    private final double[] second;
    private final HeatState middle;

    public HeatStep(HeatNumbers n) {
        this.n = n;
        solver = new HeatSolver(n);
        first = new double[n.capacityJpK.length];
        second = new double[n.capacityJpK.length];
        middle = n.newState();
    }

    public HeatNumbers numbers() {
        return n;
    }

    /** Finds what each body keeps at a state; part of the state from then on. */
    public void settle(HeatState at, HeatLoad load) {
        HeatFlow.kept(n, at.kelvin, at.grown, load, at.keptW);
    }

    /**
     * Predicts the end of a step.
     *
     * @param start settled at {@code near}
     * @param h &gt; 0, s
     * @param end overwritten, not settled
     */
    public void predict(HeatState start, HeatLoad near, double h, HeatState end) {
        solver.factor(start.kelvin, near, GAMMA * h);
        for (int k = 0; k < first.length; k++) {
            first[k] = h * start.keptW[k];
        }
        solver.solve(first);
        for (int k = 0; k < first.length; k++) {
            middle.kelvin[k] = start.kelvin[k] + first[k];
        }
        System.arraycopy(middle.kelvin, 0, end.kelvin, 0, end.kelvin.length);
        fuses(start, near, near, h, end);
        grow(start, h, end);
    }

    /**
     * Ends a step that was predicted from the same start over the same time.
     *
     * @param far load at its end
     * @param end as predicted; overwritten, not settled
     */
    public void correct(HeatState start, HeatLoad near, HeatLoad far, double h, HeatState end) {
        HeatFlow.kept(n, middle.kelvin, end.grown, far, second);
        double[] c = n.capacityJpK;
        for (int k = 0; k < second.length; k++) {
            second[k] = h * second[k] - 2 * c[k] * first[k];
        }
        solver.solve(second);
        for (int k = 0; k < second.length; k++) {
            end.kelvin[k] = start.kelvin[k] + 1.5 * first[k] + 0.5 * second[k];
        }
        fuses(start, near, far, h, end);
        grow(start, h, end);
    }

    private void fuses(HeatState start, HeatLoad near, HeatLoad far, double h, HeatState end) {
        for (int k = 0; k < end.fuseRoom.length; k++) {
            end.fuseRoom[k] =
                    FuseCurve.roomAfter(
                            start.fuseRoom[k], near.excess[k], far.excess[k], h, n.fuseS[k]);
        }
    }

    /** Joints grow worse while they are above their limit: that part of the step. */
    private void grow(HeatState start, double h, HeatState end) {
        for (int k = 0; k < n.nodes; k++) {
            double rate = n.growthPerS[k];
            if (rate == 0) {
                end.grown[k] = start.grown[k];
                continue;
            }
            double before = start.kelvin[k] - n.growthAboveK[k];
            double after = end.kelvin[k] - n.growthAboveK[k];
            double share;
            if (before <= 0 && after <= 0) {
                share = 0;
            } else if (before > 0 && after > 0) {
                share = 1;
            } else {
                share = Math.max(before, after) / Math.abs(after - before);
            }
            end.grown[k] = start.grown[k] + rate * h * share;
        }
    }

    /**
     * Greatest error of a temperature in the step just ended, K.
     *
     * @param start settled
     * @param end settled
     */
    public double errorK(HeatState start, HeatState end, double h) {
        double[] c = n.capacityJpK;
        for (int k = 0; k < second.length; k++) {
            second[k] =
                    c[k] * (end.kelvin[k] - start.kelvin[k])
                            - h / 2 * (start.keptW[k] + end.keptW[k]);
        }
        solver.solve(second);
        double worst = 0;
        for (double miss : second) {
            worst = Math.max(worst, Math.abs(miss));
        }
        return worst;
    }

    /**
     * Greatest error of a fuse's state in the step just ended: what the last correction of the load
     * changes.
     */
    public double fuseError(HeatLoad far, HeatLoad found, double h) {
        double worst = 0;
        for (int k = 0; k < far.excess.length; k++) {
            double weight = Math.min(1, h / (2 * n.fuseS[k]));
            worst = Math.max(worst, weight * Math.abs(found.excess[k] - far.excess[k]));
        }
        return worst;
    }
}
