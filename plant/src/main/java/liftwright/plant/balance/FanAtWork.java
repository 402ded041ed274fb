package liftwright.plant.balance;

import liftwright.rig.PartId;
import liftwright.rig.Vec3;

/**
 * One fan as the ledger of moments sees it, in rig axes.
 *
 * @param id of the fan
 * @param arm from the centre of mass of the whole to the fan, m
 * @param thrustN along its axis
 * @param alikeN mean thrust of the fans of its type and control group, N
 * @param swirlNm moment of residual swirl about the thrust, right-hand; a right-hand fan's is below
 *     0 where the jet keeps swirl
 * @param held direction of its thrust as the arm alone gives it, cants and tilts taken away; up on
 *     frame and trunk
 * @param canted the same with its declared direction and cants
 * @param actual the same with the tilt of its mount: how it pushes
 */
public record FanAtWork(
        PartId id,
        Vec3 arm,
        double thrustN,
        double alikeN,
        double swirlNm,
        Vec3 held,
        Vec3 canted,
        Vec3 actual) {

    /** Straight up, in rig axes. */
    public static final Vec3 UP = new Vec3(0, 0, -1);

    /** Force on the rig, N. */
    public Vec3 force() {
        return actual.times(thrustN);
    }

    /** Moment on the rig about the centre of mass, N·m. */
    public Vec3 moment() {
        return arm.cross(force()).plus(actual.times(swirlNm));
    }

    /** What a cause adds to {@link #moment}, N·m: the causes of a fan sum to its moment. */
    public Vec3 share(TurningCause cause) {
        return switch (cause) {
            case PLACE -> arm.cross(UP).times(alikeN);
            case THRUST_MISMATCH -> arm.cross(UP).times(thrustN - alikeN);
            case ARM_ANGLE -> arm.cross(held.minus(UP)).times(thrustN);
            case CANT -> arm.cross(canted.minus(held)).times(thrustN);
            case MOUNT_ANGLE -> arm.cross(actual.minus(canted)).times(thrustN);
            case SWIRL -> actual.times(swirlNm);
        };
    }
}
