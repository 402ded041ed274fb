package liftwright.rig;

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
 */
public record Wearer(
        Quantity mass, Quantity stature, Body body, Arm left, Arm right, Quantity armSteadiness) {

    /** A wearer whose arms do not wander. */
    public Wearer(Quantity mass, Quantity stature, Body body, Arm left, Arm right) {
        this(mass, stature, body, left, right, Quantity.exact(0, left.elbowFlexion().dimension()));
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
}
