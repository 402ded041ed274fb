package liftwright.flight.disperse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.answer.AnswerJson;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.flight.FlightAnswer;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.Untold;
import liftwright.numerics.Work;
import liftwright.quantity.Band;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DispersionTest {

    private static final FlightsOf OF = RandomFlights.of(3);
    private static final List<String> NAMES =
            List.of("wind", "stiffness", "lag", "nothing", "nothing else");

    private static FlightSet flown(int to) {
        return new RangeFlying(new FlightRange(OF, 0, to), StandIn.LIMITS, () -> new StandIn(3), 1)
                .fly(FlightSet.none(OF), Work.quiet(), kept -> {})
                .set();
    }

    private static FlightAnswer answer(FlightSet set, double asked) {
        return Dispersion.answer(
                new DispersionCase(
                        set,
                        StandIn.LIMITS,
                        asked,
                        "common practice",
                        Sentence.words("hold"),
                        "liftwright fly stand-in --profile hold.yaml",
                        numbers -> DriverValues.normals(NAMES, 3, numbers)));
    }

    /** So many well of so many, the rest lost; flight 0 besides, which counts for nothing. */
    private static FlightSet counted(int well, int of, int untold) {
        List<Flown> flights = new ArrayList<>();
        for (int number = 0; number <= of + untold; number++) {
            FlightOutcome some = new StandIn(3).fly(0);
            boolean good = number > 0 && number <= well;
            flights.add(
                    number > of
                            ? new Flown.NotMade(number, "no such lag")
                            : new Flown.Made(
                                    number,
                                    good ? FlightOutcome.End.LANDED : FlightOutcome.End.LOST,
                                    good,
                                    true,
                                    some.durationS(),
                                    some.figures(),
                                    ""));
        }
        return new FlightSet(OF, flights);
    }

    /**
     * 682 of 925 at 95 %: 0.7076683 to 0.7654066 (Conover 1971, as printed); 9 of 10: 0.5550 to
     * 0.9975, 10 of 10: 0.6915 on, 999 of 1000: from 0.99444 (bisection of the incomplete beta
     * function, 32 digits).
     */
    @ParameterizedTest
    @CsvSource({
        "682, 925, 0.7076683, 0.7654066, 1e-7",
        "9, 10, 0.554983882971805, 0.997471421455538, 1e-12",
        "10, 10, 0.691502892181239, 1, 1e-12",
        "999, 1000, 0.99444107572017, 0.999974682512509, 1e-12",
    })
    void theShareAndItsIntervalAreThoseOfTheCount(
            int well, int of, double low, double high, double error) {
        Section.Table ends = table(answer(counted(well, of, 0), 0.5), "flights-ends");
        assertThat(amount(ends.rows().getFirst().get(1))).isEqualTo(well);
        Band band = ends.rows().getFirst().get(2).band().orElseThrow();
        assertThat(band.low()).isCloseTo(low, within(error));
        assertThat(band.high()).isCloseTo(high, within(error));
    }

    /** It may be well flown by numbers that mean nothing: neither good nor bad can be said. */
    @Test
    void aFlightBeyondItsLawsIsNotTold() {
        FlightOutcome.Figures beyond =
                new FlightOutcome.Figures(0.1, 0.1, 0, 0.1, 0.1, 0, 1, 0.5, 0.3, 9, 0.06);
        FlightOutcome.Figures within =
                new FlightOutcome.Figures(0.1, 0.1, 0, 0.1, 0.1, 0, 1, 0.5, 0.3, 9, 0.04);
        List<Flown> flown = new ArrayList<>();
        for (int number = 1; number <= 20; number++) {
            flown.add(
                    new Flown.Made(
                            number,
                            FlightOutcome.End.LANDED,
                            true,
                            true,
                            9,
                            number > 15 ? beyond : within,
                            ""));
        }
        WellShare share = WellShare.of(flown);
        assertThat(share).isEqualTo(new WellShare(15, 0, 5));
        assertThat(share.upper()).isEqualTo(1);
        assertThat(share.lower()).isLessThan(15 / 20.0);
        FlightAnswer answer = answer(new FlightSet(OF, flown), 0.5);
        List<Evidence.Check> checks = answer.evidence().checks();
        assertThat(checks).isNotEmpty().allMatch(Evidence.Check::passed);
        // One word for it in table, finding and list of the worst, with its own reason.
        String json = AnswerJson.write(answer, "stand-in", "0");
        assertThat(json)
                .contains("flights cannot be told")
                .contains("in 5 " + Untold.BEYOND_LAWS.words())
                .doesNotContain(Untold.NOT_FOUND.words())
                .doesNotContain(Untold.NOT_DRAWN.words());
    }

    /**
     * 0.95 asked: 0.7077 to 0.7654 does not hold, 0.9944 on holds, 0.555 to 0.997 tells nothing.
     */
    @ParameterizedTest
    @CsvSource({
        "682, 925, 0, DOES_NOT_HOLD",
        "999, 1000, 0, HOLDS",
        "9, 10, 0, CANNOT_BE_TOLD",
        "0, 0, 0, CANNOT_BE_TOLD",
        "999, 1000, 200, CANNOT_BE_TOLD",
        "999, 1000, 3, HOLDS",
    })
    void theVerdictHasThreeValues(int well, int of, int untold, Outcome outcome) {
        FlightAnswer answer = answer(counted(well, of, untold), 0.95);
        assertThat(answer.verdict().outcome()).isEqualTo(outcome);
        assertThat(answer.findings().stream().anyMatch(f -> f.severity() == Finding.Severity.STOPS))
                .isEqualTo(outcome == Outcome.DOES_NOT_HOLD);
        assertThat(codes(answer).contains("flights-cannot-be-told")).isEqualTo(untold > 0);
        assertThat(AnswerJson.write(answer, "stand-in", "0")).contains("\"question\":\"flight\"");
    }

    @Test
    void theMissesAreThoseOfTheFlights() {
        FlightAnswer answer = answer(flown(1000), 0.5);
        double[] misses =
                flown(1000).flights().stream()
                        .filter(Flown.Made.class::isInstance)
                        .map(Flown.Made.class::cast)
                        .filter(made -> made.number() > 0)
                        .filter(made -> made.end() == FlightOutcome.End.LANDED)
                        .mapToDouble(made -> made.figures().missM())
                        .sorted()
                        .toArray();
        int counted = 0;
        for (List<Value> row : table(answer, "flights-misses").rows()) {
            double from = amount(row.get(0));
            double to = amount(row.get(1));
            long here = Arrays.stream(misses).filter(m -> m >= from && m < to).count();
            assertThat(amount(row.get(2))).isEqualTo((double) here);
            counted += (int) here;
        }
        assertThat(counted).isEqualTo(misses.length);
        Section.Table quantiles = table(answer, "flights-quantiles");
        assertThat(quantiles.rows()).hasSize(5);
        // 90 %: as many lie below as it says, and the ranks of its band hold 95 % of a binomial.
        Value ninety = quantiles.rows().get(1).get(1);
        long below = Arrays.stream(misses).filter(m -> m < amount(ninety)).count();
        assertThat((double) below / misses.length).isCloseTo(0.9, within(2.0 / misses.length));
        Band band = ninety.band().orElseThrow();
        double half = 1.96 * Math.sqrt(0.9 * 0.1 / misses.length);
        assertThat(share(misses, band.low())).isCloseTo(0.9 - half, within(0.004));
        assertThat(share(misses, band.high())).isCloseTo(0.9 + half, within(0.004));
        assertThat(amount(quantiles.rows().getLast().get(1))).isEqualTo(misses[misses.length - 1]);
    }

    private static double share(double[] sorted, double value) {
        return (double) Arrays.stream(sorted).filter(m -> m <= value).count() / sorted.length;
    }

    /**
     * The miss is wind²/stiffness, wind normal about 3 with deviation 1, stiffness lognormal with
     * 0.2: Var(wind²) = 38, mean 10; so the wind takes 38 of 38 + (38 + 100)(e^0.04 − 1) parts.
     */
    @Test
    void namesWhatDrivesTheMisses() {
        FlightAnswer answer = answer(flown(1500), 0.5);
        Section.Table drivers = table(answer, "flights-drivers");
        assertThat(words(drivers.rows().get(0).get(0))).isEqualTo("wind");
        assertThat(words(drivers.rows().get(1).get(0))).isEqualTo("stiffness");
        double exact = 38 / (38 + 138 * Math.expm1(0.04));
        Value share = drivers.rows().getFirst().get(1);
        assertThat(amount(share)).isCloseTo(exact, within(0.03));
        assertThat(amount(drivers.rows().get(1).get(2))).isLessThan(0.05);
        for (List<Value> row : drivers.rows().subList(2, 5)) {
            assertThat(amount(row.get(2))).as(words(row.getFirst())).isGreaterThan(0.05);
        }
        assertThat(codes(answer)).contains("what-drives-the-misses");
        // A miss beyond 1 m fails it, and so does too much lag.
        List<List<Value>> failing = table(answer, "flights-failing").rows();
        assertThat(failing.stream().filter(row -> amount(row.get(2)) <= 0.05))
                .extracting(row -> words(row.getFirst()))
                .contains("wind", "lag")
                .doesNotContain("nothing", "nothing else");
    }

    @Test
    void theWorstComeFirstAndFlyAgain() {
        FlightSet set = flown(600);
        List<List<Value>> worst = table(answer(set, 0.5), "flights-worst").rows();
        assertThat(worst).hasSize(10);
        for (List<Value> row : worst) {
            int number = (int) amount(row.getFirst());
            FlightOutcome again = new StandIn(3).fly(number);
            assertThat(again.end()).isEqualTo(FlightOutcome.End.LOST);
            assertThat(amount(row.get(3))).isEqualTo(again.figures().missM());
            assertThat(words(row.get(2))).contains("tilt: make dead");
            assertThat(words(row.getLast()))
                    .isEqualTo(
                            "liftwright fly stand-in --profile hold.yaml --flight "
                                    + number
                                    + " --seed 3");
        }
        double leastShown = amount(worst.getLast().get(3));
        long worse =
                set.flights().stream()
                        .filter(Flown.Made.class::isInstance)
                        .map(Flown.Made.class::cast)
                        .filter(made -> made.end() == FlightOutcome.End.LOST)
                        .filter(made -> made.figures().missM() > leastShown)
                        .count();
        assertThat(worse).isEqualTo(9);
    }

    @Test
    void fewFlightsSayWhatTheyCannot() {
        FlightAnswer answer = answer(flown(12), 0.95);
        // Half of 12 is bounded by ranks 3 and 10; 90 % and more are not.
        assertThat(table(answer, "flights-quantiles").rows()).hasSize(2);
        assertThat(answer.sections()).noneMatch(s -> s.id().equals("flights-drivers"));
        assertThatIllegalArgumentException().isThrownBy(() -> answer(flown(3), 1));
    }

    private static Section.Table table(FlightAnswer answer, String id) {
        return answer.sections().stream()
                .filter(section -> section.id().equals(id))
                .map(Section.Table.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static double amount(Value value) {
        return ((Value.Figure.Amount) value.figure()).si();
    }

    private static String words(Value value) {
        return ((Value.Figure.Words) value.figure()).text();
    }

    private static List<String> codes(FlightAnswer answer) {
        return answer.findings().stream().map(Finding::code).toList();
    }
}
