package liftwright.review.cause;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import liftwright.numerics.NormalVector;
import liftwright.review.cause.Attribution.Told;
import liftwright.review.cause.Attribution.Weighed;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.rig.table.TurningTable.Axis;
import liftwright.rig.table.TurningTable.Swap;

/** Finds what tells two causes apart: another throttle, or a swap on the rig. */
final class Swaps {

    /** Causes that stand further apart than this, in standard deviations, are told apart. */
    static final double APART = 2.5;

    /** Further apart than this nothing is gained. */
    private static final double MOST_SQUARED = 16;

    /** Places of a cause that are less likely than this, over all its places, do not count. */
    private static final double LEAST_SHARE = 0.05;

    private static final int MOST_PLACES = 12;

    private final Rig rig;
    private final Throttles throttles;
    private final Predicted measured;
    private final List<Entry> entries;
    private final double[] y;

    Swaps(Rig rig, Throttles throttles, Predicted measured, List<Entry> entries, double[] y) {
        this.rig = rig;
        this.throttles = throttles;
        this.measured = measured;
        this.entries = entries;
        this.y = y;
    }

    private record Try(String words, int setting, Swap swap) {}

    /** Where the two causes, at all their likely places, stand furthest apart on the whole. */
    Optional<Told> best(List<Weighed> first, List<Weighed> other) {
        List<Weighed> ones = likely(first);
        List<Weighed> others = likely(other);
        Optional<Try> best = Optional.empty();
        double most = 0;
        for (Try each : tries(ones, others)) {
            double apart = apart(each, ones, others);
            if (apart > most * 1.05) { // of two alike the simpler one, which comes first
                most = apart;
                best = Optional.of(each);
            }
        }
        double squared = most;
        return best.filter(_ -> Math.sqrt(squared) >= APART)
                .map(swap -> told(swap, ones.getFirst(), others.getFirst(), Math.sqrt(squared)));
    }

    private static List<Weighed> likely(List<Weighed> places) {
        double top = places.getFirst().logWeight();
        return places.stream()
                .filter(each -> Math.exp(each.logWeight() - top) >= LEAST_SHARE)
                .limit(MOST_PLACES)
                .toList();
    }

    private List<Try> tries(List<Weighed> ones, List<Weighed> others) {
        List<Try> tries = new ArrayList<>();
        int setting = entries.getFirst().setting();
        Set<Integer> used = new LinkedHashSet<>();
        entries.forEach(entry -> used.add(entry.setting()));
        for (int s = 0; s < throttles.count(); s++) {
            if (!used.contains(s)) {
                tries.add(new Try(step(throttles.throttle(s)), s, new Swap.None()));
            }
        }
        Set<Integer> fans = new LinkedHashSet<>();
        for (List<Weighed> places : List.of(ones, others)) {
            for (Weighed place : places) {
                place.suspect().fans().stream().limit(4).forEach(fans::add);
            }
        }
        for (int fan : fans) {
            String id = rig.fans().get(fan).id().text();
            tries.add(
                    new Try(
                            "turn " + id + " by half a turn in its seat",
                            setting,
                            new Swap.HalfTurn(id)));
            tries.add(
                    new Try(
                            "let " + id + " spin the other way, with a mirrored rotor",
                            setting,
                            new Swap.Reversal(id)));
            for (Fan mate : rig.fans()) {
                Fan own = rig.fans().get(fan);
                if (!mate.id().text().equals(id)
                        && mate.type().equals(own.type())
                        && mate.spin() == own.spin()) {
                    tries.add(
                            new Try(
                                    "exchange " + id + " and " + mate.id(),
                                    setting,
                                    new Swap.Exchange(id, mate.id().text())));
                }
            }
        }
        return tries;
    }

    private static String step(OptionalDouble throttle) {
        return throttle.isPresent()
                ? String.format(
                        Locale.ROOT,
                        "step the throttle: on the stand at %.0f %%",
                        100 * throttle.getAsDouble())
                : "step the throttle: a hop";
    }

    /** Squared distance over all pairs of places, weighed by how likely they are. */
    private double apart(Try swap, List<Weighed> ones, List<Weighed> others) {
        double sum = 0;
        double weight = 0;
        Predicted predicted = predicted(swap);
        List<NormalVector> afters =
                others.stream().map(other -> predicted.rows(other.suspect()).given(y)).toList();
        for (Weighed one : ones) {
            NormalVector after = predicted.rows(one.suspect()).given(y);
            for (int k = 0; k < afters.size(); k++) {
                Weighed other = others.get(k);
                double share =
                        Math.exp(
                                one.logWeight()
                                        - ones.getFirst().logWeight()
                                        + other.logWeight()
                                        - others.getFirst().logWeight());
                sum += share * Math.min(MOST_SQUARED, squared(after, afters.get(k)));
                weight += share;
            }
        }
        return sum / weight;
    }

    /** The rows, and one more after the swap: given the rows, what that one would read. */
    private Predicted predicted(Try swap) {
        List<Entry> all = new ArrayList<>(entries);
        int row = entries.getLast().row() + 1;
        for (Axis axis : Axis.values()) {
            double noise =
                    entries.stream()
                            .filter(entry -> entry.axis() == axis)
                            .mapToDouble(Entry::noise)
                            .min()
                            .orElse(entries.getFirst().noise());
            all.add(
                    new Entry(
                            swap.setting, row, swap.swap, axis, noise, entries.getFirst().arms()));
        }
        return measured.of(all);
    }

    private static double squared(NormalVector one, NormalVector other) {
        double[][] a = one.covariance();
        double[][] b = other.covariance();
        double[][] mean = new double[a.length][a.length];
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < a.length; j++) {
                mean[i][j] = (a[i][j] + b[i][j]) / 2;
            }
        }
        return NormalVector.of(one.mean(), mean).squaredDistance(other.mean());
    }

    private Told told(Try swap, Weighed first, Weighed other, double deviations) {
        Predicted predicted = predicted(swap);
        NormalVector one = predicted.rows(first.suspect()).given(y);
        NormalVector two = predicted.rows(other.suspect()).given(y);
        int best = 0;
        double most = -1;
        for (int k = 0; k < Axis.values().length; k++) {
            double apart =
                    Math.abs(one.mean()[k] - two.mean()[k])
                            / Math.sqrt(one.covariance()[k][k] + two.covariance()[k][k]);
            if (apart > most) {
                most = apart;
                best = k;
            }
        }
        return new Told(
                swap.words,
                throttles.throttle(swap.setting),
                swap.swap,
                List.of(Axis.values()).get(best),
                one.mean()[best],
                two.mean()[best],
                2 * Math.sqrt(Math.max(one.covariance()[best][best], two.covariance()[best][best])),
                deviations);
    }
}
