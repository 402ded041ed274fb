package liftwright.review.cause;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.numerics.NormalVector;
import liftwright.rig.Rig;
import liftwright.rig.table.TurningTable;
import liftwright.rig.table.TurningTable.Axis;
import liftwright.rig.table.TurningTable.Swap;

/**
 * Which causes explain how a rig turned, most likely first; which of them the measurement does not
 * tell apart, and what would.
 *
 * <p>Before anything is measured every kind of cause is as likely as another, but jets askew in
 * their fans and things without a name are rarer ({@link Blame#prior}); within a kind every place
 * is as likely, and at a place every octave of sizes from the declared tolerance on. What was
 * measured weighs them by its density under each, the size of the fault integrated out (Bayes
 * factors; Kass and Raftery [KASS95], whose "strong" evidence of 20 to 1 is what tells two causes
 * apart here). One cause at a time is held against the rows; two at once are among "none of these".
 *
 * @param ranked all kinds, most likely first
 * @param unlike pairs of the first and a later one that the rows do not tell apart
 * @param rows what was measured, beside what was declared and what the first explains
 */
public record Attribution(List<Ranked> ranked, List<Inseparable> unlike, List<Row> rows) {

    /** Odds from which two causes count as told apart: strong evidence after Kass and Raftery. */
    public static final double STRONG = 20;

    public Attribution {
        ranked = List.copyOf(ranked);
        unlike = List.copyOf(unlike);
        rows = List.copyOf(rows);
    }

    /**
     * One kind of cause.
     *
     * @param place the likeliest place, empty where there is only one
     * @param placeShare how likely that place is, were the kind right
     * @param size what the fault would be there, in words; empty for none
     * @param probability of the kind among all
     * @param logFactor natural logarithm of the Bayes factor against the declared doubt alone
     */
    public record Ranked(
            Blame blame,
            String place,
            double placeShare,
            String size,
            double probability,
            double logFactor) {}

    /**
     * Two causes that the rows do not tell apart.
     *
     * @param swap what would; empty where nothing that was tried does
     */
    public record Inseparable(Ranked first, Ranked other, Optional<Told> swap) {}

    /**
     * A swap and what it would show.
     *
     * @param words what to do
     * @param throttle at which to measure; empty for a hop
     * @param axis on which the two differ most
     * @param firstRadps2 what that axis would show were the first right
     * @param otherRadps2 the same for the other
     * @param doubtRadps2 of either, k = 2
     * @param deviations how far apart the two are over all axes, in standard deviations
     */
    public record Told(
            String words,
            OptionalDouble throttle,
            Swap swap,
            Axis axis,
            double firstRadps2,
            double otherRadps2,
            double doubtRadps2,
            double deviations) {}

    /**
     * One measured number.
     *
     * @param line of the table
     * @param declaredRadps2 as declared
     * @param declaredDoubt of that, k = 2, what the model leaves out included
     * @param explainedRadps2 with the likeliest cause
     */
    public record Row(
            int line,
            TurningTable.Rate rate,
            double declaredRadps2,
            double declaredDoubt,
            double explainedRadps2) {}

    /**
     * A place with what the rows say of it.
     *
     * @param suspect the likeliest octave of sizes there
     * @param logWeight of all octaves
     */
    record Weighed(Suspect suspect, double logWeight) {}

    /** Most draws fail nowhere; rigs that do not lift are told of elsewhere. */
    public static Attribution of(Rig rig, TurningTable table, long seed) {
        List<OptionalDouble> asked =
                table.rows().stream().map(TurningTable.Row::throttle).distinct().toList();
        Throttles throttles = Throttles.of(rig, asked, seed);
        double steadiness = rig.wearer().map(wearer -> wearer.armSteadiness().si() / 2).orElse(0.0);
        List<Entry> entries = new ArrayList<>();
        List<Double> measured = new ArrayList<>();
        for (int row = 0; row < table.rows().size(); row++) {
            TurningTable.Row one = table.rows().get(row);
            for (TurningTable.Rate rate : one.rates()) {
                double arms =
                        one.armsRad().isPresent() ? one.armsRad().getAsDouble() / 2 : steadiness;
                entries.add(
                        new Entry(
                                asked.indexOf(one.throttle()),
                                row,
                                one.swap(),
                                rate.axis(),
                                rate.doubtRadps2() / 2,
                                arms));
                measured.add(rate.radps2());
            }
        }
        double[] y = measured.stream().mapToDouble(Double::doubleValue).toArray();
        List<Predicted> ways = Predicted.ways(throttles, entries);
        double held = 2 * entries.stream().mapToDouble(Entry::arms).max().orElse(0);
        List<Suspect> suspects =
                Suspects.of(rig, throttles.armsCarryFans(), throttles.armM(), held);
        Map<Blame, List<Weighed>> byBlame = weighed(suspects, ways, y);
        Predicted predicted = likeliest(ways, byBlame, y);
        List<Ranked> ranked = ranked(predicted, y, byBlame);
        List<Inseparable> unlike = new ArrayList<>();
        Swaps swaps = new Swaps(rig, throttles, predicted, entries, y);
        Ranked first = ranked.getFirst();
        for (Ranked other : ranked.subList(1, ranked.size())) {
            if (first.blame().isNamed()
                    && other.blame().isNamed()
                    && other.probability() * STRONG > first.probability()) {
                unlike.add(
                        new Inseparable(
                                first,
                                other,
                                swaps.best(
                                        weighed(byBlame, first.blame()),
                                        weighed(byBlame, other.blame()))));
            }
        }
        return new Attribution(
                ranked, unlike, rows(table, throttles, predicted, entries, y, byBlame, first));
    }

