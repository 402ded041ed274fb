package liftwright.plant.drive;

import java.util.Arrays;
import liftwright.physics.FanLaw;
import liftwright.plant.motion.RotorLaws;
import liftwright.plant.motion.RotorNumbers;

/**
 * What fans make of the air that meets them: thrust and flow at a speed. Allocates nothing; for one
 * thread.
 *
 * <p>Thrust in a stream is that of momentum theory at equal shaft power, and torque at a given
 * speed is kept: thrust in a climb is rather too high. In a descent faster than the law holds for,
 * thrust is that at its end, and {@link #isBeyondLaw} says so.
 */
final class FanStreams {

    /** A jet slower than this is told nothing by the inflow law, m/s. */
    private static final double LEAST_JET_MPS = 0.5;

    /** Cross-flow over the jet from which the lip stalls; from memory, as in {@link FanLaw}. */
    private static final double GREATEST_CROSS_SHARE = 0.15;

    private final RotorLaws laws;
    private final RotorNumbers numbers;
    private final double[] axialMps;
    private final double[] acrossMps;
    private final boolean[] beyond;

    // Of the numbers, taken at rest: 1/(ρ A_e) and 1/(1 + K).
    private final double[] perExit;
    private final double[] perLoss;

    /** Speed of the jet of the thrust asked last, m/s. */
    private double exitMps;

    FanStreams(RotorLaws laws, RotorNumbers numbers) {
        this.laws = laws;
        this.numbers = numbers;
        int fans = numbers.exitM2.length;
        axialMps = new double[fans];
        acrossMps = new double[fans];
        beyond = new boolean[fans];
        perExit = new double[fans];
        perLoss = new double[fans];
    }

    /** Still air, and the numbers as they are now. */
    void rest() {
        for (int fan = 0; fan < perExit.length; fan++) {
            perExit[fan] = 1 / (numbers.densityKgpm3 * numbers.exitM2[fan]);
            perLoss[fan] = 1 / (1 + numbers.loss[fan]);
        }
        Arrays.fill(axialMps, 0);
        Arrays.fill(acrossMps, 0);
        Arrays.fill(beyond, false);
    }

    /**
     * The air that meets a fan from now on, m/s.
     *
     * @param axial along the thrust, above 0 where the fan flies into it
     * @param across beside it, ≥ 0
     */
    void inflow(int fan, double axial, double across) {
        axialMps[fan] = axial;
        acrossMps[fan] = across;
    }

    /** Thrust at a speed in the stream of now, N. */
    double thrustN(int fan, double radps) {
        double still = laws.stillN(fan, radps);
        double jet = Math.sqrt(still * perExit[fan]);
        if (jet < LEAST_JET_MPS) {
            exitMps = jet;
            return still;
        }
        double inflow = inflowShare(fan, jet);
        double exit = FanLaw.exitShare(inflow * inflow * perLoss[fan]);
        exitMps = exit * jet;
        return still * exit * (exit - inflow);
    }

    /** The stream along the thrust over the jet in still air, no less than the law holds for. */
    private double inflowShare(int fan, double jet) {
        double share = axialMps[fan] / jet;
        boolean falls = share <= -FanLaw.GREATEST_DESCENT_SHARE;
        beyond[fan] = falls || acrossMps[fan] > GREATEST_CROSS_SHARE * jet;
        return falls ? -FanLaw.GREATEST_DESCENT_SHARE : share;
    }

    /** Speed of the jet of the thrust asked last, of any fan, m/s. */
    double exitMps() {
        return exitMps;
    }

    /** Air through a fan whose jet is so fast, kg/s. */
    double massFlowKgps(int fan, double jetMps) {
        return numbers.densityKgpm3 * numbers.exitM2[fan] * jetMps;
    }

    /** Whether the last thrust asked of a fan was in a stream beyond the law. */
    boolean isBeyondLaw(int fan) {
        return beyond[fan];
    }
}
