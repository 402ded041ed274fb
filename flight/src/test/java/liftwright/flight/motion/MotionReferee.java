package liftwright.flight.motion;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import liftwright.rig.Vec3;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * The same body written again: every mass by Newton in scene axes, the frame by its angular
 * momentum about its own centre with a turning matrix of nine numbers, and a library's adaptive
 * integrator of eighth order. Nothing of the code that is judged is called.
 */
final class MotionReferee implements OrdinaryDifferentialEquation {

    /** What fans do in time: each returns its value at a time, s. */
    record FanInTime(
            DoubleUnaryOperator thrustN,
            DoubleUnaryOperator swirlNm,
            DoubleUnaryOperator spinNms,
            DoubleUnaryOperator spinRateNm,
            double flowKgps) {}

    private static final double G = 9.80665;

    private final Airframe body;
    private final List<FanInTime> fans;
    private final Vec3 wind;
    private final double frameKg;
    private final Vec3 centre;
    private final double[][] inverse;
    private final double[][] inertia;

    MotionReferee(Airframe body, List<FanInTime> fans, Vec3 wind) {
        this.body = body;
        this.fans = fans;
        this.wind = wind;
        double kg = body.massKg();
        Vec3 moment = Vec3.ZERO;
        var whole = body.inertia();
        for (Airframe.Loose each : body.loose()) {
            kg -= each.massKg();
            moment = moment.minus(each.at().times(each.massKg()));
            whole = Bodies.point(whole, -each.massKg(), each.at());
        }
        frameKg = kg;
        centre = moment.times(1 / kg);
        whole = Bodies.point(whole, -kg, centre);
        inertia =
                new double[][] {
                    {whole.xx(), whole.xy(), whole.xz()},
                    {whole.xy(), whole.yy(), whole.yz()},
                    {whole.xz(), whole.yz(), whole.zz()}
                };
        inverse = inverse(inertia);
    }

