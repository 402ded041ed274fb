package liftwright.flight.loops;

import java.util.Arrays;

/** Symmetric matrices of four rows, of which some may say nothing. */
final class Small {

    /** Of a diagonal element as declared, what is left where a row depends on those before it. */
    private static final double DEPENDENT = 1e-13;

    private Small() {}

    /**
     * Inverse of a matrix that is not below zero. A row that depends on the rows before it, or is
     * nothing, is left out: its row and column of the inverse are nothing.
     */
    static double[][] inverse(double[][] matrix) {
        int n = matrix.length;
        double[][] inverse = new double[n][n];
        double[] flat = new double[n * n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(matrix[i], 0, flat, n * i, n);
        }
        double[] right = new double[n];
        double[] out = new double[n];
        double[] scratch = new double[n * n];
        for (int column = 0; column < n; column++) {
            Arrays.fill(right, 0);
            right[column] = 1;
            solve(n, flat, right, out, scratch);
            for (int row = 0; row < n; row++) {
                inverse[row][column] = out[row];
            }
        }
        return inverse;
    }

    /**
     * Solves a x = b by Cholesky's factors.
     *
     * @param a in: row by row, symmetric, not below zero
     * @param b in
     * @param x out
     * @param l scratch: as long as a
     */
    static void solve(int n, double[] a, double[] b, double[] x, double[] l) {
        factor(n, a, l);
        solveFactored(n, l, b, x);
    }

    /**
     * Cholesky's factor, to solve with more than once.
     *
     * @param a in: its lower half is read
     * @param l out
     */
    static void factor(int n, double[] a, double[] l) {
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = a[n * i + j];
                for (int k = 0; k < j; k++) {
                    sum -= l[n * i + k] * l[n * j + k];
                }
                if (i == j) {
                    l[n * i + i] = sum > DEPENDENT * a[n * i + i] ? Math.sqrt(sum) : 0;
                } else {
                    l[n * i + j] = l[n * j + j] > 0 ? sum / l[n * j + j] : 0;
                }
            }
        }
    }

    /** Solves a x = b with the factor of a. */
    static void solveFactored(int n, double[] l, double[] b, double[] x) {
        for (int i = 0; i < n; i++) {
            double sum = b[i];
            for (int k = 0; k < i; k++) {
                sum -= l[n * i + k] * x[k];
            }
            x[i] = l[n * i + i] > 0 ? sum / l[n * i + i] : 0;
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = x[i];
            for (int k = i + 1; k < n; k++) {
                sum -= l[n * k + i] * x[k];
            }
            x[i] = l[n * i + i] > 0 ? sum / l[n * i + i] : 0;
        }
    }
}
