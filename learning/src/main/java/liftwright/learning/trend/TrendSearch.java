package liftwright.learning.trend;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.learning.explain.CauseKind;
import liftwright.learning.trend.PartTrend.Told;
import liftwright.numerics.Gaussian;
import liftwright.numerics.StudentT;

/**
 * Looks for parts that change from test to test. Each part is looked at as if it were the only one
 * that departs; the one that changes most surely is taken, and the others are looked at again
 * beside it, until none is left that is sure enough. A part that explains the same as well as one
 * that was taken is told with that one and not by itself. In {@value #ALARMS} of logbooks of a rig
 * that does not change one is named by chance: the level is divided among all parts and stretches
 * (Bonferroni).
 */
public final class TrendSearch {

    /** Share of logbooks of a rig that does not change in which a change is claimed. */
    public static final double ALARMS = 0.05;

    /** More parts are not claimed. */
    private static final int MOST = 4;

    /** Squares, in deviations, by which one explanation beats another that explains as well. */
    private static final double AS_WELL = 6;

    private static final int FREE_ENOUGH = 30;

    private final List<DatedTest> tests;
    private final AllTests together;
    private final List<WornPart> parts;
    private final double each;

    private TrendSearch(List<DatedTest> tests) {
        this.tests = tests;
        together = new AllTests(tests);
        parts = together.all();
        each = ALARMS / Math.max(1, parts.size());
    }

    /**
     * Parts with their trends: those that are claimed first, then the others, the surest first.
     *
     * @param tests in the order of their days
     */
    public static List<PartTrend> of(List<DatedTest> tests) {
        return new TrendSearch(List.copyOf(tests)).made();
    }

    /** A part beside those taken before. */
    private record Look(Sizes sizes, Stretch best) {}

    /** Tests between two breaks, with their line. */
    private record Stretch(Sizes sizes, boolean isLast, Optional<Trend> trend, double sure) {}

    private List<PartTrend> made() {
        List<WornPart> taken = new ArrayList<>();
        List<WornPart> told = new ArrayList<>();
        List<PartTrend> claimed = new ArrayList<>();
        while (true) {
            List<Look> looks = looks(taken);
            Optional<Look> best =
                    looks.stream()
                            .filter(look -> look.best.sure > 1)
                            .filter(look -> !told.contains(look.sizes.part()))
                            .max(Comparator.comparingDouble(look -> look.best.sure));
            if (best.isEmpty() || claimed.size() == MOST) {
                List<PartTrend> all = new ArrayList<>(claimed);
                looks.stream()
                        .sorted(Comparator.comparingDouble(look -> -look.best.sure))
                        .map(look -> trend(look, false, List.of()))
                        .forEach(all::add);
                return all;
            }
            Look one = best.get();
            List<WornPart> asWell =
                    looks.stream()
                            .filter(
                                    look ->
                                            !look.sizes.part().equals(one.sizes.part())
                                                    && look.best.sure > 1)
                            .filter(look -> look.sizes.square() < one.sizes.square() + AS_WELL)
                            .map(look -> look.sizes.part())
                            .toList();
            claimed.add(trend(one, true, asWell));
            taken.add(one.sizes.part());
            told.addAll(asWell);
        }
    }

    /** Every part beside those taken. */
    private List<Look> looks(List<WornPart> taken) {
        Map<CauseKind, List<Sizes>> kinds = new EnumMap<>(CauseKind.class);
        for (WornPart part : parts) {
            if (!taken.contains(part)) {
                List<WornPart> chosen = new ArrayList<>(taken);
                chosen.add(part);
                kinds.computeIfAbsent(part.cause().kind(), _ -> new ArrayList<>())
                        .add(together.of(chosen));
            }
        }
        List<Look> looks = new ArrayList<>();
        for (List<Sizes> alike : kinds.values()) {
            List<Trends.Found> found = alike.stream().map(this::found).toList();
            double between = between(found);
            int freedom =
                    found.stream()
                            .filter(Trends.Found::makesTrend)
                            .mapToInt(Trends.Found::freedom)
                            .sum();
            for (Sizes sizes : alike) {
                looks.add(look(sizes, between, Math.min(FREE_ENOUGH, freedom)));
            }
        }
        return looks;
    }

