package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Weighs hypotheses by the density of what was measured under each, all doubt integrated out: that
 * of what was declared, of instruments and of what the model leaves out analytically, that of sizes
 * and of how much is left out over a grid. Pairs of causes are tried for the likeliest few with
 * every other, their effects added.
 *
 * <p>Source: Bayes factors after Kass and Raftery [KASS95].
 */
final class Weigher {

    /** Sizes of a cause, and of each of two. */
    private static final int SIZES = 120;

    private static final int PAIR_SIZES = 24;

    /** Rounds in which a grid of sizes closes in, and logarithms below which nothing counts. */
    private static final int ROUNDS = 3;

    private static final double NEGLIGIBLE = 12;

    /** So many are tried with every other. */
    static final int FIRST = 6;

    private final List<Setting> settings;
    private final List<Hypothesis> hypotheses;
    private final Optional<FreePatterns> patterns;
    private final List<Together> together;

    /** For each pair that was run together: what it does beyond, in each setting. */
    private final List<Reduced.Vector[]> beyond = new ArrayList<>();

    /**
     * One way in which the scatter may be.
     *
     * @param prior how likely that is
     * @param left readings less predicted as declared
     */
    record Setting(double prior, Reduced reduced, Reduced.Vector left) {}

    /**
     * One or two causes.
     *
     * @param first number of a hypothesis; −1 for none
     * @param second number of another; −1 for none
     * @param log ln of density times prior, over that of nothing
     */
    record Weight(int first, int second, double log) {
        boolean isPair() {
            return second >= 0;
        }
    }

    /** Products of one hypothesis in one setting. */
    private static final class Products {
        final Reduced.Vector[] effects;
        final double[][] inner;
        final double[] left;

        Products(Setting setting, Hypothesis hypothesis) {
            int n = hypothesis.sizes().length;
            effects = new Reduced.Vector[n];
            inner = new double[n][n];
            left = new double[n];
            for (int i = 0; i < n; i++) {
                effects[i] = setting.reduced.of(hypothesis.effects()[i]);
                left[i] = setting.reduced.product(effects[i], setting.left);
                for (int j = 0; j <= i; j++) {
                    inner[i][j] = setting.reduced.product(effects[i], effects[j]);
                    inner[j][i] = inner[i][j];
                }
            }
        }
    }

    private final Products[][] products;
    private final Grid[] grids;
    private final double[] logNothing;
    private final double[] logOther;

    /**
     * @param together what some pairs do beyond what each of them does alone
     * @param patterns empty where causes are only weighed against each other
     */
    Weigher(
            List<Setting> settings,
            List<Hypothesis> hypotheses,
            List<Together> together,
            Optional<FreePatterns> patterns) {
        this.together = List.copyOf(together);
        for (Together pair : together) {
            beyond.add(
                    settings.stream()
                            .map(setting -> setting.reduced.of(pair.effect()))
                            .toArray(Reduced.Vector[]::new));
        }
        this.settings = List.copyOf(settings);
        this.hypotheses = List.copyOf(hypotheses);
        this.patterns = patterns;
        products = new Products[settings.size()][hypotheses.size()];
        grids = new Grid[hypotheses.size()];
        logNothing = new double[settings.size()];
        logOther = new double[settings.size()];
        for (int s = 0; s < settings.size(); s++) {
            Setting setting = settings.get(s);
            logNothing[s] =
                    Math.log(setting.prior)
                            - 0.5
                                    * (setting.reduced.logDeterminant()
                                            + setting.reduced.product(setting.left, setting.left));
            logOther[s] = logNothing[s] + patternLog(setting.reduced, setting.left);
            for (int h = 0; h < hypotheses.size(); h++) {
                products[s][h] = new Products(setting, hypotheses.get(h));
            }
        }
        for (int h = 0; h < grids.length; h++) {
            grids[h] = refined(h);
        }
    }

