package liftwright.rig.correction;

import java.util.ArrayList;
import java.util.List;

/** Correlations as the lower triangle of their matrix, row by row, without its diagonal of ones. */
final class Correlations {

    /** A pivot that falls below 0 by no more than this is one of rounding. */
    private static final double ROUNDING = 1e-9;

    private Correlations() {}

    /** Those of a covariance; 0 beside a value without doubt. */
    static List<Double> of(int n, double[] covariance) {
        var below = new ArrayList<Double>();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                double scale = Math.sqrt(covariance[i * n + i] * covariance[j * n + j]);
                double one = scale > 0 ? covariance[i * n + j] / scale : 0;
                // Rounding leaves complete dependence a last bit beyond 1.
                below.add(
                        Math.abs(one) > 1 && Math.abs(one) < 1 + ROUNDING
                                ? Math.copySign(1, one)
                                : one);
            }
        }
        return below;
    }

    /**
     * Whether any values can be correlated like this: the matrix is positive semi-definite, by its
     * Cholesky factor.
     */
    static boolean arePossible(int n, List<Double> below) {
        for (double one : below) {
            if (!(Math.abs(one) <= 1)) {
                return false;
            }
        }
        double[] lower = new double[n * n];
        for (int j = 0; j < n; j++) {
            double pivot = 1 - dot(lower, n, j, j, j);
            if (pivot < -ROUNDING) {
                return false;
            }
            boolean dependent = pivot <= ROUNDING;
            lower[j * n + j] = dependent ? 0 : Math.sqrt(pivot);
            for (int i = j + 1; i < n; i++) {
                double left = below.get(i * (i - 1) / 2 + j) - dot(lower, n, i, j, j);
                if (dependent && Math.abs(left) > Math.sqrt(ROUNDING)) {
                    return false;
                }
                lower[i * n + j] = dependent ? 0 : left / lower[j * n + j];
            }
        }
        return true;
    }

    private static double dot(double[] lower, int n, int i, int j, int upTo) {
        double sum = 0;
        for (int k = 0; k < upTo; k++) {
            sum += lower[i * n + k] * lower[j * n + k];
        }
        return sum;
    }
}
