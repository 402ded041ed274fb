package liftwright.review.failures;

import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.Rig;

/**
 * What is asked of a rig with a fault.
 *
 * @param liftShare greatest trimmed lift over weight
 * @param rollRadps2 reserve about the axis that points forward, either way, rad/s²
 * @param pitchRadps2 about the axis that points right, rad/s²
 * @param yawRadps2 about the upright axis, rad/s²
 * @param armLeft share of the arms' reach left once they hold it
 * @param driftRadps2 acceleration that is no more than drift, rad/s²
 * @param yawHeld whether yaw is to be held too
 * @param worn whether a person is in it
 * @param heightM how high the feet are when it happens, m
 * @param impactMps speed at the ground that may be, m/s
 * @param standingShare thrust over weight under which a person may stand
 */
public record Asked(
        double liftShare,
        double rollRadps2,
        double pitchRadps2,
        double yawRadps2,
        double armLeft,
        double driftRadps2,
        boolean yawHeld,
        boolean worn,
        double heightM,
        double impactMps,
        double standingShare) {

    /** What the demands and limits of a rig ask. */
    public static Asked of(Rig rig) {
        Limits limits = rig.limits();
        return new Asked(
                limits.si(LimitName.LIFT_AFTER_LOSS),
                limits.si(LimitName.ROLL_RESERVE),
                limits.si(LimitName.PITCH_RESERVE),
                limits.si(LimitName.YAW_RESERVE),
                limits.si(LimitName.ARM_REACH_LEFT),
                limits.si(LimitName.DRIFT),
                switch (rig.demands().yaw()) {
                    case HELD -> true;
                    case FREE -> false;
                },
                rig.wearer().isPresent(),
                rig.demands().height().si(),
                limits.si(LimitName.IMPACT_SPEED),
                limits.si(LimitName.DWELL_SHARE));
    }

    /** Reserve asked about an axis, 0 roll to 2 yaw. */
    double reserveRadps2(int axis) {
        return switch (axis) {
            case 0 -> rollRadps2;
            case 1 -> pitchRadps2;
            default -> yawRadps2;
        };
    }
}
