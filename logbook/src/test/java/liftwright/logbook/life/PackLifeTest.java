package liftwright.logbook.life;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.answer.Outcome;
import liftwright.logbook.entry.PackSheet;
import liftwright.logbook.entry.PackSheet.Retire;
import liftwright.logbook.entry.PackSheet.Row;
import liftwright.quantity.Band;
import liftwright.quantity.Dimension;
import liftwright.quantity.Dimensions;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Life sheets against a calculation of their own: the Arrhenius form R(T) = R25 · exp(B (1/T −
 * 1/298.15 K)), Plett, Battery Management Systems 1, 2015 (from memory), solved for R25 by halving;
 * and the rule of retirement as a plain loop.
 */
class PackLifeTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);

    private static Quantity exact(double si, Dimension dimension) {
        return Quantity.exact(si, dimension);
    }

    private static Quantity doubtful(double si, double share, Dimension dimension) {
        return new Quantity(
                si,
                dimension,
                new Tolerance(
                        share * si, share * si, Tolerance.Form.NORMAL, Tolerance.Scope.SHARED));
    }

    private static <T> Optional<T> sometimes(RandomGenerator random, T value) {
        return random.nextInt(3) > 0 ? Optional.of(value) : Optional.empty();
    }

    private static PackSheet sheet(RandomGenerator random) {
        double coefficientK = random.nextDouble(500, 4000);
        var rows = new ArrayList<Row>();
        double ohm = random.nextDouble(0.01, 0.03);
        for (int k = 0; k < random.nextInt(1, 9); k++) {
            ohm *= random.nextDouble(1, 1.25);
            boolean measured = random.nextInt(4) > 0;
            double kelvin = random.nextDouble(275, 330);
            rows.add(
                    new Row(
                            FIRST.plusDays(random.nextInt(40)),
                            measured
                                    ? Optional.of(
                                            exact(
                                                    ohm
                                                            * Math.exp(
                                                                    coefficientK / kelvin
                                                                            - coefficientK
                                                                                    / 298.15),
                                                    Dimensions.RESISTANCE))
                                    : Optional.empty(),
                            measured
                                    ? Optional.of(exact(kelvin, Dimensions.TEMPERATURE))
                                    : Optional.empty(),
                            sometimes(
                                    random,
                                    exact(random.nextDouble(40_000, 60_000), Dimensions.CHARGE)),
                            sometimes(random, exact(random.nextDouble(0, 0.07), Dimension.NONE)),
                            Optional.of(random.nextInt(9)),
                            Optional.of(exact(0.5, Dimension.NONE)),
                            random.nextInt(6) == 0 ? "fell" : "",
                            "",
                            ""));
        }
        return new PackSheet(
                "p.1",
                "",
                exact(coefficientK, Dimensions.TEMPERATURE),
                sometimes(random, exact(random.nextDouble(0.01, 0.03), Dimensions.RESISTANCE)),
                sometimes(random, exact(56_000, Dimensions.CHARGE)),
                random.nextBoolean()
                        ? Retire.USUAL
                        : new Retire(random.nextDouble(1.1, 2), 0.9, 0.03, 4, true),
                rows);
    }

    /** R25 for which the law gives what was measured, by halving. */
    private static double at25Ohm(Row row, double coefficientK) {
        double low = 0;
        double high = 10;
        double kelvin = row.at().orElseThrow().si();
        for (int k = 0; k < 200; k++) {
            double middle = (low + high) / 2;
            double there = middle * Math.exp(coefficientK * (1 / kelvin - 1 / 298.15));
            if (there < row.resistance().orElseThrow().si()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The rule once more, a plain loop over the rows in the order of their days. */
    private static Outcome referee(PackSheet sheet, LocalDate today) {
        double newOhm = sheet.newResistance().map(Quantity::si).orElse(0.0);
        double newCharge = sheet.newCapacity().map(Quantity::si).orElse(0.0);
        double ohmShare = 0;
        double chargeShare = 0;
        double swelling = -1;
        LocalDate crash = LocalDate.MIN;
        for (Row row : sheet.rows().stream().sorted(Comparator.comparing(Row::date)).toList()) {
            if (row.date().isAfter(today)) {
                continue;
            }
            if (row.resistance().isPresent()) {
                double ohm = at25Ohm(row, sheet.temperatureCoefficient().si());
                newOhm = newOhm == 0 ? ohm : newOhm;
                ohmShare = ohm / newOhm;
            }
            if (row.capacity().isPresent()) {
                newCharge = newCharge == 0 ? row.capacity().get().si() : newCharge;
                chargeShare = row.capacity().get().si() / newCharge;
            }
            swelling = row.swelling().map(Quantity::si).orElse(swelling);
            crash = row.crash().isEmpty() ? crash : row.date();
        }
        Retire rule = sheet.retire();
        boolean goes =
                ohmShare >= rule.resistance()
                        || (chargeShare > 0 && chargeShare < rule.capacity())
                        || swelling >= rule.swelling()
                        || (!crash.equals(LocalDate.MIN)
                                && !today.isAfter(crash.plusDays(rule.quarantineDays())));
        boolean nothing = ohmShare == 0 && chargeShare == 0 && swelling < 0;
        return goes ? Outcome.DOES_NOT_HOLD : nothing ? Outcome.CANNOT_BE_TOLD : Outcome.HOLDS;
    }

    @Test
    void resistancesAndTheRuleAreThoseOfAPlainLoop() {
        var outcomes = new int[3];
        Seeded.check(
                1000,
                random -> {
                    PackSheet sheet = sheet(random);
                    LocalDate today = FIRST.plusDays(random.nextInt(50));
                    PackLife life = PackLife.of(sheet, today, 1);
                    for (PackLife.Point point : life.points()) {
                        assertThat(point.at25Ohm().isPresent())
                                .isEqualTo(point.row().resistance().isPresent());
                        point.at25Ohm()
                                .ifPresent(
                                        ohm ->
                                                assertThat(ohm.si())
                                                        .isCloseTo(
                                                                at25Ohm(
                                                                        point.row(),
                                                                        sheet.temperatureCoefficient()
                                                                                .si()),
                                                                within(1e-9)));
                    }
                    Outcome wanted = referee(sheet, today);
                    assertThat(life.outcome()).as("%s on %s", sheet, today).isEqualTo(wanted);
                    outcomes[
                            wanted == Outcome.HOLDS
                                    ? 0
                                    : wanted == Outcome.DOES_NOT_HOLD ? 1 : 2]++;
                });
        assertThat(outcomes).as("every outcome occurs").doesNotContain(0);
    }

    private static Row measured(double ohm, double share, double kelvin, double doubtK) {
        return new Row(
                FIRST,
                Optional.of(doubtful(ohm, share, Dimensions.RESISTANCE)),
                Optional.of(
                        new Quantity(
                                kelvin,
                                Dimensions.TEMPERATURE,
                                new Tolerance(
                                        doubtK,
                                        doubtK,
                                        Tolerance.Form.NORMAL,
                                        Tolerance.Scope.SHARED))),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "",
                "",
                "");
    }

    /**
     * Small doubts add as squares (JCGM 100, 5.1.2): relative variance of R25 is that of R, and of
     * the temperature B/T² times its own.
     */
    @Test
    void theIntervalIsThatOfTheLawOfPropagation() {
        Seeded.check(
                100,
                random -> {
                    double b = random.nextDouble(1000, 3000);
                    double share = random.nextDouble(0.01, 0.04);
                    double kelvin = random.nextDouble(280, 320);
                    double doubtK = random.nextDouble(0.5, 2);
                    var sheet =
                            new PackSheet(
                                    "p.1",
                                    "",
                                    exact(b, Dimensions.TEMPERATURE),
                                    Optional.of(exact(0.02, Dimensions.RESISTANCE)),
                                    Optional.empty(),
                                    Retire.USUAL,
                                    List.of(measured(0.02, share, kelvin, doubtK)));
                    var figure =
                            PackLife.of(sheet, FIRST, 3)
                                    .points()
                                    .getFirst()
                                    .at25Ohm()
                                    .orElseThrow();
                    double relative = Math.hypot(share, b / (kelvin * kelvin) * doubtK) / 2;
                    Band band = figure.band().orElseThrow();
                    double half = (band.high() - band.low()) / 2;
                    assertThat(half / figure.si())
                            .isCloseTo(1.96 * relative, within(0.1 * relative));
                });
    }

    @Test
    void aDoubtAcrossTheLimitCannotBeTold() {
        var sheet =
                new PackSheet(
                        "p.1",
                        "",
                        exact(2000, Dimensions.TEMPERATURE),
                        Optional.of(exact(0.02, Dimensions.RESISTANCE)),
                        Optional.empty(),
                        Retire.USUAL,
                        List.of(measured(0.0299, 0.05, 298.15, 0.1)));
        assertThat(PackLife.of(sheet, FIRST, 3).outcome()).isEqualTo(Outcome.CANNOT_BE_TOLD);
        assertThat(
                        PackLife.of(
                                        sheet.with(List.of(measured(0.025, 0.05, 298.15, 0.1))),
                                        FIRST,
                                        3)
                                .outcome())
                .isEqualTo(Outcome.HOLDS);
        assertThat(
                        PackLife.of(
                                        sheet.with(List.of(measured(0.033, 0.05, 298.15, 0.1))),
                                        FIRST,
                                        3)
                                .outcome())
                .isEqualTo(Outcome.DOES_NOT_HOLD);
    }

    /** A first row is the measure of itself, whatever its doubt. */
    @Test
    void aFirstRowIsOneWithoutDoubt() {
        var sheet =
                new PackSheet(
                        "p.1",
                        "",
                        doubtful(2000, 0.1, Dimensions.TEMPERATURE),
                        Optional.empty(),
                        Optional.empty(),
                        Retire.USUAL,
                        List.of(measured(0.02, 0.05, 290, 2)));
        var share = PackLife.of(sheet, FIRST, 3).points().getFirst().resistanceShare();
        assertThat(share.orElseThrow().low()).isCloseTo(1, within(1e-12));
        assertThat(share.orElseThrow().high()).isCloseTo(1, within(1e-12));
    }
}
