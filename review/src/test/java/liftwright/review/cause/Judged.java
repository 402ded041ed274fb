package liftwright.review.cause;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import liftwright.review.cause.Attribution.Inseparable;
import liftwright.review.cause.truth.Observer;
import liftwright.review.cause.truth.TrueRig;
import liftwright.review.cause.truth.Wrong;
import liftwright.rig.table.TurningTable;

/**
 * The ranking of causes on one true rig, beside what an ideal observer says, who knows the true
 * mechanics and how rigs and faults are drawn.
 */
final class Judged {

    /** Two models never give the same odds: within this factor of 20 to 1 either may speak. */
    private static final double LEEWAY = 10;

    private final TrueRig rig;
    private final Observer observer;
    private final Attribution told;
    private final Blame right;

    Judged(TrueRig rig) {
        this.rig = rig;
        observer = new Observer(rig, rig.rows());
        told = told(rig.rows());
        right = Blame.valueOf(rig.fault().name());
    }

    private Attribution told(List<TurningTable.Row> rows) {
        return Attribution.of(rig.rig(), new TurningTable("t.csv", rows), 7);
    }

    /** Effect of the fault in standard deviations of all that is not known. */
    double signal() {
        return observer.signal();
    }

    boolean isRight() {
        return told.ranked().getFirst().blame() == right;
    }

    /** Whether the observer puts the right kind first. */
    boolean isRightForTheObserver() {
        Map<Wrong.Kind, Double> evidence = observer.evidenceOfDrawn();
        double own = odds(evidence, right, right);
        return evidence.keySet().stream()
                .allMatch(kind -> odds(evidence, right, Blame.valueOf(kind.name())) >= own);
    }

    /** How likely the observer holds the kind that it puts first. */
    double chance() {
        double most =
                observer.evidenceOfDrawn().values().stream()
                        .mapToDouble(log -> log)
                        .max()
                        .orElse(0);
        double whole =
                observer.evidenceOfDrawn().values().stream()
                        .mapToDouble(log -> Math.exp(log - most))
                        .sum();
        return 1 / whole;
    }

    /** Logarithm of the odds that the observer gives. */
    private static double odds(Map<Wrong.Kind, Double> evidence, Blame one, Blame other) {
        return evidence.getOrDefault(kind(one), 0.0) - evidence.getOrDefault(kind(other), 0.0);
    }

    private static Wrong.Kind kind(Blame blame) {
        return switch (blame) {
            case WEAK_FAN -> Wrong.Kind.WEAK_FAN;
            case TURNED_SEAT -> Wrong.Kind.TURNED_SEAT;
            case CROOKED_FAN -> Wrong.Kind.CROOKED_FAN;
            case MOUNT_TWIST -> Wrong.Kind.MOUNT_TWIST;
            case ARM_ANGLE -> Wrong.Kind.ARM_ANGLE;
            case CENTRE -> Wrong.Kind.CENTRE;
            case SPIN -> Wrong.Kind.SPIN;
            case AS_DECLARED, UNKNOWN -> throw new IllegalArgumentException("no fault");
        };
    }

    /** How often "not told apart" was said or not said, and how often the observer disagrees. */
    record Pairs(int said, int falsely, int silent, int missed) {
        static final Pairs NONE = new Pairs(0, 0, 0, 0);

        Pairs plus(Pairs other) {
            return new Pairs(
                    said + other.said,
                    falsely + other.falsely,
                    silent + other.silent,
                    missed + other.missed);
        }
    }

    Pairs pairs() {
        Blame first = told.ranked().getFirst().blame();
        Pairs pairs = Pairs.NONE;
        if (!first.isNamed()) {
            return pairs;
        }
        Set<Blame> said = new HashSet<>();
        told.unlike().forEach(pair -> said.add(pair.other().blame()));
        Map<Wrong.Kind, Double> evidence = observer.evidence();
        for (Blame other : Blame.values()) {
            if (other.isNamed() && other != first) {
                double odds = Math.exp(odds(evidence, first, other));
                pairs =
                        pairs.plus(
                                said.contains(other)
                                        ? new Pairs(
                                                1, odds > LEEWAY * Attribution.STRONG ? 1 : 0, 0, 0)
                                        : new Pairs(
                                                0,
                                                0,
                                                1,
                                                odds * LEEWAY < Attribution.STRONG ? 1 : 0));
            }
        }
        return pairs;
    }

    /**
     * Swaps named for a pair with the right cause in it, made on the true rig and measured.
     *
     * @param made how many
     * @param told after how many the ranking has the right cause before the other
     * @param seen after how many the observer has
     */
    record Swapped(int made, int told, int seen) {
        static final Swapped NONE = new Swapped(0, 0, 0);

        Swapped plus(Swapped other) {
            return new Swapped(made + other.made, told + other.told, seen + other.seen);
        }
    }

    Swapped swapped() {
        Swapped sum = Swapped.NONE;
        for (Inseparable pair : told.unlike()) {
            Blame wrong =
                    pair.first().blame() == right ? pair.other().blame() : pair.first().blame();
            boolean concerns = pair.first().blame() == right || pair.other().blame() == right;
            if (!concerns || pair.swap().isEmpty()) {
                continue;
            }
            Attribution.Told swap = pair.swap().get();
            List<TurningTable.Row> rows = new ArrayList<>(rig.rows());
            rows.add(rig.measure(2 + rows.size(), swap.throttle(), swap.swap()));
            Attribution again = told(rows);
            boolean tells = probability(again, right) > probability(again, wrong);
            boolean sees = odds(new Observer(rig, rows).evidence(), right, wrong) > 0;
            sum = sum.plus(new Swapped(1, tells ? 1 : 0, sees ? 1 : 0));
        }
        return sum;
    }

    private static double probability(Attribution told, Blame blame) {
        return told.ranked().stream()
                .filter(each -> each.blame() == blame)
                .mapToDouble(Attribution.Ranked::probability)
                .sum();
    }
}
