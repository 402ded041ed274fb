package liftwright.flight.loops;

import java.util.Arrays;
import liftwright.flight.motion.BodyState;
import liftwright.plant.body.Inertia;

/**
 * The inner loops at work: attitude → rate → the moments that the fans have to give. For one run;
 * steps allocate nothing.
 *
 * <p>Euler's equation for the whole as one rigid body, N = I α + ω × I ω, with the angular
 * acceleration α that the loops ask.
 */
final class TurnLoops {

    private final Gains gains;
    private final Inertia inertia;
    private final double[] rateIntegral = new double[3];
    private final double[] turning = new double[3];
    private final double[] rateMiss = new double[3];
    private double slowYawNm;

    TurnLoops(Gains gains, Inertia inertia) {
        this.gains = gains;
        this.inertia = inertia;
    }

    /** Forgets what integrals hold. */
    void begin() {
        Arrays.fill(rateIntegral, 0);
        slowYawNm = 0;
    }

    /** Angular acceleration that an integral holds, 0 roll, 1 pitch, 2 yaw, rad/s². */
    double rateIntegralRadps2(int axis) {
        return rateIntegral[axis];
    }

    /**
     * Moments of one step.
     *
     * @param felt as {@link Controller#step} has it
     * @param attitude with its error
     * @param mostYawRadps greatest rate of turn about the upright axis that is asked, rad/s
     * @param share of the moments that is asked, 0 to 1
     * @param wrench out: roll, pitch and yaw at 1, 2, 3, N·m
     */
    void step(
            double dtS,
            double[] felt,
            Attitude attitude,
            double mostYawRadps,
            double share,
            double[] wrench) {
        double wx = felt[BodyState.WX];
        double wy = felt[BodyState.WY];
        double wz = felt[BodyState.WZ];
        for (int k = 0; k < 3; k++) {
            double rate =
                    gains.anglePerS[k] > 0
                            ? Approach.speed(
                                    attitude.error[k], gains.anglePerS[k], gains.turnRadps2[k])
                            : 0;
            if (k == 2) {
                rate = Math.clamp(rate, -mostYawRadps, mostYawRadps);
            }
            turning[k] = gains.ratePerS[k] * (rate - felt[BodyState.WX + k]) + rateIntegral[k];
            rateMiss[k] = rate - felt[BodyState.WX + k];
        }
        double hx = inertia.xx() * wx + inertia.xy() * wy + inertia.xz() * wz;
        double hy = inertia.xy() * wx + inertia.yy() * wy + inertia.yz() * wz;
        double hz = inertia.xz() * wx + inertia.yz() * wy + inertia.zz() * wz;
        wrench[1] =
                inertia.xx() * turning[0]
                        + inertia.xy() * turning[1]
                        + inertia.xz() * turning[2]
                        + wy * hz
                        - wz * hy;
        wrench[2] =
                inertia.xy() * turning[0]
                        + inertia.yy() * turning[1]
                        + inertia.yz() * turning[2]
                        + wz * hx
                        - wx * hz;
        double yaw =
                inertia.xz() * turning[0]
                        + inertia.yz() * turning[1]
                        + inertia.zz() * turning[2]
                        + wx * hy
                        - wy * hx;
        if (gains.yawSlowedS > 0) {
            double most = 2 * gains.turnRadps2[2] * inertia.zz();
            yaw = Math.clamp(yaw, -most, most);
            slowYawNm += (1 - Math.exp(-dtS / gains.yawSlowedS)) * (yaw - slowYawNm);
            yaw = slowYawNm;
        }
        wrench[3] = gains.ratePerS[2] > 0 ? yaw : 0;
        if (share < 1) {
            wrench[1] *= share;
            wrench[2] *= share;
            wrench[3] *= share;
        }
    }

    /**
     * Integrals of turn rate, which stop where the fans give less than was asked. Of a free rig,
     * after the mixer has shared out what {@link #step} asked.
     */
    void unwind(double dtS, double[] wrench, Mixer mixer) {
        for (int k = 0; k < 3; k++) {
            boolean held = mixer.saturated() && lacks(k, wrench, mixer);
            double bound = 2 * gains.turnRadps2[k];
            if (!held) {
                rateIntegral[k] =
                        Math.clamp(
                                rateIntegral[k] + dtS * gains.ratePerS2[k] * rateMiss[k],
                                -bound,
                                bound);
            }
        }
    }

    /** Whether less is given about an axis than was asked, on the side to which the rate misses. */
    private boolean lacks(int axis, double[] wrench, Mixer mixer) {
        double lacks = wrench[axis + 1] - mixer.got(axis + 1);
        return Math.abs(lacks) > 0.02 * Math.abs(wrench[axis + 1]) && lacks * rateMiss[axis] > 0;
    }
}
