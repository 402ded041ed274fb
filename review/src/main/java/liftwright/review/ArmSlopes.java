package liftwright.review;

import java.util.List;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.rig.LimitName;
import liftwright.rig.Vec3;

/**
 * What each joint of the arms does with a newton of each fan, at lift-off as declared: moments are
 * sums over the fans, so that the reach of the arms with other thrusts follows from it.
 *
 * @param reachNmpN by joint, fan, then axis: moment at the full reach for each newton, N·m/N
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record ArmSlopes(double[][][] reachNmpN) {

    private static final double STEP_RAD = 1e-4;
    private static final int JOINTS = 8;

    /** None where arms do not steer. */
    static ArmSlopes of(Balancing balancing, Steering steering) {
        if (steering != Steering.ARMS) {
            return new ArmSlopes(new double[0][][]);
        }
        Balancing.Worker worker = balancing.worker();
        double[] p = balancing.parameters().nominal();
        HoverPoint point = worker.liftOff(p);
        List<FanAtWork> before = worker.nudged(p, new double[JOINTS]).fans();
        double factor = balancing.rig().limits().si(LimitName.ARM_REACH) / STEP_RAD;
        double[][][] reach = new double[JOINTS][][];
        for (int joint = 0; joint < JOINTS; joint++) {
            double[] turned = new double[JOINTS];
            turned[joint] = STEP_RAD;
            List<FanAtWork> after = worker.nudged(p, turned).fans();
            reach[joint] = new double[before.size()][];
            for (int fan = 0; fan < before.size(); fan++) {
                double thrustN = point.ledger().fans().get(fan).thrustN();
                Vec3 change =
                        thrustN > 0
                                ? after.get(fan)
                                        .moment()
                                        .minus(before.get(fan).moment())
                                        .times(factor / thrustN)
                                : Vec3.ZERO;
                reach[joint][fan] = new double[] {change.x(), change.y(), change.z()};
            }
        }
        return new ArmSlopes(reach);
    }

    /** Moment of each joint at its full reach with such thrusts, N·m. */
    double[][] reaches(double[] thrustN) {
        double[][] sum = new double[reachNmpN.length][3];
        for (int joint = 0; joint < sum.length; joint++) {
            for (int fan = 0; fan < reachNmpN[joint].length; fan++) {
                for (int axis = 0; axis < 3; axis++) {
                    sum[joint][axis] += reachNmpN[joint][fan][axis] * thrustN[fan];
                }
            }
        }
        return sum;
    }
}
