package liftwright.numerics;

import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * A two-sided interval for a proportion from a count of successes, exact (Clopper–Pearson): it
 * covers at least as often as it says [CLOPPER34].
 *
 * @param successes seen
 * @param trials made
 * @param confidence two-sided, 0 to 1
 * @param lower end
 * @param upper end
 */
public record ProportionInterval(
        int successes, int trials, double confidence, double lower, double upper) {

    /**
     * @throws IllegalArgumentException for fewer than one trial, successes outside 0…trials, or a
     *     confidence outside (0, 1)
     */
    public static ProportionInterval clopperPearson(int successes, int trials, double confidence) {
        if (trials < 1 || successes < 0 || successes > trials) {
            throw new IllegalArgumentException(successes + " of " + trials + " is no proportion");
        }
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException(
                    "a confidence lies between 0 and 1, not " + confidence);
        }
        double tail = (1 - confidence) / 2;
        double lower = successes == 0 ? 0 : beta(successes, trials - successes + 1.0, tail);
        double upper =
                successes == trials ? 1 : 1 - beta(trials - successes, successes + 1.0, tail);
        return new ProportionInterval(successes, trials, confidence, lower, upper);
    }

    /**
     * Fewest trials without a failure that show a reliability at a one-sided confidence: the least
     * n with R^n ≤ 1 − C.
     *
     * @param reliability R in (0, 1)
     * @param confidence C in (0, 1), one-sided
     */
    public static int trialsWithoutFailure(double reliability, double confidence) {
        return (int) Math.ceil(Math.log1p(-confidence) / Math.log(reliability));
    }

    /** Both tails are taken as lower ones, where the beta quantile keeps its relative accuracy. */
    private static double beta(double alpha, double beta, double probability) {
        return new BetaDistribution(alpha, beta, 1e-15).inverseCumulativeProbability(probability);
    }
}
