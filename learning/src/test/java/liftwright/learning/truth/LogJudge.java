package liftwright.learning.truth;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import liftwright.learning.explain.Cause;
import liftwright.learning.explain.CauseKind;
import liftwright.learning.explain.Explained;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/** Counts how often what was told of a log is what was hidden in it. */
final class LogJudge {

    /** Penalty of the interval score for what lies outside: 2/α, Gneiting and Raftery (2007). */
    private static final double OUTSIDE = 2 / 0.10;

    /** Logs of one sort. */
    static final class Tally {
        int logs;
        int right;
        int named;
        int both;
    }

    private final Map<SimulatedTest.Sort, Tally> sorts = new TreeMap<>();
    private final Map<String, Tally> kinds = new TreeMap<>();
    private final List<String> failures = new ArrayList<>();
    private final List<Double> productErrors = new ArrayList<>();
    private final List<Double> handErrors = new ArrayList<>();
    private int sizes;
    private int covered;
    private double score;
    private double scale;

    LogJudge() {
        for (SimulatedTest.Sort sort : SimulatedTest.Sort.values()) {
            sorts.put(sort, new Tally());
        }
    }

    /** Counts one log. */
    synchronized void count(SimulatedTest.Sort sort, SimulatedTest test, Explained told) {
        Tally tally = of(sort);
        tally.logs++;
        tally.named += told.named().isEmpty() ? 0 : 1;
        boolean right =
                switch (sort) {
                    case ONE, TWO -> rightFirst(test, told);
                    case OTHER -> told.finding() == Explained.Finding.NONE_OF_THESE;
                    case HEALTHY -> !accuses(told);
                };
        tally.right += right ? 1 : 0;
        if (!right) {
            failures.add(sort + " " + test + " told " + words(told));
        }
        for (Hidden hidden : test.hidden()) {
            Tally kind = kinds.computeIfAbsent(hidden.kind().name(), any -> new Tally());
            kind.logs++;
            kind.right += right ? 1 : 0;
        }
        if (sort == SimulatedTest.Sort.TWO) {
            tally.both +=
                    test.hidden().stream().allMatch(one -> weighed(test, told, one).isPresent())
                            ? 1
                            : 0;
        }
        test.hidden().forEach(one -> weighed(test, told, one).ifPresent(it -> size(test, one, it)));
        missing(test, told);
    }

    private static boolean accuses(Explained told) {
        return switch (told.finding()) {
            case FOUND, CANNOT_BE_TOLD_APART, NONE_OF_THESE -> true;
            case NOTHING_BEYOND_DECLARED, CANNOT_BE_TOLD -> false;
        };
    }

    /** The first that is named, or one of at most three that are not told apart. */
    private static boolean rightFirst(SimulatedTest test, Explained told) {
        List<Explained.Weighed> named = told.named();
        return switch (told.finding()) {
            case FOUND ->
                    !named.isEmpty()
                            && test.hidden().stream()
                                    .anyMatch(
                                            one -> same(test.rig(), one, named.getFirst().cause()));
            case CANNOT_BE_TOLD_APART ->
                    named.size() <= 3
                            && test.hidden().stream()
                                    .anyMatch(one -> weighed(test, told, one).isPresent());
            case NOTHING_BEYOND_DECLARED, NONE_OF_THESE, CANNOT_BE_TOLD -> false;
        };
    }

    private static Optional<Explained.Weighed> weighed(
            SimulatedTest test, Explained told, Hidden hidden) {
        return told.named().stream()
                .filter(one -> same(test.rig(), hidden, one.cause()))
                .findFirst();
    }

    /** Whether a cause that was told is the one that was hidden. */
    static boolean same(Rig rig, Hidden hidden, Cause told) {
        Optional<CauseKind> kind =
                switch (hidden.kind()) {
                    case WEAK_FAN -> Optional.of(CauseKind.WEAK_FAN);
                    case HUNGRY_FAN -> Optional.of(CauseKind.HUNGRY_FAN);
                    case LOST_MAGNETS -> Optional.of(CauseKind.MOTOR);
                    case BAD_JOINT -> Optional.of(CauseKind.JOINT);
                    case WORN_PACK -> Optional.of(CauseKind.CELL_RESISTANCE);
                    case LOW_PACK -> Optional.of(CauseKind.CHARGE);
                    case HELD_BACK -> Optional.of(CauseKind.LIMITED_FAN);
                    case DEAD_FAN -> Optional.of(CauseKind.STOPPED_FAN);
                    case WRONG_SCALE -> Optional.of(CauseKind.SCALE);
                    case INSTALLATION -> Optional.of(CauseKind.INSTALLATION);
                    case BENT_LIP, WET_CONTROLLER, LOOSE_CABLE, RESONANCE, WRONG_CURVE ->
                            Optional.empty();
                };
        if (kind.isEmpty() || kind.get() != told.kind()) {
            return false;
        }
        return switch (hidden.kind()) {
            case INSTALLATION -> true;
            case WRONG_SCALE ->
                    told.part().equals("thrust " + hidden.part())
                            || (hidden.part().equals("all") && told.part().equals("thrust"));
            case BAD_JOINT -> inOneChain(rig, hidden.part(), told.part());
            default -> told.part().equals(hidden.part());
        };
    }

