package liftwright.numerics;

import java.util.Arrays;

/**
 * A dense positive definite matrix by its Cholesky factor A = L Lᵀ.
 *
 * <p>Source: G. H. Golub and C. F. Van Loan, Matrix Computations, 4th ed., algorithm 4.2.1.
 */
public final class PositiveDefinite {

    private final int n;
    private final double[] lower;

    private PositiveDefinite(int n, double[] lower) {
        this.n = n;
        this.lower = lower;
    }

    /**
     * @param matrix row by row; only its lower triangle is read
     * @throws ArithmeticException if it is not positive definite
     */
    public static PositiveDefinite of(double[] matrix, int n) {
        double[] lower = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i * n + j];
                for (int k = 0; k < j; k++) {
                    sum -= lower[i * n + k] * lower[j * n + k];
                }
                if (i == j) {
                    if (!(sum > 0)) {
                        throw new ArithmeticException("not positive definite at " + i);
                    }
                    lower[i * n + i] = Math.sqrt(sum);
                } else {
                    lower[i * n + j] = sum / lower[j * n + j];
                }
            }
        }
        return new PositiveDefinite(n, lower);
    }

    /** Solves L y = b in place: what is correlated by A becomes independent with variance 1. */
    public void whiten(double[] b) {
        for (int i = 0; i < n; i++) {
            double sum = b[i];
            for (int k = 0; k < i; k++) {
                sum -= lower[i * n + k] * b[k];
            }
            b[i] = sum / lower[i * n + i];
        }
    }

    /** Solves A x = b in place. */
    public void solve(double[] b) {
        whiten(b);
        for (int i = n - 1; i >= 0; i--) {
            double sum = b[i];
            for (int k = i + 1; k < n; k++) {
                sum -= lower[k * n + i] * b[k];
            }
            b[i] = sum / lower[i * n + i];
        }
    }

    /** A⁻¹, row by row. */
    public double[] inverse() {
        double[] inverse = new double[n * n];
        double[] column = new double[n];
        for (int j = 0; j < n; j++) {
            Arrays.fill(column, 0);
            column[j] = 1;
            solve(column);
            for (int i = 0; i < n; i++) {
                inverse[i * n + j] = column[i];
            }
        }
        return inverse;
    }
}
