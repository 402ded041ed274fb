package liftwright.flight.pilot;

import java.util.List;

/**
 * A person who closes a loop, by the crossover model: whatever the rig does, the person answers so
 * that both together go as ω_c e^(−τs)/s round the crossover ω_c [MCRUER67]. What nobody can undo
 * stays: a first response that is the wrong way turns the phase by (z − s)/(z + s), a motion that
 * grows by (s + p)/(s − p). The size is ω_c/ω all along, so that the phase left at ω_c,
 *
 * <p>90° − ω_c τ − 2 atan(ω_c/z) − Σ (180° − 2 atan2(ω_c − Im p, Re p)),
 *
 * <p>decides by itself whether the loop is stable.
 */
public final class Person {

    /** Crossover of a person who steers with the whole body, rad/s (common practice). */
    public static final double LEAST_CROSSOVER_RADPS = 1;

    public static final double MOST_CROSSOVER_RADPS = 2;

    /** Delay of one in practice and of one who is not, s (common practice). */
    public static final double PRACTISED_S = 0.25;

    public static final double USUAL_S = 0.4;

    /** Phase that leaves something in hand: that at which bandwidth is measured [ADS33], rad. */
    public static final double EASY_RAD = Math.toRadians(45);

    /** Least phase with which a loop is flown at all, rad (common practice, from memory). */
    public static final double LEAST_RAD = Math.toRadians(20);

    private static final int STEPS = 100;

    private Person() {}

    /** Whether a person can close a loop. */
    public enum Holds {
        /** With something in hand, and at usual quickness. */
        EASILY("can be held"),
        /** With little in hand, or in practice alone. */
        HARDLY("can be held only by somebody practised"),
        NOT("cannot be held");

        private final String words;

        Holds(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * Phase left at the crossover, rad; the loop is stable where it is above 0.
     *
     * @param crossoverRadps ω_c
     * @param delayS τ
     * @param inverseRadps z; infinite without one
     * @param modes of the rig left alone; those that fade count for nothing
     */
    public static double phaseLeftRad(
            double crossoverRadps, double delayS, double inverseRadps, List<Mode> modes) {
        double left =
                Math.PI / 2
                        - crossoverRadps * delayS
                        - 2 * Math.atan2(crossoverRadps, inverseRadps);
        for (Mode mode : modes) {
            if (mode.grows()) {
                left -= lag(crossoverRadps, mode.growthPerS(), mode.turningRadps());
                if (mode.swings()) {
                    left -= lag(crossoverRadps, mode.growthPerS(), -mode.turningRadps());
                }
            }
        }
        return left;
    }

    private static double lag(double at, double growth, double turning) {
        return Math.PI - 2 * Math.atan2(at - turning, growth);
    }

    /** The most phase that is left at any crossover a person may choose, rad. */
    public static double bestPhaseRad(double delayS, double inverseRadps, List<Mode> modes) {
        double best = Double.NEGATIVE_INFINITY;
        for (int k = 0; k <= STEPS; k++) {
            double at =
                    LEAST_CROSSOVER_RADPS
                            + k * (MOST_CROSSOVER_RADPS - LEAST_CROSSOVER_RADPS) / STEPS;
            best = Math.max(best, phaseLeftRad(at, delayS, inverseRadps, modes));
        }
        return best;
    }

    /** Whether a person can close such a loop. */
    public static Holds holds(double inverseRadps, List<Mode> modes) {
        if (bestPhaseRad(USUAL_S, inverseRadps, modes) >= EASY_RAD) {
            return Holds.EASILY;
        }
        return bestPhaseRad(PRACTISED_S, inverseRadps, modes) >= LEAST_RAD
                ? Holds.HARDLY
                : Holds.NOT;
    }
}
