package liftwright.rig.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import liftwright.rig.Change;
import liftwright.rig.Problem;
import liftwright.rig.RigPath;
import liftwright.rig.file.RigReading.Edit;
import liftwright.rig.shape.Binder;
import liftwright.rig.text.Edited;
import liftwright.rig.text.Edits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class RigReadingTest {

    private static RigReading example(String name) throws Exception {
        Path file = Path.of("..", "examples", name, "rig.yaml");
        return RigReading.read("rig.yaml", Files.readAllBytes(file));
    }

    static Stream<Arguments> edits() {
        return Stream.of(
                Arguments.of("mudlark", set("fan types/F140/motor/winding resistance", "11 mΩ")),
                Arguments.of("mudlark", set("demands/thrust to weight", "1.3")),
                Arguments.of("mudlark", set("other parts/harness/mass", "1.5 kg")),
                Arguments.of("mudlark", set("fans/left/cant/outboard", "3°")),
                Arguments.of("mudlark", set("limits/cell under load", "3.4 V")),
                Arguments.of("curlew", set("packs/p/series", "15")),
                Arguments.of("curlew", new Change.Remove(RigPath.parse("other parts/frame"))),
                Arguments.of(
                        "curlew",
                        new Change.Add(
                                RigPath.parse("other parts"),
                                "",
                                "{id: camera, mass: 90 g, at: {mount: pod}}")),
                Arguments.of("sandpiper", set("fans/corner/cant/outward", "0°")),
                Arguments.of("sandpiper", set("fan types/F460/intake/free area", "71 %")),
                Arguments.of(
                        "sandpiper", new Change.Move(RigPath.parse("other parts/casualty"), 0)));
    }

    private static Change set(String path, String value) {
        return new Change.Set(RigPath.parse(path), value);
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("edits")
    void theRigReadAgainIsTheRigOfTheChangedDeclaration(String name, Change change)
            throws Exception {
        var before = example(name);
        var edited = (Edit.Changed) before.with(List.of(change));
        var memory = (Edited.Done) Edits.apply(before.rig().orElseThrow().declaration(), change);
        var bound = Binder.bind(memory.declaration());
        assertThat(edited.reading().rig()).isPresent().isEqualTo(bound.rig());
        assertThat(edited.reading().rig()).isNotEqualTo(before.rig());
    }

    @Test
    void aSlipHidesNoOtherProblemAndMakesNone() throws Exception {
        String text =
                example("sandpiper")
                        .text()
                        .text()
                        .replace("  deck: {on: frame}", "  deck: {on: frame")
                        .replace("elevation: 35 m", "elevation: 35 kg")
                        .replace("    radius:", "    raduis:");
        var reading = RigReading.read("rig.yaml", text.getBytes(UTF_8));
        assertThat(reading.rig()).isEmpty();
        assertThat(
                        reading.problems().stream()
                                .filter(p -> p.code().isError())
                                .map(p -> p.code() + " " + p.at().path()))
                .containsExactly(
                        "WRONG_UNIT site/elevation",
                        "SYNTAX mounts/deck",
                        "UNKNOWN_KEY fans/corner/raduis");
    }

    @Test
    void aFileThatSaysNothingIsAProblem() {
        for (String text : List.of("", "# only\n", "---\n", "\uFEFF")) {
            var reading = RigReading.read("rig.yaml", text.getBytes(UTF_8));
            assertThat(reading.rig()).isEmpty();
            assertThat(reading.problems()).hasSize(1);
            assertThat(reading.problems().getFirst().code().isError()).isTrue();
        }
    }

    @Test
    void anEditThatMakesTheFileWrongIsMadeAndSaysSo() throws Exception {
        var edited = (Edit.Changed) example("curlew").with(List.of(set("packs/p/series", "none")));
        assertThat(edited.reading().rig()).isEmpty();
        assertThat(edited.reading().problems()).isNotEmpty();
    }

    @Test
    void placesAreWhereValuesStand() throws Exception {
        var reading = example("mudlark");
        String[] lines = reading.text().text().split("\n", -1);
        for (String path :
                List.of("site/humidity", "fans/left/spacing", "wiring/feeds/feed/fans/p.7/2")) {
            Problem.Place at = reading.place(RigPath.parse(path)).orElseThrow();
            String rest = lines[at.line() - 1].substring(at.column() - 1);
            assertThat(rest)
                    .as(path)
                    .startsWith(
                            path.startsWith("site")
                                    ? "80 %"
                                    : path.startsWith("fans") ? "150 mm" : "right.6]");
        }
        assertThat(reading.place(RigPath.parse("site/no such"))).isEmpty();
    }
}
