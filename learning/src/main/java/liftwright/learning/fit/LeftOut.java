package liftwright.learning.fit;

import java.util.List;
import liftwright.numerics.CholeskyFactor;

/**
 * How much the model leaves out of each channel, over what is usually left out: the share under
 * which what is left of the readings is most likely, what is still in doubt included (one step of
 * expectation and maximisation; Dempster, Laird and Rubin [DEMPSTER77]). Within bounds, and held to
 * the usual by a log-normal prior: a channel that fits nothing must not be believed away.
 */
final class LeftOut {

    private static final double[] FACTORS = {0.5, 0.6, 0.75, 0.9, 1.1, 1.35, 1.65, 2, 2.5, 3};

    /** Of the logarithm of the share, from memory. */
    private static final double PRIOR = 0.5;

    private LeftOut() {}

    /**
     * @param slopes whitened, of the chosen unknowns
     * @param covariance of these
     */
    static double[][] of(
            Stage stage,
            List<double[][]> slopes,
            double[][] covariance,
            double[][][] now,
            double[][] before,
            double memory) {
        double[][] made = new double[before.length][];
        for (int t = 0; t < before.length; t++) {
            made[t] = new double[before[t].length];
            List<Compared> channels = stage.tests().get(t).channels();
            double[][] outlying = Outliers.of(channels, now[t]);
            double[] best = Fit.filled(channels.size(), Double.NEGATIVE_INFINITY);
            double[][][] moments = moments(stage, t, slopes, covariance, now);
            for (double factor : FACTORS) {
                Scatter scatter =
                        Scatter.of(
                                channels,
                                now[t],
                                new Scatter.Assumed(
                                        Fit.filled(channels.size(), factor), memory, outlying));
                for (int c = 0; c < channels.size(); c++) {
                    double log = log(scatter.factor(c), moments[c], factor);
                    if (log > best[c]) {
                        best[c] = log;
                        made[t][c] = factor;
                    }
                }
            }
        }
        return made;
    }

    private static double log(CholeskyFactor factor, double[][] moment, double share) {
        double trace = 0;
        for (double[] row : moment) {
            double[] white = row.clone();
            factor.whiten(white, 0);
            trace += Stage.dot(white, white);
        }
        double off = Math.log(share) / PRIOR;
        return -0.5 * (factor.logDeterminant() + trace + off * off);
    }

    /**
     * For each channel vectors whose outer products add up to the second moment of what is left.
     */
    private static double[][][] moments(
            Stage stage, int t, List<double[][]> slopes, double[][] covariance, double[][][] now) {
        Scatter scatter = stage.scatters().get(t);
        List<Compared> channels = stage.tests().get(t).channels();
        int n = slopes.size();
        double[][] root = new double[n][n];
        if (n > 0) {
            CholeskyFactor factor = CholeskyFactor.of(covariance);
            for (int k = 0; k < n; k++) {
                root[k][k] = 1;
                factor.colour(root[k], 0);
            }
        }
        double[][][] moments = new double[channels.size()][n + 1][];
        for (int c = 0; c < channels.size(); c++) {
            int size = channels.get(c).size();
            moments[c][n] = new double[size];
            for (int k = 0; k < size; k++) {
                moments[c][n][k] = channels.get(c).measuredSi()[k] - now[t][c][k];
            }
            for (int k = 0; k < n; k++) {
                double[] column = new double[size];
                for (int d = 0; d < n; d++) {
                    for (int i = 0; i < size; i++) {
                        column[i] += root[k][d] * slopes.get(d)[t][scatter.at(c) + i];
                    }
                }
                scatter.factor(c).colour(column, 0);
                moments[c][k] = column;
            }
        }
        return moments;
    }
}
