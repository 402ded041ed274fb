package liftwright.flight.motion;

import static liftwright.flight.motion.BodyState.OWN;
import static liftwright.flight.motion.BodyState.PX;
import static liftwright.flight.motion.BodyState.QW;
import static liftwright.flight.motion.BodyState.VX;
import static liftwright.flight.motion.BodyState.WX;

import java.util.Arrays;
import liftwright.physics.Contact;
import liftwright.physics.Rotation;
import liftwright.physics.Tether;

/**
 * Ground under the feet and lines. A foot that stands is held by a spring to the spot where it
 * stands, which moves along when friction holds no more; a foot in the air takes its spot with it.
 * Places of feet are those along the plane of the ground and into it; on level ground they are
 * those of the scene.
 */
final class Holds {

    /** No loose mass moves farther than this while feet are in the air, m. */
    private static final double LOOSE_M = 1;

    private final FrameNumbers n;
    private final double[] first = new double[9];
    private boolean high;

    /** Where each foot stands on the plane of the ground, m. */
    private final double[] spot;

    final double[] footN;
    final double[] lineN;

    // A point of the rig as it was placed last: scene place and speed, body place.
    private double px;
    private double py;
    private double pz;
    private double ux;
    private double uy;
    private double uz;
    private double bx;
    private double by;
    private double bz;

    // Sideways push that a foot asks for.
    private double sideX;
    private double sideY;
    private double share;

    Holds(FrameNumbers n) {
        this.n = n;
        spot = new double[2 * n.feet];
        footN = new double[n.feet];
        lineN = new double[n.lines];
    }

    /** Every foot stands where it is. */
    void begin(double[] y) {
        Rotation.matrix(y, QW, first);
        for (int foot = 0; foot < n.feet; foot++) {
            foot(foot, y, first);
            spot[2 * foot] = px;
            spot[2 * foot + 1] = py;
            footN[foot] = press(foot);
        }
    }

    /** Adds what ground and lines do. */
    void add(double[] y, double[] turn, double[] wrench, double[] pulled) {
        high = isHigh(y);
        for (int foot = 0; foot < n.feet && !high; foot++) {
            foot(foot, y, turn);
            double normal = press(foot);
            footN[foot] = normal;
            if (normal > 0) {
                double x = share * sideX;
                double yy = share * sideY;
                double z = -normal;
                if (n.sloped) {
                    double[] g = n.plane;
                    double down = x;
                    double along = yy;
                    x = g[0] * down + g[3] * along - g[6] * normal;
                    yy = g[1] * down + g[4] * along - g[7] * normal;
                    z = g[2] * down - g[8] * normal;
                }
                double fx = turn[0] * x + turn[3] * yy + turn[6] * z;
                double fy = turn[1] * x + turn[4] * yy + turn[7] * z;
                double fz = turn[2] * x + turn[5] * yy + turn[8] * z;
                push(n.footOn[foot], fx, fy, fz, y, wrench, pulled);
            }
        }
        for (int line = 0; line < n.lines; line++) {
            pull(line, y, turn, wrench);
        }
    }

    /** Whether no foot can reach the ground, however the rig is turned. */
    private boolean isHigh(double[] y) {
        double[] g = n.plane;
        double into = n.sloped ? g[6] * y[PX] + g[7] * y[PX + 1] + g[8] * y[PX + 2] : y[PX + 2];
        return -into > n.footReachM + LOOSE_M;
    }

    /** After a step: spots of feet that slid or are in the air move along. */
    void settle(double[] y, double[] turn) {
        if (high && isHigh(y)) {
            // Spots are set anew before a foot can come down again.
            Arrays.fill(footN, 0);
            return;
        }
        for (int foot = 0; foot < n.feet; foot++) {
            foot(foot, y, turn);
            footN[foot] = press(foot);
            if (footN[foot] <= 0) {
                spot[2 * foot] = px;
                spot[2 * foot + 1] = py;
            } else if (share < 1) {
                spot[2 * foot] = px + share * sideX / n.ground.sideNpm();
                spot[2 * foot + 1] = py + share * sideY / n.ground.sideNpm();
            }
        }
    }

    private double press(int foot) {
        Airframe.Ground ground = n.ground;
        double normal = Contact.normalN(pz, uz, ground.stiffnessNpm(), ground.dampingSpm());
        if (normal > 0) {
            sideX = -ground.sideNpm() * (px - spot[2 * foot]) - ground.sideNspm() * ux;
            sideY = -ground.sideNpm() * (py - spot[2 * foot + 1]) - ground.sideNspm() * uy;
            double wanted = Math.sqrt(sideX * sideX + sideY * sideY);
            share = Contact.heldShare(wanted, normal, ground.friction());
        }
        return normal;
    }

