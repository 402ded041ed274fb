package liftwright.app;

import static liftwright.app.Shown.si;
import static liftwright.app.Shown.table;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.review.EnduranceAnswer;
import liftwright.review.EnduranceQuestion;
import liftwright.review.Settings;
import liftwright.review.Task;
import liftwright.rig.Rig;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the second answer says of the examples agrees with itself and with what they declare. */
class EnduranceExamplesTest {

    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final Settings SETTINGS = new Settings(11, 256, 256, 2, true);

    private static Rig rig(String name) throws IOException {
        Path file = EXAMPLES.resolve(name).resolve("rig.yaml");
        return RigReading.read(
                        "rig.yaml", Files.readAllBytes(file), new Folder(EXAMPLES.resolve(name)))
                .rig()
                .orElseThrow();
    }

    private static EnduranceAnswer ask(Rig rig, Task task) {
        return EnduranceQuestion.ask(rig, "test", task, SETTINGS, Work.quiet()).orElseThrow();
    }

    private static List<Double> amounts(EnduranceAnswer answer) {
        return answer.verdict().sentence().parts().stream()
                .filter(Sentence.Part.Amount.class::isInstance)
                .map(part -> ((Sentence.Part.Amount) part).si())
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper", "measured", "fitted"})
    void theAnswerAgreesWithItself(String name) throws IOException {
        Rig rig = rig(name);
        EnduranceAnswer answer = ask(rig, new Task.Hover());
        double time = amounts(answer).getFirst();
        assertThat(amounts(answer).get(1)).isEqualTo(rig.demands().hover().si());

        // The verdict's time is the first of the ends, and of the packs' own times.
        Section.Table ends = table(answer, "ends");
        double firstEnd =
                ends.rows().stream().mapToDouble(row -> si(row.get(1))).min().orElseThrow();
        assertThat(time).isCloseTo(firstEnd, within(0.005 * time));
        double shares = ends.rows().stream().mapToDouble(row -> si(row.get(3))).sum();
        assertThat(shares).isCloseTo(1, within(1e-9));

        // Sagging packs: throttle rises, the lowest cell and the charge fall.
        Section.Table sag = table(answer, "sag");
        for (int row = 1; row < sag.rows().size(); row++) {
            List<Value> before = sag.rows().get(row - 1);
            List<Value> now = sag.rows().get(row);
            assertThat(si(now.get(0))).isGreaterThan(si(before.get(0)));
            assertThat(si(now.get(1))).isGreaterThan(si(before.get(1)));
            assertThat(si(now.get(4))).isLessThan(si(before.get(4)));
            assertThat(si(now.get(5))).isLessThan(si(before.get(5)));
        }
        // Lift at full throttle falls as the hover lasts.
        Section.Table later = table(answer, "thrust-later");
        assertThat(si(later.rows().get(2).get(1))).isLessThan(si(later.rows().get(0).get(1)));
        // The hand's reckoning knows no sag: it is longer than what the reserve ends.
        Map<String, Double> values =
                answer.findings().stream()
                        .filter(finding -> finding.value().isPresent())
                        .collect(
                                Collectors.toMap(
                                        finding -> finding.code(),
                                        finding -> si(finding.value().get()),
                                        (a, _) -> a));
        assertThat(values.get("by-hand")).isGreaterThan(time);
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper"})
    void moreIsAskedThanThePacksHold(String name) throws IOException {
        Rig rig = rig(name);
        EnduranceAnswer hover = ask(rig, new Task.Hover());
        assertThat(hover.verdict().outcome()).isEqualTo(Outcome.HOLDS);
        // Hops enough to empty them: not met, and what was flown is about the hover's time.
        EnduranceAnswer hops = ask(rig, new Task.Hops(40, 30));
        assertThat(hops.verdict().outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
        double flown = amounts(hops).getFirst();
        double hovered = amounts(hover).getFirst();
        // Pauses let the slow voltages recover, so no less; a little more at most.
        assertThat(flown).isBetween(hovered * 0.995, hovered * 1.06);
        assertThat(hops.remedies()).isNotEmpty();
    }
}
