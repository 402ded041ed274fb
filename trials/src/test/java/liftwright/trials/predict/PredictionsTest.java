package liftwright.trials.predict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import liftwright.answer.Fields;
import liftwright.numerics.Work;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.rig.file.RigFiles;
import liftwright.rig.file.RigReading;
import liftwright.trials.Basis;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.Reading;
import liftwright.trials.Run;
import org.junit.jupiter.api.Test;

/** Predictions of Curlew's cards, as far as plain sense tells how they must be. */
class PredictionsTest {

    private static final Path CURLEW = Path.of("..", "examples", "curlew", "rig.yaml");

    static Rig curlew() throws IOException {
        return RigReading.read("rig.yaml", RigFiles.read(CURLEW)).rig().orElseThrow();
    }

    static Planned card(Run run) {
        return new Planned(
                CardId.of(CardKind.ALL_FANS),
                "a test",
                List.of(),
                Set.of(),
                false,
                new Basis(Set.of(), Optional.empty()),
                Optional.empty(),
                10,
                1,
                Optional.of(run));
    }

    static Run run(Rig rig, Run.Held held, double... throttles) {
        return new Run(
                rig.fans().stream().map(Fan::id).toList(),
                held,
                rig.wearer().isPresent(),
                Arrays.stream(throttles)
                        .mapToObj(share -> new Run.Step(new Run.Level.Throttle(share), 4, 8))
                        .toList());
    }

    private static Predictions predict(Rig rig, Run run, Conditions conditions, int threads) {
        return Predictions.of(rig, card(run), conditions, 5, threads, Work.quiet()).orElseThrow();
    }

    private static Map<String, Reading> last(Predictions of) {
        return of.steps().getLast().readings().stream()
                .collect(Collectors.toMap(one -> one.channel().field(), one -> one, (a, b) -> a));
    }

    private static Reading read(Map<String, Reading> of, String field) {
        return Objects.requireNonNull(of.get(field), field);
    }

    @Test
    void oneThreadAndTwoTellTheSame() throws IOException {
        Rig rig = curlew();
        Run run = run(rig, Run.Held.TETHER, 0.3, 0.5);
        Predictions one = predict(rig, run, Conditions.DECLARED, 1);
        assertThat(predict(rig, run, Conditions.DECLARED, 2)).isEqualTo(one);
        assertThat(one.steps()).hasSize(2);
        assertThat(one.aborts()).isNotEmpty();
    }

    @Test
    void everyReadingIsExplainedAndLiesInItsBand() throws IOException {
        Rig rig = curlew();
        Predictions told = predict(rig, run(rig, Run.Held.STAND, 0.3, 0.6), Conditions.DECLARED, 2);
        for (StepReadings step : told.steps()) {
            assertThat(step.readings()).hasSizeGreaterThan(10);
            for (Reading reading : step.readings()) {
                assertThat(Fields.of(reading.channel().field()).measure())
                        .isEqualTo(reading.channel().measure());
                assertThat(reading.expectedSi())
                        .as(reading.channel().field())
                        .isBetween(reading.band().low(), reading.band().high());
                assertThat(reading.band().draws()).isGreaterThan(200);
            }
        }
    }

    @Test
    void hotAirAndEmptyPacksAreSeen() throws IOException {
        Rig rig = curlew();
        Run run = run(rig, Run.Held.STAND, 0.6);
        Map<String, Reading> cold = last(predict(rig, run, Conditions.DECLARED, 2));
        Map<String, Conditions.Found> half =
                rig.packs().stream()
                        .collect(
                                Collectors.toMap(
                                        pack -> pack.id().text(),
                                        pack ->
                                                new Conditions.Found(
                                                        OptionalDouble.of(0.5),
                                                        OptionalDouble.of(310))));
        Map<String, Reading> hot =
                last(predict(rig, run, new Conditions(OptionalDouble.of(308), half), 2));
        assertThat(read(hot, "card-thrust").expectedSi())
                .isLessThan(read(cold, "card-thrust").expectedSi());
        assertThat(read(hot, "card-cell-voltage").expectedSi())
                .isLessThan(read(cold, "card-cell-voltage").band().low());
        assertThat(read(hot, "card-charge-left").expectedSi()).isBetween(0.45, 0.5);
        for (String heat : List.of("card-wire", "card-joint", "card-controller", "card-cells")) {
            assertThat(read(hot, heat).expectedSi() - read(cold, heat).expectedSi())
                    .as(heat)
                    .isBetween(15.0, 30.0);
        }
    }

