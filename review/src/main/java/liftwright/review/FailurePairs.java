package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.plant.fault.Effect;
import liftwright.review.failures.FaultFate;
import liftwright.review.failures.FaultGroup;
import liftwright.review.failures.FaultOutcome;
import liftwright.review.failures.FaultRule;

/**
 * Every two faults that come to different things, at the declared values and with nothing else
 * wrong.
 */
final class FailurePairs {

    /**
     * Two faults at once.
     *
     * @param one place of the first in the list of groups
     * @param other of the second
     * @param effect of both
     * @param isNew whether it is not borne though each of the two is
     */
    record Pair(int one, int other, Effect effect, FaultPanel.Found found, boolean isNew) {

        FaultFate fate() {
            return found.fate();
        }
    }

    private final List<FaultGroup> groups;
    private final List<Pair> pairs;

    private FailurePairs(List<FaultGroup> groups, List<Pair> pairs) {
        this.groups = groups;
        this.pairs = pairs;
    }

    /**
     * Solves all pairs; those solved so far when stopped.
     *
     * @param threads worker threads
     */
    static FailurePairs of(Plant plant, FaultPanel panel, int threads, Work work) {
        List<FaultGroup> moving =
                panel.groups().stream().filter(group -> group.rule() == FaultRule.MOVES).toList();
        double[] p = plant.parameters().nominal();
        FaultPanel.Worker first = panel.worker();
        double[] alone =
                moving.stream().mapToDouble(g -> first.found(p, g).fate().margin()).toArray();
        List<int[]> both = new ArrayList<>();
        for (int k = 0; k < moving.size(); k++) {
            for (int other = k + 1; other < moving.size(); other++) {
                Effect effect = effect(moving, new int[] {k, other});
                if (!effect.equals(moving.get(k).effect())
                        && !effect.equals(moving.get(other).effect())) {
                    both.add(new int[] {k, other});
                }
            }
        }
        FaultPanel.Found[] found = new FaultPanel.Found[both.size()];
        int done = 0;
        if (!both.isEmpty()) {
            work.stage("pairs of failures", both.size());
            done =
                    Draws.forEachKept(
                            work,
                            threads,
                            0,
                            both.size(),
                            panel::worker,
                            (worker, number) ->
                                    found[number] =
                                            worker.found(p, effect(moving, both.get(number))),
                            new KeptFates(
                                    number -> found[number],
                                    (pair, number) -> found[number] = pair));
        }
        List<Pair> pairs = new ArrayList<>();
        for (int number = 0; number < done; number++) {
            int one = both.get(number)[0];
            int other = both.get(number)[1];
            boolean isNew =
                    found[number].fate().margin() < 0 && alone[one] >= 0 && alone[other] >= 0;
            Effect effect = effect(moving, both.get(number));
            pairs.add(new Pair(one, other, effect, found[number], isNew));
        }
        pairs.sort(
                Comparator.comparing(Pair::isNew)
                        .reversed()
                        .thenComparingDouble(pair -> pair.fate().margin())
                        .thenComparingInt(Pair::one)
                        .thenComparingInt(Pair::other));
        return new FailurePairs(moving, pairs);
    }

    private static Effect effect(List<FaultGroup> moving, int[] both) {
        return moving.get(both[0]).effect().and(moving.get(both[1]).effect());
    }

    /** Those of faults that are borne alone first, then by margin. */
    List<Pair> all() {
        return pairs;
    }

    /** The first of the two, in words. */
    String one(Pair pair) {
        return groups.get(pair.one).label();
    }

    /** The other. */
    String other(Pair pair) {
        return groups.get(pair.other).label();
    }

    /** How many do what. */
    Section counts() {
        Map<FaultOutcome, int[]> counted = new EnumMap<>(FaultOutcome.class);
        for (Pair pair : pairs) {
            int[] own = counted.computeIfAbsent(pair.fate().outcome(), _ -> new int[2]);
            own[0]++;
            own[1] += pair.isNew ? 1 : 0;
        }
        List<List<Value>> rows = new ArrayList<>();
        counted.forEach(
                (outcome, own) ->
                        rows.add(
                                List.of(
                                        Value.words("fault-outcome", outcome.words()),
                                        Value.of("pair-count", own[0]),
                                        Value.of("pair-count-new", own[1]))));
        return new Section.Table(
                "pair-counts",
                "Every two failures at once",
                List.of("fault-outcome", "pair-count", "pair-count-new"),
                rows);
    }

    /** The worst of them. */
    Section worst(int shown) {
        List<List<Value>> rows = new ArrayList<>();
        for (Pair pair : pairs.subList(0, Math.min(shown, pairs.size()))) {
            rows.add(
                    List.of(
                            Value.words("fails", one(pair)),
                            Value.words("fails-too", other(pair)),
                            Value.words("fault-outcome", pair.fate().outcome().words()),
                            Value.of("fault-margin", pair.fate().margin())));
        }
        return new Section.Table(
                "pairs",
                "The worst two at once, those first of which each alone is borne",
                List.of("fails", "fails-too", "fault-outcome", "fault-margin"),
                rows);
    }
}
