package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import liftwright.learning.explain.Explained.Finding;
import liftwright.learning.explain.Explained.Weighed;

/** What may be said of weighed causes: how likely each is, how large, and which are named. */
final class Judged {

    /** Before anything is measured: none of these over nothing. */
    static final double OTHER_PRIOR = 0.3;

    /** Two causes over the product of each alone. */
    static final double PAIR_PRIOR = 1.0;

    /** Nobody is accused on less than decisive evidence, 100 to 1 [KASS95], against nothing. */
    static final double ACQUITTED = 0.01;

    /**
     * What the likeliest causes leave of the readings may be as unlike doubt as this, ln of a Bayes
     * factor, or this part of their own: more, and something else is at work.
     */
    private static final double LEFTOVER = 8;

    private static final double LEFTOVER_PART = 0.2;

    /**
     * What a cause is computed to do is off by as much: where a free pattern explains no more of
     * the readings than this part beyond the likeliest causes, it is these and not something else.
     */
    private static final double COMPUTED = 0.05;

    /** Odds of the likeliest against nothing: strong evidence after Kass and Raftery [KASS95]. */
    static final double STRONG = 20;

    /** What is named together holds this part of what speaks for any cause. */
    private static final double TOLD = 0.8;

    /** A second cause is named from this share on. */
    private static final double BOTH = 0.6;

    /** Causes less likely than this are not told. */
    private static final double WORTH = 0.005;

    private final Weigher weigher;
    private final Lifted lift;
    private final List<Hypothesis> hypotheses;
    private final List<Weigher.Weight> weights;
    private final double[] shares;
    private final double nothing;
    private final double other;
    private final double logOther;
    private final double leftover;

    Judged(Weigher weigher, List<Hypothesis> hypotheses, Lifted lift) {
        this.weigher = weigher;
        this.lift = lift;
        this.hypotheses = hypotheses;
        weights = weigher.weights(PAIR_PRIOR);
        double[] logs = new double[weights.size() + 2];
        for (int k = 0; k < weights.size(); k++) {
            logs[k] = weights.get(k).log();
        }
        logs[weights.size()] = 0;
        logOther = other(weigher.logOther(OTHER_PRIOR), logs[0]);
        logs[weights.size() + 1] = logOther;
        double[] all = Weigher.shares(logs);
        shares = java.util.Arrays.copyOf(all, weights.size());
        nothing = all[weights.size()];
        other = all[weights.size() + 1];
        leftover =
                weights.isEmpty() || weights.getFirst().log() < 0
                        ? 0
                        : leftoverOf(weights.getFirst());
    }

    private static double other(double log, double likeliest) {
        boolean nearly = log > likeliest && log - likeliest < COMPUTED * log;
        return nearly ? likeliest - Math.log(STRONG) : log;
    }

    double nothing() {
        return nothing;
    }

    double other() {
        return other;
    }

    List<Weigher.Weight> weights() {
        return weights;
    }

    double share(int weight) {
        return shares[weight];
    }

    /** One of all by its share; none of these and nothing count as no cause. */
    Weigher.Weight drawn(double uniform) {
        double sum = 0;
        for (int k = 0; k < shares.length; k++) {
            sum += shares[k];
            if (uniform < sum) {
                return weights.get(k);
            }
        }
        return new Weigher.Weight(-1, -1, 0);
    }

    Weigher weigher() {
        return weigher;
    }

    /** Each cause with the share of all weights that it is part of, likeliest first. */
    List<Weighed> ranked() {
        return ranked(Map.of());
    }

    /**
     * The same.
     *
     * @param closer some of the causes as they are known better
     */
    List<Weighed> ranked(Map<Integer, Weighed> closer) {
        Map<Integer, Double> sums = sums();
        List<Weighed> ranked = new ArrayList<>();
        sums.forEach(
                (h, share) -> {
                    if (share > WORTH) {
                        ranked.add(
                                closer.containsKey(h)
                                        ? closer.get(h)
                                        : weighed(h, share, new double[0], 0));
                    }
                });
        ranked.add(new Weighed(Cause.NOTHING, nothing, 0, 0, 0, "", 0));
        ranked.add(new Weighed(Cause.OTHER, other, 0, 0, 0, "", logOther));
        ranked.sort(Comparator.comparingDouble((Weighed one) -> -one.share()));
        return ranked;
    }

    private Map<Integer, Double> sums() {
        Map<Integer, Double> sums = new LinkedHashMap<>();
        for (int k = 0; k < shares.length; k++) {
            sums.merge(weights.get(k).first(), shares[k], Double::sum);
            if (weights.get(k).isPair()) {
                sums.merge(weights.get(k).second(), shares[k], Double::sum);
            }
        }
        return sums;
    }

    /** The share of all that a cause is part of. */
    double shareOf(int h) {
        return sums().getOrDefault(h, 0.0);
    }

    private record Mass(double size, double newton, double weight) {}