    /** The sizes that count, finely: where any setting has more than e^−12 of its best. */
    private Grid refined(int h) {
        Grid grid = Grid.whole(hypotheses.get(h), SIZES);
        for (int round = 0; round < ROUNDS && grid.size() > 1; round++) {
            int from = grid.size() - 1;
            int to = 0;
            for (int s = 0; s < settings.size(); s++) {
                double[] logs = sizeLogs(s, h, grid);
                double most = max(logs);
                for (int k = 0; k < logs.length; k++) {
                    if (logs[k] > most - NEGLIGIBLE) {
                        from = Math.min(from, k);
                        to = Math.max(to, k);
                    }
                }
            }
            grid = grid.within(from, to);
        }
        return grid;
    }

    private static double max(double[] of) {
        double most = Double.NEGATIVE_INFINITY;
        for (double one : of) {
            most = Math.max(most, one);
        }
        return most;
    }

    /** ln of the density of nothing beyond what was declared. */
    double logNothing() {
        return logSum(logNothing);
    }

    /** ln of density times prior of none of these, over nothing. */
    double logOther(double prior) {
        return Math.log(prior) + logSum(logOther) - logNothing();
    }

    /** All single causes and the pairs worth telling, likeliest first. */
    List<Weight> weights(double pairPrior) {
        List<Weight> singles = new ArrayList<>();
        for (int h = 0; h < hypotheses.size(); h++) {
            double[] logs = new double[settings.size()];
            for (int s = 0; s < logs.length; s++) {
                logs[s] = logNothing[s] + logSum(sizeLogs(s, h, grid(h)));
            }
            singles.add(
                    new Weight(
                            h,
                            -1,
                            Math.log(hypotheses.get(h).prior()) + logSum(logs) - logNothing()));
        }
        singles.sort(Comparator.comparingDouble((Weight weight) -> -weight.log));
        List<Weight> all = new ArrayList<>(singles);
        if (pairPrior > 0) {
            for (int k = 0; k < Math.min(FIRST, singles.size()); k++) {
                pairs(singles.get(k), singles, k, pairPrior, all);
            }
        }
        all.sort(Comparator.comparingDouble((Weight weight) -> -weight.log));
        return all;
    }

    private void pairs(
            Weight first, List<Weight> singles, int rank, double prior, List<Weight> into) {
        for (int k = rank + 1; k < singles.size(); k++) {
            int second = singles.get(k).first;
            Hypothesis a = hypotheses.get(first.first);
            Hypothesis b = hypotheses.get(second);
            if (a.cause().part().equals(b.cause().part()) && !a.cause().part().isEmpty()) {
                continue; // two things wrong with one part: told as one
            }
            double[] logs = new double[settings.size()];
            for (int s = 0; s < logs.length; s++) {
                logs[s] = logNothing[s] + pairLog(s, first.first, second);
            }
            into.add(
                    new Weight(
                            first.first,
                            second,
                            Math.log(prior * a.prior() * b.prior()) + logSum(logs) - logNothing()));
        }
    }

    Grid grid(int h) {
        return grids[h];
    }

    /** For each size: ln of its share of the prior times its density over that of nothing. */
    double[] sizeLogs(int s, int h, Grid grid) {
        double[] logs = alone(s, h, grid, new double[grid.size()][products[s][h].left.length]);
        for (int k = 0; k < logs.length; k++) {
            logs[k] += grid.logShare();
        }
        return logs;
    }