    private void foot(int foot, double[] y, double[] turn) {
        int on = n.footOn[foot];
        double x = n.footAt[3 * foot];
        double yy = n.footAt[3 * foot + 1];
        double z = n.footAt[3 * foot + 2];
        if (on == Airframe.FRAME) {
            point(x, yy, z, 0, 0, 0, y, turn);
        } else {
            int at = OWN + 6 * on;
            point(
                    x + y[at],
                    yy + y[at + 1],
                    z + y[at + 2],
                    y[at + 3],
                    y[at + 4],
                    y[at + 5],
                    y,
                    turn);
        }
        if (n.sloped) {
            onPlane();
        }
    }

    /** Place and speed from scene axes to those of the ground. */
    private void onPlane() {
        double[] g = n.plane;
        double x = px;
        double yy = py;
        double u = ux;
        double v = uy;
        px = g[0] * x + g[1] * yy + g[2] * pz;
        py = g[3] * x + g[4] * yy;
        pz = g[6] * x + g[7] * yy + g[8] * pz;
        ux = g[0] * u + g[1] * v + g[2] * uz;
        uy = g[3] * u + g[4] * v;
        uz = g[6] * u + g[7] * v + g[8] * uz;
    }

    private void point(
            double x, double yy, double z, double u, double v, double w, double[] y, double[] t) {
        bx = x;
        by = yy;
        bz = z;
        double a = u + y[WX + 1] * z - y[WX + 2] * yy;
        double b = v + y[WX + 2] * x - y[WX] * z;
        double c = w + y[WX] * yy - y[WX + 1] * x;
        px = y[PX] + t[0] * x + t[1] * yy + t[2] * z;
        py = y[PX + 1] + t[3] * x + t[4] * yy + t[5] * z;
        pz = y[PX + 2] + t[6] * x + t[7] * yy + t[8] * z;
        ux = y[VX] + t[0] * a + t[1] * b + t[2] * c;
        uy = y[VX + 1] + t[3] * a + t[4] * b + t[5] * c;
        uz = y[VX + 2] + t[6] * a + t[7] * b + t[8] * c;
    }

    private void push(
            int on, double fx, double fy, double fz, double[] y, double[] wrench, double[] pulled) {
        if (on == Airframe.FRAME) {
            BodyRates.push(wrench, fx, fy, fz, bx, by, bz);
            return;
        }
        pulled[3 * on] += fx;
        pulled[3 * on + 1] += fy;
        pulled[3 * on + 2] += fz;
        int at = OWN + 6 * on;
        BodyRates.turnOnly(
                wrench,
                fx,
                fy,
                fz,
                bx - n.looseAt[3 * on] - y[at],
                by - n.looseAt[3 * on + 1] - y[at + 1],
                bz - n.looseAt[3 * on + 2] - y[at + 2]);
    }

    /** Whether a line cannot pull, however the rig is turned: most are slack most of the time. */
    private boolean isSlack(int line, double[] y) {
        double x = n.anchor[3 * line] - y[PX];
        double yy = n.anchor[3 * line + 1] - y[PX + 1];
        double z = n.anchor[3 * line + 2] - y[PX + 2];
        return x * x + yy * yy + z * z < n.lineSlackM2[line];
    }

    private void pull(int line, double[] y, double[] turn, double[] wrench) {
        int at = 3 * line;
        lineN[line] = 0;
        if (isSlack(line, y)) {
            return;
        }
        point(n.ring[at], n.ring[at + 1], n.ring[at + 2], 0, 0, 0, y, turn);
        double x = n.anchor[at] - px;
        double yy = n.anchor[at + 1] - py;
        double z = n.anchor[at + 2] - pz;
        double apart = Math.sqrt(x * x + yy * yy + z * z);
        double stretch = apart - n.lineM[line];
        if (stretch > 0) {
            double rate = -(x * ux + yy * uy + z * uz) / apart;
            double pull = Tether.pullN(stretch, rate, n.lineK[line], n.lineC[line]);
            lineN[line] = pull;
            double s = pull / apart;
            double fx = s * (turn[0] * x + turn[3] * yy + turn[6] * z);
            double fy = s * (turn[1] * x + turn[4] * yy + turn[7] * z);
            double fz = s * (turn[2] * x + turn[5] * yy + turn[8] * z);
            BodyRates.push(wrench, fx, fy, fz, bx, by, bz);
        }
    }
}
