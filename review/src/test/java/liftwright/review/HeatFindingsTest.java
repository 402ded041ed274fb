package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.answer.Answer;
import liftwright.answer.Finding;
import liftwright.answer.Sentence;
import liftwright.numerics.Work;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** What a builder is told of the heat of a flight. */
class HeatFindingsTest {

    private static final Settings SETTINGS = new Settings(5, 128, 128, 1, false);

    private static List<Finding> findings(Rig rig, Task task) {
        Answer answer =
                HeatQuestion.staged(rig, "test", HeatCase.of(task), SETTINGS)
                        .answer(Stage.NOMINAL, Work.quiet())
                        .orElseThrow();
        return answer.findings();
    }

    private static Finding only(List<Finding> findings, String code) {
        return findings.stream()
                .filter(finding -> finding.code().equals(code))
                .reduce(
                        (a, b) -> {
                            throw new AssertionError("two of " + code);
                        })
                .orElseThrow(() -> new AssertionError("none of " + code + " in " + findings));
    }

    private static double si(Finding finding) {
        return finding.value()
                .map(value -> ((liftwright.answer.Value.Figure.Amount) value.figure()).si())
                .orElseThrow();
    }

    private static String words(Sentence sentence) {
        StringBuilder words = new StringBuilder();
        for (Sentence.Part part : sentence.parts()) {
            if (part instanceof Sentence.Part.Words(String text)) {
                words.append(text);
            }
        }
        return words.toString();
    }

    /** Wires that fail soon: a cold rig whose fan wires are far too thin for PVC. */
    private static Rig thin(String... more) {
        String[] replacements = new String[2 + more.length];
        replacements[0] =
                "{run: 12 AWG, length: 550 mm ± 50 mm, insulation: silicone, class: 180 °C";
        replacements[1] = "{run: 18 AWG, length: 550 mm ± 50 mm";
        System.arraycopy(more, 0, replacements, 2, more.length);
        return ExampleRigs.edited("mudlark", replacements);
    }

    @Test
    void aWireThatIsTooThinStopsAndIsNamedFirst() {
        List<Finding> findings = findings(thin(), new Task.Hover());
        Finding wire = findings.getFirst();
        assertThat(wire.code()).isEqualTo("limit-wire");
        assertThat(wire.severity()).isEqualTo(Finding.Severity.STOPS);
        assertThat(wire.path()).contains("wiring/feeds/feed/branch/1");
        assertThat(si(wire)).isGreaterThan(273.15 + 50);
        assertThat(words(wire.sentence())).contains("18 AWG", "so do 23 like it");
    }

    @Test
    void aDamagedJointIsNamed() {
        Finding joint =
                only(
                        findings(
                                thin("{joint: bullet 6 mm}", "{joint: bullet 6 mm, damage: 6}"),
                                new Task.Hover()),
                        "damaged-joint");
        assertThat(si(joint)).isEqualTo(6);
        assertThat(joint.path()).contains("wiring/feeds/feed/branch/2");
        assertThat(findings(thin(), new Task.Hover()))
                .noneMatch(finding -> finding.code().equals("damaged-joint"));
    }

    @Test
    void coldCellsAreNamed() {
        Finding cold =
                only(
                        findings(
                                thin(
                                        "extra mass: 0.25 kg",
                                        "temperature: 4 °C, extra mass: 0.25 kg"),
                                new Task.Hover()),
                        "cold-cells");
        assertThat(si(cold)).isEqualTo(277.15);
        assertThat(
                        findings(
                                thin(
                                        "extra mass: 0.25 kg",
                                        "temperature: 25 °C, extra mass: 0.25 kg"),
                                new Task.Hover()))
                .noneMatch(finding -> finding.code().equals("cold-cells"));
    }

    @Test
    void whatIsHotToTheTouchIsANote() {
        Finding touch = only(findings(thin(), new Task.FullThrottle()), "hot-to-touch");
        assertThat(touch.severity()).isEqualTo(Finding.Severity.NOTES);
        assertThat(si(touch)).isGreaterThan(333.15);
    }

    /** A pack gives about a hundred amperes. */
    @Test
    void aFuseThatOpensStopsAndTheRestGoesOn() {
        List<Finding> findings =
                findings(
                        thin("{fuse: 250 A, speed: slow}", "{fuse: 60 A, speed: slow}"),
                        new Task.Hover());
        Finding fuse = only(findings, "fuse-opens");
        assertThat(fuse.severity()).isEqualTo(Finding.Severity.STOPS);
        assertThat(words(fuse.sentence())).contains("60 A");
    }
}
