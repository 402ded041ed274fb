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

    /** Four sums side by side: one alone waits for each of its additions. */
    static double dot(double[] a, double[] b) {
        double first = 0;
        double second = 0;
        double third = 0;
        double fourth = 0;
        int i = 0;
        for (; i + 3 < a.length; i += 4) {
            first += a[i] * b[i];
            second += a[i + 1] * b[i + 1];
            third += a[i + 2] * b[i + 2];
            fourth += a[i + 3] * b[i + 3];
        }
        for (; i < a.length; i++) {
            first += a[i] * b[i];
        }
        return first + second + (third + fourth);
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
        int d = 0;
        for (; d + 3 < columns.length; d += 4) {
            four(white, from, to, d, along);
        }
        for (; d < columns.length; d++) {
            for (int i = from; i < to; i++) {
                along[d] += columns[d][i] * white[i];
            }
        }
        factor.whiten(along, 0);
        return along;
    }

    /** Products with four columns from one on, side by side. */
    private void four(double[] white, int from, int to, int at, double[] along) {
        double[] one = columns[at];
        double[] two = columns[at + 1];
        double[] three = columns[at + 2];
        double[] four = columns[at + 3];
        double first = 0;
        double second = 0;
        double third = 0;
        double fourth = 0;
        for (int i = from; i < to; i++) {
            first += one[i] * white[i];
            second += two[i] * white[i];
            third += three[i] * white[i];
            fourth += four[i] * white[i];
        }
        along[at] = first;
        along[at + 1] = second;
        along[at + 2] = third;
        along[at + 3] = fourth;
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
