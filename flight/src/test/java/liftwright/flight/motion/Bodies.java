package liftwright.flight.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;

/** Bodies for tests: plain ones and random ones. */
final class Bodies {

    /** Ground that is never met. */
    static final Airframe.Ground GROUND = new Airframe.Ground(1e4, 1, 1e4, 100, 0.6);

    private Bodies() {}

    /** A free rigid body. */
    static Airframe rigid(double massKg, double ixx, double iyy, double izz) {
        return new Airframe(
                massKg,
                new Inertia(ixx, iyy, izz, 0, 0, 0),
                List.of(),
                List.of(),
                List.of(),
                GROUND,
                Airframe.Drag.NONE,
                List.of(),
                1.225);
    }

    static Airframe with(
            Airframe base,
            List<Airframe.FanLine> fans,
            List<Airframe.Loose> loose,
            List<Airframe.Line> lines,
            Airframe.Drag drag) {
        return new Airframe(
                base.massKg(),
                base.inertia(),
                fans,
                loose,
                base.feet(),
                base.ground(),
                drag,
                lines,
                base.densityKgpm3());
    }

    static Airframe standing(Airframe base, List<Airframe.Foot> feet, Airframe.Ground ground) {
        return new Airframe(
                base.massKg(),
                base.inertia(),
                base.fans(),
                base.loose(),
                feet,
                ground,
                base.drag(),
                base.lines(),
                base.densityKgpm3());
    }

    static double between(RandomGenerator random, double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    static Vec3 vector(RandomGenerator random, double size) {
        return new Vec3(
                between(random, -size, size),
                between(random, -size, size),
                between(random, -size, size));
    }

    /** A wearer and two legs in a rig of some fans, everything askew. */
    static Airframe random(RandomGenerator random, boolean damped, int loose) {
        List<Airframe.Loose> masses = new ArrayList<>();
        double kg = between(random, 20, 40);
        Vec3 moment = Vec3.ZERO;
        for (int k = 0; k < loose; k++) {
            double own = k == 0 ? between(random, 40, 70) : between(random, 5, 12);
            Vec3 at = vector(random, 0.1).plus(new Vec3(0, 0, k == 0 ? 0.2 : 0.7));
            // What a push between it and a frame of this mass and inertia moves, 1/kg.
            double mobility = 1 / own + 1 / kg + 1.5 * 1.5 / 4;
            double hz = k == 0 ? between(random, 3, 5) : between(random, 0.7, 1);
            double stiff = Math.pow(Math.TAU * hz, 2) / mobility;
            Vec3 stiffness = new Vec3(stiff, 0.8 * stiff, 1.2 * stiff);
            Vec3 damping = damped ? stiffness.times(0.01) : Vec3.ZERO;
            masses.add(
                    new Airframe.Loose("loose " + k, own, at, k == 0 ? -1 : 0, stiffness, damping));
            moment = moment.plus(at.times(own));
        }
        // The frame: a centre that balances the loose masses, and an inertia that points make.
        Vec3 centre = moment.times(-1 / kg);
        double xx = between(random, 3, 8);
        double yy = between(random, 3, 8);
        double zz = between(random, 0.7, 0.95) * (xx + yy);
        Inertia whole = new Inertia(xx, yy, zz, 0.2 * (random.nextDouble() - 0.5), 0.1, -0.1);
        whole = point(whole, kg, centre);
        double all = kg;
        for (Airframe.Loose each : masses) {
            whole = point(whole, each.massKg(), each.at());
            all += each.massKg();
        }
        List<Airframe.FanLine> fans = new ArrayList<>();
        for (int k = 0; k < 4; k++) {
            Vec3 at = vector(random, 0.25);
            Vec3 axis = vector(random, 0.2).plus(new Vec3(0, 0, -1));
            axis = axis.times(1 / axis.length());
            fans.add(new Airframe.FanLine(at, at.plus(axis.times(0.05)), axis));
        }
        return new Airframe(
                all,
                whole,
                fans,
                masses,
                List.of(),
                GROUND,
                new Airframe.Drag(new Vec3(0.7, 0.5, 0.2), vector(random, 0.1)),
                List.of(),
                1.2);
    }

    static Inertia point(Inertia to, double kg, Vec3 at) {
        return to.plus(
                new Inertia(
                        kg * (at.y() * at.y() + at.z() * at.z()),
                        kg * (at.x() * at.x() + at.z() * at.z()),
                        kg * (at.x() * at.x() + at.y() * at.y()),
                        -kg * at.x() * at.y(),
                        -kg * at.x() * at.z(),
                        -kg * at.y() * at.z()));
    }

    static void tumble(RandomGenerator random, BodyState state, int loose) {
        state.rest(0, 0, 10, 0);
        double[] y = state.y;
        double length = 0;
        for (int k = 0; k < 4; k++) {
            y[BodyState.QW + k] = k == 0 || k == 3 ? 1 : between(random, -0.4, 0.4);
            length += y[BodyState.QW + k] * y[BodyState.QW + k];
        }
        for (int k = 0; k < 4; k++) {
            y[BodyState.QW + k] /= Math.sqrt(length);
        }
        for (int k = 0; k < 3; k++) {
            y[BodyState.VX + k] = between(random, -2, 2);
            y[BodyState.WX + k] = between(random, -1, 1);
        }
        for (int k = 0; k < loose; k++) {
            for (int axis = 0; axis < 3; axis++) {
                y[BodyState.OWN + 6 * k + axis] = between(random, -0.02, 0.02);
                y[BodyState.OWN + 6 * k + 3 + axis] = between(random, -0.1, 0.1);
            }
        }
    }
}
