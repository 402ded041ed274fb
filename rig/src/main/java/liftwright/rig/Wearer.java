package liftwright.rig;

import java.util.Map;
import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * The person in the rig.
 *
 * @param mass body mass, clothed, kg
 * @param stature standing height, m
 * @param body which table of segment proportions applies
 * @param left the left arm's joint angles
 * @param right the right arm's joint angles
 * @param armSteadiness how far each joint of a held arm wanders, k = 2, rad
 * @param measured what was measured on the body and goes before what is computed
 * @param stance how legs and trunk are held
 * @param strength what the arms were measured to hold
 * @param reaction from a surprise to the press of a switch, s; where it is empty, the usual one
 *     counts ({@link LimitName#WEARER_REACTION})
 */
public record Wearer(
        Quantity mass,
        Quantity stature,
        Body body,
        Arm left,
        Arm right,
        Quantity armSteadiness,
        Measured measured,
        Stance stance,
        Strength strength,
        Optional<Quantity> reaction) {

    /** A wearer who stands straight, of unmeasured strength. */
    public Wearer(
            Quantity mass,
            Quantity stature,
            Body body,
            Arm left,
            Arm right,
            Quantity armSteadiness,
            Measured measured) {
        this(
                mass,
                stature,
                body,
                left,
                right,
                armSteadiness,
                measured,
                Stance.STRAIGHT,
                Strength.UNMEASURED,
                Optional.empty());
    }

    /** A wearer whose arms do not wander, on whom nothing was measured. */
    public Wearer(Quantity mass, Quantity stature, Body body, Arm left, Arm right) {
        this(
                mass,
                stature,
                body,
                left,
                right,
                Quantity.exact(0, left.elbowFlexion().dimension()),
                Measured.NOTHING);
    }

    public enum Body {
        FEMALE,
        MALE
    }

    /**
     * Joint angles from the arm hanging straight down, applied flexion, then abduction, then
     * rotation, rad.
     *
     * @param shoulderFlexion forward swing of the upper arm
     * @param shoulderAbduction outward swing of the upper arm
     * @param shoulderRotation turn about the upper arm, outward positive
     * @param elbowFlexion bend of the elbow
     */
    public record Arm(
            Quantity shoulderFlexion,
            Quantity shoulderAbduction,
            Quantity shoulderRotation,
            Quantity elbowFlexion) {}

    /**
     * Joint angles of a leg from hanging straight down from the trunk, rad.
     *
     * @param hipFlexion forward swing of the thigh
     * @param hipAbduction outward swing of the thigh, after flexion
     * @param kneeFlexion bend of the knee, foot towards the back
     */
    public record Leg(Quantity hipFlexion, Quantity hipAbduction, Quantity kneeFlexion) {

        static final Leg STRAIGHT = new Leg(Stance.NONE, Stance.NONE, Stance.NONE);
    }

    /**
     * How legs and trunk are held. The lean turns the whole body and all that it wears, forward
     * first; hips bend the legs against the trunk.
     *
     * @param leanForward the head goes forward, rad
     * @param leanRight the head goes right, rad
     */
    public record Stance(Leg left, Leg right, Quantity leanForward, Quantity leanRight) {

        private static final Quantity NONE =
                Quantity.exact(0, new liftwright.quantity.Dimension(0, 0, 0, 0, 0, 1));

        public static final Stance STRAIGHT = new Stance(Leg.STRAIGHT, Leg.STRAIGHT, NONE, NONE);
    }

    /**
     * Moments that a joint was measured to hold briefly, N·m.
     *
     * @param each by what is pushed
     * @param shoulder for every way of the shoulder that has none of its own
     * @param elbow the same for the elbow
     */
    public record Strength(
            Map<Exertion, Quantity> each, Optional<Quantity> shoulder, Optional<Quantity> elbow) {

        public static final Strength UNMEASURED =
                new Strength(Map.of(), Optional.empty(), Optional.empty());

        public Strength {
            each = Map.copyOf(each);
        }

        /** What was measured for one way to push. */
        public Optional<Quantity> of(Exertion exertion) {
            Optional<Quantity> own = Optional.ofNullable(each.get(exertion));
            return own.or(() -> exertion.isOfShoulder() ? shoulder : elbow);
        }
    }

    /** Segments whose length or mass can be measured; one of a pair stands for both. */
    public enum Segment {
        HEAD("head"),
        TRUNK("trunk"),
        UPPER_ARM("upper arm"),
        FOREARM("forearm"),
        HAND("hand"),
        THIGH("thigh"),
        SHANK("shank"),
        FOOT("foot");

        private final String key;

        Segment(String key) {
            this.key = key;
        }

        /** The word in the file. */
        public String key() {
            return key;
        }
    }

    /**
     * Measured sizes, in place of those of the table of segments.
     *
     * @param betweenShoulders distance of the shoulder joints, m
     * @param betweenHips distance of the hip joints, m
     * @param lengths of segments, m
     * @param masses of single segments, kg; the trunk has what the others leave of the body
     */
    public record Sizes(
            Optional<Quantity> betweenShoulders,
            Optional<Quantity> betweenHips,
            Map<Segment, Quantity> lengths,
            Map<Segment, Quantity> masses) {

        public static final Sizes UNMEASURED =
                new Sizes(Optional.empty(), Optional.empty(), Map.of(), Map.of());

        public Sizes {
            lengths = Map.copyOf(lengths);
            masses = Map.copyOf(masses);
        }
    }

    /**
     * The centre of mass of the person who stands upright with the arms at the sides, from the
     * middle between the shoulders, m.
     */
    public record Centre(Quantity forward, Quantity right, Quantity down) {}

    /**
     * Measured values of the body. Inertias and swings hold for a person who stands or hangs
     * upright with the arms at the sides; scales for one who lies on the front, level, with the
     * arms straight down from the shoulders.
     *
     * @param rollInertia about the forward axis through the person's centre of mass, kg·m²
     * @param pitchInertia about the sideways axis, kg·m²
     * @param yawInertia about the upright axis, kg·m²
     */
    public record Measured(
            Optional<Quantity> rollInertia,
            Optional<Quantity> pitchInertia,
            Optional<Quantity> yawInertia,
            Optional<Scales> scales,
            Optional<PivotSwing> rollSwing,
            Optional<PivotSwing> pitchSwing,
            Optional<CordSwing> yawSwing,
            Optional<Centre> centre,
            Sizes sizes) {

        public static final Measured NOTHING =
                new Measured(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());

        /** Without a centre that was said, sizes as in the table. */
        public Measured(
                Optional<Quantity> rollInertia,
                Optional<Quantity> pitchInertia,
                Optional<Quantity> yawInertia,
                Optional<Scales> scales,
                Optional<PivotSwing> rollSwing,
                Optional<PivotSwing> pitchSwing,
                Optional<CordSwing> yawSwing) {
            this(
                    rollInertia,
                    pitchInertia,
                    yawInertia,
                    scales,
                    rollSwing,
                    pitchSwing,
                    yawSwing,
                    Optional.empty(),
                    Sizes.UNMEASURED);
        }
    }

    /**
     * A person on two scales.
     *
     * @param feet what the scale under the feet reads, kg
     * @param hands what that under the hands reads, kg
     * @param apart distance of the two supports along the body, m
     * @param handsBelow how far towards the feet from the shoulders the hands rest, m
     */
    public record Scales(Quantity feet, Quantity hands, Quantity apart, Quantity handsBelow) {}

    /**
     * A person who swings stiffly about a bar.
     *
     * @param above how far the bar is above the middle between the shoulders, m
     * @param time of all swings, s
     * @param swings whole ones, there and back
     */
    public record PivotSwing(Quantity above, Quantity time, int swings) {}

    /**
     * A person who twists on a platform between two cords.
     *
     * @param cords length of each, m
     * @param apart their distance, m
     * @param time of all swings, s
     * @param swings whole ones, there and back
     * @param hungMass mass of the platform, kg
     * @param hungInertia yaw inertia of the platform, kg·m²
     */
    public record CordSwing(
            Quantity cords,
            Quantity apart,
            Quantity time,
            int swings,
            Quantity hungMass,
            Quantity hungInertia) {}
}