    private static double[][] inverse(double[][] m) {
        double[][] out = new double[3][3];
        double det = 0;
        for (int i = 0; i < 3; i++) {
            det +=
                    m[0][i]
                            * (m[1][(i + 1) % 3] * m[2][(i + 2) % 3]
                                    - m[1][(i + 2) % 3] * m[2][(i + 1) % 3]);
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                out[j][i] =
                        (m[(i + 1) % 3][(j + 1) % 3] * m[(i + 2) % 3][(j + 2) % 3]
                                        - m[(i + 1) % 3][(j + 2) % 3] * m[(i + 2) % 3][(j + 1) % 3])
                                / det;
            }
        }
        return out;
    }

    /** A turn, row by row. */
    private static Vec3 turned(double[] r, Vec3 v) {
        return new Vec3(
                r[0] * v.x() + r[1] * v.y() + r[2] * v.z(),
                r[3] * v.x() + r[4] * v.y() + r[5] * v.z(),
                r[6] * v.x() + r[7] * v.y() + r[8] * v.z());
    }

    private static Vec3 back(double[] r, Vec3 v) {
        return new Vec3(
                r[0] * v.x() + r[3] * v.y() + r[6] * v.z(),
                r[1] * v.x() + r[4] * v.y() + r[7] * v.z(),
                r[2] * v.x() + r[5] * v.y() + r[8] * v.z());
    }

    private static Vec3 times(double[][] m, Vec3 v) {
        return new Vec3(
                m[0][0] * v.x() + m[0][1] * v.y() + m[0][2] * v.z(),
                m[1][0] * v.x() + m[1][1] * v.y() + m[1][2] * v.z(),
                m[2][0] * v.x() + m[2][1] * v.y() + m[2][2] * v.z());
    }

    private static Vec3 each(Vec3 a, Vec3 b) {
        return new Vec3(a.x() * b.x(), a.y() * b.y(), a.z() * b.z());
    }

    private static Vec3 at(double[] y, int from) {
        return new Vec3(y[from], y[from + 1], y[from + 2]);
    }

    private static void put(Vec3 v, double[] y, int to) {
        y[to] = v.x();
        y[to + 1] = v.y();
        y[to + 2] = v.z();
    }

    private Vec3 spin(double t) {
        Vec3 sum = Vec3.ZERO;
        for (int k = 0; k < fans.size(); k++) {
            sum = sum.plus(body.fans().get(k).axis().times(fans.get(k).spinNms().applyAsDouble(t)));
        }
        return sum;
    }

    // Layout: centre of the frame 0, its speed 3, turn 6, angular momentum 15, then loose masses.
    private static final int LOOSE = 18;

    @Override
    public int getDimension() {
        return LOOSE + 6 * body.loose().size();
    }

    @Override
    public double[] computeDerivatives(double t, double[] y) {
        double[] out = new double[getDimension()];
        double[] r = java.util.Arrays.copyOfRange(y, 6, 15);
        Vec3 spin = spin(t);
        Vec3 rate = times(inverse, back(r, at(y, 15)).minus(spin));
        Vec3 omega = turned(r, rate);
        Vec3 c = at(y, 0);
        Vec3 origin = c.minus(turned(r, centre));
        Vec3 originV = at(y, 3).minus(omega.cross(turned(r, centre)));
        Vec3 force = new Vec3(0, 0, frameKg * G);
        Vec3 moment = Vec3.ZERO;
        for (int k = 0; k < fans.size(); k++) {
            Airframe.FanLine line = body.fans().get(k);
            Vec3 axis = turned(r, line.axis());
            Vec3 push = axis.times(fans.get(k).thrustN().applyAsDouble(t));
            Vec3 arm = origin.plus(turned(r, line.at())).minus(c);
            force = force.plus(push);
            moment =
                    moment.plus(arm.cross(push))
                            .plus(axis.times(fans.get(k).swirlNm().applyAsDouble(t)));
            Vec3 intake = turned(r, line.intake());
            Vec3 through = originV.plus(omega.cross(intake)).minus(wind);
            Vec3 cross = through.minus(axis.times(dot(axis, through)));
            Vec3 drag = cross.times(-fans.get(k).flowKgps());
            force = force.plus(drag);
            moment = moment.plus(origin.plus(intake).minus(c).cross(drag));
        }
        Vec3 through = back(r, originV.minus(wind));
        Vec3 drag =
                turned(
                        r,
                        each(body.drag().areaM2(), through)
                                .times(-body.densityKgpm3() / 2 * through.length()));
        force = force.plus(drag);
        moment = moment.plus(origin.plus(turned(r, body.drag().at())).minus(c).cross(drag));
        for (Airframe.Line line : body.lines()) {
            Vec3 ring = origin.plus(turned(r, line.ring()));
            Vec3 ringV = originV.plus(omega.cross(turned(r, line.ring())));
            Vec3 way = line.anchor().minus(ring);
            double apart = way.length();
            double stretch = apart - line.lengthM();
            if (stretch > 0) {
                double rateMps = -dot(way, ringV) / apart;
                double pull =
                        Math.max(0, line.stiffnessNpm() * stretch + line.dampingNspm() * rateMps);
                Vec3 pulled = way.times(pull / apart);
                force = force.plus(pulled);
                moment = moment.plus(ring.minus(c).cross(pulled));
            }
        }
        int count = body.loose().size();
        Vec3[] on = new Vec3[count];
        Vec3[] s = new Vec3[count];
        Vec3[] v = new Vec3[count];
        double[] upN = new double[count];
        for (int k = 0; k < count; k++) {
            Airframe.Loose mass = body.loose().get(k);
            int from = LOOSE + 6 * k;
            on[k] = new Vec3(0, 0, mass.massKg() * G);
            Vec3 reach = at(y, from).minus(origin);
            s[k] = back(r, reach).minus(mass.at());
            v[k] = back(r, at(y, from + 3).minus(originV).minus(omega.cross(reach)));
            for (int j = 0; j < count; j++) {
                if (j == k || body.loose().get(j).on() == k) {
                    upN[k] += body.loose().get(j).massKg() * G;
                }
            }
        }
        for (int k = 0; k < count; k++) {
            Airframe.Loose mass = body.loose().get(k);
            Vec3 stretch = mass.on() < 0 ? s[k] : s[k].minus(s[mass.on()]);
            Vec3 speed = mass.on() < 0 ? v[k] : v[k].minus(v[mass.on()]);
            Vec3 own =
                    each(mass.stiffnessNpm(), stretch)
                            .plus(each(mass.dampingNspm(), speed))
                            .times(-1)
                            .minus(new Vec3(0, 0, upN[k]));
            Vec3 pulled = turned(r, own);
            Vec3 place = at(y, LOOSE + 6 * k);
            on[k] = on[k].plus(pulled);
            if (mass.on() < 0) {
                force = force.minus(pulled);
                moment = moment.minus(place.minus(c).cross(pulled));
            } else {
                on[mass.on()] = on[mass.on()].minus(pulled);
                moment = moment.minus(place.minus(at(y, LOOSE + 6 * mass.on())).cross(pulled));
            }
        }
        put(at(y, 3), out, 0);
        put(force.times(1 / frameKg), out, 3);
        for (int column = 0; column < 3; column++) {
            Vec3 axis = new Vec3(r[column], r[3 + column], r[6 + column]);
            Vec3 moved = omega.cross(axis);
            out[6 + column] = moved.x();
            out[9 + column] = moved.y();
            out[12 + column] = moved.z();
        }
        put(moment, out, 15);
        for (int k = 0; k < count; k++) {
            put(at(y, LOOSE + 6 * k + 3), out, LOOSE + 6 * k);
            put(on[k].times(1 / body.loose().get(k).massKg()), out, LOOSE + 6 * k + 3);
        }
        return out;
    }

    static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    /** The state after a time, laid out as that of the code that is judged. */
    double[] run(double[] from, double untilS) {
        double[] y = new double[getDimension()];
        double[] r = matrix(from);
        Vec3 rate = at(from, BodyState.WX);
        Vec3 omega = turned(r, rate);
        Vec3 origin = at(from, BodyState.PX);
        Vec3 originV = at(from, BodyState.VX);
        put(origin.plus(turned(r, centre)), y, 0);
        put(originV.plus(omega.cross(turned(r, centre))), y, 3);
        System.arraycopy(r, 0, y, 6, 9);
        put(turned(r, times(inertia, rate).plus(spin(0))), y, 15);
        for (int k = 0; k < body.loose().size(); k++) {
            Vec3 reach = turned(r, body.loose().get(k).at().plus(at(from, BodyState.OWN + 6 * k)));
            put(origin.plus(reach), y, LOOSE + 6 * k);
            Vec3 own = turned(r, at(from, BodyState.OWN + 6 * k + 3));
            put(originV.plus(omega.cross(reach)).plus(own), y, LOOSE + 6 * k + 3);
        }
        var integrator = new DormandPrince853Integrator(1e-9, 0.02, 1e-12, 1e-12);
        return laid(
                integrator.integrate(this, new ODEState(0, y), untilS).getPrimaryState(), untilS);
    }

    private double[] laid(double[] y, double t) {
        double[] out = new double[BodyState.SIZE];
        double[] r = java.util.Arrays.copyOfRange(y, 6, 15);
        Vec3 rate = times(inverse, back(r, at(y, 15)).minus(spin(t)));
        Vec3 omega = turned(r, rate);
        Vec3 origin = at(y, 0).minus(turned(r, centre));
        Vec3 originV = at(y, 3).minus(omega.cross(turned(r, centre)));
        put(origin, out, BodyState.PX);
        put(originV, out, BodyState.VX);
        put(rate, out, BodyState.WX);
        double w = Math.sqrt(Math.max(0, 1 + r[0] + r[4] + r[8])) / 2;
        double x = Math.sqrt(Math.max(0, 1 + r[0] - r[4] - r[8])) / 2;
        double yy = Math.sqrt(Math.max(0, 1 - r[0] + r[4] - r[8])) / 2;
        double z = Math.sqrt(Math.max(0, 1 - r[0] - r[4] + r[8])) / 2;
        out[BodyState.QW] = w;
        out[BodyState.QX] = Math.copySign(x, r[7] - r[5]);
        out[BodyState.QY] = Math.copySign(yy, r[2] - r[6]);
        out[BodyState.QZ] = Math.copySign(z, r[3] - r[1]);
        for (int k = 0; k < body.loose().size(); k++) {
            Vec3 reach = at(y, LOOSE + 6 * k).minus(origin);
            put(back(r, reach).minus(body.loose().get(k).at()), out, BodyState.OWN + 6 * k);
            put(
                    back(r, at(y, LOOSE + 6 * k + 3).minus(originV).minus(omega.cross(reach))),
                    out,
                    BodyState.OWN + 6 * k + 3);
        }
        return out;
    }

    private static double[] matrix(double[] s) {
        double w = s[BodyState.QW];
        double x = s[BodyState.QX];
        double y = s[BodyState.QY];
        double z = s[BodyState.QZ];
        return new double[] {
            w * w + x * x - y * y - z * z,
            2 * (x * y - w * z),
            2 * (x * z + w * y),
            2 * (x * y + w * z),
            w * w - x * x + y * y - z * z,
            2 * (y * z - w * x),
            2 * (x * z - w * y),
            2 * (y * z + w * x),
            w * w - x * x - y * y + z * z
        };
    }

    /**
     * Greatest difference of two states over 1 plus the value, the sign of the quaternion left out.
     */
    static double apart(double[] a, double[] b) {
        double sign = 0;
        for (int k = 0; k < 4; k++) {
            sign += a[BodyState.QW + k] * b[BodyState.QW + k];
        }
        double most = 0;
        for (int k = 0; k < BodyState.SIZE; k++) {
            boolean turn = k >= BodyState.QW && k < BodyState.QW + 4;
            double other = turn && sign < 0 ? -b[k] : b[k];
            most = Math.max(most, Math.abs(a[k] - other) / (1 + Math.abs(other)));
        }
        return most;
    }
}
