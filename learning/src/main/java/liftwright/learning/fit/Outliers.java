package liftwright.learning.fit;

import java.util.Arrays;
import java.util.List;
import liftwright.numerics.CholeskyFactor;

/**
 * Blocks that lie off their neighbours by more than scatter: their noise is taken for larger, until
 * they count for no more than a value of Student's t distribution with four degrees of freedom
 * would. Iterated reweighting after Lange, Little and Taylor [LANGE89].
 *
 * <p>Held against is what all other blocks of the channel say of a block, with what the model
 * leaves out taken wide, so that a cause, which moves neighbours alike, is no outlier.
 */
public final class Outliers {

    private static final double FREEDOM = 4;
    private static final double WIDE = 4;
    private static final int ROUNDS = 8;

    private Outliers() {}

    /**
     * Factors on the variance of the noise of every block.
     *
     * @param predicted what a model says of each channel
     */
    public static double[][] of(List<Compared> channels, double[][] predicted) {
        Scatter.Assumed assumed = Scatter.Assumed.scaled(channels, WIDE, 0.1);
        double[][] factors = assumed.outlying();
        for (int round = 0; round < ROUNDS; round++) {
            Scatter scatter = Scatter.of(channels, predicted, assumed);
            Scatter clean =
                    Scatter.of(channels, predicted, Scatter.Assumed.scaled(channels, WIDE, 0.1));
            boolean moved = false;
            for (int c = 0; c < channels.size(); c++) {
                moved |=
                        update(
                                channels.get(c),
                                predicted[c],
                                scatter.factor(c),
                                clean,
                                c,
                                factors[c]);
            }
            if (!moved) {
                break;
            }
        }
        for (double[] channel : factors) {
            isolated(channel);
        }
        return factors;
    }

    /** What lasts for more than a block is no glitch: it is to be explained. */
    private static void isolated(double[] factors) {
        double[] found = factors.clone();
        for (int k = 0; k < found.length; k++) {
            boolean before = k > 0 && found[k - 1] > 1;
            boolean after = k + 1 < found.length && found[k + 1] > 1;
            factors[k] = before || after ? 1 : found[k];
        }
    }

    private static boolean update(
            Compared channel,
            double[] predicted,
            CholeskyFactor factor,
            Scatter clean,
            int c,
            double[] factors) {
        int n = predicted.length;
        double[] left = new double[n];
        for (int k = 0; k < n; k++) {
            left[k] = channel.measuredSi()[k] - predicted[k];
        }
        double[] solved = factor.solve(left);
        double[][] inverse = factor.inverse();
        double[] noise = clean.noiseVariance(c);
        boolean moved = false;
        double[] next = new double[n];
        Arrays.fill(next, 1);
        for (int k = 0; k < n; k++) {
            // What the others say of it: variance with its own noise taken off and put back clean.
            double variance = 1 / inverse[k][k] - (factors[k] - 1) * noise[k];
            double off = solved[k] / inverse[k][k];
            double square = off * off / variance;
            double wanted = (FREEDOM + square) / (FREEDOM + 1);
            if (square > 2 * FREEDOM) {
                next[k] = 1 + variance * (wanted - 1) / noise[k];
            }
            moved |= Math.abs(next[k] - factors[k]) > 0.05 * factors[k];
        }
        System.arraycopy(next, 0, factors, 0, n);
        return moved;
    }
}