    /** What scatters from test to test of the middle one of a kind: few of them change. */
    private static double between(List<Trends.Found> alike) {
        double[] each =
                alike.stream()
                        .filter(Trends.Found::makesTrend)
                        .mapToDouble(one -> Trends.between(List.of(one)))
                        .sorted()
                        .toArray();
        return each.length < 3 ? 0 : each[each.length / 2];
    }

    /** The surest of its stretches. */
    private Look look(Sizes sizes, double between, int freedom) {
        List<Sizes> stretches = stretches(sizes, between);
        List<Stretch> all = new ArrayList<>();
        for (int k = 0; k < stretches.size(); k++) {
            boolean last = k == stretches.size() - 1;
            all.add(stretch(stretches.get(k), last, between, freedom, stretches.size()));
        }
        return new Look(
                sizes, all.stream().max(Comparator.comparingDouble(Stretch::sure)).orElseThrow());
    }

    /** {@code sure} is the slope over what would just be claimed. */
    private Stretch stretch(Sizes sizes, boolean last, double between, int freedom, int of) {
        Trends.Found found = found(sizes);
        Optional<Trend> trend =
                Trends.of(found, between, freedom, OptionalDouble.of(limitSi(sizes.part(), sizes)));
        double sure =
                trend.map(
                                line ->
                                        Math.abs(line.sure())
                                                / StudentT.within(
                                                        1 - each / of,
                                                        Math.max(found.at().length, freedom)))
                        .orElse(0.0);
        boolean clear = trend.filter(Trend::isClaimed).isPresent();
        return new Stretch(sizes, last, trend, clear ? sure : Math.min(1, sure));
    }

    /** Wear goes one way: where a part is clearly better than in the test before, it was mended. */
    private List<Sizes> stretches(Sizes sizes, double between) {
        int n = sizes.si().length;
        double far = Gaussian.quantile(1 - each / Math.max(1, tests.size()));
        List<Sizes> all = new ArrayList<>();
        int from = 0;
        for (int k = 1; k < n; k++) {
            double variance =
                    sizes.covariance()[k][k]
                            + sizes.covariance()[k - 1][k - 1]
                            - 2 * sizes.covariance()[k][k - 1]
                            + 2 * between;
            if (sizes.si()[k - 1] - sizes.si()[k] > far * Math.sqrt(Math.max(0, variance))) {
                all.add(sizes.between(from, k));
                from = k;
            }
        }
        all.add(sizes.between(from, n));
        return all;
    }

    private Trends.Found found(Sizes sizes) {
        double[] at = new double[sizes.si().length];
        double[] si = new double[at.length];
        for (int k = 0; k < at.length; k++) {
            DatedTest test = tests.get(sizes.tests()[k]);
            at[k] = ChronoUnit.DAYS.between(tests.getFirst().on(), test.on());
            si[k] = sizes.part().declaredSi(test.rig()) + sizes.si()[k];
        }
        return new Trends.Found(at, si, sizes.covariance());
    }

    private double limitSi(WornPart part, Sizes sizes) {
        int test = sizes.tests()[sizes.tests().length - 1];
        double least =
                tests.get(test).departures().parts().get(together.number(part, test)).least();
        return part.declaredSi(tests.get(test).rig()) + least;
    }

    private PartTrend trend(Look look, boolean claimed, List<WornPart> asWell) {
        Stretch best = look.best;
        Trends.Found all = found(look.sizes);
        List<PartTrend.OfTest> found = new ArrayList<>();
        for (int k = 0; k < all.si().length; k++) {
            DatedTest test = tests.get(look.sizes.tests()[k]);
            found.add(
                    new PartTrend.OfTest(
                            test.name(),
                            test.on(),
                            all.si()[k],
                            Math.sqrt(all.covariance()[k][k])));
        }
        double limit = limitSi(look.sizes.part(), look.sizes);
        Told told =
                best.trend.isEmpty()
                        ? Told.TOO_FEW
                        : !claimed
                                ? Told.WITHIN
                                : best.trend.get().per() < 0
                                        ? Told.BETTER
                                        : best.isLast ? Told.WORSE : Told.MENDED;
        double z = Gaussian.quantile(0.975);
        return new PartTrend(
                look.sizes.part(),
                found,
                best.trend,
                told,
                limit,
                found.stream()
                        .filter(one -> one.si() - z * one.deviation() > limit)
                        .map(PartTrend.OfTest::on)
                        .findFirst(),
                asWell);
    }
}
