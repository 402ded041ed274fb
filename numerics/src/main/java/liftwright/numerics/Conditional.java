package liftwright.numerics;

/**
 * How some members of a normal vector follow others: E[rest | known] = μ_rest + K (known − μ_known)
 * with K = Σ_rk Σ_kk⁻¹.
 *
 * <p>Source: T. W. Anderson, An Introduction to Multivariate Statistical Analysis, 3rd ed., theorem
 * 2.5.1. A known member that depends on those before it counts once.
 */
public final class Conditional {

    /** A pivot this far below its diagonal is exact dependence, as in {@link JointFactor}. */
    private static final double DEPENDENT = 1e-9;

    private Conditional() {}

    /**
     * The slopes K, row by row: a row for each of {@code rest}, a column for each of {@code known}.
     *
     * @param covariance of all members, row by row
     * @param n how many members
     */
    public static double[] slopes(double[] covariance, int n, int[] known, int[] rest) {
        int m = known.length;
        double[] lower = new double[m * m];
        for (int j = 0; j < m; j++) {
            double diagonal = covariance[known[j] * n + known[j]];
            double pivot = diagonal - dot(lower, m, j, j, j);
            boolean dependent = pivot <= DEPENDENT * diagonal;
            lower[j * m + j] = dependent ? 0 : Math.sqrt(pivot);
            for (int i = j + 1; i < m && !dependent; i++) {
                double below = covariance[known[i] * n + known[j]] - dot(lower, m, i, j, j);
                lower[i * m + j] = below / lower[j * m + j];
            }
        }
        double[] slopes = new double[rest.length * m];
        for (int r = 0; r < rest.length; r++) {
            solve(covariance, n, known, rest[r], lower, slopes, r * m);
        }
        return slopes;
    }

    private static double dot(double[] lower, int m, int i, int j, int upTo) {
        double sum = 0;
        for (int k = 0; k < upTo; k++) {
            sum += lower[i * m + k] * lower[j * m + k];
        }
        return sum;
    }

    private static void solve(
            double[] covariance,
            int n,
            int[] known,
            int member,
            double[] lower,
            double[] out,
            int at) {
        int m = known.length;
        for (int i = 0; i < m; i++) {
            double left = covariance[member * n + known[i]];
            for (int k = 0; k < i; k++) {
                left -= lower[i * m + k] * out[at + k];
            }
            out[at + i] = lower[i * m + i] == 0 ? 0 : left / lower[i * m + i];
        }
        for (int i = m - 1; i >= 0; i--) {
            double left = out[at + i];
            for (int k = i + 1; k < m; k++) {
                left -= lower[k * m + i] * out[at + k];
            }
            out[at + i] = lower[i * m + i] == 0 ? 0 : left / lower[i * m + i];
        }
    }
}
