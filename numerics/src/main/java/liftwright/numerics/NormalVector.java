package liftwright.numerics;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Several numbers that are normal together, known by mean and covariance. Immutable.
 *
 * <p>Source: any text on the multivariate normal distribution; what is left once some of the
 * numbers are known is the Schur complement of their covariance.
 */
public final class NormalVector {

    private final RealVector mean;
    private final RealMatrix covariance;

    private NormalVector(RealVector mean, RealMatrix covariance) {
        this.mean = mean;
        this.covariance = covariance;
    }

    /**
     * @param mean in: of each number
     * @param covariance in: symmetric but for rounding, positive definite where densities and
     *     conditions are asked
     */
    public static NormalVector of(double[] mean, double[][] covariance) {
        if (covariance.length != mean.length) {
            throw new IllegalArgumentException(
                    mean.length + " numbers and a covariance of " + covariance.length);
        }
        return new NormalVector(
                new ArrayRealVector(mean, true), even(new Array2DRowRealMatrix(covariance, true)));
    }

    public double[] mean() {
        return mean.toArray();
    }

    public double[][] covariance() {
        return covariance.getData();
    }

    /** Logarithm of the density at a point. */
    public double logDensity(double[] x) {
        CholeskyDecomposition factor = factor(covariance);
        RealMatrix lower = factor.getL();
        double log = -0.5 * x.length * Math.log(2 * Math.PI);
        for (int k = 0; k < x.length; k++) {
            log -= Math.log(lower.getEntry(k, k));
        }
        return log - 0.5 * squaredDistance(x);
    }

    /** Squared distance of a point from the mean, in standard deviations (Mahalanobis). */
    public double squaredDistance(double[] x) {
        RealVector off = new ArrayRealVector(x, true).subtract(mean);
        return off.dotProduct(factor(covariance).getSolver().solve(off));
    }

    /**
     * What is left to doubt once the first numbers are known.
     *
     * @param first their values; fewer than there are numbers
     */
    public NormalVector given(double[] first) {
        int known = first.length;
        int all = mean.getDimension();
        RealMatrix a = covariance.getSubMatrix(0, known - 1, 0, known - 1);
        RealMatrix b = covariance.getSubMatrix(known, all - 1, 0, known - 1);
        RealMatrix c = covariance.getSubMatrix(known, all - 1, known, all - 1);
        var solver = factor(a).getSolver();
        RealVector off = new ArrayRealVector(first, true).subtract(mean.getSubVector(0, known));
        RealVector shifted =
                mean.getSubVector(known, all - known).add(b.operate(solver.solve(off)));
        RealMatrix left = c.subtract(b.multiply(solver.solve(b.transpose())));
        return new NormalVector(shifted, even(left));
    }

    /** Rounding leaves a matrix that is not quite symmetric. */
    private static RealMatrix even(RealMatrix matrix) {
        return matrix.add(matrix.transpose()).scalarMultiply(0.5);
    }

    private static CholeskyDecomposition factor(RealMatrix matrix) {
        return new CholeskyDecomposition(matrix, 1e-9, 0);
    }

    @Override
    public String toString() {
        return "NormalVector" + Arrays.toString(mean.toArray());
    }
}
