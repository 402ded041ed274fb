package liftwright.numerics;

/**
 * The distribution of a declared tolerance. Half-widths are k = 2: a normal has σ = half-width / 2;
 * unequal sides give a split normal (two halves of normals joined at the mode with equal density,
 * weights σ₋ and σ₊ over their sum), of which ± 2 σ holds 95.45 % whatever the sides; a side of
 * zero leaves a half normal. A bound is a rectangle between its ends.
 */
public final class Spread {

    private Spread() {}

    /**
     * Deviation from the nominal value at a probability; rises with it, so one uniform number per
     * factor keeps draws comparable between rigs.
     *
     * @param plus upper half-width ≥ 0
     * @param minus lower half-width ≥ 0, written positive
     * @param bound rectangle instead of a normal
     * @param uniform probability, in the open interval (0, 1)
     */
    public static double sample(double plus, double minus, boolean bound, double uniform) {
        if (bound) {
            return uniform * plus - (1 - uniform) * minus;
        }
        double sum = plus + minus;
        if (sum == 0) {
            return 0;
        }
        double below = minus / sum;
        return uniform < below
                ? minus / 2 * Gaussian.quantile(uniform / (2 * below))
                : -plus / 2 * Gaussian.quantile((1 - uniform) / (2 * (plus / sum)));
    }

    /** Probability of a deviation at or below {@code deviation}: the inverse of the above. */
    public static double cdf(double plus, double minus, boolean bound, double deviation) {
        double sum = plus + minus;
        if (sum == 0) {
            return deviation < 0 ? 0 : 1;
        }
        if (bound) {
            return Math.clamp((deviation + minus) / sum, 0, 1);
        }
        if (deviation < 0) {
            return minus == 0 ? 0 : 2 * minus / sum * Gaussian.cdf(2 * deviation / minus);
        }
        return plus == 0 ? 1 : 1 - 2 * plus / sum * Gaussian.cdf(-2 * deviation / plus);
    }

    /** Mean of the deviation: √(2/π) (σ₊ − σ₋), or the middle of a bound. */
    public static double mean(double plus, double minus, boolean bound) {
        return bound ? (plus - minus) / 2 : Math.sqrt(2 / Math.PI) * (plus - minus) / 2;
    }

    /** Standard deviation: σ² = (1 − 2/π)(σ₊ − σ₋)² + σ₊ σ₋, or (plus + minus)/√12 of a bound. */
    public static double standardDeviation(double plus, double minus, boolean bound) {
        if (bound) {
            return (plus + minus) / Math.sqrt(12);
        }
        double difference = (plus - minus) / 2;
        return Math.sqrt((1 - 2 / Math.PI) * difference * difference + plus * minus / 4);
    }
}
