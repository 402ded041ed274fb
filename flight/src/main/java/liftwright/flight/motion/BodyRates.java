package liftwright.flight.motion;

import static liftwright.flight.motion.BodyState.OWN;
import static liftwright.flight.motion.BodyState.PX;
import static liftwright.flight.motion.BodyState.QW;
import static liftwright.flight.motion.BodyState.VX;
import static liftwright.flight.motion.BodyState.WX;

import java.util.Arrays;
import liftwright.physics.Gravity;
import liftwright.physics.Rotation;

/**
 * The equations of motion: how a state changes under fans, air, feet, lines and the springs of
 * loose masses. Allocates nothing.
 *
 * <p>Newton and Euler for the frame, with the momentum H of the rotors: I dω/dt = N − ω × (I ω +
 * H); what changes H is part of the moments of {@link FanLoads}. Every loose mass obeys Newton in
 * the turning axes, and what its springs do to it they do to its carrier at the same place, so that
 * momentum, angular momentum and, without damping, energy are kept.
 */
final class BodyRates {

    private final FrameNumbers n;
    private final FanSums sums;
    private final Holds holds;
    private final Blown blown;

    /** Of the state asked last, body into scene, row by row. */
    private final double[] turn = new double[9];

    /** Scene axes, told before each state, m/s. */
    final double[] wind = new double[3];

    /** Force on the frame and moment about the origin, body axes. */
    private final double[] wrench = new double[6];

    /** Force on each loose mass, body axes. */
    private final double[] pulled = new double[3 * BodyState.MOST_LOOSE];

    /** All forces but gravity over mass at the origin, of the state asked last, body axes, m/s². */
    final double[] felt = new double[3];

    /**
     * @param sums what the fans do over a step
     * @param holds ground and lines, which remember where feet stand
     * @param blown what jets of others do
     */
    BodyRates(FrameNumbers n, FanSums sums, Holds holds, Blown blown) {
        this.n = n;
        this.sums = sums;
        this.holds = holds;
        this.blown = blown;
    }

    /**
     * How a state changes.
     *
     * @param moment of {@link FanLoads} at which the fans are asked
     * @param rate out: one a number of the state, over s
     */
    void rates(double[] y, int moment, double[] rate) {
        Rotation.matrix(y, QW, turn);
        Arrays.fill(pulled, 0);
        airForces(y, moment);
        if (blown.on) {
            for (int k = 0; k < 6; k++) {
                wrench[k] += blown.wrench[k];
            }
        }
        holds.add(y, turn, wrench, pulled);
        springs(y);
        accelerate(y, moment, rate);
        for (int k = 0; k < 3; k++) {
            rate[PX + k] = y[VX + k];
        }
        Rotation.rate(y, QW, y[WX], y[WX + 1], y[WX + 2], rate, QW);
    }

    /** Fans, momentum drag and drag of the body. */
    private void airForces(double[] y, int moment) {
        double x = y[VX] - wind[0];
        double yy = y[VX + 1] - wind[1];
        double z = y[VX + 2] - wind[2];
        double u = turn[0] * x + turn[3] * yy + turn[6] * z;
        double v = turn[1] * x + turn[4] * yy + turn[7] * z;
        double w = turn[2] * x + turn[5] * yy + turn[8] * z;
        sums.put(moment, u, v, w, y, wrench);
        double speed = Math.sqrt(u * u + v * v + w * w);
        double fx = -n.bodyDrag[0] * speed * u;
        double fy = -n.bodyDrag[1] * speed * v;
        double fz = -n.bodyDrag[2] * speed * w;
        push(wrench, fx, fy, fz, n.dragAt[0], n.dragAt[1], n.dragAt[2]);
    }

    /** Adds a force at a place to a force and moment about the origin. */
    static void push(
            double[] wrench, double fx, double fy, double fz, double x, double y, double z) {
        wrench[0] += fx;
        wrench[1] += fy;
        wrench[2] += fz;
        wrench[3] += y * fz - z * fy;
        wrench[4] += z * fx - x * fz;
        wrench[5] += x * fy - y * fx;
    }

    /** Springs of the loose masses, and what they do to their carriers. */
    private void springs(double[] y) {
        for (int k = n.loose - 1; k >= 0; k--) {
            int own = OWN + 6 * k;
            int on = n.looseOn[k];
            double fx = spring(y, k, 0);
            double fy = spring(y, k, 1);
            double fz = spring(y, k, 2) - n.looseUpN[k];
            pulled[3 * k] += fx;
            pulled[3 * k + 1] += fy;
            pulled[3 * k + 2] += fz;
            double x = n.looseAt[3 * k] + y[own];
            double yy = n.looseAt[3 * k + 1] + y[own + 1];
            double z = n.looseAt[3 * k + 2] + y[own + 2];
            if (on == Airframe.FRAME) {
                push(wrench, -fx, -fy, -fz, x, yy, z);
            } else {
                // The carrier takes the force, the frame, which turns for all, the moment.
                pulled[3 * on] -= fx;
                pulled[3 * on + 1] -= fy;
                pulled[3 * on + 2] -= fz;
                int at = OWN + 6 * on;
                turnOnly(
                        wrench,
                        -fx,
                        -fy,
                        -fz,
                        x - n.looseAt[3 * on] - y[at],
                        yy - n.looseAt[3 * on + 1] - y[at + 1],
                        z - n.looseAt[3 * on + 2] - y[at + 2]);
            }
        }
    }

