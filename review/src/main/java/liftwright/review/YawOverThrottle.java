package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.rig.Fan;
import liftwright.rig.Rig;

/**
 * The yaw moment of a rig over its throttle band, taken apart into what spins do and what they do
 * not: b_l + Σ σ_k q_kl in N·m, σ = +1 for right-hand. Cases l are four throttles, from half of
 * lift-off to full, each with the swirl as declared and at both ends of its doubt, all fan types
 * alike.
 *
 * @param other b
 * @param bySpin q, fan by fan
 * @param rightHand the spins there are
 * @param inertiaKgm2 about the upright axis
 */
@SuppressWarnings("ArrayRecordComponent") // handed to a search, never compared
record YawOverThrottle(double[] other, double[][] bySpin, boolean[] rightHand, double inertiaKgm2) {

    private static final int ENDS = 3;

    static YawOverThrottle of(Rig rig) {
        Balancing balancing = Balancing.of(rig);
        Balancing.Worker worker = balancing.worker();
        double[] p = balancing.parameters().nominal();
        HoverPoint point = worker.liftOff(p);
        double lift = point.throttle();
        double[] throttles = {lift / 2, lift, (1 + lift) / 2, 1};
        List<Fan> fans = rig.fans();
        List<double[]> columns = new ArrayList<>();
        for (int k = 0; k < fans.size(); k++) {
            columns.add(new double[throttles.length * ENDS]);
        }
        double[] other = new double[throttles.length * ENDS];
        for (int level = 0; level < throttles.length; level++) {
            List<FanAtWork> work =
                    worker.atThrottle(p, point.mass().centre(), throttles[level]).orElse(List.of());
            for (int k = 0; k < work.size(); k++) {
                FanAtWork fan = work.get(k);
                double along = fan.actual().z();
                double base = fan.moment().z() - along * fan.swirlNm();
                for (int end = 0; end < ENDS; end++) {
                    int at = level * ENDS + end;
                    other[at] += base;
                    columns.get(k)[at] = -along * share(fans.get(k), end) * worker.torqueNm(k);
                }
            }
        }
        boolean[] rightHand = new boolean[fans.size()];
        for (int k = 0; k < rightHand.length; k++) {
            rightHand[k] =
                    switch (fans.get(k).spin()) {
                        case RIGHT_HAND -> true;
                        case LEFT_HAND -> false;
                    };
        }
        return new YawOverThrottle(
                other, columns.toArray(double[][]::new), rightHand, point.mass().inertia().zz());
    }

    private static double share(Fan fan, int end) {
        var swirl = fan.type().swirl();
        return switch (end) {
            case 0 -> swirl.si() - swirl.tolerance().minus();
            case 1 -> swirl.si();
            default -> swirl.si() + swirl.tolerance().plus();
        };
    }

    /** Greatest angular acceleration about the upright axis with these spins, rad/s². */
    double worstRadps2(boolean[] spins) {
        double worst = 0;
        for (int l = 0; l < other.length; l++) {
            double sum = other[l];
            for (int k = 0; k < spins.length; k++) {
                sum += spins[k] ? bySpin[k][l] : -bySpin[k][l];
            }
            worst = Math.max(worst, Math.abs(sum));
        }
        return worst / inertiaKgm2;
    }

    /** Whether any fan's spin does anything. */
    boolean spinsMatter() {
        for (double[] column : bySpin) {
            for (double nm : column) {
                if (nm != 0) {
                    return true;
                }
            }
        }
        return false;
    }
}
