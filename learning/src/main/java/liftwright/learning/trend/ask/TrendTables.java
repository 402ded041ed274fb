package liftwright.learning.trend.ask;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.learning.explain.CauseKind;
import liftwright.learning.trend.DatedTest;
import liftwright.learning.trend.PartTrend;
import liftwright.learning.trend.Trend;
import liftwright.numerics.Gaussian;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;

/** Trends as tables. */
final class TrendTables {

    /** Parts that are shown beside those claimed: the surest ones. */
    private static final int MOST_OTHERS = 12;

    private static final double MONTH_DAYS = 30;

    /** Farther away nobody plans. */
    private static final double FAR_DAYS = 3650;

    private static final double COVERAGE = 0.95;
    private static final String HOW = "all tests together, by least squares";

    private TrendTables() {}

    static Section.Table parts(List<DatedTest> tests, List<PartTrend> trends) {
        List<List<Value>> rows = new ArrayList<>();
        int others = 0;
        for (PartTrend one : trends) {
            if (one.told().isClaim() || others++ < MOST_OTHERS) {
                rows.add(row(one));
            }
        }
        String left =
                others > MOST_OTHERS
                        ? ", " + (others - MOST_OTHERS) + " more are less sure to change"
                        : "";
        return new Section.Table(
                "part-trends",
                "How parts change over " + tests.size() + " tests" + left,
                List.of(
                        "trend-part",
                        "trend-what",
                        "trend-first",
                        "trend-last",
                        "trend-month",
                        "trend-limit",
                        "trend-meets",
                        "trend-told"),
                rows);
    }

    private static List<Value> row(PartTrend one) {
        return List.of(
                Value.words("trend-part", one.part().cause().part()),
                Value.words("trend-what", one.part().cause().kind().words()),
                found(one, one.found().getFirst()),
                found(one, one.found().getLast()),
                one.trend()
                        .map(line -> month(one, line))
                        .orElseGet(() -> Value.words("trend-month", "")),
                Value.of(field(one), one.limitSi()),
                Value.words("trend-meets", meets(one)),
                Value.words("trend-told", one.told().words()));
    }

    /** What each test found of a part. */
    static Section.Table tests(PartTrend one, int number) {
        return new Section.Table(
                "trend-" + number,
                name(one) + ", test by test",
                List.of("test", "test-date", "trend-found"),
                one.found().stream()
                        .map(
                                test ->
                                        List.of(
                                                Value.words("test", test.test()),
                                                Value.words("test-date", test.on().toString()),
                                                found(one, test)))
                        .toList());
    }

    static String name(PartTrend one) {
        String serial = one.part().serial();
        return one.part().cause().words() + (serial.isEmpty() ? "" : ", serial " + serial);
    }

    private static boolean isOhm(PartTrend one) {
        return one.part().cause().kind() == CauseKind.JOINT;
    }

    private static String field(PartTrend one) {
        return isOhm(one) ? "trend-ohm" : "trend-share";
    }

    private static Value found(PartTrend one, PartTrend.OfTest test) {
        double wide = Gaussian.quantile(0.975) * test.deviation();
        return Value.of(field(one), test.si(), band(test.si() - wide, test.si() + wide));
    }

    private static Band band(double low, double high) {
        return new Band(low, high, COVERAGE, HOW, 0, 0);
    }

    private static Value month(PartTrend one, Trend line) {
        return Value.of(field(one), MONTH_DAYS * line.per(), monthBand(line));
    }

    private static Band monthBand(Trend line) {
        return band(MONTH_DAYS * line.low(), MONTH_DAYS * line.high());
    }

    /** How much it changes in a month. */
    static Sentence change(PartTrend one) {
        Measure measure = isOhm(one) ? Measure.RESISTANCE : Measure.PERCENT;
        return one.trend()
                .map(
                        line ->
                                Sentence.start()
                                        .then(measure, MONTH_DAYS * line.per(), monthBand(line))
                                        .then(" in 30 days"))
                .orElseGet(Sentence::start);
    }

    /** When it meets its limit, in words; empty where nothing can be said. */
    static String meets(PartTrend one) {
        if (!one.told().isClaim()) {
            return "";
        }
        if (one.beyond().isPresent()) {
            return "beyond its limit since " + one.beyond().get();
        }
        Optional<Trend.Reached> reached = one.trend().flatMap(Trend::reaches);
        if (one.told() != PartTrend.Told.WORSE || reached.isEmpty()) {
            return "";
        }
        LocalDate from = one.found().getFirst().on();
        return "meets its limit on "
                + day(from, OptionalDouble.of(reached.get().likely()))
                + " ("
                + day(from, OptionalDouble.of(reached.get().soonest()))
                + " to "
                + day(from, reached.get().latest())
                + ")";
    }

    private static String day(LocalDate from, OptionalDouble days) {
        return days.isEmpty() || days.getAsDouble() > FAR_DAYS
                ? "in more than ten years"
                : from.plusDays((long) Math.floor(days.getAsDouble())).toString();
    }
}
