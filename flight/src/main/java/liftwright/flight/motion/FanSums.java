package liftwright.flight.motion;

import static liftwright.flight.motion.BodyState.WX;

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

    /** As many sums at a time as a machine keeps at hand, written out. */
    private void takeDrag(double[] flowKgps, int middle) {
        firstOfDrag(flowKgps, middle);
        restOfDrag(flowKgps, middle);
    }

    private void firstOfDrag(double[] flowKgps, int middle) {
        double[] rows = n.drag;
        double d0 = 0;
        double d1 = 0;
        double d2 = 0;
        double d3 = 0;
        double d4 = 0;
        double d5 = 0;
        double d6 = 0;
        double d7 = 0;
        double d8 = 0;
        double d9 = 0;
        double d10 = 0;
        int at = 0;
        for (int fan = 0; fan < n.fans; fan++) {
            double flow = flowKgps[middle + fan];
            d0 += flow * rows[at];
            d1 += flow * rows[at + 1];
            d2 += flow * rows[at + 2];
            d3 += flow * rows[at + 3];
            d4 += flow * rows[at + 4];
            d5 += flow * rows[at + 5];
            d6 += flow * rows[at + 6];
            d7 += flow * rows[at + 7];
            d8 += flow * rows[at + 8];
            d9 += flow * rows[at + 9];
            d10 += flow * rows[at + 10];
            at += FrameNumbers.DRAG;
        }
        drag[0] = d0;
        drag[1] = d1;
        drag[2] = d2;
        drag[3] = d3;
        drag[4] = d4;
        drag[5] = d5;
        drag[6] = d6;
        drag[7] = d7;
        drag[8] = d8;
        drag[9] = d9;
        drag[10] = d10;
    }

    private void restOfDrag(double[] flowKgps, int middle) {
        double[] rows = n.drag;
        double d11 = 0;
        double d12 = 0;
        double d13 = 0;
        double d14 = 0;
        double d15 = 0;
        double d16 = 0;
        double d17 = 0;
        double d18 = 0;
        double d19 = 0;
        double d20 = 0;
        int at = 0;
        for (int fan = 0; fan < n.fans; fan++) {
            double flow = flowKgps[middle + fan];
            d11 += flow * rows[at + 11];
            d12 += flow * rows[at + 12];
            d13 += flow * rows[at + 13];
            d14 += flow * rows[at + 14];
            d15 += flow * rows[at + 15];
            d16 += flow * rows[at + 16];
            d17 += flow * rows[at + 17];
            d18 += flow * rows[at + 18];
            d19 += flow * rows[at + 19];
            d20 += flow * rows[at + 20];
            at += FrameNumbers.DRAG;
        }
        drag[11] = d11;
        drag[12] = d12;
        drag[13] = d13;
        drag[14] = d14;
        drag[15] = d15;
        drag[16] = d16;
        drag[17] = d17;
        drag[18] = d18;
        drag[19] = d19;
        drag[20] = d20;
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
