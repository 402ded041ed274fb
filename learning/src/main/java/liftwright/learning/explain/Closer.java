package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import liftwright.numerics.Work;

/**
 * A second look at the likeliest causes: computed near their likeliest sizes, where the first look
 * had only few sizes to lay a line between, and two of them together, where it had added them up.
 */
final class Closer {

    /** So many weights are looked at, and no further behind the likeliest than this, ln. */
    private static final int MOST = 8;

    private static final double BEHIND = 10;

    /** So many causes get sizes of their own, and so many pairs a run. */
    private static final int CAUSES = 6;

    private static final int PAIRS = 4;

    /** Sizes over the likeliest one, and how near to another one is too near. */
    private static final double[] ABOUT = {1, 0.8, 1.25};

    private static final double NEAR = 0.08;

    private final Computed computing;
    private final Work work;

    Closer(Computed computing, Work work) {
        this.computing = computing;
        this.work = work;
    }

    private static List<Weigher.Weight> likeliest(Judged judged) {
        List<Weigher.Weight> weights = judged.weights();
        return weights.stream()
                .limit(MOST)
                .filter(weight -> weight.log() > weights.getFirst().log() - BEHIND)
                .filter(weight -> weight.log() > 0)
                .toList();
    }

    private static double[] sizes(Judged judged, Weigher.Weight weight) {
        double[] settings = judged.weigher().settingShares(weight);
        int best = 0;
        for (int s = 1; s < settings.length; s++) {
            best = settings[s] > settings[best] ? s : best;
        }
        return judged.weigher().likeliest(best, weight);
    }

    /** The same causes, the likeliest with more sizes. */
    Computed.Result sized(Computed.Result first, Judged judged) {
        Map<Integer, Set<Double>> wanted = new LinkedHashMap<>();
        for (Weigher.Weight weight : likeliest(judged)) {
            double[] sizes = sizes(judged, weight);
            want(first, weight.first(), sizes[0], wanted);
            want(first, weight.second(), sizes[1], wanted);
        }
        List<Integer> numbers = new ArrayList<>();
        List<Suspect> again = new ArrayList<>();
        wanted.forEach(
                (h, amounts) -> {
                    Suspect old = first.suspects().get(h);
                    if (amounts.size() > old.sizes().length) {
                        numbers.add(h);
                        again.add(with(old, amounts));
                    }
                });
        List<Optional<Hypothesis>> made = computing.made(again, work);
        List<Hypothesis> hypotheses = new ArrayList<>(first.hypotheses());
        List<Suspect> suspects = new ArrayList<>(first.suspects());
        for (int k = 0; k < made.size(); k++) {
            if (made.get(k).isPresent()) {
                hypotheses.set(numbers.get(k), made.get(k).get());
                suspects.set(numbers.get(k), again.get(k));
            }
        }
        return new Computed.Result(hypotheses, suspects, first.unseen());
    }

    private static void want(
            Computed.Result first, int h, double size, Map<Integer, Set<Double>> into) {
        if (h < 0 || (into.size() >= CAUSES && !into.containsKey(h))) {
            return;
        }
        Suspect suspect = first.suspects().get(h);
        Hypothesis hypothesis = first.hypotheses().get(h);
        if (suspect.change() instanceof Suspect.Shown || !hypothesis.isSized()) {
            return;
        }
        Set<Double> amounts = into.computeIfAbsent(h, _ -> new TreeSet<>());
        for (double known : suspect.sizes()) {
            amounts.add(Math.abs(known));
        }
        for (double share : ABOUT) {
            double amount = share * Math.abs(size);
            boolean near = amounts.stream().anyMatch(known -> Math.abs(known / amount - 1) < NEAR);
            if (!near && amount < Math.abs(hypothesis.most())) {
                amounts.add(amount);
            }
        }
    }

    private static Suspect with(Suspect old, Set<Double> amounts) {
        double sign = Math.signum(old.sizes()[0]);
        return new Suspect(
                old.cause(),
                old.prior(),
                amounts.stream().mapToDouble(amount -> sign * amount).toArray(),
                old.least(),
                old.unsaid(),
                old.change(),
                old.words());
    }

    /** The likeliest pairs, each run with both. */
    List<Together> together(Computed.Result of, Judged judged) {
        List<Together> all = new ArrayList<>();
        for (Weigher.Weight weight : likeliest(judged)) {
            if (weight.isPair() && all.size() < PAIRS) {
                double[] sizes = sizes(judged, weight);
                computing
                        .together(of, weight.first(), sizes[0], weight.second(), sizes[1])
                        .ifPresent(all::add);
            }
        }
        return all;
    }
}
