package liftwright.rig;

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
 */
public record Wearer(
        Quantity mass,
        Quantity stature,
        Body body,
        Arm left,
        Arm right,
        Quantity armSteadiness,
        Measured measured) {

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
            Optional<CordSwing> yawSwing) {

        public static final Measured NOTHING =
                new Measured(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
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
