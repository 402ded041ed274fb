package liftwright.review.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.random.RandomGenerator;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.rig.FanType;
import liftwright.rig.table.BenchTable;
import liftwright.rig.table.CurrentKind;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class BenchQuestionTest {

    private static final double K_THRUST = 1.24e-5;
    private static final double K_TORQUE = 2.28e-7;
    private static final double K_V = 54.45;
    private static final double OHM = 0.012;
    private static final double SWITCHES_OHM = 0.002;
    private static final double NO_LOAD_A = 2.5;
    private static final double FIXED_W = 5;
    private static final double EXIT_M2 = 0.0128;

    private static final Known OF_THIS_EXIT =
            new Known(
                    Optional.empty(), Optional.of(si(EXIT_M2)), Optional.empty(), Optional.empty());

    private static Quantity si(double value) {
        return Quantity.exact(value, Dimension.NONE);
    }

    /**
     * Rows of a fan at full duty: speed by bisection of the balance of torques, everything else
     * from the first-order motor, written down here and nowhere in the code under test.
     */
    private static List<BenchTable.Row> rows(RandomGenerator random, double noise, int count) {
        List<BenchTable.Row> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double volt = 20 + 32.0 * i / (count - 1);
            double low = 0;
            double high = K_V * volt;
            for (int step = 0; step < 100; step++) {
                double speed = (low + high) / 2;
                double amp = (volt - speed / K_V) / (OHM + SWITCHES_OHM);
                if ((amp - NO_LOAD_A) / K_V > K_TORQUE * speed * speed) {
                    low = speed;
                } else {
                    high = speed;
                }
            }
            double winding = K_TORQUE * low * low * K_V + NO_LOAD_A;
            rows.add(
                    row(
                            i + 2,
                            volt,
                            (winding + FIXED_W / volt) * (1 + noise * random.nextGaussian()),
                            low,
                            K_THRUST * low * low * (1 + noise * random.nextGaussian()),
                            ""));
        }
        return rows;
    }

    private static BenchTable.Row row(
            int line, double volt, double amp, double speedRadps, double thrustN, String fan) {
        return new BenchTable.Row(
                line,
                OptionalDouble.of(volt),
                OptionalDouble.of(1),
                OptionalDouble.of(amp),
                OptionalDouble.of(speedRadps),
                thrustN,
                OptionalDouble.empty(),
                OptionalDouble.of(288.15),
                OptionalDouble.of(101_325),
                OptionalDouble.empty(),
                fan.isEmpty() ? Optional.empty() : Optional.of(fan));
    }

    private static BenchAnswer ask(List<BenchTable.Row> rows, Known known) {
        return BenchQuestion.ask(
                new BenchTable("bench.csv", CurrentKind.BUS, rows), known, "digest");
    }

    @Test
    void theFitFindsTheFanBehindTheRows() {
        BenchAnswer answer = ask(rows(new Random(1), 0.004, 14), OF_THIS_EXIT);
        assertThat(answer.verdict().outcome()).isEqualTo(Outcome.HOLDS);
        List<List<Value>> found = table(answer, "coefficients").rows();
        near(found, "thrust coefficient", K_THRUST, 0.01);
        near(found, "torque coefficient", K_TORQUE, 0.03);
        near(found, "speed constant", K_V, 0.02);
        assertThat(answer.findings())
                .as("what these rows leave open is said")
                .anyMatch(finding -> finding.code().equals("fit-note"));
        assertThat(answer.findings()).noneMatch(finding -> finding.severity() == Severity.STOPS);
        for (List<Value> row : table(answer, "rows").rows()) {
            assertThat(Math.abs(amount(row.get(3)))).isLessThan(0.02);
        }
    }

    private static void near(List<List<Value>> found, String what, double truth, double relative) {
        List<Value> row =
                found.stream()
                        .filter(one -> words(one.get(0)).equals(what))
                        .findFirst()
                        .orElseThrow();
        assertThat(amount(row.get(1))).as(what).isCloseTo(truth, within(relative * truth));
        var band = ((Value.Figure.Amount) row.get(1).figure()).band().orElseThrow();
        assertThat(truth).as(what).isBetween(band.low() * 0.99, band.high() * 1.01);
    }

    @Test
    void aRowThatFollowsNoLawIsNamedByItsLine() {
        Seeded.check(
                40,
                random -> {
                    List<BenchTable.Row> rows = rows(random, 0.003, 14);
                    int which = random.nextInt(rows.size());
                    BenchTable.Row old = rows.get(which);
                    double wrong = old.thrustN() * (random.nextBoolean() ? 0.8 : 1.2);
                    rows.set(
                            which,
                            row(
                                    old.line(),
                                    old.voltageV().orElseThrow(),
                                    old.currentA().orElseThrow(),
                                    old.speedRadps().orElseThrow(),
                                    wrong,
                                    ""));
                    BenchAnswer answer = ask(rows, Known.NOTHING);
                    assertThat(answer.findings())
                            .filteredOn(finding -> finding.code().equals("row-set-aside"))
                            .extracting(finding -> finding.path().orElseThrow())
                            .contains("line " + (which + 2));
                    assertThat(plot(answer, "thrust-over-speed").series())
                            .anyMatch(series -> series.mark() == Section.Plot.Mark.CROSS);
                });
    }

    /**
     * Least power by hand, from the jet: T = ρ A v² gives v, and half of T v is what the jet
     * carries away in a second.
     */
    private static double leastW(double thrustN) {
        double jetMps = Math.sqrt(thrustN / (1.225 * EXIT_M2));
        return thrustN * jetMps / 2;
    }

    @Test
    void aRowThatNeedsMoreThanItsPowerStops() {
        List<BenchTable.Row> rows = rows(new Random(2), 0.003, 14);
        BenchTable.Row old = rows.getLast();
        double watt = leastW(old.thrustN()) / 1.12;
        rows.set(13, row(15, 52, watt / 52, old.speedRadps().orElseThrow(), old.thrustN(), ""));
        BenchAnswer answer = ask(rows, OF_THIS_EXIT);
        assertThat(answer.verdict().outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
        Finding first = answer.findings().getFirst();
        assertThat(first.severity()).isEqualTo(Severity.STOPS);
        assertThat(first.code()).isEqualTo("row-impossible");
        assertThat(first.path()).contains("line 15");
        assertThat(amount(first.value().orElseThrow())).isCloseTo(1.12, within(1e-3));
    }

    /** Between 80 % and all of the electrical power lies what nothing of this size does. */
    @Test
    void aRowBeyondThisSizeIsDoubtful() {
        List<BenchTable.Row> rows = rows(new Random(2), 0.003, 14);
        BenchTable.Row old = rows.getLast();
        double watt = leastW(old.thrustN()) / 0.9;
        rows.set(13, row(15, 52, watt / 52, old.speedRadps().orElseThrow(), old.thrustN(), ""));
        BenchAnswer answer = ask(rows, OF_THIS_EXIT);
        assertThat(answer.verdict().outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(answer.findings())
                .anyMatch(
                        finding ->
                                finding.code().equals("row-doubtful")
                                        && finding.severity() == Severity.WARNS);
        assertThat(ask(rows, Known.NOTHING).findings())
                .as("without an exit area nothing is judged, and that is said")
                .anyMatch(finding -> finding.code().equals("power-not-judged"))
                .noneMatch(finding -> finding.code().equals("row-doubtful"));
    }

    @Test
    void theTablesRepeatTheRows() {
        List<BenchTable.Row> rows = rows(new Random(3), 0.003, 9);
        Section.Table table = table(ask(rows, OF_THIS_EXIT), "rows");
        assertThat(table.rows()).hasSameSizeAs(rows);
        for (int i = 0; i < rows.size(); i++) {
            List<Value> row = table.rows().get(i);
            assertThat(amount(row.get(0))).isEqualTo(rows.get(i).line());
            assertThat(amount(row.get(1))).isEqualTo(rows.get(i).speedRadps().orElseThrow());
            assertThat(amount(row.get(2))).isEqualTo(rows.get(i).thrustN());
            double watt =
                    rows.get(i).voltageV().orElseThrow() * rows.get(i).currentA().orElseThrow();
            assertThat(amount(row.get(6)))
                    .isCloseTo(leastW(rows.get(i).thrustN()) / watt, within(1e-3));
        }
    }

    @Test
    void whatIsDeclaredStandsBesideWhatIsFound() {
        FanType type =
                new FanType(
                        "F",
                        true,
                        si(0.14),
                        si(0.052),
                        si(EXIT_M2),
                        si(0.74),
                        FanType.Data.SELLER,
                        new FanType.Performance.Coefficients(si(1.1 * K_THRUST), si(K_TORQUE)),
                        new FanType.Motor(
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                OptionalInt.empty()),
                        new FanType.Rotor(Optional.empty(), Optional.empty()),
                        new FanType.Controller(
                                si(SWITCHES_OHM),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                si(FIXED_W),
                                si(0.05),
                                si(0.1),
                                FanType.Switching.UNKNOWN),
                        Optional.empty(),
                        si(0.1),
                        si(1),
                        si(1),
                        Optional.empty(),
                        FanType.Extremes.USUAL);
        BenchAnswer answer =
                ask(
                        rows(new Random(4), 0.003, 14),
                        new Known(
                                Optional.of(type),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty()));
        List<Value> thrust = table(answer, "declared").rows().getFirst();
        assertThat(words(thrust.get(0))).isEqualTo("thrust coefficient");
        assertThat(amount(thrust.get(1))).isEqualTo(1.1 * K_THRUST);
        assertThat(amount(thrust.get(3))).isCloseTo(1 / 1.1 - 1, within(0.01));
    }

    @Test
    void singleFansStandBesideTheirMean() {
        List<BenchTable.Row> rows = new ArrayList<>();
        for (BenchTable.Row one : rows(new Random(5), 0.002, 10)) {
            for (String fan : List.of("a", "b")) {
                rows.add(
                        row(
                                rows.size() + 2,
                                one.voltageV().orElseThrow(),
                                one.currentA().orElseThrow(),
                                one.speedRadps().orElseThrow(),
                                one.thrustN() * (fan.equals("a") ? 1.02 : 0.98),
                                fan));
            }
        }
        List<List<Value>> lot = table(ask(rows, Known.NOTHING), "lot").rows();
        assertThat(lot).hasSize(2);
        assertThat(amount(lot.get(0).get(2)) - amount(lot.get(1).get(2)))
                .isCloseTo(0.04, within(0.004));
    }

    /** Thrust and speed alone: what is told is judged, what is not is said. */
    @Test
    void rowsThatMakeNoFanCannotBeTold() {
        BenchTable.Row one = rows(new Random(6), 0, 2).getFirst();
        BenchTable.Row silent =
                new BenchTable.Row(
                        2,
                        one.voltageV(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        one.thrustN(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Optional.empty());
        BenchAnswer answer = ask(List.of(silent), OF_THIS_EXIT);
        assertThat(answer.verdict().outcome()).isEqualTo(Outcome.CANNOT_BE_TOLD);
        assertThat(answer.findings())
                .anyMatch(finding -> finding.code().equals("power-not-judged"));
    }

    private static Section.Table table(BenchAnswer answer, String id) {
        return (Section.Table) section(answer, id);
    }

    private static Section.Plot plot(BenchAnswer answer, String id) {
        return (Section.Plot) section(answer, id);
    }

    private static Section section(BenchAnswer answer, String id) {
        return answer.sections().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static double amount(Value value) {
        return value.figure() instanceof Value.Figure.Amount(var si, var _) ? si : Double.NaN;
    }

    private static String words(Value value) {
        return value.figure() instanceof Value.Figure.Words(var text) ? text : "";
    }
}
