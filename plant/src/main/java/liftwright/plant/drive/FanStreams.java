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
 *
 * <p>All fans are asked at once, in loops without a branch that the machine goes through several
 * fans at a time: asked one by one they took a sixth of the time of a flight. What does not hold
 * there for some fan is mended after.
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

    // Of the numbers, taken at rest: 1/(ρ A_e), 1/(1 + K) and ρ A_e.
    private final double[] perExit;
    private final double[] perLoss;
    private final double[] airKgpm;

    /** Jets of the fans asked last in still air, m/s. */
    private final double[] jetMps;

    /** Square of the inflow's share of them over 1 + K. */
    private final double[] inflow;

    private final double[] shares;
    private final double[] exits;

    FanStreams(RotorLaws laws, RotorNumbers numbers) {
        this.laws = laws;
        this.numbers = numbers;
        int fans = numbers.exitM2.length;
        axialMps = new double[fans];
        acrossMps = new double[fans];
        perExit = new double[fans];
        perLoss = new double[fans];
        airKgpm = new double[fans];
        jetMps = new double[fans];
        inflow = new double[fans];
        shares = new double[fans];
        exits = new double[fans];
    }

    /** Still air, and the numbers as they are now. */
    void rest() {
        for (int fan = 0; fan < perExit.length; fan++) {
            airKgpm[fan] = numbers.densityKgpm3 * numbers.exitM2[fan];
            perExit[fan] = 1 / airKgpm[fan];
            perLoss[fan] = 1 / (1 + numbers.loss[fan]);
        }
        Arrays.fill(axialMps, 0);
        Arrays.fill(acrossMps, 0);
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

    /**
     * Thrust of all fans in the stream of now.
     *
     * @param radps in: their speeds, ≥ 0
     * @param thrustN out
     * @param flowKgps out: air through them
     */
    void ask(double[] radps, double[] thrustN, double[] flowKgps) {
        laws.stillN(radps, thrustN);
        together(thrustN, flowKgps);
        for (int fan = 0; fan < thrustN.length; fan++) {
            if (!(jetMps[fan] >= LEAST_JET_MPS) || !(inflow[fan] <= FanLaw.SMALL_INFLOW)) {
                alone(fan, laws.stillN(fan, radps[fan]), thrustN, flowKgps);
            }
        }
    }

    /**
     * In: thrust in still air. Several short loops, since one long one is not taken several fans at
     * a time: half the time.
     */
    private void together(double[] thrustN, double[] flowKgps) {
        int fans = axialMps.length;
        double[] jet = jetMps;
        double[] share = shares;
        double[] exit = exits;
        for (int fan = 0; fan < fans; fan++) {
            jet[fan] = Math.sqrt(thrustN[fan] * perExit[fan]);
        }
        for (int fan = 0; fan < fans; fan++) {
            share[fan] = Math.max(axialMps[fan] / jet[fan], -FanLaw.GREATEST_DESCENT_SHARE);
        }
        for (int fan = 0; fan < fans; fan++) {
            inflow[fan] = share[fan] * share[fan] * perLoss[fan];
        }
        for (int fan = 0; fan < fans; fan++) {
            exit[fan] = FanLaw.exitShareOfSmall(inflow[fan]);
        }
        for (int fan = 0; fan < fans; fan++) {
            thrustN[fan] = thrustN[fan] * exit[fan] * (exit[fan] - share[fan]);
            flowKgps[fan] = airKgpm[fan] * (exit[fan] * jet[fan]);
        }
    }

    private void alone(int fan, double still, double[] thrustN, double[] flowKgps) {
        double jet = Math.sqrt(still * perExit[fan]);
        double share = 0;
        double exit = 1;
        if (jet >= LEAST_JET_MPS) {
            share = Math.max(axialMps[fan] / jet, -FanLaw.GREATEST_DESCENT_SHARE);
            exit = FanLaw.exitShare(share * share * perLoss[fan]);
        }
        thrustN[fan] = still * exit * (exit - share);
        flowKgps[fan] = airKgpm[fan] * (exit * jet);
    }

    /** Whether the stream of now is beyond the law for a fan that turns so fast. */
    boolean isBeyondLaw(int fan, double radps) {
        double jet = Math.sqrt(laws.stillN(fan, radps) * perExit[fan]);
        return jet >= LEAST_JET_MPS
                && (axialMps[fan] <= -FanLaw.GREATEST_DESCENT_SHARE * jet
                        || acrossMps[fan] > GREATEST_CROSS_SHARE * jet);
    }
}
