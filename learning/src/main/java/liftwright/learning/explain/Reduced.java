package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.List;
import liftwright.learning.fit.Scatter;
import liftwright.numerics.CholeskyFactor;

/**
 * Inner products of effects in the metric of all doubt that has nothing to do with a cause: noise,
 * errors of instruments, what the model leaves out, and what was declared, the last as columns of
 * effects of independent standard normal numbers. With P the inverse of that covariance, ⟨v, w⟩ =
 * vᵀ P w, by the identity of Woodbury.
 */
final class Reduced {

    private final Scatter scatter;
    private final double[][] columns;
    private final int doubts;
    private final CholeskyFactor factor;
    private final double logDeterminant;

    /** A vector, whitened, with what of it doubt could be. */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Vector(double[] white, double[] along) {}

    /**
     * @param doubts effects of what was declared, in standard deviations; not whitened
     */
    Reduced(Scatter scatter, List<double[]> doubts) {
        this.scatter = scatter;
        this.doubts = doubts.size();
        List<double[]> all = new ArrayList<>();
        doubts.forEach(column -> all.add(scatter.whiten(column.clone())));
        scatter.shared().forEach(column -> all.add(scatter.whiten(column)));
        columns = all.toArray(double[][]::new);
        double[][] inner = new double[columns.length][columns.length];
        for (int i = 0; i < columns.length; i++) {
            for (int j = 0; j <= i; j++) {
                inner[i][j] = dot(columns[i], columns[j]) + (i == j ? 1 : 0);
                inner[j][i] = inner[i][j];
            }
        }
        factor = CholeskyFactor.of(inner);
        logDeterminant = scatter.logDeterminant() + factor.logDeterminant();
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    Vector of(double[] stacked) {
        double[] white = scatter.whiten(stacked.clone());
        return new Vector(white, along(white, 0, white.length));
    }

    /** A vector that is not 0 only in one channel. */
    Vector ofChannel(double[] stacked, int channel, int blocks) {
        double[] white = stacked.clone();
        scatter.factor(channel).whiten(white, scatter.at(channel));
        return new Vector(white, along(white, scatter.at(channel), scatter.at(channel) + blocks));
    }

    private double[] along(double[] white, int from, int to) {
        double[] along = new double[columns.length];
        for (int d = 0; d < columns.length; d++) {
            double sum = 0;
            for (int i = from; i < to; i++) {
                sum += columns[d][i] * white[i];
            }
            along[d] = sum;
        }
        factor.whiten(along, 0);
        return along;
    }

    double product(Vector a, Vector b) {
        return dot(a.white, b.white) - dot(a.along, b.along);
    }

    /** ln det of the whole covariance. */
    double logDeterminant() {
        return logDeterminant;
    }

    /** Most probable deviates of what was declared, given what is left of the readings. */
    double[] deviates(Vector left) {
        double[] all = left.along.clone();
        factor.back(all);
        return java.util.Arrays.copyOf(all, doubts);
    }

    /**
     * Standard deviation of a sum of the deviates, given what was read.
     *
     * @param weights one for each doubt
     */
    double deviation(double[] weights) {
        double[] all = java.util.Arrays.copyOf(weights, columns.length);
        factor.whiten(all, 0);
        return Math.sqrt(dot(all, all));
    }

    /** Makes of standard normal numbers, one for each column, a draw about the deviates. */
    double[] draw(Vector left, double[] normal) {
        double[] all = left.along.clone();
        for (int k = 0; k < all.length; k++) {
            all[k] += normal[k];
        }
        factor.back(all);
        return java.util.Arrays.copyOf(all, doubts);
    }

    int columns() {
        return columns.length;
    }
}
