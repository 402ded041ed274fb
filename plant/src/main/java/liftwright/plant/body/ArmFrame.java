package liftwright.plant.body;

import java.util.List;
import liftwright.physics.LimbAngles;
import liftwright.rig.Vec3;

/**
 * Joints of one arm in rig axes, and the axes about which they turn, each the way its angle grows:
 * right-handed about it is flexion, abduction or outward rotation.
 *
 * @param side {@link LimbAngles#LEFT} or {@link LimbAngles#RIGHT}
 * @param shoulder joint, m
 * @param elbow joint, m
 * @param shoulderAxes of flexion, abduction and rotation: the body's sideways axis, its
 *     fore-and-aft axis turned with the flexion, and the upper arm
 * @param elbowAxes of flexion (the upper arm's sideways axis), across the forearm, and along it
 */
public record ArmFrame(
        double side, Vec3 shoulder, Vec3 elbow, List<Vec3> shoulderAxes, List<Vec3> elbowAxes) {

    public ArmFrame {
        shoulderAxes = List.copyOf(shoulderAxes);
        elbowAxes = List.copyOf(elbowAxes);
    }

    /** One arm at the values of {@code p}. */
    static ArmFrame of(double[] p, double side, Posture posture) {
        Arms arms = posture.arms();
        double[] upper = new double[Pose.FRAME];
        double[] lower = new double[Pose.FRAME];
        arms.upper(p, side, upper);
        arms.lower(p, side, lower);
        double flexion = arms.flexionRad(p, side);
        Vec3 foreAndAft = new Vec3(Math.cos(flexion), 0, -Math.sin(flexion));
        Stance stance = posture.stance();
        stance.lean(p, upper);
        stance.lean(p, lower);
        return new ArmFrame(
                side,
                stance.leant(p, arms.shoulder(p, side)),
                stance.leant(p, arms.elbow(p, side)),
                List.of(
                        stance.leant(p, new Vec3(0, 1, 0)),
                        stance.leant(p, foreAndAft.times(-side)),
                        column(upper, 2).times(side)),
                List.of(
                        column(upper, 1),
                        column(lower, 0).times(-side),
                        column(lower, 2).times(side)));
    }

    private static Vec3 column(double[] frame, int column) {
        return new Vec3(frame[column], frame[3 + column], frame[6 + column]);
    }
}
