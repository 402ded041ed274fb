package liftwright.numerics;

import org.hipparchus.special.Beta;

/**
 * Two order statistics that hold a quantile between them, whatever the distribution [CONOVER99]: of
 * n values Binomial(n, p) many lie below the quantile of p, so P(x₍ᵣ₎ ≤ q ≤ x₍ₛ₎) ≥ P(r ≤ B &lt;
 * s).
 *
 * @param lowerRank r, from 1; 0 where the sample is too small to bound it from below
 * @param upperRank s, up to n; n + 1 where the sample is too small to bound it from above
 */
public record QuantileInterval(int lowerRank, int upperRank) {

    /**
     * The ranks with at most half of what the confidence leaves on either side.
     *
     * @param n size of the sample, ≥ 1
     * @param probability p in (0, 1)
     * @param confidence two-sided, in (0, 1)
     */
    public static QuantileInterval of(int n, double probability, double confidence) {
        if (n < 1 || !(probability > 0 && probability < 1) || !(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException(
                    "no interval of the quantile " + probability + " from " + n);
        }
        double tail = (1 - confidence) / 2;
        return new QuantileInterval(lower(n, probability, tail), upper(n, probability, tail));
    }

    /** Greatest r with P(B ≤ r − 1) ≤ tail. */
    private static int lower(int n, double p, double tail) {
        int low = 0;
        int high = n + 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (atMost(middle - 1, n, p) <= tail) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Least s with P(B ≥ s) ≤ tail. */
    private static int upper(int n, double p, double tail) {
        int low = 0;
        int high = n + 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (1 - atMost(middle - 1, n, p) <= tail) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /** P(B ≤ k), B binomial. */
    private static double atMost(int k, int n, double p) {
        if (k < 0) {
            return 0;
        }
        return k >= n ? 1 : Beta.regularizedBeta(1 - p, n - k, k + 1.0);
    }
}
