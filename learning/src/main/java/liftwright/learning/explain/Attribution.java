package liftwright.learning.explain;

import java.util.List;

/**
 * Missing lift shared out among groups of causes, each newton once: predicted − Σ shares =
 * measured, to rounding. Lift is the mean over the time in which at least {@link #FULL} of the
 * greatest lift was promised: what is wrong has no say in it.
 *
 * @param predictedN lift as declared, N
 * @param measuredN lift measured, N
 * @param shares one for each group that can have any; the last is what is not explained
 */
public record Attribution(double predictedN, double measuredN, List<Share> shares) {

    /** Moments at which at least this share of the greatest lift was promised count. */
    public static final double FULL = 0.8;

    /** Where no channel tells lift. */
    public static final Attribution NONE = new Attribution(0, 0, List.of());

    public Attribution {
        shares = List.copyOf(shares);
    }

    /**
     * @param missingN newtons that this group takes from the lift; below 0 where it gives
     * @param lowN 2.5 % of the probability lie below, N
     * @param highN 2.5 % lie above, N
     */
    public record Share(CauseGroup group, double missingN, double lowN, double highN) {}
}
