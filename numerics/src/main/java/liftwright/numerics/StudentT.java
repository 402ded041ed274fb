package liftwright.numerics;

import org.hipparchus.special.Beta;

/** Student's t: how far a value fitted to few rows may lie, in its standard deviations. */
public final class StudentT {

    private StudentT() {}

    /**
     * Probability of at most t, by the incomplete beta function I_x(ν/2, ½), x = ν/(ν + t²).
     *
     * @param freedom ν &gt; 0
     */
    public static double cdf(double t, double freedom) {
        if (!(freedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom are above 0, not " + freedom);
        }
        double tail = 0.5 * Beta.regularizedBeta(freedom / (freedom + t * t), freedom / 2, 0.5);
        return t < 0 ? tail : 1 - tail;
    }

    /**
     * t that holds a share in the middle: P(|x| ≤ t) = share.
     *
     * @param share above 0 and below 1
     * @param freedom ν &gt; 0
     */
    public static double within(double share, double freedom) {
        if (!(share > 0 && share < 1)) {
            throw new IllegalArgumentException("a share is between 0 and 1, not " + share);
        }
        double high = 1;
        while (2 * cdf(high, freedom) - 1 < share) {
            high *= 2;
        }
        return Roots.bracketed(t -> 2 * cdf(t, freedom) - 1 - share, 0, high, 1e-13 * high);
    }
}
