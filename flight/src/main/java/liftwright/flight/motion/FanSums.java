package liftwright.flight.motion;

import static liftwright.flight.motion.BodyState.WX;

import java.util.Arrays;

/**
 * What all fans do together: force, moment and angular momentum at the three moments of a step, and
 * the matrix of their momentum drag, ṁ of the middle. The drag itself goes by the speed of the
 * stage that asks.
 */
final class FanSums {

    private static final int TERMS = 9;

    private final FrameNumbers n;

    /** For each moment: force, moment about the origin, angular momentum. */
    private final double[] sum = new double[TERMS * FanLoads.MOMENTS];

    private final double[] drag = new double[FrameNumbers.DRAG];

    /** Moment of the rotors about their axes, at the moment added last. */
    private final double[] own = new double[3];

    FanSums(FrameNumbers n) {
        this.n = n;
    }

    void take(FanLoads loads) {
        if (loads.fans != n.fans) {
            throw new IllegalArgumentException("loads of another number of fans");
        }
        for (int moment = 0; moment < FanLoads.MOMENTS; moment++) {
            push(loads, moment);
            if (moment > 0 && loads.even) {
                turnAsBefore(moment);
            } else {
                turn(loads, moment);
            }
        }
        takeDrag(loads.flowKgps, loads.middleFlow());
    }

    private void takeDrag(double[] flowKgps, int middle) {
        double[] to = drag;
        double[] rows = n.drag;
        Arrays.fill(to, 0);
        for (int fan = 0; fan < n.fans; fan++) {
            double flow = flowKgps[middle + fan];
            int at = FrameNumbers.DRAG * fan;
            for (int k = 0; k < FrameNumbers.DRAG; k++) {
                to[k] += flow * rows[at + k];
            }
        }
    }

    /** Force and moment of the thrusts, written out: many fans are most of the time of a step. */
    private void push(FanLoads loads, int moment) {
        double[] rows = n.push;
        double[] thrustN = loads.thrustN;
        double fx = 0;
        double fy = 0;
        double fz = 0;
        double nx = 0;
        double ny = 0;
        double nz = 0;
        int at = 0;
        int end = (moment + 1) * n.fans;
        for (int from = moment * n.fans; from < end; from++) {
            double thrust = thrustN[from];
            fx += thrust * rows[at + 3];
            fy += thrust * rows[at + 4];
            fz += thrust * rows[at + 5];
            nx += thrust * rows[at + 6];
            ny += thrust * rows[at + 7];
            nz += thrust * rows[at + 8];
            at += FrameNumbers.PUSH;
        }
        int to = TERMS * moment;
        sum[to] = fx;
        sum[to + 1] = fy;
        sum[to + 2] = fz;
        sum[to + 3] = nx;
        sum[to + 4] = ny;
        sum[to + 5] = nz;
    }

    /** What the rotors do about their axes. */
    private void turn(FanLoads loads, int moment) {
        double[] rows = n.push;
        double[] reactionNm = loads.reactionNm;
        double[] spinNms = loads.spinNms;
        double nx = 0;
        double ny = 0;
        double nz = 0;
        double hx = 0;
        double hy = 0;
        double hz = 0;
        int at = 0;
        int end = (moment + 1) * n.fans;
        for (int from = moment * n.fans; from < end; from++) {
            double reaction = reactionNm[from];
            double spin = spinNms[from];
            double x = rows[at];
            double y = rows[at + 1];
            double z = rows[at + 2];
            nx += reaction * x;
            ny += reaction * y;
            nz += reaction * z;
            hx += spin * x;
            hy += spin * y;
            hz += spin * z;
            at += FrameNumbers.PUSH;
        }
        int to = TERMS * moment;
        own[0] = nx;
        own[1] = ny;
        own[2] = nz;
        sum[to + 6] = hx;
        sum[to + 7] = hy;
        sum[to + 8] = hz;
        addOwn(to);
    }

    /** The same as at the start of the step. */
    private void turnAsBefore(int moment) {
        int to = TERMS * moment;
        System.arraycopy(sum, 6, sum, to + 6, 3);
        addOwn(to);
    }