    private static double form(double[] weights, Products of) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] != 0) {
                sum += weights[i] * of.left[i];
                for (int j = 0; j < weights.length; j++) {
                    sum -= 0.5 * weights[i] * weights[j] * of.inner[i][j];
                }
            }
        }
        return sum;
    }

    /** The cross products of two hypotheses at one setting. */
    private double[][] cross(int s, int a, int b) {
        Products one = products[s][a];
        Products two = products[s][b];
        double[][] cross = new double[one.effects.length][two.effects.length];
        for (int i = 0; i < cross.length; i++) {
            for (int j = 0; j < cross[i].length; j++) {
                cross[i][j] = settings.get(s).reduced.product(one.effects[i], two.effects[j]);
            }
        }
        return cross;
    }

    private double pairLog(int s, int a, int b) {
        return logSum(joint(s, a, b, PAIR_SIZES).logs);
    }

    /** Two causes over a grid of their sizes; logs hold the share of the prior. */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Joint(double[] first, double[] second, double[] logs) {}

    Joint joint(int s, int a, int b, int count) {
        double[][] cross = cross(s, a, b);
        Grid one = Grid.whole(hypotheses.get(a), count);
        Grid two = Grid.whole(hypotheses.get(b), count);
        for (int round = 0; round < ROUNDS; round++) {
            double[] logs = joint(s, a, b, cross, one, two).logs;
            double most = max(logs);
            int[] from = {one.size() - 1, two.size() - 1};
            int[] to = {0, 0};
            for (int k = 0; k < logs.length; k++) {
                if (logs[k] > most - NEGLIGIBLE) {
                    int i = k / two.size();
                    int j = k % two.size();
                    from[0] = Math.min(from[0], i);
                    to[0] = Math.max(to[0], i);
                    from[1] = Math.min(from[1], j);
                    to[1] = Math.max(to[1], j);
                }
            }
            one = one.within(from[0], to[0]);
            two = two.within(from[1], to[1]);
        }
        return joint(s, a, b, cross, one, two);
    }

    private Joint joint(int s, int a, int b, double[][] cross, Grid one, Grid two) {
        double[][] weightsA = new double[one.size()][cross.length];
        double[][] weightsB = new double[two.size()][cross[0].length];
        double[] aloneA = alone(s, a, one, weightsA);
        double[] aloneB = alone(s, b, two, weightsB);
        double[] first = new double[one.size() * two.size()];
        double[] second = new double[first.length];
        double[] logs = new double[first.length];
        double share = one.logShare() + two.logShare();
        int pair = pair(a, b);
        if (pair >= 0) {
            share += beyond(s, beyond.get(pair)[s], a, weightsA, aloneA);
            beyond(s, beyond.get(pair)[s], b, weightsB, aloneB);
        }
        double[] across = new double[cross[0].length];
        for (int i = 0; i < one.size(); i++) {
            for (int n = 0; n < across.length; n++) {
                across[n] = 0;
                for (int m = 0; m < cross.length; m++) {
                    across[n] += weightsA[i][m] * cross[m][n];
                }
            }
            for (int j = 0; j < two.size(); j++) {
                int k = i * two.size() + j;
                first[k] = one.at(i);
                second[k] = two.at(j);
                logs[k] = aloneA[i] + aloneB[j] - Reduced.dot(across, weightsB[j]) + share;
            }
        }
        return new Joint(first, second, logs);
    }

    private int pair(int a, int b) {
        for (int k = 0; k < together.size(); k++) {
            if (together.get(k).isOf(a, b)) {
                return k;
            }
        }
        return -1;
    }

    /** What two do beyond each alone, at fixed sizes: with each size of one, and by itself. */
    private double beyond(int s, Reduced.Vector more, int h, double[][] weights, double[] alone) {
        Setting setting = settings.get(s);
        Products of = products[s][h];
        double[] with = new double[of.effects.length];
        for (int m = 0; m < with.length; m++) {
            with[m] = setting.reduced.product(more, of.effects[m]);
        }
        for (int k = 0; k < alone.length; k++) {
            alone[k] -= Reduced.dot(with, weights[k]);
        }
        return setting.reduced.product(more, setting.left)
                - 0.5 * setting.reduced.product(more, more);
    }

    /** What a cause of a pair takes of the lift beside the other over what it takes alone, N. */
    double beyondN(Weight weight, int h) {
        int pair = weight.isPair() ? pair(weight.first, weight.second) : -1;
        return pair < 0 ? 0 : together.get(pair).newtons(h);
    }

    private double[] alone(int s, int h, Grid grid, double[][] weights) {
        double[] logs = new double[grid.size()];
        for (int k = 0; k < logs.length; k++) {
            hypotheses.get(h).weights(grid.at(k), weights[k]);
            logs[k] = form(weights[k], products[s][h]);
        }
        return logs;
    }

    /** How likely each setting is under one weight. */
    double[] settingShares(Weight weight) {
        double[] logs = new double[settings.size()];
        for (int s = 0; s < logs.length; s++) {
            logs[s] = logNothing[s];
            if (weight.isPair()) {
                logs[s] += pairLog(s, weight.first, weight.second);
            } else if (weight.first >= 0) {
                logs[s] += logSum(sizeLogs(s, weight.first, grid(weight.first)));
            }
        }
        return shares(logs);
    }

    /** Effect that is left in the readings once causes of these sizes are taken away. */
    Reduced.Vector left(int s, Weight weight, double sizeA, double sizeB) {
        Reduced.Vector left = settings.get(s).left;
        double[] white = left.white().clone();
        double[] along = left.along().clone();
        take(s, weight.first, sizeA, white, along);
        take(s, weight.second, sizeB, white, along);
        int pair = weight.isPair() ? pair(weight.first, weight.second) : -1;
        if (pair >= 0) {
            Reduced.Vector more = beyond.get(pair)[s];
            for (int i = 0; i < white.length; i++) {
                white[i] -= more.white()[i];
            }
            for (int i = 0; i < along.length; i++) {
                along[i] -= more.along()[i];
            }
        }
        return new Reduced.Vector(white, along);
    }

    private void take(int s, int h, double size, double[] white, double[] along) {
        if (h < 0) {
            return;
        }
        double[] weights = new double[hypotheses.get(h).sizes().length];
        hypotheses.get(h).weights(size, weights);
        for (int k = 0; k < weights.length; k++) {
            Reduced.Vector effect = products[s][h].effects[k];
            for (int i = 0; weights[k] != 0 && i < white.length; i++) {
                white[i] -= weights[k] * effect.white()[i];
            }
            for (int i = 0; weights[k] != 0 && i < along.length; i++) {
                along[i] -= weights[k] * effect.along()[i];
            }
        }
    }

    /** Most probable sizes of the causes of a weight in one setting; 0 for none. */
    double[] likeliest(int s, Weight weight) {
        double[] sizes = {0, 0};
        if (weight.isPair()) {
            Joint joint = joint(s, weight.first(), weight.second(), 48);
            int best = best(joint.logs());
            sizes[0] = joint.first()[best];
            sizes[1] = joint.second()[best];
        } else if (weight.first() >= 0) {
            Grid grid = grid(weight.first());
            sizes[0] = grid.at(best(sizeLogs(s, weight.first(), grid)));
        }
        return sizes;
    }

    private static int best(double[] logs) {
        int best = 0;
        for (int k = 1; k < logs.length; k++) {
            best = logs[k] > logs[best] ? k : best;
        }
        return best;
    }

    List<Setting> settings() {
        return settings;
    }

    /** ln of the Bayes factor of a free pattern in what is left; 0 where none is looked for. */
    double patternLog(Reduced reduced, Reduced.Vector left) {
        return patterns.map(of -> of.logFactor(reduced, left)).orElse(0.0);
    }

    /** Shares of logarithms. */
    static double[] shares(double[] logs) {
        double sum = logSum(logs);
        return IntStream.range(0, logs.length).mapToDouble(k -> Math.exp(logs[k] - sum)).toArray();
    }

    /** Logarithm of a sum of exponentials. */
    static double logSum(double[] logs) {
        double most = Double.NEGATIVE_INFINITY;
        for (double log : logs) {
            most = Math.max(most, log);
        }
        if (most == Double.NEGATIVE_INFINITY) {
            return most;
        }
        double sum = 0;
        for (double log : logs) {
            sum += Math.exp(log - most);
        }
        return most + Math.log(sum);
    }
}
