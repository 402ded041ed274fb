package liftwright.flight.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;

/**
 * The numbers of one rig as a body that moves, of one draw of its doubts. All places in body axes:
 * origin at the centre of mass of the whole in a hover, x forward, y right, z down.
 *
 * @param massKg of the whole, wearer included, &gt; 0
 * @param inertia of the whole about the origin, kg·m²
 * @param fans in the rig's order
 * @param loose masses of the whole that give on springs; a rig that nobody wears has none
 * @param feet points that can stand on the ground
 * @param ground what they stand on
 * @param drag of all but the fans
 * @param lines that can hold it
 * @param densityKgpm3 of the air, ≥ 0
 */
public record Airframe(
        double massKg,
        Inertia inertia,
        List<FanLine> fans,
        List<Loose> loose,
        List<Foot> feet,
        Ground ground,
        Drag drag,
        List<Line> lines,
        double densityKgpm3) {

    /** On the rigid frame itself, where a number of a {@link Loose} mass is asked for. */
    public static final int FRAME = -1;

    public Airframe {
        fans = List.copyOf(fans);
        loose = List.copyOf(loose);
        feet = List.copyOf(feet);
        lines = List.copyOf(lines);
        if (!(massKg > 0)) {
            throw new IllegalArgumentException("a body has mass");
        }
        if (loose.size() > BodyState.MOST_LOOSE) {
            throw new IllegalArgumentException("more loose masses than a state has room for");
        }
    }

    /**
     * Where a fan is and how it pushes.
     *
     * @param at a point of its thrust line, m
     * @param intake middle of its intake, where air that comes from the side is turned into it, m
     * @param axis direction of thrust, of length 1
     * @param strikeForce force of what its jet strikes of the rig itself, for 1 N of thrust
     * @param strikeTurn moment of the same about the origin, for 1 N of thrust, m
     */
    public record FanLine(Vec3 at, Vec3 intake, Vec3 axis, Vec3 strikeForce, Vec3 strikeTurn) {

        /** A fan whose jet meets nothing. */
        public FanLine(Vec3 at, Vec3 intake, Vec3 axis) {
            this(at, intake, axis, Vec3.ZERO, Vec3.ZERO);
        }
    }

    /**
     * A point mass on three springs with dampers along body axes, loaded so that it is at its place
     * in a hover: force on it from what it is on, along each axis, −k s − c ds/dt, and its weight
     * upwards.
     *
     * @param massKg &gt; 0
     * @param at where it rests, m
     * @param on number of the loose mass that carries it, of those before it, or {@link #FRAME}
     * @param stiffnessNpm k along each axis, ≥ 0, N/m
     * @param dampingNspm c along each axis, ≥ 0, N·s/m
     */
    public record Loose(
            String name, double massKg, Vec3 at, int on, Vec3 stiffnessNpm, Vec3 dampingNspm) {}

    /**
     * A point that can stand on the ground.
     *
     * @param on number of the loose mass that it moves with, or {@link #FRAME}
     */
    public record Foot(Vec3 at, int on) {}

    /**
     * How feet and ground push each other; numbers of one foot.
     *
     * @param stiffnessNpm of a foot pressed down, N/m
     * @param dampingSpm a of N = k δ (1 + a dδ/dt), ≥ 0, s/m
     * @param sideNpm of a foot pushed aside before it slides, N/m
     * @param sideNspm damping of the same, N·s/m
     * @param friction μ, ≥ 0
     * @param slopeRad of a plane through the origin of the scene
     * @param slopeToRad which way it falls: 0 along scene x, clockwise from above
     */
    public record Ground(
            double stiffnessNpm,
            double dampingSpm,
            double sideNpm,
            double sideNspm,
            double friction,
            double slopeRad,
            double slopeToRad) {

        /** Level. */
        public Ground(
                double stiffnessNpm,
                double dampingSpm,
                double sideNpm,
                double sideNspm,
                double friction) {
            this(stiffnessNpm, dampingSpm, sideNpm, sideNspm, friction, 0, 0);
        }

        /** The same feet on other ground. */
        public Ground on(double otherFriction, double otherSlopeRad, double otherSlopeToRad) {
            return new Ground(
                    stiffnessNpm,
                    dampingSpm,
                    sideNpm,
                    sideNspm,
                    otherFriction,
                    otherSlopeRad,
                    otherSlopeToRad);
        }

        /** How much lower the ground is at a place than at the origin, scene axes, m. */
        public double fallM(double x, double y) {
            return Math.tan(slopeRad) * (x * Math.cos(slopeToRad) + y * Math.sin(slopeToRad));
        }
    }

    /**
     * Drag of the body: along each axis −½ ρ A |u| u with the speed u through the air.
     *
     * @param areaM2 A = C_d times area along each axis, m²
     * @param at where it acts, m
     */
    public record Drag(Vec3 areaM2, Vec3 at) {
        public static final Drag NONE = new Drag(Vec3.ZERO, Vec3.ZERO);
    }

    /**
     * A line without mass from an anchor to the rig that pulls and never pushes.
     *
     * @param anchor in scene axes, m
     * @param ring where it is fastened to the frame, body axes, m
     * @param lengthM at which it is straight, m
     * @param stiffnessNpm &gt; 0, N/m
     * @param dampingNspm ≥ 0, N·s/m
     */
    public record Line(
            String name,
            Vec3 anchor,
            Vec3 ring,
            double lengthM,
            double stiffnessNpm,
            double dampingNspm) {}

    /**
     * The same with its moments of inertia times a factor each. Loose masses come nearer to the
     * centre or go away from it by the root of the least factor, so that what is left of the frame
     * has an inertia that can be.
     */
    public Airframe withInertia(double roll, double pitch, double yaw) {
        double x = Math.sqrt(roll);
        double y = Math.sqrt(pitch);
        double z = Math.sqrt(yaw);
        Inertia more =
                new Inertia(
                        roll * inertia.xx(),
                        pitch * inertia.yy(),
                        yaw * inertia.zz(),
                        x * y * inertia.xy(),
                        x * z * inertia.xz(),
                        y * z * inertia.yz());
        double nearer = Math.min(x, Math.min(y, z));
        List<Loose> moved = new ArrayList<>();
        for (Loose each : loose) {
            moved.add(
                    new Loose(
                            each.name(),
                            each.massKg(),
                            each.at().times(nearer),
                            each.on(),
                            each.stiffnessNpm(),
                            each.dampingNspm()));
        }
        return new Airframe(massKg, more, fans, moved, feet, ground, drag, lines, densityKgpm3);
    }

    /** The same held by these lines alone. */
    public Airframe withLines(List<Line> others) {
        return new Airframe(massKg, inertia, fans, loose, feet, ground, drag, others, densityKgpm3);
    }

    /** Depth of the lowest foot below the centre of mass, m; empty without feet. */
    public Optional<Double> soleDepthM() {
        List<Double> depths = new ArrayList<>();
        feet.forEach(foot -> depths.add(foot.at().z()));
        return depths.stream().max(Double::compare);
    }
}
