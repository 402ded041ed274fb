package liftwright.review.cause.truth;

import java.util.List;

/** Several normal numbers, by a Cholesky factor of the truth's own. */
@SuppressWarnings("ArrayRecordComponent") // never compared
final class Gauss {

    private final double[] mean;
    private final double[][] lower;

    Gauss(double[] mean, double[][] covariance) {
        this.mean = mean;
        int n = mean.length;
        lower = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = covariance[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= lower[i][k] * lower[j][k];
                }
                lower[i][j] = i == j ? Math.sqrt(sum) : sum / lower[j][j];
            }
        }
    }

    /** L⁻¹ v: a vector in standard deviations. */
    double[] whitened(double[] v) {
        double[] white = new double[v.length];
        for (int i = 0; i < v.length; i++) {
            double sum = v[i];
            for (int k = 0; k < i; k++) {
                sum -= lower[i][k] * white[k];
            }
            white[i] = sum / lower[i][i];
        }
        return white;
    }

    /** Squared length of a difference in standard deviations. */
    double squared(double[] difference) {
        double[] white = whitened(difference);
        double sum = 0;
        for (double each : white) {
            sum += each * each;
        }
        return sum;
    }

    double logDensity(double[] x) {
        double log = -0.5 * x.length * Math.log(2 * Math.PI);
        for (int k = 0; k < x.length; k++) {
            log -= Math.log(lower[k][k]);
        }
        return log - 0.5 * squared(difference(x, mean, 1));
    }

    static double[] difference(double[] a, double[] b, double factor) {
        double[] c = new double[a.length];
        for (int k = 0; k < c.length; k++) {
            c[k] = factor * (a[k] - b[k]);
        }
        return c;
    }

    static void addOuter(double[][] sum, double[] v, double factor) {
        for (int i = 0; i < v.length; i++) {
            for (int j = 0; j < v.length; j++) {
                sum[i][j] += factor * v[i] * v[j];
            }
        }
    }

    static double logSum(List<Double> logs) {
        double most = logs.stream().mapToDouble(Double::doubleValue).max().orElse(-1e9);
        return most + Math.log(logs.stream().mapToDouble(log -> Math.exp(log - most)).sum());
    }
}
