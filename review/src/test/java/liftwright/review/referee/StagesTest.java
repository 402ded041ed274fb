package liftwright.review.referee;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import liftwright.answer.Answer;
import liftwright.answer.Checks;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.review.BalanceQuestion;
import liftwright.review.EnduranceQuestion;
import liftwright.review.HeatCase;
import liftwright.review.HeatQuestion;
import liftwright.review.LiftQuestion;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.review.Staged;
import liftwright.review.Task;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An answer that comes in stages says nothing that its whole does not. */
class StagesTest {

    private static final int RANDOM = 10;

    /** Lists that nobody drags by: they come with the bands. */
    private static final List<String> LATER =
            List.of("fuses", "soldering", "soldering-loads", "inspection");

    private static final HeatCase HOVER = HeatCase.of(new Task.Hover());
    private static final Settings SETTINGS = new Settings(7, 320, 320, 2, false);

    /** What a run of the draws of a banded answer alone gives. */
    private static final Settings FIRST = new Settings(7, 256, 256, 2, false);

    private enum Question {
        LIFT,
        ENDURANCE,
        BALANCE,
        HEAT;

        Staged staged(Rig rig, Settings settings) {
            return switch (this) {
                case LIFT -> LiftQuestion.staged(rig, "none", settings);
                case ENDURANCE -> EnduranceQuestion.staged(rig, "none", new Task.Hover(), settings);
                case BALANCE -> BalanceQuestion.staged(rig, "none", settings);
                case HEAT -> HeatQuestion.staged(rig, "none", HOVER, settings);
            };
        }

        /** The whole at once, as the command line asks it. */
        Answer ask(Rig rig, Settings settings) {
            Work work = Work.quiet();
            Optional<? extends Answer> asked =
                    switch (this) {
                        case LIFT -> LiftQuestion.ask(rig, "none", settings, work);
                        case ENDURANCE ->
                                EnduranceQuestion.ask(
                                        rig, "none", new Task.Hover(), settings, work);
                        case BALANCE -> BalanceQuestion.ask(rig, "none", settings, work);
                        case HEAT -> HeatQuestion.ask(rig, "none", HOVER, settings, work);
                    };
            return asked.orElseThrow();
        }
    }

