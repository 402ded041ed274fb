package liftwright.numerics;

import org.hipparchus.complex.Complex;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
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
        RealMatrix loop = reached.multiply(new Array2DRowRealMatrix(real)).multiply(shared);
        double least = Double.POSITIVE_INFINITY;
        for (Complex value : new EigenDecompositionNonSymmetric(loop).getEigenvalues()) {
            least = Math.min(least, value.getReal());
        }
        return least;
    }
}
