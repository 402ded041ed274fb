package liftwright.flight.motion;

import static liftwright.flight.motion.BodyState.PX;

import java.util.Arrays;
import liftwright.physics.Rotation;

/**
 * What jets of others do to a body over a step, as they are at its start: the air at every fan, and
 * the push on the body beyond that of the wind. The body is the box whose sides have its areas of
 * drag; each of its cells has its share of the drag along every axis, by the air at that cell.
 */
final class Blown {

    /** Cells of the box forward, right and down. */
    private static final int LONG = 10;

    private static final int WIDE = 10;
    private static final int HIGH = 3;

    private final FrameNumbers n;
    private final double[] turn = new double[9];
    private final double[] ball = new double[3];
    private final double[] there = new double[3];
    private final double[] cellAt;
    private final double radiusM;

    /** Whether any jet reaches it. */
    boolean on;

    /** Air of jets at each fan's intake, body axes, m/s. */
    final double[] fanMps;

    /** Force on the body and moment about the origin, body axes. */
    final double[] wrench = new double[6];

    Blown(FrameNumbers n) {
        this.n = n;
        fanMps = new double[3 * n.fans];
        cellAt = cells(n);
        double far = 0;
        for (int k = 0; k < cellAt.length; k += 3) {
            far = Math.max(far, length(cellAt[k], cellAt[k + 1], cellAt[k + 2]));
        }
        for (int fan = 0; fan < n.fans; fan++) {
            int at = FrameNumbers.PUSH * fan + 9;
            far = Math.max(far, length(n.push[at], n.push[at + 1], n.push[at + 2]));
        }
        radiusM = far;
    }

    private static double length(double x, double y, double z) {
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** Sides of a box from its areas: √(A_y A_z/A_x) and so on. */
    private static double[] cells(FrameNumbers n) {
        double[] half = new double[3];
        for (int k = 0; k < 3; k++) {
            double own = n.bodyDrag[k];
            double two = n.bodyDrag[(k + 1) % 3] * n.bodyDrag[(k + 2) % 3];
            half[k] = own > 0 && n.halfDensity > 0 ? Math.sqrt(two / own / n.halfDensity) / 2 : 0;
        }
        double[] at = new double[3 * LONG * WIDE * HIGH];
        for (int k = 0; k < at.length / 3; k++) {
            at[3 * k] = n.dragAt[0] + half[0] * ((2 * (k % LONG) + 1.0) / LONG - 1);
            at[3 * k + 1] = n.dragAt[1] + half[1] * ((2 * (k / LONG % WIDE) + 1.0) / WIDE - 1);
            at[3 * k + 2] = n.dragAt[2] + half[2] * ((2 * (k / LONG / WIDE) + 1.0) / HIGH - 1);
        }
        return at;
    }

    /** Adds a jet to others where it blows at this body. */
    void meet(JetAir jets, BodyState state, double[] at, double[] way, double areaM2, double mps) {
        System.arraycopy(state.y, PX, ball, 0, 3);
        jets.add(at, way, areaM2, mps, ball, radiusM);
    }

    /**
     * Takes the jets of a step.
     *
     * @param wind all the other air, scene axes, m/s
     */
    void take(JetAir jets, BodyState state, double[] wind) {
        on = !jets.isEmpty();
        if (!on) {
            return;
        }
        double[] y = state.y;
        Rotation.matrix(y, BodyState.QW, turn);
        Arrays.fill(wrench, 0);
        for (int fan = 0; fan < n.fans; fan++) {
            int at = FrameNumbers.PUSH * fan + 9;
            air(jets, y, n.push[at], n.push[at + 1], n.push[at + 2]);
            System.arraycopy(there, 0, fanMps, 3 * fan, 3);
        }
        double x = y[BodyState.VX] - wind[0];
        double yy = y[BodyState.VX + 1] - wind[1];
        double z = y[BodyState.VX + 2] - wind[2];
        double u = turn[0] * x + turn[3] * yy + turn[6] * z;
        double v = turn[1] * x + turn[4] * yy + turn[7] * z;
        double w = turn[2] * x + turn[5] * yy + turn[8] * z;
        for (int k = 0; k < cellAt.length; k += 3) {
            cell(jets, y, k, u, v, w);
        }
    }

    /** What the body's drag at a cell is more than without jets. */
    private void cell(JetAir jets, double[] y, int k, double u, double v, double w) {
        air(jets, y, cellAt[k], cellAt[k + 1], cellAt[k + 2]);
        if (there[0] == 0 && there[1] == 0 && there[2] == 0) {
            return;
        }
        double p = u - there[0];
        double q = v - there[1];
        double r = w - there[2];
        double with = length(p, q, r);
        double without = length(u, v, w);
        double part = 3.0 / cellAt.length;
        BodyRates.push(
                wrench,
                -n.bodyDrag[0] * part * (with * p - without * u),
                -n.bodyDrag[1] * part * (with * q - without * v),
                -n.bodyDrag[2] * part * (with * r - without * w),
                cellAt[k],
                cellAt[k + 1],
                cellAt[k + 2]);
    }

    /** Air of jets at a place of the body, both in body axes. */
    private void air(JetAir jets, double[] y, double x, double yy, double z) {
        jets.at(
                y[PX] + turn[0] * x + turn[1] * yy + turn[2] * z,
                y[PX + 1] + turn[3] * x + turn[4] * yy + turn[5] * z,
                y[PX + 2] + turn[6] * x + turn[7] * yy + turn[8] * z,
                there);
        double a = there[0];
        double b = there[1];
        double c = there[2];
        there[0] = turn[0] * a + turn[3] * b + turn[6] * c;
        there[1] = turn[1] * a + turn[4] * b + turn[7] * c;
        there[2] = turn[2] * a + turn[5] * b + turn[8] * c;
    }

    /** Adds the momentum of jets that fans turn into their own: the part of it across each. */
    void swallow(FanLoads loads) {
        for (int fan = 0; fan < n.fans; fan++) {
            double a = fanMps[3 * fan];
            double b = fanMps[3 * fan + 1];
            double c = fanMps[3 * fan + 2];
            int at = FrameNumbers.PUSH * fan;
            double along = a * n.push[at] + b * n.push[at + 1] + c * n.push[at + 2];
            double flow = loads.flowKgps[loads.middleFlow() + fan];
            BodyRates.push(
                    wrench,
                    flow * (a - along * n.push[at]),
                    flow * (b - along * n.push[at + 1]),
                    flow * (c - along * n.push[at + 2]),
                    n.push[at + 9],
                    n.push[at + 10],
                    n.push[at + 11]);
        }
    }

    /** Size of the push, N. */
    double forceN() {
        return on ? length(wrench[0], wrench[1], wrench[2]) : 0;
    }
}