    private static Rig example(String name) {
        try {
            return Written.rig(Files.readString(Path.of("..", "examples", name, "rig.yaml")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper"})
    void stagesOfAnExampleAgree(String name) {
        agree(example(name), name.equals("curlew"));
    }

    @Test
    void stagesOfRandomRigsAgree() {
        Seeded.check(
                RANDOM,
                random ->
                        agree(
                                Written.rig(RefereeText.of(RefereeRandom.rig(random))),
                                random.nextInt(4) == 0));
    }

    private static void agree(Rig rig, boolean heat) {
        for (Question question : Question.values()) {
            if (question == Question.HEAT && !heat) {
                continue; // a hundred times as dear
            }
            Staged staged = question.staged(rig, SETTINGS);
            Answer nominal = answer(staged, Stage.NOMINAL);
            Answer banded = answer(staged, Stage.BANDED);
            Answer whole = answer(staged, Stage.WHOLE);
            for (Answer each : List.of(nominal, banded, whole)) {
                Checks.requireHonest(each);
            }
            assertThat(whole)
                    .as("on the draws of the stages before")
                    .isEqualTo(question.ask(rig, SETTINGS));
            assertThat(answer(staged, Stage.NOMINAL)).as("asked again").isEqualTo(nominal);
            isNominal(nominal, whole);
            Answer first = question.ask(rig, FIRST);
            assertThat(banded.sections()).isEqualTo(first.sections());
            assertThat(banded.evidence().draws()).isEqualTo(Stage.FIRST_DRAWS);
            if (banded.verdict().outcome() != Outcome.NOT_JUDGED) {
                assertThat(banded.verdict()).isEqualTo(first.verdict());
                assertThat(banded.findings()).isEqualTo(first.findings());
            }
        }
    }

    private static Answer answer(Staged staged, Stage stage) {
        return staged.answer(stage, Work.quiet()).orElseThrow();
    }

    /** No band, no verdict, and every number is one of the whole answer. */
    private static void isNominal(Answer nominal, Answer whole) {
        Outcome outcome = nominal.verdict().outcome();
        assertThat(outcome).isIn(Outcome.NOT_JUDGED, Outcome.CANNOT_BE_TOLD);
        if (nominal.verdict().downgrades().isEmpty()) {
            assertThat(outcome).isEqualTo(Outcome.NOT_JUDGED);
            assertThat(nominal.verdict().sentence()).isEqualTo(bare(whole.verdict().sentence()));
        }
        assertThat(nominal.evidence().draws()).isZero();
        assertThat(nominal.remedies()).isEmpty();
        List<String> ids = nominal.sections().stream().map(Section::id).toList();
        List<Section> same =
                whole.sections().stream()
                        .filter(
                                section ->
                                        ids.contains(section.id()) || !LATER.contains(section.id()))
                        .toList();
        assertThat(ids).isEqualTo(same.stream().map(Section::id).toList());
        for (int k = 0; k < nominal.sections().size(); k++) {
            List<List<Value>> there = rows(same.get(k));
            for (List<Value> row : rows(nominal.sections().get(k))) {
                assertThat(row).allMatch(value -> value.band().isEmpty());
                assertThat(there).anyMatch(other -> says(other, row));
            }
        }
    }

    /** Whether a row without bands says the same, where both say a number. */
    private static boolean says(List<Value> whole, List<Value> nominal) {
        if (whole.size() != nominal.size()) {
            return false;
        }
        for (int k = 0; k < whole.size(); k++) {
            Value there = whole.get(k);
            boolean drawn =
                    List.of("ends-share", "thrust-to-weight-then").contains(there.field())
                            && (isLeftOut(there) || isLeftOut(nominal.get(k)));
            drawn |= there.field().equals("where"); // tells in how many draws
            if (!drawn && !bare(there).equals(nominal.get(k))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isLeftOut(Value value) {
        return value.figure() instanceof Value.Figure.NotComputed;
    }

    private static Value bare(Value value) {
        return value.figure() instanceof Value.Figure.Amount(double si, var _)
                ? Value.of(value.field(), si)
                : value;
    }

    private static Sentence bare(Sentence sentence) {
        return new Sentence(
                sentence.parts().stream()
                        .map(
                                part ->
                                        part
                                                        instanceof
                                                        Sentence.Part.Amount(
                                                                var measure,
                                                                double si,
                                                                var _)
                                                ? new Sentence.Part.Amount(
                                                        measure, si, Optional.empty())
                                                : part)
                        .toList());
    }

    private static List<List<Value>> rows(Section section) {
        return switch (section) {
            case Section.Table table -> table.rows();
            case Section.Drawing drawing ->
                    drawing.layers().stream().flatMap(layer -> layer.rows().stream()).toList();
            case Section.Waterfall fall ->
                    Stream.concat(
                                    fall.steps().stream(),
                                    Stream.of(fall.start(), fall.end(), fall.against()))
                            .map(step -> List.of(step.value()))
                            .toList();
            case Section.Plot plot ->
                    plot.series().stream()
                            .flatMap(series -> series.points().stream())
                            .map(
                                    point ->
                                            List.of(
                                                    Value.of(plot.x(), point.x()),
                                                    Value.of(plot.y(), point.y())))
                            .toList();
            case Section.Timeline timeline -> timeline.table().rows();
            case Section.Shares shares -> shares.table().rows();
            case Section.Matrix matrix -> matrix.table().rows();
            case Section.Elevation elevation ->
                    elevation.tables().stream().flatMap(table -> table.rows().stream()).toList();
            case Section.Card card ->
                    card.tables().stream().flatMap(table -> table.rows().stream()).toList();
            case Section.Cases cases ->
                    cases.cases().stream()
                            .map(
                                    one ->
                                            one.values().stream()
                                                    .map(si -> Value.of(cases.field(), si))
                                                    .toList())
                            .toList();
            case Section.Strips strips ->
                    strips.strips().stream()
                            .map(
                                    strip ->
                                            strip.measured().stream()
                                                    .map(si -> Value.of(strip.field(), si))
                                                    .toList())
                            .toList();
            case Section.Playback playback ->
                    playback.tracks().stream()
                            .map(
                                    track ->
                                            track.values().stream()
                                                    .map(si -> Value.of(playback.field(), si))
                                                    .toList())
                            .toList();
        };
    }

    /** Stops once it was asked so often. */
    private record Impatient(AtomicInteger left) implements Work {
        @Override
        public void stage(String name, long total) {}

        @Override
        public void done(long units) {}

        @Override
        public boolean stopped() {
            return left.getAndDecrement() <= 0;
        }
    }

    /** Whenever it is stopped, it answers whole or not at all, and can be asked again. */
    @Test
    void whatIsStoppedCarriesNoVerdict() {
        Rig rig = example("sandpiper");
        for (Question question : Question.values()) {
            Answer whole = question.ask(rig, SETTINGS);
            List<Boolean> answered = new ArrayList<>();
            Seeded.check(
                    3,
                    random -> {
                        Staged staged = question.staged(rig, SETTINGS);
                        Work soon = new Impatient(new AtomicInteger(patience(random)));
                        Optional<? extends Answer> told = staged.answer(Stage.WHOLE, soon);
                        told.ifPresent(answer -> assertThat((Answer) answer).isEqualTo(whole));
                        answered.add(told.isPresent());
                        assertThat(answer(staged, Stage.WHOLE)).isEqualTo(whole);
                    });
            assertThat(answered).as(question.name()).contains(false);
        }
    }

    private static int patience(RandomGenerator random) {
        return random.nextInt(0, 300);
    }
}
