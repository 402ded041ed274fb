package liftwright.review;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.rig.Vec3;

/**
 * The least turn of the arms' joints, all together, that cancels the moments at lift-off, every fan
 * at the thrust it has there. Newton's method with the least step in the sense of squares.
 *
 * @param turnRad left flexion, abduction, rotation, elbow flexion, then right, rad
 * @param leftNm moment that is left, N·m
 */
record ArmTrim(List<Double> turnRad, double leftNm) {

    private static final int MOST_STEPS = 30;

    /** Beyond this a posture is another posture. */
    private static final double MOST_RAD = Math.toRadians(60);

    /**
     * Share of the moment that may be left where a ray of a jet just strikes or just does not, so
     * that nothing between can be had.
     */
    private static final double ENOUGH = 0.02;

    /** Moment that counts as none, over the weight, m. */
    private static final double NONE_M = 1e-6;

    /**
     * @param worker that has just found {@code point} at {@code p}
     * @return empty where no posture nearby cancels it
     */
    static Optional<ArmTrim> of(Balancing.Worker worker, double[] p, HoverPoint point) {
        double none = NONE_M * point.mass().weightN();
        double[] turn = new double[8];
        Vec3 moment = point.ledger().moment();
        double enough = ENOUGH * moment.length();
        Optional<ArmTrim> best = Optional.empty();
        for (int step = 0; step < MOST_STEPS; step++) {
            double left = moment.length();
            if (best.isEmpty() || left < best.get().leftNm()) {
                best = Optional.of(new ArmTrim(Arrays.stream(turn).boxed().toList(), left));
            }
            if (left <= none) {
                return best;
            }
            double[][] slopes = Steering.slopes(worker, p, turn, moment);
            Optional<Vec3> prices = leastNorm(slopes, moment);
            if (prices.isEmpty()) {
                return Optional.empty();
            }
            for (int joint = 0; joint < turn.length; joint++) {
                Vec3 y = prices.get();
                turn[joint] -=
                        slopes[joint][0] * y.x()
                                + slopes[joint][1] * y.y()
                                + slopes[joint][2] * y.z();
                if (Math.abs(turn[joint]) > MOST_RAD) {
                    return Optional.empty();
                }
            }
            moment = worker.turned(p, turn).moment();
        }
        return best.filter(trim -> trim.leftNm() <= enough);
    }

    /** y with (J Jᵀ) y = moment; empty where the joints do not turn the rig about every axis. */
    private static Optional<Vec3> leastNorm(double[][] slopes, Vec3 moment) {
        double[][] g = new double[3][3];
        for (double[] slope : slopes) {
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    g[i][j] += slope[i] * slope[j];
                }
            }
        }
        Vec3 a = new Vec3(g[0][0], g[0][1], g[0][2]);
        Vec3 b = new Vec3(g[1][0], g[1][1], g[1][2]);
        Vec3 c = new Vec3(g[2][0], g[2][1], g[2][2]);
        Vec3 across = b.cross(c);
        double determinant = a.x() * across.x() + a.y() * across.y() + a.z() * across.z();
        if (!(Math.abs(determinant) > 1e-9 * g[0][0] * g[1][1] * g[2][2])) {
            return Optional.empty();
        }
        return Optional.of(
                across.times(moment.x())
                        .plus(c.cross(a).times(moment.y()))
                        .plus(a.cross(b).times(moment.z()))
                        .times(1 / determinant));
    }
}
