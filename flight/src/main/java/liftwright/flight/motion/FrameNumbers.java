package liftwright.flight.motion;

import java.util.List;
import liftwright.physics.Gravity;
import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;

/**
 * An {@link Airframe} laid into arrays for the loop. What is left when the loose masses are taken
 * out is one rigid body with a centre and an inertia of its own.
 */
final class FrameNumbers {

    /** Terms of the symmetric 6 × 6 matrix of momentum drag, upper triangle row by row. */
    static final int DRAG = 21;

    /** Terms of one fan in {@link #push}. */
    static final int PUSH = 12;

    final int fans;

    /** For each fan: axis, force of 1 N of thrust, its moment about the origin, intake. */
    final double[] push;

    /** Of the same, x, y and z of all axes, and of all intakes, for loops over all fans. */
    final double[][] axis;

    final double[][] intake;

    /** For each fan the matrix of its momentum drag for 1 kg/s. */
    final double[] drag;

    final int loose;

    /** One over the mass of each, 1/kg. */
    final double[] perLooseKg;

    final double[] looseAt;
    final double[] looseK;
    final double[] looseC;

    /** Weight that each carries up, its own and that of those on it, N. */
    final double[] looseUpN;

    final int[] looseOn;

    final int feet;
    final double[] footAt;
    final int[] footOn;

    /** No foot is farther than this from the origin, loose masses at rest, m. */
    final double footReachM;

    final Airframe.Ground ground;

    /** Whether the ground is not level. */
    final boolean sloped;

    /** Rows: down the slope, along it, into the ground; scene axes. */
    final double[] plane;

    final int lines;
    final double[] anchor;
    final double[] ring;
    final double[] lineM;

    /** A line whose anchor is no farther from the origin than this is slack, m²; 0 where any is. */
    final double[] lineSlackM2;

    final double[] lineK;
    final double[] lineC;

    /** ½ ρ A along each axis, kg/m. */
    final double[] bodyDrag;

    final double[] dragAt;

    /** ½ ρ, kg/m³. */
    final double halfDensity;

    /** One over the mass of the rigid frame alone, 1/kg. */
    final double perFrameKg;

    /** Of the whole, N. */
    final double weightN;

    final double[] centre = new double[3];
    final double[] inertia;
    final double[] inverse;

    FrameNumbers(Airframe airframe) {
        fans = airframe.fans().size();
        push = new double[PUSH * fans];
        axis = new double[3][fans];
        intake = new double[3][fans];
        drag = new double[DRAG * fans];
        for (int fan = 0; fan < fans; fan++) {
            fan(airframe.fans().get(fan), fan);
        }
        List<Airframe.Loose> masses = airframe.loose();
        loose = masses.size();
        perLooseKg = new double[loose];
        looseAt = new double[3 * loose];
        looseK = new double[3 * loose];
        looseC = new double[3 * loose];
        looseUpN = new double[loose];
        looseOn = new int[loose];
        weightN = airframe.massKg() * Gravity.STANDARD_MPS2;
        double kg = airframe.massKg();
        Vec3 moment = Vec3.ZERO;
        Inertia own = airframe.inertia();
        for (int k = 0; k < loose; k++) {
            Airframe.Loose each = masses.get(k);
            if (each.on() >= k || each.on() < Airframe.FRAME || !(each.massKg() > 0)) {
                throw new IllegalArgumentException(each.name() + " hangs on nothing before it");
            }
            perLooseKg[k] = 1 / each.massKg();
            put(each.at(), looseAt, k);
            put(each.stiffnessNpm(), looseK, k);
            put(each.dampingNspm(), looseC, k);
            looseOn[k] = each.on();
            double weightN = each.massKg() * Gravity.STANDARD_MPS2;
            for (int carrier = k; carrier != Airframe.FRAME; carrier = looseOn[carrier]) {
                looseUpN[carrier] += weightN;
            }
            kg -= each.massKg();
            moment = moment.minus(each.at().times(each.massKg()));
            own = plusPoint(own, -each.massKg(), each.at());
        }
        if (!(kg > 0)) {
            throw new IllegalArgumentException("nothing is left of the frame");
        }
        perFrameKg = 1 / kg;
        Vec3 middle = moment.times(1 / kg);
        put(middle, centre, 0);
        own = plusPoint(own, -kg, middle);
        inertia = new double[] {own.xx(), own.yy(), own.zz(), own.xy(), own.xz(), own.yz()};
        inverse = inverse(inertia);
        double reach = 0;
        feet = airframe.feet().size();
        footAt = new double[3 * feet];
        footOn = new int[feet];
        for (int k = 0; k < feet; k++) {
            put(airframe.feet().get(k).at(), footAt, k);
            footOn[k] = airframe.feet().get(k).on();
            reach = Math.max(reach, airframe.feet().get(k).at().length());
        }
        footReachM = reach;
        ground = airframe.ground();
        sloped = ground.slopeRad() != 0;
        plane = plane(ground.slopeRad(), ground.slopeToRad());
        lines = airframe.lines().size();
        anchor = new double[3 * lines];
        ring = new double[3 * lines];
        lineM = new double[lines];
        lineSlackM2 = new double[lines];
        lineK = new double[lines];
        lineC = new double[lines];
        for (int k = 0; k < lines; k++) {
            Airframe.Line line = airframe.lines().get(k);
            put(line.anchor(), anchor, k);
            put(line.ring(), ring, k);
            lineM[k] = line.lengthM();
            double slackM = Math.max(0, line.lengthM() - line.ring().length());
            lineSlackM2[k] = slackM * slackM;
            lineK[k] = line.stiffnessNpm();
            lineC[k] = line.dampingNspm();
        }
        halfDensity = airframe.densityKgpm3() / 2;
        bodyDrag = new double[3];
        put(airframe.drag().areaM2().times(airframe.densityKgpm3() / 2), bodyDrag, 0);
        dragAt = new double[3];
        put(airframe.drag().at(), dragAt, 0);
    }

