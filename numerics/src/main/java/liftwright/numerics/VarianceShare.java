package liftwright.numerics;

/**
 * Share of a variance that lies between bins of equal counts, freed of two biases: what the scatter
 * inside the bins lends to their means (Kelley's correction of the correlation ratio [KELLEY35]),
 * and what the mean still moves inside a bin, a twelfth of the squared step to the next bin, as for
 * a straight line.
 */
final class VarianceShare {

    private VarianceShare() {}

    /** Bins for so many draws: narrow enough for two waves across, wide enough for a mean. */
    static int bins(int draws) {
        return (int) Math.round(2 * Math.cbrt(draws));
    }

    /** The bin of the k-th of n sorted draws. */
    static int bin(int k, int n, int bins) {
        return (int) ((long) k * bins / n);
    }

    /** Draws in a bin. */
    static int size(int bin, int n, int bins) {
        return first(bin + 1, n, bins) - first(bin, n, bins);
    }

    private static int first(int bin, int n, int bins) {
        return (int) (((long) bin * n + bins - 1) / bins);
    }

    /**
     * @param sorted outcomes in the order of the driver
     * @param n how many of them count
     * @return share, 1; nought where the outcome does not vary
     */
    static double of(double[] sorted, int n) {
        int bins = bins(n);
        double[] means = new double[bins];
        double mean = 0;
        for (int k = 0; k < n; k++) {
            means[bin(k, n, bins)] += sorted[k];
            mean += sorted[k];
        }
        mean /= n;
        double between = 0;
        for (int b = 0; b < bins; b++) {
            int size = size(b, n, bins);
            means[b] /= size;
            between += size * (means[b] - mean) * (means[b] - mean);
        }
        double within = 0;
        for (int k = 0; k < n; k++) {
            double off = sorted[k] - means[bin(k, n, bins)];
            within += off * off;
        }
        double noise = within / (n - bins);
        double total = (between + within) / (n - 1);
        if (total == 0) {
            return 0;
        }
        return ((between - (bins - 1) * noise) / n + inside(means, noise, n)) / total;
    }

    /** Variance of the conditional mean inside the bins. */
    private static double inside(double[] means, double noise, int n) {
        int bins = means.length;
        double sum = 0;
        for (int b = 1; b < bins; b++) {
            double step = means[b] - means[b - 1];
            sum += step * step - noise * (1.0 / size(b, n, bins) + 1.0 / size(b - 1, n, bins));
        }
        return sum / (bins - 1) / 12;
    }
}