    private void addOwn(int to) {
        sum[to + 3] += own[0];
        sum[to + 4] += own[1];
        sum[to + 5] += own[2];
    }

    /** Force of all fans together, N, at the end of the step taken last. */
    double forceN() {
        int at = TERMS * FanLoads.END;
        return Math.sqrt(sum[at] * sum[at] + sum[at + 1] * sum[at + 1] + sum[at + 2] * sum[at + 2]);
    }

    double spinX(int moment) {
        return sum[TERMS * moment + 6];
    }

    double spinY(int moment) {
        return sum[TERMS * moment + 7];
    }

    double spinZ(int moment) {
        return sum[TERMS * moment + 8];
    }

    /**
     * Sets force and moment to what all fans do.
     *
     * @param u speed of the origin through the air, body axes, m/s
     * @param y the state, for its rate of turn
     */
    void put(int moment, double u, double v, double w, double[] y, double[] wrench) {
        double p = y[WX];
        double q = y[WX + 1];
        double r = y[WX + 2];
        int at = TERMS * moment;
        double[] d = drag;
        wrench[0] = sum[at] - (d[0] * u + d[1] * v + d[2] * w + d[3] * p + d[4] * q + d[5] * r);
        wrench[1] =
                sum[at + 1] - (d[1] * u + d[6] * v + d[7] * w + d[8] * p + d[9] * q + d[10] * r);
        wrench[2] =
                sum[at + 2] - (d[2] * u + d[7] * v + d[11] * w + d[12] * p + d[13] * q + d[14] * r);
        wrench[3] =
                sum[at + 3] - (d[3] * u + d[8] * v + d[12] * w + d[15] * p + d[16] * q + d[17] * r);
        wrench[4] =
                sum[at + 4] - (d[4] * u + d[9] * v + d[13] * w + d[16] * p + d[18] * q + d[19] * r);
        wrench[5] =
                sum[at + 5]
                        - (d[5] * u + d[10] * v + d[14] * w + d[17] * p + d[19] * q + d[20] * r);
    }

    /** Speed through the air along and across every fan. */
    void inflow(double u, double v, double w, double[] y, double[] alongMps, double[] acrossMps) {
        double p = y[WX];
        double q = y[WX + 1];
        double r = y[WX + 2];
        double[] ax = n.axis[0];
        double[] ay = n.axis[1];
        double[] az = n.axis[2];
        double[] ix = n.intake[0];
        double[] iy = n.intake[1];
        double[] iz = n.intake[2];
        for (int fan = 0; fan < ax.length; fan++) {
            double a = u + q * iz[fan] - r * iy[fan];
            double b = v + r * ix[fan] - p * iz[fan];
            double c = w + p * iy[fan] - q * ix[fan];
            alongMps[fan] = a * ax[fan] + b * ay[fan] + c * az[fan];
            acrossMps[fan] = a * a + b * b + c * c;
        }
        for (int fan = 0; fan < ax.length; fan++) {
            double square = acrossMps[fan] - alongMps[fan] * alongMps[fan];
            acrossMps[fan] = Math.sqrt(Math.max(0, square));
        }
    }

    /**
     * The same where fans stand in air of their own besides.
     *
     * @param airMps that air at every fan, body axes, m/s
     */
    void inflow(
            double u,
            double v,
            double w,
            double[] y,
            double[] airMps,
            double[] alongMps,
            double[] acrossMps) {
        double p = y[WX];
        double q = y[WX + 1];
        double r = y[WX + 2];
        for (int fan = 0; fan < n.fans; fan++) {
            int at = FrameNumbers.PUSH * fan;
            double x = n.push[at + 9];
            double yy = n.push[at + 10];
            double z = n.push[at + 11];
            double a = u + q * z - r * yy - airMps[3 * fan];
            double b = v + r * x - p * z - airMps[3 * fan + 1];
            double c = w + p * yy - q * x - airMps[3 * fan + 2];
            double along = a * n.push[at] + b * n.push[at + 1] + c * n.push[at + 2];
            alongMps[fan] = along;
            acrossMps[fan] = Math.sqrt(Math.max(0, a * a + b * b + c * c - along * along));
        }
    }
}