    @Test
    void aStepThatBreaksALimitIsCutAndNothingFollowsIt() throws IOException {
        Rig rig = curlew();
        Run run =
                new Run(
                        rig.fans().stream().map(Fan::id).toList(),
                        Run.Held.NOTHING,
                        false,
                        List.of(
                                new Run.Step(new Run.Level.OfWeight(0.8), 4, 5),
                                new Run.Step(new Run.Level.OfWeight(9), 4, 5),
                                new Run.Step(new Run.Level.OfWeight(0.5), 4, 5)));
        Predictions told = predict(rig, run, Conditions.DECLARED, 2);
        assertThat(told.steps().get(0).cut()).isEmpty();
        assertThat(told.steps().get(1).cut()).isPresent();
        assertThat(told.steps().get(1).readings()).isEmpty();
        assertThat(told.steps().get(2).cut()).isPresent();
    }

    @Test
    void fansThatAreNotInTheRunAreDead() throws IOException {
        Rig rig = curlew();
        Run one =
                new Run(
                        List.of(rig.fans().getFirst().id()),
                        Run.Held.BENCH,
                        false,
                        List.of(new Run.Step(new Run.Level.Throttle(0.5), 3, 5)));
        Map<String, Reading> alone = last(predict(rig, one, Conditions.DECLARED, 2));
        Map<String, Reading> all =
                last(predict(rig, run(rig, Run.Held.STAND, 0.5), Conditions.DECLARED, 2));
        double share =
                read(alone, "card-thrust").expectedSi() / read(all, "card-thrust").expectedSi();
        assertThat(share).isBetween(1.0 / rig.fans().size(), 1.2 / rig.fans().size());
        assertThat(read(alone, "card-pack-current").expectedSi())
                .isLessThan(0.6 * read(all, "card-pack-current").expectedSi());
    }

    @Test
    void aStoppedPredictionTellsNothing() throws IOException {
        Rig rig = curlew();
        var asked = new AtomicInteger();
        Work stops =
                new Work() {
                    @Override
                    public void stage(String name, long total) {}

                    @Override
                    public void done(long units) {}

                    @Override
                    public boolean stopped() {
                        return asked.incrementAndGet() > 3;
                    }
                };
        assertThat(
                        Predictions.of(
                                rig,
                                card(run(rig, Run.Held.STAND, 0.3)),
                                Conditions.DECLARED,
                                5,
                                1,
                                stops))
                .isEmpty();
    }

    @Test
    void jetsOnThePlatformHideSomeOfTheLift() throws IOException {
        Path mudlark = Path.of("..", "examples", "mudlark", "rig.yaml");
        Rig rig = RigReading.read("rig.yaml", RigFiles.read(mudlark)).rig().orElseThrow();
        List<Run.Step> steps =
                List.of(
                        new Run.Step(new Run.Level.OfWeight(0.2), 4, 3),
                        new Run.Step(new Run.Level.OfWeight(0.4), 4, 3));
        Run run = new Run(rig.fans().stream().map(Fan::id).toList(), Run.Held.SCALE, true, steps);
        Prediction prediction = new Prediction(rig, run, Conditions.DECLARED, 1);
        int scale = -1;
        int thrust = -1;
        for (int k = 0; k < prediction.watches().size(); k++) {
            scale = prediction.watches().get(k).gauge() == Gauge.SCALE ? k : scale;
            thrust = prediction.watches().get(k).gauge() == Gauge.THRUST ? k : thrust;
        }
        Trace trace = prediction.trace();
        double liftedKg = trace.atStart(scale) - trace.atEnd(0, scale);
        double twiceKg = trace.atStart(scale) - trace.atEnd(1, scale);
        assertThat(twiceKg / liftedKg).isCloseTo(2, within(1e-6));
        double thrustKg = trace.atEnd(0, thrust) / 9.80665;
        assertThat(liftedKg / thrustKg).isBetween(0.5, 0.95);
    }
}