    /** Adds the moment of a force alone. */
    static void turnOnly(
            double[] wrench, double fx, double fy, double fz, double x, double y, double z) {
        wrench[3] += y * fz - z * fy;
        wrench[4] += z * fx - x * fz;
        wrench[5] += x * fy - y * fx;
    }

    private double spring(double[] y, int mass, int axis) {
        int own = OWN + 6 * mass + axis;
        double stretch = y[own];
        double rate = y[own + 3];
        int on = n.looseOn[mass];
        if (on != Airframe.FRAME) {
            stretch -= y[OWN + 6 * on + axis];
            rate -= y[OWN + 6 * on + axis + 3];
        }
        return -n.looseK[3 * mass + axis] * stretch - n.looseC[3 * mass + axis] * rate;
    }

    private void accelerate(double[] y, int moment, double[] rate) {
        double p = y[WX];
        double q = y[WX + 1];
        double r = y[WX + 2];
        double cx = n.centre[0];
        double cy = n.centre[1];
        double cz = n.centre[2];
        double[] i = n.inertia;
        double[] j = n.inverse;
        double hx = i[0] * p + i[3] * q + i[4] * r + sums.spinX(moment);
        double hy = i[3] * p + i[1] * q + i[5] * r + sums.spinY(moment);
        double hz = i[4] * p + i[5] * q + i[2] * r + sums.spinZ(moment);
        double fx = wrench[0];
        double fy = wrench[1];
        double fz = wrench[2];
        double nx = wrench[3] - (cy * fz - cz * fy) - (q * hz - r * hy);
        double ny = wrench[4] - (cz * fx - cx * fz) - (r * hx - p * hz);
        double nz = wrench[5] - (cx * fy - cy * fx) - (p * hy - q * hx);
        double ax = j[0] * nx + j[3] * ny + j[4] * nz;
        double ay = j[3] * nx + j[1] * ny + j[5] * nz;
        double az = j[4] * nx + j[5] * ny + j[2] * nz;
        rate[WX] = ax;
        rate[WX + 1] = ay;
        rate[WX + 2] = az;
        // ω × (ω × c) = ω (ω·c) − c ω²
        double along = p * cx + q * cy + r * cz;
        double square = p * p + q * q + r * r;
        double sx = fx * n.perFrameKg - (ay * cz - az * cy) - (p * along - cx * square);
        double sy = fy * n.perFrameKg - (az * cx - ax * cz) - (q * along - cy * square);
        double sz = fz * n.perFrameKg - (ax * cy - ay * cx) - (r * along - cz * square);
        felt[0] = sx;
        felt[1] = sy;
        felt[2] = sz;
        rate[VX] = turn[0] * sx + turn[1] * sy + turn[2] * sz;
        rate[VX + 1] = turn[3] * sx + turn[4] * sy + turn[5] * sz;
        rate[VX + 2] = turn[6] * sx + turn[7] * sy + turn[8] * sz + Gravity.STANDARD_MPS2;
        for (int k = 0; k < n.loose; k++) {
            loose(y, k, ax, ay, az, rate);
        }
    }

    /** Newton for a loose mass in turning axes, gravity taken off on both sides. */
    private void loose(double[] y, int k, double ax, double ay, double az, double[] rate) {
        int own = OWN + 6 * k;
        double p = y[WX];
        double q = y[WX + 1];
        double r = y[WX + 2];
        double x = n.looseAt[3 * k] + y[own];
        double yy = n.looseAt[3 * k + 1] + y[own + 1];
        double z = n.looseAt[3 * k + 2] + y[own + 2];
        double u = y[own + 3];
        double v = y[own + 4];
        double w = y[own + 5];
        double along = p * x + q * yy + r * z;
        double square = p * p + q * q + r * r;
        double perKg = n.perLooseKg[k];
        rate[own] = u;
        rate[own + 1] = v;
        rate[own + 2] = w;
        rate[own + 3] =
                pulled[3 * k] * perKg
                        - felt[0]
                        - (ay * z - az * yy)
                        - (p * along - x * square)
                        - 2 * (q * w - r * v);
        rate[own + 4] =
                pulled[3 * k + 1] * perKg
                        - felt[1]
                        - (az * x - ax * z)
                        - (q * along - yy * square)
                        - 2 * (r * u - p * w);
        rate[own + 5] =
                pulled[3 * k + 2] * perKg
                        - felt[2]
                        - (ax * yy - ay * x)
                        - (r * along - z * square)
                        - 2 * (p * v - q * u);
    }
}
