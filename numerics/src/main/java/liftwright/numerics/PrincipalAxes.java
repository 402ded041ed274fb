package liftwright.numerics;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Principal axes of a symmetric matrix, the largest first: A = Σ value · axis axisᵀ, axes of length
 * one at right angles. By cyclic Jacobi rotations, which find small values of a positive matrix
 * well.
 *
 * <p>Source: Golub and Van Loan [GOLUB13], Jacobi methods for the symmetric eigenvalue problem.
 */
public final class PrincipalAxes {

    private static final int MOST_SWEEPS = 60;

    private final double[] values;
    private final double[][] axes;

    private PrincipalAxes(double[] values, double[][] axes) {
        this.values = values;
        this.axes = axes;
    }

    /**
     * @param matrix in: symmetric
     */
    public static PrincipalAxes of(double[][] matrix) {
        int n = matrix.length;
        double[][] a = new double[n][];
        double[][] v = new double[n][n];
        double size = 0;
        for (int i = 0; i < n; i++) {
            a[i] = matrix[i].clone();
            v[i][i] = 1;
            for (double x : a[i]) {
                size = Math.hypot(size, x);
            }
        }
        for (int sweep = 0; sweep < MOST_SWEEPS && aside(a) > 1e-15 * size; sweep++) {
            for (int p = 0; p < n; p++) {
                for (int q = p + 1; q < n; q++) {
                    rotate(a, v, p, q);
                }
            }
        }
        int[] order =
                IntStream.range(0, n)
                        .boxed()
                        .sorted(Comparator.comparingDouble((Integer i) -> -a[i][i]))
                        .mapToInt(Integer::intValue)
                        .toArray();
        double[] values = new double[n];
        double[][] axes = new double[n][n];
        for (int k = 0; k < n; k++) {
            values[k] = a[order[k]][order[k]];
            for (int i = 0; i < n; i++) {
                axes[k][i] = v[i][order[k]];
            }
        }
        return new PrincipalAxes(values, axes);
    }

    private static double aside(double[][] a) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < i; j++) {
                sum = Math.hypot(sum, a[i][j]);
            }
        }
        return sum;
    }

    private static void rotate(double[][] a, double[][] v, int p, int q) {
        if (a[p][q] == 0) {
            return;
        }
        double theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
        double t = Math.copySign(1, theta) / (Math.abs(theta) + Math.hypot(1, theta));
        double c = 1 / Math.hypot(1, t);
        double s = t * c;
        for (int k = 0; k < a.length; k++) {
            double kp = a[k][p];
            double kq = a[k][q];
            a[k][p] = c * kp - s * kq;
            a[k][q] = s * kp + c * kq;
        }
        for (int k = 0; k < a.length; k++) {
            double pk = a[p][k];
            double qk = a[q][k];
            a[p][k] = c * pk - s * qk;
            a[q][k] = s * pk + c * qk;
            double kp = v[k][p];
            double kq = v[k][q];
            v[k][p] = c * kp - s * kq;
            v[k][q] = s * kp + c * kq;
        }
    }

    public int size() {
        return values.length;
    }

    /** The value along axis k; axis 0 has the largest. */
    public double value(int k) {
        return values[k];
    }

    /** Axis k, of length one. */
    public double[] axis(int k) {
        return axes[k].clone();
    }
}
