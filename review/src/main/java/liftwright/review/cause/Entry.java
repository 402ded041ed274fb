package liftwright.review.cause;

import liftwright.rig.Vec3;
import liftwright.rig.table.TurningTable.Axis;
import liftwright.rig.table.TurningTable.Swap;

/**
 * One number that is measured, or would be.
 *
 * @param setting which throttle, in the order of {@link Settings}
 * @param row numbers of one row share how arms were held
 * @param noise standard deviation of the measurement, rad/s²
 * @param arms standard deviation of each joint of the arms, rad
 */
record Entry(int setting, int row, Swap swap, Axis axis, double noise, double arms) {

    double of(Vec3 rate) {
        return of(axis, rate);
    }

    static double of(Axis axis, Vec3 rate) {
        return switch (axis) {
            case ROLL -> rate.x();
            case PITCH -> rate.y();
            case YAW -> rate.z();
        };
    }
}