    private void fan(Airframe.FanLine line, int fan) {
        Vec3 axis = line.axis();
        put(axis, push, 4 * fan);
        put(axis.plus(line.strikeForce()), push, 4 * fan + 1);
        put(line.at().cross(axis).plus(line.strikeTurn()), push, 4 * fan + 2);
        put(line.intake(), push, 4 * fan + 3);
        for (int k = 0; k < 3; k++) {
            this.axis[k][fan] = push[PUSH * fan + k];
            intake[k][fan] = push[PUSH * fan + 9 + k];
        }
        // Crossflow at the intake is P (u + ω × r) with P = 1 − f fᵀ, which turns both ways of it
        // into one symmetric matrix JᵀJ, J = (P, −P [r]×).
        double[] f = {axis.x(), axis.y(), axis.z()};
        double x = line.intake().x();
        double y = line.intake().y();
        double z = line.intake().z();
        double[][] cross = {{0, z, -y}, {-z, 0, x}, {y, -x, 0}};
        double[][] j = new double[3][6];
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                double p = (row == column ? 1 : 0) - f[row] * f[column];
                j[row][column] = p;
                for (int k = 0; k < 3; k++) {
                    j[row][3 + k] += p * cross[column][k];
                }
            }
        }
        int at = DRAG * fan;
        for (int row = 0; row < 6; row++) {
            for (int column = row; column < 6; column++) {
                double sum = 0;
                for (int k = 0; k < 3; k++) {
                    sum += j[k][row] * j[k][column];
                }
                drag[at++] = sum;
            }
        }
    }

    private static double[] plane(double slopeRad, double toRad) {
        double s = Math.sin(slopeRad);
        double c = Math.cos(slopeRad);
        double x = Math.cos(toRad);
        double y = Math.sin(toRad);
        return new double[] {c * x, c * y, s, -y, x, 0, -s * x, -s * y, c};
    }

    private static Inertia plusPoint(Inertia own, double kg, Vec3 at) {
        double x = at.x();
        double y = at.y();
        double z = at.z();
        return own.plus(
                new Inertia(
                        kg * (y * y + z * z),
                        kg * (x * x + z * z),
                        kg * (x * x + y * y),
                        -kg * x * y,
                        -kg * x * z,
                        -kg * y * z));
    }

    private static double[] inverse(double[] tensor) {
        double a = tensor[0];
        double b = tensor[1];
        double c = tensor[2];
        double d = tensor[3];
        double e = tensor[4];
        double f = tensor[5];
        double coA = b * c - f * f;
        double coD = e * f - d * c;
        double coE = d * f - b * e;
        double determinant = a * coA + d * coD + e * coE;
        if (!(a > 0 && b > 0 && c > 0 && coA > 0 && determinant > 1e-12 * a * b * c)) {
            throw new IllegalArgumentException(
                    "what is left of the frame without its loose masses has no inertia that can be");
        }
        return new double[] {
            coA / determinant,
            (a * c - e * e) / determinant,
            (a * b - d * d) / determinant,
            coD / determinant,
            coE / determinant,
            (d * e - a * f) / determinant
        };
    }

    private static void put(Vec3 v, double[] to, int number) {
        to[3 * number] = v.x();
        to[3 * number + 1] = v.y();
        to[3 * number + 2] = v.z();
    }
}