    /**
     * A cause with its size.
     *
     * @param share that it is told to have
     * @param more what a standard deviation of each doubt adds to what it took, N
     * @param shiftN what the likeliest numbers add to what it took, N
     */
    Weighed weighed(int h, double share, double[] more, double shiftN) {
        Hypothesis hypothesis = hypotheses.get(h);
        double sum = shareOf(h);
        List<Mass> masses = new ArrayList<>();
        double log = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < shares.length; k++) {
            Weigher.Weight weight = weights.get(k);
            if ((weight.first() == h || weight.second() == h) && shares[k] > 0.02 * sum) {
                masses(weight, h, shares[k], masses);
            }
            if (weight.first() == h && !weight.isPair()) {
                log = weight.log() - Math.log(hypothesis.prior());
            }
        }
        masses.sort(Comparator.comparingDouble(Mass::newton));
        double low = quantile(masses, 0.05).newton;
        double high = quantile(masses, 0.95).newton;
        double middle = quantile(masses, 0.5).newton;
        masses.sort(Comparator.comparingDouble(Mass::size));
        String words =
                hypothesis
                        .unit()
                        .of(
                                quantile(masses, 0.05).size,
                                quantile(masses, 0.5).size,
                                quantile(masses, 0.95).size);
        double unsure =
                1.645
                        * Math.hypot(
                                doubtedN(h, more),
                                Math.hypot(
                                        hypothesis.unsureN(),
                                        modelled(hypothesis.cause().kind()) * middle));
        return new Weighed(
                hypothesis.cause(),
                Math.min(1, share),
                middle + shiftN,
                middle + shiftN - Math.hypot(middle - low, unsure),
                middle + shiftN + Math.hypot(high - middle, unsure),
                words,
                log);
    }

    /** How unsure doubt of the declared numbers makes newtons, standard deviation, N. */
    private double doubtedN(int h, double[] more) {
        return weigher.settings().get(setting(likeliest(h))).reduced().deviation(more);
    }

    /** Most probable deviates of what was declared, under a weight. */
    double[] deviates(Weigher.Weight weight) {
        int s = setting(weight);
        double[] sizes = weigher.likeliest(s, weight);
        Reduced.Vector left = weigher.left(s, weight, sizes[0], sizes[1]);
        return weigher.settings().get(s).reduced().deviates(left);
    }

    /** The likeliest of all that a cause is part of. */
    Weigher.Weight likeliest(int h) {
        Weigher.Weight best = new Weigher.Weight(h, -1, 0);
        double most = -1;
        for (int k = 0; k < shares.length; k++) {
            Weigher.Weight weight = weights.get(k);
            if ((weight.first() == h || weight.second() == h) && shares[k] > most) {
                best = weight;
                most = shares[k];
            }
        }
        return best;
    }

    /** Most probable sizes of the causes of a weight. */
    double[] sizes(Weigher.Weight weight) {
        return weigher.likeliest(setting(weight), weight);
    }

    /**
     * How well newtons follow from a size, relative standard deviation, from memory: thrust is
     * declared to a few in a hundred, the slope of a rest curve to a tenth.
     */
    private static double modelled(CauseKind kind) {
        return kind == CauseKind.CHARGE ? 0.12 : 0.04;
    }

    private void masses(Weigher.Weight weight, int h, double share, List<Mass> into) {
        Hypothesis hypothesis = hypotheses.get(h);
        double[] settings = weigher.settingShares(weight);
        double more = weigher.beyondN(weight, h);
        for (int s = 0; s < settings.length; s++) {
            if (settings[s] < 1e-3) {
                continue;
            }
            if (weight.isPair()) {
                Weigher.Joint joint = weigher.joint(s, weight.first(), weight.second(), 48);
                double[] of = Weigher.shares(joint.logs());
                boolean first = weight.first() == h;
                Hypothesis beside = hypotheses.get(first ? weight.second() : weight.first());
                for (int k = 0; k < of.length; k++) {
                    double size = first ? joint.first()[k] : joint.second()[k];
                    double besideN = beside.newtons(first ? joint.second()[k] : joint.first()[k]);
                    double newtons = hypothesis.newtons(size) + more;
                    add(size, lift.beside(newtons, besideN), share * settings[s] * of[k], into);
                }
            } else {
                Grid grid = weigher.grid(h);
                double[] of = Weigher.shares(weigher.sizeLogs(s, h, grid));
                for (int k = 0; k < of.length; k++) {
                    double newtons = lift.beside(hypothesis.newtons(grid.at(k)), 0);
                    add(grid.at(k), newtons, share * settings[s] * of[k], into);
                }
            }
        }
    }

    private static void add(double size, double newtons, double weight, List<Mass> into) {
        if (weight > 1e-9) {
            into.add(new Mass(size, newtons, weight));
        }
    }

    private static Mass quantile(List<Mass> masses, double share) {
        double all = masses.stream().mapToDouble(Mass::weight).sum();
        double sum = 0;
        for (Mass mass : masses) {
            sum += mass.weight;
            if (sum >= share * all) {
                return mass;
            }
        }
        return masses.getLast();
    }

    /** Whether causes are named, and how surely. */
    Finding finding() {
        double accused = 1 - nothing - other;
        double likeliest = Math.max(logOther, weights.isEmpty() ? 0 : weights.getFirst().log());
        if (nothing >= ACQUITTED || likeliest < Math.log(STRONG)) {
            return Finding.NOTHING_BEYOND_DECLARED;
        }
        if (other >= accused || isUnlike()) {
            return Finding.NONE_OF_THESE;
        }
        List<Integer> named = oneEach(numbers());
        if (named.size() > Explained.MOST_NAMED) {
            return Finding.CANNOT_BE_TOLD;
        }
        return named.size() == 1 || together() ? Finding.FOUND : Finding.CANNOT_BE_TOLD_APART;
    }

    /** Whether the likeliest causes leave a pattern that none of them makes. */
    private boolean isUnlike() {
        Weigher.Weight best = weights.getFirst();
        return leftover > LEFTOVER && leftover > LEFTOVER_PART * best.log();
    }

    /** ln of the Bayes factor of a free pattern on top of the likeliest causes. */
    double leftover() {
        return leftover;
    }

    /** What the likeliest causes do to the readings; empty where nothing is likelier. */
    double[] likeliestEffect(List<Hypothesis> of) {
        if (weights.isEmpty() || weights.getFirst().log() < 0) {
            return new double[0];
        }
        Weigher.Weight best = weights.getFirst();
        double[] sizes = weigher.likeliest(setting(best), best);
        double[] effect = of.get(best.first()).effect(sizes[0]);
        if (best.isPair()) {
            double[] other = of.get(best.second()).effect(sizes[1]);
            for (int k = 0; k < effect.length; k++) {
                effect[k] += other[k];
            }
        }
        return effect;
    }

    /** The likeliest setting under a weight. */
    private int setting(Weigher.Weight best) {
        double[] settings = weigher.settingShares(best);
        int s = 0;
        for (int k = 1; k < settings.length; k++) {
            s = settings[k] > settings[s] ? k : s;
        }
        return s;
    }

    private double leftoverOf(Weigher.Weight best) {
        int s = setting(best);
        double[] sizes = weigher.likeliest(s, best);
        return weigher.patternLog(
                weigher.settings().get(s).reduced(), weigher.left(s, best, sizes[0], sizes[1]));
    }

    /** Whether the likeliest is a pair, and sure enough. */
    private boolean together() {
        double pair = 0;
        double accused = 1 - nothing - other;
        Weigher.Weight best = weights.getFirst();
        for (int k = 0; k < shares.length; k++) {
            Weigher.Weight weight = weights.get(k);
            if (best.isPair()
                    && weight.isPair()
                    && weight.first() == best.first()
                    && weight.second() == best.second()) {
                pair += shares[k];
            }
        }
        return pair >= BOTH * accused;
    }

    /** Numbers of the hypotheses that hold most of what speaks for any, likeliest first. */
    List<Integer> numbers() {
        double accused = 1 - nothing - other;
        List<Integer> named = new ArrayList<>();
        if (together()) {
            named.add(weights.getFirst().first());
            named.add(weights.getFirst().second());
            return named;
        }
        double told = 0;
        boolean[] held = new boolean[shares.length];
        while (told < TOLD * accused && oneEach(named).size() <= Explained.MOST_NAMED) {
            // The one that adds most to what is told.
            double[] adds = new double[hypotheses.size()];
            int best = -1;
            for (int k = 0; k < shares.length; k++) {
                Weigher.Weight weight = weights.get(k);
                for (int h : new int[] {weight.first(), weight.second()}) {
                    if (h >= 0 && !held[k]) {
                        adds[h] += shares[k];
                        best = best < 0 || adds[h] > adds[best] ? h : best;
                    }
                }
            }
            if (best < 0 || adds[best] <= 0) {
                break;
            }
            named.add(best);
            for (int k = 0; k < shares.length; k++) {
                held[k] |= weights.get(k).first() == best || weights.get(k).second() == best;
            }
            told += adds[best];
        }
        return named;
    }

    /** Numbers of the causes to name, at most {@link Explained#MOST_NAMED}. */
    List<Integer> told() {
        return switch (finding()) {
            case NOTHING_BEYOND_DECLARED, NONE_OF_THESE -> List.of();
            case FOUND, CANNOT_BE_TOLD_APART, CANNOT_BE_TOLD ->
                    oneEach(numbers()).stream().limit(Explained.MOST_NAMED).toList();
        };
    }

    /** One of each cause: that a fan stood from the start or stopped in mid-run is one. */
    private List<Integer> oneEach(List<Integer> numbers) {
        Set<Cause> causes = new HashSet<>();
        return numbers.stream().filter(h -> causes.add(hypotheses.get(h).cause())).toList();
    }

    /** The causes to name, each as it is likeliest. */
    List<Weighed> named(List<Weighed> ranked) {
        return told().stream()
                .map(h -> hypotheses.get(h).cause())
                .flatMap(cause -> ranked.stream().filter(one -> one.cause().equals(cause)).limit(1))
                .toList();
    }
}