    /** By kind the places, likeliest first. */
    private static Map<Blame, List<Weighed>> weighed(
            List<Suspect> suspects, List<Predicted> ways, double[] y) {
        record Where(Blame blame, String place) {}
        Map<Where, List<Weighed>> octaves = new LinkedHashMap<>();
        for (Suspect suspect : suspects) {
            double log =
                    logSum(ways.stream().map(way -> way.rows(suspect).logDensity(y)).toList())
                            - Math.log(ways.size());
            octaves.computeIfAbsent(
                            new Where(suspect.blame(), suspect.place()), _ -> new ArrayList<>())
                    .add(new Weighed(suspect, log + Math.log(suspect.weight())));
        }
        Comparator<Weighed> least = Comparator.comparingDouble(Weighed::logWeight);
        Map<Blame, List<Weighed>> byBlame = new EnumMap<>(Blame.class);
        octaves.forEach(
                (where, own) -> {
                    own.sort(least.reversed());
                    byBlame.computeIfAbsent(where.blame, _ -> new ArrayList<>())
                            .add(new Weighed(own.getFirst().suspect(), logWeight(own)));
                });
        byBlame.values().forEach(list -> list.sort(least.reversed()));
        return byBlame;
    }

    private static List<Weighed> weighed(Map<Blame, List<Weighed>> byBlame, Blame blame) {
        return byBlame.getOrDefault(blame, List.of());
    }

    /** The distribution of the measurements alone. */
    static NormalVector measuredOnly(NormalVector joint, int count) {
        double[][] whole = joint.covariance();
        double[][] part = new double[count][];
        for (int k = 0; k < count; k++) {
            part[k] = java.util.Arrays.copyOf(whole[k], count);
        }
        return NormalVector.of(java.util.Arrays.copyOf(joint.mean(), count), part);
    }

    /** Arms held in the way that the rows say, were the likeliest suspect right. */
    private static Predicted likeliest(
            List<Predicted> ways, Map<Blame, List<Weighed>> byBlame, double[] y) {
        Suspect best =
                byBlame.values().stream()
                        .map(List::getFirst)
                        .max(Comparator.comparingDouble(Weighed::logWeight))
                        .orElseThrow()
                        .suspect();
        return ways.stream()
                .max(Comparator.comparingDouble(way -> way.rows(best).logDensity(y)))
                .orElseThrow();
    }

    private static double logWeight(List<Weighed> weighed) {
        return logSum(weighed.stream().map(Weighed::logWeight).toList());
    }

    /** Logarithm of a sum of exponentials. */
    private static double logSum(List<Double> logs) {
        double most = logs.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        return most + Math.log(logs.stream().mapToDouble(log -> Math.exp(log - most)).sum());
    }

    private static List<Ranked> ranked(
            Predicted predicted, double[] y, Map<Blame, List<Weighed>> byBlame) {
        Map<Blame, Double> logs = new EnumMap<>(Blame.class);
        byBlame.forEach(
                (blame, weighed) -> logs.put(blame, logWeight(weighed) + Math.log(blame.prior())));
        double most = logs.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        double sum = logs.values().stream().mapToDouble(log -> Math.exp(log - most)).sum();
        double declared = logWeight(weighed(byBlame, Blame.AS_DECLARED));
        List<Ranked> ranked = new ArrayList<>();
        logs.forEach(
                (blame, log) -> {
                    Weighed best = weighed(byBlame, blame).getFirst();
                    ranked.add(
                            new Ranked(
                                    blame,
                                    best.suspect().place(),
                                    Math.exp(best.logWeight() - logWeight(weighed(byBlame, blame))),
                                    size(predicted, y, best.suspect()),
                                    Math.exp(log - most) / sum,
                                    logWeight(weighed(byBlame, blame)) - declared));
                });
        ranked.sort(Comparator.comparingDouble(Ranked::probability).reversed());
        return ranked;
    }

    private static String size(Predicted predicted, double[] y, Suspect suspect) {
        int sizes = suspect.expected().size();
        if (sizes == 0) {
            return "";
        }
        NormalVector left = predicted.joint(suspect).given(y);
        double[] doubt = new double[sizes];
        for (int k = 0; k < sizes; k++) {
            doubt[k] = Math.sqrt(Math.max(0, left.covariance()[k][k]));
        }
        return suspect.words().of(left.mean(), doubt);
    }

    private static List<Row> rows(
            TurningTable table,
            Throttles throttles,
            Predicted predicted,
            List<Entry> entries,
            double[] y,
            Map<Blame, List<Weighed>> byBlame,
            Ranked first) {
        Suspect declared = weighed(byBlame, Blame.AS_DECLARED).getFirst().suspect();
        Suspect best = weighed(byBlame, first.blame()).getFirst().suspect();
        NormalVector without = predicted.joint(declared);
        double[] size =
                best.expected().isEmpty() ? new double[0] : predicted.joint(best).given(y).mean();
        List<Row> rows = new ArrayList<>();
        int next = 0;
        for (TurningTable.Row row : table.rows()) {
            for (TurningTable.Rate rate : row.rates()) {
                Entry entry = entries.get(next);
                double noise = entry.noise();
                double variance = without.covariance()[next][next] - noise * noise;
                rows.add(
                        new Row(
                                row.line(),
                                rate,
                                without.mean()[next],
                                2 * Math.sqrt(Math.max(0, variance)),
                                entry.of(
                                        throttles
                                                .bench(entry.setting())
                                                .acceleration(
                                                        entry.swap(), best.fault().apply(size)))));
                next++;
            }
        }
        return rows;
    }
}
