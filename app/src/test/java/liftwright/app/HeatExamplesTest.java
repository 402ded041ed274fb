package liftwright.app;

import static liftwright.app.Shown.si;
import static liftwright.app.Shown.table;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.review.HeatAnswer;
import liftwright.review.HeatCase;
import liftwright.review.HeatQuestion;
import liftwright.review.Settings;
import liftwright.rig.Rig;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the answer of heat says of the examples agrees with itself and with what they declare. */
class HeatExamplesTest {

    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Settings SETTINGS = new Settings(11, 128, 128, 2, false);

    static Rig rig(String name) throws IOException {
        Path file = EXAMPLES.resolve(name);
        return RigReading.read(
                        "rig.yaml", Files.readAllBytes(file), new Folder(file.resolveSibling(".")))
                .rig()
                .orElseThrow();
    }

    private static List<Double> amounts(HeatAnswer answer) {
        return answer.verdict().sentence().parts().stream()
                .filter(Sentence.Part.Amount.class::isInstance)
                .map(part -> ((Sentence.Part.Amount) part).si())
                .toList();
    }

    private static <T extends Section> T section(HeatAnswer answer, String id, Class<T> kind) {
        return answer.sections().stream()
                .filter(section -> section.id().equals(id))
                .map(kind::cast)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper"})
    void theAnswerAgreesWithItself(String name) throws IOException {
        Rig rig = rig(name + "/rig.yaml");
        HeatAnswer answer =
                HeatQuestion.ask(
                                rig,
                                "test",
                                HeatCase.of(HeatQuestion.demanded(rig)),
                                SETTINGS,
                                Work.quiet())
                        .orElseThrow();
        double time = amounts(answer).getFirst();
        double asked = amounts(answer).get(1);
        assertThat(asked).isEqualTo(rig.demands().hover().si());

        // Bars stand in the order of time, those that never come last; the first is the verdict's.
        var timeline = section(answer, "first-limits", Section.Timeline.class);
        double before = 0;
        for (Section.Timeline.Bar bar : timeline.bars()) {
            double at =
                    bar.at().figure() instanceof Value.Figure.Amount(double s, var _)
                            ? s
                            : Double.POSITIVE_INFINITY;
            assertThat(at).isGreaterThanOrEqualTo(before);
            before = at;
            if (bar.hottest().field().equals("hottest")) {
                boolean over = si(bar.hottest()) >= si(bar.limit()) - 1e-6;
                assertThat(over).as(bar.toString()).isEqualTo(at < Double.POSITIVE_INFINITY);
            }
        }
        assertThat(si(timeline.bars().getFirst().at())).isCloseTo(time, within(0.005 * time));

        // Nothing that is asked passes a limit where the verdict says so, and something does else.
        Section.Table hottest = table(answer, "hottest");
        double leastMargin =
                hottest.rows().stream()
                        .filter(row -> row.get(4).figure() instanceof Value.Figure.Amount)
                        .mapToDouble(row -> si(row.get(4)))
                        .min()
                        .orElseThrow();
        if (answer.verdict().outcome() == Outcome.HOLDS) {
            assertThat(leastMargin).isPositive();
            assertThat(time).isGreaterThanOrEqualTo(asked);
        }
        for (List<Value> row : hottest.rows()) {
            if (row.get(4).figure() instanceof Value.Figure.Amount(double margin, var _)) {
                assertThat(margin).isCloseTo(si(row.get(3)) - si(row.get(2)), within(1e-9));
            }
        }

        // The watts add up.
        var losses = section(answer, "losses", Section.Shares.class);
        double sum = losses.shares().stream().mapToDouble(share -> si(share.value())).sum();
        assertThat(sum).isCloseTo(si(losses.whole()), within(1e-6 * si(losses.whole())));

        // Every part that is played begins as it is declared and ends after the rest.
        var played = section(answer, "heat-playback", Section.Playback.class);
        assertThat(played.timesS().getFirst()).isZero();
        assertThat(played.timesS().getLast()).isCloseTo(asked + 120, within(1e-6));
        assertThat(played.tracks()).hasSizeGreaterThan(4 * rig.fans().size());
    }
}