    /** Elements of one chain carry one current: nothing but warmth tells them apart. */
    private static boolean inOneChain(Rig rig, String one, String other) {
        return rig.wiring().chains().stream()
                .anyMatch(chain -> holds(chain, one) && holds(chain, other));
    }

    private static boolean holds(Wiring.Chain chain, String id) {
        return chain.elements().stream().anyMatch(one -> one.id().text().equals(id));
    }

    private void size(SimulatedTest test, Hidden hidden, Explained.Weighed told) {
        double truth = test.lostN(hidden);
        sizes++;
        covered += truth >= told.lowN() && truth <= told.highN() ? 1 : 0;
        score +=
                told.highN()
                        - told.lowN()
                        + OUTSIDE
                                * (Math.max(0, told.lowN() - truth)
                                        + Math.max(0, truth - told.highN()));
        scale += Math.abs(truth);
    }

    /** Missing lift against that of the hand: rating times the square of the throttle. */
    private void missing(SimulatedTest test, Explained told) {
        double truth = test.lostN();
        productErrors.add(Math.abs(told.missingN() - test.hiddenByCellsN() - truth));
        handErrors.add(Math.abs(HandMethod.missingN(test) - test.hiddenByCellsN() - truth));
    }

    static String words(Explained told) {
        StringBuilder text = new StringBuilder(told.finding().words());
        for (Explained.Weighed one : told.named()) {
            text.append("; ").append(one.cause().words());
            text.append(String.format(Locale.ROOT, " %.0f %%", 100 * one.share()));
        }
        return text.toString();
    }

    Tally of(SimulatedTest.Sort sort) {
        return sorts.getOrDefault(sort, new Tally());
    }

    /** Share of right answers to a sort of logs. */
    double share(SimulatedTest.Sort sort) {
        return (double) of(sort).right / Math.max(1, of(sort).logs);
    }

    /** Share of right answers to logs with one cause of the list or two. */
    double rightFirst() {
        Tally one = of(SimulatedTest.Sort.ONE);
        Tally two = of(SimulatedTest.Sort.TWO);
        return (double) (one.right + two.right) / Math.max(1, one.logs + two.logs);
    }

    int logs(SimulatedTest.Sort sort) {
        return of(sort).logs;
    }

    int sizes() {
        return sizes;
    }

    double coverage() {
        return (double) covered / Math.max(1, sizes);
    }

    /** Mean interval score over the mean size of what was missing. */
    double score() {
        return score / Math.max(1e-9, scale);
    }

    double medianErrorN() {
        return median(productErrors);
    }

    double handMedianErrorN() {
        return median(handErrors);
    }

    private static double median(List<Double> of) {
        return of.stream().sorted().skip(of.size() / 2).findFirst().orElse(Double.NaN);
    }

    List<String> failures() {
        return failures;
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        sorts.forEach(
                (sort, tally) ->
                        text.append(
                                String.format(
                                        Locale.ROOT,
                                        "%s: %d of %d right, %d named, %d both%n",
                                        sort,
                                        tally.right,
                                        tally.logs,
                                        tally.named,
                                        tally.both)));
        kinds.forEach(
                (kind, tally) ->
                        text.append(
                                String.format(
                                        Locale.ROOT, "%s %d/%d, ", kind, tally.right, tally.logs)));
        text.append(
                String.format(
                        Locale.ROOT,
                        "%n%d sizes, %.0f %% inside, score %.2f of the mean size; missing lift off"
                                + " by %.1f N, by hand %.1f N (medians)",
                        sizes,
                        100 * coverage(),
                        score(),
                        medianErrorN(),
                        handMedianErrorN()));
        return text.toString();
    }
}
