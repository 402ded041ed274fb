package liftwright.numerics;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * What an allocator that believes wrongly does to its loops: it shares out what is asked by the
 * pseudo-inverse of the effects it believes in, and gets what the true ones make of that. With an
 * integrator in every axis the loops come to rest where all eigenvalues of true · believed⁺ have
 * positive real parts, if they are slow enough, and run away where one has not.
 */
public final class FeedbackGain {

    /** Singular values below this share of the greatest are none. */
    private static final double RANK = 1e-9;

    /** Halvings of the interval in which the least real part lies. */
    private static final int HALVINGS = 52;

    private FeedbackGain() {}

    /**
     * Least real part of the eigenvalues of true · believed⁺ on all that the believed effects
     * reach.
     *
     * @param believed in: effect on each axis (row) of each channel (column), rows of like size
     * @param real in: what the channels do
     * @return 1 where both are the same; 1 where nothing is believed
     */
    public static double least(double[][] believed, double[][] real) {
        var svd = new SingularValueDecomposition(new Array2DRowRealMatrix(believed));
        double[] size = svd.getSingularValues();
        int rank = 0;
        while (rank < size.length && size[rank] > RANK * size[0]) {
            rank++;
        }
        if (rank == 0) {
            return 1;
        }
        RealMatrix reached =
                svd.getU().getSubMatrix(0, believed.length - 1, 0, rank - 1).transpose();
        RealMatrix shared = svd.getV().getSubMatrix(0, believed[0].length - 1, 0, rank - 1);
        for (int k = 0; k < rank; k++) {
            for (int j = 0; j < believed[0].length; j++) {
                shared.setEntry(j, k, shared.getEntry(j, k) / size[k]);
            }
        }
        return leastRealPart(
                reached.multiply(new Array2DRowRealMatrix(real)).multiply(shared).getData());
    }

    /**
     * Least real part of the eigenvalues of a square matrix of few rows: the greatest shift after
     * which all of them still lie to the right of the imaginary axis, by Routh's array of the
     * characteristic polynomial. Of n that are one and the same it has only the n-th part of the
     * digits.
     */
    static double leastRealPart(double[][] matrix) {
        double bound = 0;
        for (double[] row : matrix) {
            double sum = 0;
            for (double entry : row) {
                sum += Math.abs(entry);
            }
            bound = Math.max(bound, sum);
        }
        double low = -bound;
        double high = bound;
        for (int k = 0; k < HALVINGS; k++) {
            double middle = (low + high) / 2;
            if (allRightOf(matrix, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Whether all eigenvalues have real parts above a number. */
    private static boolean allRightOf(double[][] matrix, double shift) {
        int n = matrix.length;
        double[][] turned = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                turned[i][j] = (i == j ? shift : 0) - matrix[i][j];
            }
        }
        // Faddeev and LeVerrier: coefficients of det(λ − turned), λ^n first.
        double[] polynomial = new double[n + 1];
        polynomial[0] = 1;
        double[][] power = new double[n][n];
        for (int k = 1; k <= n; k++) {
            for (int i = 0; i < n; i++) {
                power[i][i] += polynomial[k - 1];
            }
            power = product(turned, power);
            double trace = 0;
            for (int i = 0; i < n; i++) {
                trace += power[i][i];
            }
            polynomial[k] = -trace / k;
        }
        return isStable(polynomial);
    }

    private static double[][] product(double[][] left, double[][] right) {
        int n = left.length;
        double[][] product = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                for (int k = 0; k < n; k++) {
                    product[i][j] += left[i][k] * right[k][j];
                }
            }
        }
        return product;
    }

    /** Whether all roots lie left of the imaginary axis: Routh's array has no change of sign. */
    private static boolean isStable(double[] polynomial) {
        int n = polynomial.length - 1;
        double[] before = new double[n / 2 + 2];
        double[] row = new double[n / 2 + 2];
        for (int k = 0; k <= n; k++) {
            (k % 2 == 0 ? before : row)[k / 2] = polynomial[k];
        }
        for (int k = 1; k <= n; k++) {
            if (!(row[0] > 0)) {
                return false;
            }
            double[] next = new double[row.length];
            for (int j = 0; j + 1 < row.length; j++) {
                next[j] = before[j + 1] - before[0] / row[0] * row[j + 1];
            }
            before = row;
            row = next;
        }
        return true;
    }
}
