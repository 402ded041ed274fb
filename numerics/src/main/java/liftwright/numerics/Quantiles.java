package liftwright.numerics;

/**
 * Quantiles of a sample and their own sampling error. Definition 6 of Hyndman and Fan: the value at
 * rank (n + 1) p, linear between order statistics [HYNDMAN96].
 */
public final class Quantiles {

    private Quantiles() {}

    /**
     * Sample quantile.
     *
     * @param sorted sample, rising
     * @param probability p with 1 ≤ (n + 1) p ≤ n: a sample says nothing beyond its ends
     * @throws IllegalArgumentException if the sample is too small for that p
     */
    public static double ofSorted(double[] sorted, double probability) {
        double rank = (sorted.length + 1) * probability;
        if (!(rank >= 1 && rank <= sorted.length)) {
            throw tooSmall(sorted.length, probability);
        }
        return atRank(sorted, rank);
    }

    /**
     * Monte-Carlo standard error of that quantile without assuming a distribution: the number of
     * sample values below the true quantile is binomial with standard deviation s = √(n p (1 − p)),
     * so half the distance between the order statistics at ranks (n + 1) p ± s is the error
     * [CONOVER99].
     *
     * @throws IllegalArgumentException if one of those ranks lies outside the sample
     */
    public static double standardError(double[] sorted, double probability) {
        double rank = (sorted.length + 1) * probability;
        double spread = Math.sqrt(sorted.length * probability * (1 - probability));
        if (!(rank - spread >= 1 && rank + spread <= sorted.length)) {
            throw tooSmall(sorted.length, probability);
        }
        return (atRank(sorted, rank + spread) - atRank(sorted, rank - spread)) / 2;
    }

    /**
     * Order statistic of part of an array, in time that grows with its length; the part is
     * reordered [HOARE61].
     *
     * @param values no NaN between the two places
     * @param rank from 0, the least, to {@code to − from − 1}
     */
    public static double ofPart(double[] values, int from, int to, int rank) {
        int low = from;
        int high = to - 1;
        int wanted = from + rank;
        while (low < high) {
            double pivot = values[(low + high) >>> 1];
            int i = low;
            int j = high;
            while (i <= j) {
                while (values[i] < pivot) {
                    i++;
                }
                while (values[j] > pivot) {
                    j--;
                }
                if (i <= j) {
                    double kept = values[i];
                    values[i++] = values[j];
                    values[j--] = kept;
                }
            }
            if (wanted <= j) {
                high = j;
            } else if (wanted >= i) {
                low = i;
            } else {
                return values[wanted];
            }
        }
        return values[wanted];
    }

    private static double atRank(double[] sorted, double rank) {
        int low = (int) rank;
        double below = sorted[low - 1];
        return low == rank ? below : below + (rank - low) * (sorted[low] - below);
    }

    private static IllegalArgumentException tooSmall(int size, double probability) {
        return new IllegalArgumentException(
                "a sample of " + size + " does not reach the quantile of " + probability);
    }
}
