package liftwright.numerics;

/**
 * A symmetric positive definite matrix A = L Lᵀ on plain arrays, for whitening and for evidence:
 * L⁻¹ v has unit covariance where v has A. Immutable.
 *
 * <p>Source: Golub and Van Loan [GOLUB13], outer-product Cholesky by rows.
 */
public final class CholeskyFactor {

    private final double[][] lower;

    private CholeskyFactor(double[][] lower) {
        this.lower = lower;
    }

    /**
     * @param matrix in: symmetric; only the lower triangle is read
     * @throws IllegalArgumentException if it is not positive definite to rounding
     */
    public static CholeskyFactor of(double[][] matrix) {
        int n = matrix.length;
        double[][] lower = new double[n][];
        for (int i = 0; i < n; i++) {
            lower[i] = new double[i + 1];
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j] - dot(lower[i], lower[j], 0, j);
                if (i > j) {
                    lower[i][j] = sum / lower[j][j];
                } else if (sum > 1e-15 * Math.abs(matrix[i][i])) {
                    lower[i][i] = Math.sqrt(sum);
                } else {
                    throw new IllegalArgumentException("not positive definite: row " + i);
                }
            }
        }
        return new CholeskyFactor(lower);
    }

    /** Four sums side by side: one alone waits for each of its additions. */
    private static double dot(double[] a, double[] b, int from, int count) {
        double first = 0;
        double second = 0;
        double third = 0;
        double fourth = 0;
        int k = 0;
        for (; k + 3 < count; k += 4) {
            first += a[k] * b[from + k];
            second += a[k + 1] * b[from + k + 1];
            third += a[k + 2] * b[from + k + 2];
            fourth += a[k + 3] * b[from + k + 3];
        }
        for (; k < count; k++) {
            first += a[k] * b[from + k];
        }
        return first + second + (third + fourth);
    }

    public int size() {
        return lower.length;
    }

    /** ln det A. */
    public double logDeterminant() {
        double sum = 0;
        for (int i = 0; i < lower.length; i++) {
            sum += Math.log(lower[i][i]);
        }
        return 2 * sum;
    }

    /**
     * L⁻¹ v.
     *
     * @param v in and out: {@code size()} numbers from {@code at}
     */
    public void whiten(double[] v, int at) {
        for (int i = 0; i < lower.length; i++) {
            double[] row = lower[i];
            v[at + i] = (v[at + i] - dot(row, v, at, i)) / row[i];
        }
    }

    /**
     * L v: numbers without correlation become numbers with covariance A.
     *
     * @param v in and out: {@code size()} numbers from {@code at}
     */
    public void colour(double[] v, int at) {
        for (int i = lower.length - 1; i >= 0; i--) {
            double sum = 0;
            for (int k = 0; k <= i; k++) {
                sum += lower[i][k] * v[at + k];
            }
            v[at + i] = sum;
        }
    }

    /** A⁻¹ v, a new array. */
    public double[] solve(double[] v) {
        double[] x = v.clone();
        whiten(x, 0);
        back(x);
        return x;
    }

    /** L⁻ᵀ v in place: of white numbers, makes numbers with covariance A⁻¹. */
    public void back(double[] v) {
        for (int i = lower.length - 1; i >= 0; i--) {
            v[i] /= lower[i][i];
            for (int k = 0; k < i; k++) {
                v[k] -= lower[i][k] * v[i];
            }
        }
    }

    /** A⁻¹, row by row. */
    public double[][] inverse() {
        int n = lower.length;
        double[][] inverse = new double[n][];
        for (int i = 0; i < n; i++) {
            double[] unit = new double[n];
            unit[i] = 1;
            inverse[i] = solve(unit);
        }
        return inverse;
    }
}
