package liftwright.plant.balance;

import liftwright.rig.PartId;
import liftwright.rig.Vec3;

/**
 * One fan as the ledger of moments sees it, in rig axes.
 *
 * @param id of the fan
 * @param thrustN along its axis
 * @param alikeN mean thrust of the fans of its type and control group, N
 * @param swirlNm moment of residual swirl about the thrust, right-hand; a right-hand fan's is below
 *     0 where the jet keeps swirl
 * @param held direction of its thrust as the arm alone gives it, cants and tilts taken away; up on
 *     frame and trunk
 * @param canted the same with its declared direction and cants
 * @param seated the same with what its seat turns
 * @param tilted place and direction with the tilt of its mount
 * @param twisted the same with the twist of its mount's beam
 * @param bent the same with the bending of that beam: where it is and how it pushes
 * @param strike what its jet strikes of the rig itself
 */
public record FanAtWork(
        PartId id,
        double thrustN,
        double alikeN,
        double swirlNm,
        Vec3 held,
        Vec3 canted,
        Vec3 seated,
        Line tilted,
        Line twisted,
        Line bent,
        JetStrike strike) {

    /** Straight up, in rig axes. */
    public static final Vec3 UP = new Vec3(0, 0, -1);

    /**
     * A line of thrust.
     *
     * @param arm from the centre of mass of the whole to the fan, m
     * @param direction of the thrust
     */
    public record Line(Vec3 arm, Vec3 direction) {

        /** Moment of a unit of thrust, m. */
        Vec3 turn() {
            return arm.cross(direction);
        }
    }

    /** A fan whose jet meets nothing. */
    public FanAtWork(
            PartId id,
            double thrustN,
            double alikeN,
            double swirlNm,
            Vec3 held,
            Vec3 canted,
            Vec3 seated,
            Line tilted,
            Line twisted,
            Line bent) {
        this(
                id,
                thrustN,
                alikeN,
                swirlNm,
                held,
                canted,
                seated,
                tilted,
                twisted,
                bent,
                JetStrike.NONE);
    }

    /** A fan in a true seat on a mount that does not give. */
    public FanAtWork(
            PartId id,
            Vec3 arm,
            double thrustN,
            double alikeN,
            double swirlNm,
            Vec3 held,
            Vec3 canted,
            Vec3 actual) {
        this(
                id,
                thrustN,
                alikeN,
                swirlNm,
                held,
                canted,
                canted,
                new Line(arm, actual),
                new Line(arm, actual),
                new Line(arm, actual));
    }

    /** From the centre of mass of the whole to the fan, m. */
    public Vec3 arm() {
        return bent.arm();
    }

    /** How it pushes: direction of its thrust. */
    public Vec3 actual() {
        return bent.direction();
    }

    /** Force on the rig, N, what its jet strikes included. */
    public Vec3 force() {
        return actual().plus(strike.force()).times(thrustN);
    }

    /** The same without what its jet strikes: the fan alone. */
    public Vec3 push() {
        return actual().times(thrustN);
    }

    /** Moment on the rig about the centre of mass, N·m. */
    public Vec3 moment() {
        return arm().cross(push()).plus(actual().times(swirlNm)).plus(strike.turn().times(thrustN));
    }

    /** What a cause adds to {@link #moment}, N·m: the causes of a fan sum to its moment. */
    public Vec3 share(TurningCause cause) {
        Vec3 arm = tilted.arm();
        return switch (cause) {
            case PLACE -> arm.cross(UP).times(alikeN);
            case THRUST_MISMATCH -> arm.cross(UP).times(thrustN - alikeN);
            case ARM_ANGLE -> arm.cross(held.minus(UP)).times(thrustN);
            case CANT -> arm.cross(canted.minus(held)).times(thrustN);
            case SEAT_ANGLE -> arm.cross(seated.minus(canted)).times(thrustN);
            case MOUNT_ANGLE -> arm.cross(tilted.direction().minus(seated)).times(thrustN);
            case MOUNT_TWIST -> twisted.turn().minus(tilted.turn()).times(thrustN);
            case FRAME_SLOPE -> bent.turn().minus(twisted.turn()).times(thrustN);
            case SWIRL -> actual().times(swirlNm);
            case JETS -> strike.turn().times(thrustN);
        };
    }
}
