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

    /** Moments of a step at which all fans are asked together: start, middle and end. */
    static final int MOMENTS = 3;

    private final RotorLaws laws;
    private final RotorNumbers numbers;
    private final int fans;

    /** One a fan. */
    private final double[] axialMps;

    private final double[] acrossMps;

    // One a fan at each moment: number of an entry is moment · fans + fan. Loops over all moments
    // are long enough to be worth while.

    /** The same of all moments. */
    private final double[] streamMps;

    // Of the numbers, taken at rest: 1/√(ρ A_e), 1/(1 + K) and ρ A_e.
    private final double[] perRootExit;
    private final double[] perLoss;
    private final double[] airKgpm;

    /** Jets asked last as they would be in still air, m/s. */
    private final double[] jetMps;

    /**
     * The inflow's share of them, its square over 1 + K, and the share of the jet in the stream.
     */
    private final double[] shares;

    private final double[] inflow;
    private final double[] exits;

    /** Above 0, or no number, where the short way does not hold. */
    private final double[] beyond;

    /** Out: thrust, N, and air through the fan, kg/s. */
    final double[] thrustN;

    final double[] flowKgps;

    FanStreams(RotorLaws laws, RotorNumbers numbers) {
        this.laws = laws;
        this.numbers = numbers;
        fans = numbers.exitM2.length;
        int all = MOMENTS * fans;
        axialMps = new double[fans];
        acrossMps = new double[fans];
        streamMps = new double[all];
        perRootExit = new double[all];
        perLoss = new double[all];
        airKgpm = new double[all];
        jetMps = new double[all];
        shares = new double[all];
        inflow = new double[all];
        exits = new double[all];
        beyond = new double[all];
        thrustN = new double[all];
        flowKgps = new double[all];
    }

    /** Still air, and the numbers as they are now. */
    void rest() {
        for (int at = 0; at < airKgpm.length; at++) {
            int fan = at % fans;
            airKgpm[at] = numbers.densityKgpm3 * numbers.exitM2[fan];
            perRootExit[at] = 1 / Math.sqrt(airKgpm[at]);
            perLoss[at] = 1 / (1 + numbers.loss[fan]);
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

    /** The same of every fan. */
    void inflow(double[] axial, double[] across) {
        System.arraycopy(axial, 0, axialMps, 0, fans);
        System.arraycopy(across, 0, acrossMps, 0, fans);
    }

    /**
     * Thrust and flow of all fans in the stream of now.
     *
     * @param radps in: their speeds at all moments, ≥ 0
     */
    void ask(double[] radps) {
        if (together(radps)) {
            return;
        }
        for (int at = 0; at < thrustN.length; at++) {
            if (!(beyond[at] <= 0)) {
                alone(at);
            }
        }
    }

    /**
     * All of them as if the short way held for each: T = ρ A_e V_e (V_e − V_a). Several short
     * loops, since one long one is not taken several fans at a time: half the time.
     *
     * @return whether it does
     */
    private boolean together(double[] radps) {
        int all = thrustN.length;
        double[] thrust = thrustN;
        double[] flow = flowKgps;
        double[] jet = jetMps;
        double[] share = shares;
        double[] exit = exits;
        for (int from = 0; from < all; from += fans) {
            System.arraycopy(axialMps, 0, streamMps, from, fans);
        }
        laws.rootStillN(radps, jet);
        for (int at = 0; at < all; at++) {
            jet[at] = jet[at] * perRootExit[at];
            share[at] = Math.max(streamMps[at] / jet[at], -FanLaw.GREATEST_DESCENT_SHARE);
        }
        for (int at = 0; at < all; at++) {
            inflow[at] = share[at] * share[at] * perLoss[at];
            beyond[at] = Math.max(LEAST_JET_MPS - jet[at], inflow[at] - FanLaw.SMALL_INFLOW);
        }
        for (int at = 0; at < all; at++) {
            exit[at] = FanLaw.exitShareOfSmall(inflow[at]);
        }
        for (int at = 0; at < all; at++) {
            flow[at] = airKgpm[at] * (exit[at] * jet[at]);
            thrust[at] = flow[at] * jet[at] * (exit[at] - share[at]);
        }
        boolean holds = true;
        for (double each : beyond) {
            holds &= each <= 0;
        }
        return holds;
    }

    private void alone(int at) {
        double jet = jetMps[at];
        double share = 0;
        double exit = 1;
        if (jet >= LEAST_JET_MPS) {
            share = Math.max(streamMps[at] / jet, -FanLaw.GREATEST_DESCENT_SHARE);
            exit = FanLaw.exitShare(share * share * perLoss[at]);
        }
        flowKgps[at] = airKgpm[at] * (exit * jet);
        thrustN[at] = flowKgps[at] * jet * (exit - share);
    }

    /** Whether the stream of now is beyond the law for a fan at the last moment asked. */
    boolean isBeyondLaw(int fan) {
        double jet = jetMps[(MOMENTS - 1) * fans + fan];
        return jet >= LEAST_JET_MPS
                && (axialMps[fan] <= -FanLaw.GREATEST_DESCENT_SHARE * jet
                        || acrossMps[fan] > GREATEST_CROSS_SHARE * jet);
    }

    /** Whether it is for any fan. */
    boolean isAnyBeyondLaw() {
        int last = (MOMENTS - 1) * fans;
        boolean all = true;
        for (int fan = 0; fan < fans; fan++) {
            double jet = jetMps[last + fan];
            all &= axialMps[fan] > -FanLaw.GREATEST_DESCENT_SHARE * jet;
            all &= acrossMps[fan] <= GREATEST_CROSS_SHARE * jet;
        }
        if (all) {
            return false;
        }
        for (int fan = 0; fan < fans; fan++) {
            if (isBeyondLaw(fan)) {
                return true;
            }
        }
        return false;
    }
}
