package liftwright.numerics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;

/**
 * Which of many drawn numbers drive an outcome: the share of the outcome's variance that is the
 * variance of its mean at a given value of one of them, S = Var(E[Y|X]) / Var(Y), from draws that
 * were made for another purpose (given data) [PLISCHKE13]. Each is held against chance: outcomes
 * shuffled among the draws, and the greatest of all the drivers kept, so that the chance that any
 * driver at all is accused falsely is at most the level [WESTFALL93].
 *
 * <p>Shares of independent drivers add up to at most 1; what is lacking is joint work of several.
 */
public final class FirstOrderIndices {

    /** Shuffles that are usual: they tell chances down to 1 in 500. */
    public static final int USUAL_SHUFFLES = 499;

    /** Draws below which nothing is told. */
    public static final int FEWEST = 40;

    private static final int GROUPS = 20;
    private static final long CHANNEL = CounterStream.channel("first-order null");

    private FirstOrderIndices() {}

    /**
     * What is told of one driver.
     *
     * @param driver its number
     * @param share of the variance, 1; scatters about nought, so a little below it too, where the
     *     driver does nothing
     * @param standardError of the share, 1, by leaving out a twentieth of the draws at a time
     * @param chance probability that shuffled outcomes give any driver as much, 0 to 1; small where
     *     the driver is one
     */
    public record Index(int driver, double share, double standardError, double chance) {}

    /**
     * @param drivers how many
     * @param values of one driver, a number for each draw; no two drivers the same array
     * @param outcome a number for each draw; at least {@link #FEWEST}
     * @param shuffles at least 19
     * @param seed of the shuffles
     * @return one a driver, in their order; empty where the outcome is the same in every draw
     */
    public static List<Index> of(
            int drivers, IntFunction<double[]> values, double[] outcome, int shuffles, long seed) {
        if (outcome.length < FEWEST || shuffles < 19 || drivers < 1) {
            throw new IllegalArgumentException(
                    outcome.length + " draws and " + shuffles + " shuffles tell nothing");
        }
        double[] centred = centred(outcome);
        if (sumOfSquares(centred) == 0) {
            return List.of();
        }
        int[][] orders = new int[drivers][];
        for (int d = 0; d < drivers; d++) {
            orders[d] = Ranks.order(values.apply(d));
            if (orders[d].length != outcome.length) {
                throw new IllegalArgumentException("driver " + d + " has not a value a draw");
            }
        }
        int[] atLeast = new int[drivers];
        shuffle(orders, centred, shuffles, seed, atLeast);
        List<Index> found = new ArrayList<>(drivers);
        for (int d = 0; d < drivers; d++) {
            double[] sorted = new double[centred.length];
            found.add(
                    new Index(
                            d,
                            VarianceShare.of(sorted, gather(orders[d], centred, -1, sorted)),
                            jackknife(orders[d], centred),
                            (1.0 + atLeast[d]) / (1.0 + shuffles)));
        }
        return List.copyOf(found);
    }

    /** Counts for each driver how often the greatest of the shuffled ones reaches it. */
    private static void shuffle(
            int[][] orders, double[] centred, int shuffles, long seed, int[] atLeast) {
        int n = centred.length;
        int bins = VarianceShare.bins(n);
        int[][] binOf = new int[orders.length][n];
        double[] own = new double[orders.length];
        double[] sums = new double[bins];
        for (int d = 0; d < orders.length; d++) {
            for (int k = 0; k < n; k++) {
                binOf[d][orders[d][k]] = VarianceShare.bin(k, n, bins);
            }
            own[d] = between(binOf[d], centred, sums);
        }
        double[] mixed = centred.clone();
        for (int s = 0; s < shuffles; s++) {
            for (int i = n - 1; i > 0; i--) {
                int j = (int) (CounterStream.uniform(seed, CHANNEL, s, i) * (i + 1));
                double kept = mixed[i];
                mixed[i] = mixed[j];
                mixed[j] = kept;
            }
            double greatest = 0;
            for (int[] bin : binOf) {
                greatest = Math.max(greatest, between(bin, mixed, sums));
            }
            for (int d = 0; d < own.length; d++) {
                // Sums in another order differ in their last bits: equal counts as reached.
                if (greatest >= own[d] * (1 - 1e-12)) {
                    atLeast[d]++;
                }
            }
        }
    }

    /** Sum of squares between bins; the outcome's mean is nought. */
    private static double between(int[] binOf, double[] centred, double[] sums) {
        Arrays.fill(sums, 0);
        for (int i = 0; i < centred.length; i++) {
            sums[binOf[i]] += centred[i];
        }
        double total = 0;
        for (int b = 0; b < sums.length; b++) {
            int size = VarianceShare.size(b, centred.length, sums.length);
            total += sums[b] * sums[b] / size;
        }
        return total;
    }

    /** Draw k belongs to group k mod 20: which draws are left out depends on nothing drawn. */
    private static double jackknife(int[] order, double[] centred) {
        double[] sorted = new double[centred.length];
        double sum = 0;
        double squares = 0;
        for (int g = 0; g < GROUPS; g++) {
            double share = VarianceShare.of(sorted, gather(order, centred, g, sorted));
            sum += share;
            squares += share * share;
        }
        double spread = Math.max(0, squares - sum * sum / GROUPS);
        return Math.sqrt(spread * (GROUPS - 1) / GROUPS);
    }

    private static int gather(int[] order, double[] values, int without, double[] sorted) {
        int count = 0;
        for (int draw : order) {
            if (draw % GROUPS != without) {
                sorted[count++] = values[draw];
            }
        }
        return count;
    }

    private static double[] centred(double[] outcome) {
        double mean = 0;
        for (double each : outcome) {
            mean += each / outcome.length;
        }
        double[] centred = new double[outcome.length];
        boolean varies = false;
        for (int i = 0; i < centred.length; i++) {
            if (!Double.isFinite(outcome[i])) {
                throw new IllegalArgumentException("outcome " + i + " is no number");
            }
            varies |= outcome[i] != outcome[0];
            centred[i] = outcome[i] - mean;
        }
        return varies ? centred : new double[outcome.length];
    }

    private static double sumOfSquares(double[] values) {
        double sum = 0;
        for (double each : values) {
            sum += each * each;
        }
        return sum;
    }
}
