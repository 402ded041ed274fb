package liftwright.rig.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.rig.Problem;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Corrections;
import liftwright.rig.correction.Found;
import liftwright.rig.correction.Grounds;
import liftwright.rig.correction.text.CorrectionsReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file of corrections on a disk that fails at any step. */
class CorrectionsFileTest {

    private static final String DIGEST = "sha256:" + "0".repeat(64);

    @TempDir private Path folder;

    private static Corrections corrections(double value) {
        return new Corrections(
                DIGEST,
                1,
                List.of(
                        new Correction(
                                "one",
                                List.of(
                                        new Found(
                                                "fan types/F/installation",
                                                "installation",
                                                Quantity.exact(0.9, Dimension.NONE),
                                                value,
                                                0.01,
                                                true)),
                                List.of(),
                                new Grounds(
                                        List.of(new Grounds.Test("t", DIGEST)),
                                        OptionalDouble.empty(),
                                        1),
                                Map.of())));
    }

    private Path rig() {
        return folder.resolve("rig.yaml");
    }

    private Optional<Corrections> standing() throws IOException {
        Path file = folder.resolve("rig.corrections.yaml");
        return Files.exists(file)
                ? CorrectionsReading.read("rig.corrections.yaml", RigFiles.read(file)).corrections()
                : Optional.empty();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(each -> String.valueOf(each.getFileName())).sorted().toList();
        }
    }

    @Test
    void theOldOneIsKeptAsANumberedCopy() throws IOException {
        CorrectionsFile file = CorrectionsFile.beside(rig());
        assertThat(file.write(corrections(0.8))).isEmpty();
        assertThat(file.write(corrections(0.8))).isEmpty();
        byte[] first = RigFiles.read(file.path());
        assertThat(file.write(corrections(0.7))).contains(folder.resolve("rig.corrections.1.yaml"));
        assertThat(RigFiles.read(folder.resolve("rig.corrections.1.yaml"))).isEqualTo(first);
        assertThat(file.write(corrections(0.6))).isPresent();
        assertThat(names())
                .containsExactly(
                        "rig.corrections.1.yaml", "rig.corrections.2.yaml", "rig.corrections.yaml");
        assertThat(standing()).contains(corrections(0.6));
    }

    @Test
    void whatSomebodyEditedIsKeptToo() throws IOException {
        CorrectionsFile file = CorrectionsFile.beside(rig());
        Files.writeString(file.path(), "by hand: all wrong\n");
        file.write(corrections(0.7));
        assertThat(folder.resolve("rig.corrections.1.yaml")).hasContent("by hand: all wrong\n");
        assertThat(standing()).contains(corrections(0.7));
    }

    @Test
    void atWhateverStepTheDiskFailsTheOldOneOrTheNewOneStandsWhole() throws IOException {
        int failed = 0;
        for (int at = 0; at < 12; at++) {
            try (var files = Files.list(folder)) {
                for (Path each : files.toList()) {
                    Files.delete(each);
                }
            }
            CorrectionsFile.beside(rig()).write(corrections(0.8));
            CorrectionsFile failing = CorrectionsFile.beside(rig(), new FailingDisk(at, false));
            boolean threw = false;
            try {
                failing.write(corrections(0.7));
            } catch (IOException e) {
                threw = true;
            }
            failed += threw ? 1 : 0;
            assertThat(standing())
                    .isIn(Optional.of(corrections(0.8)), Optional.of(corrections(0.7)));
            if (!threw) {
                assertThat(standing()).contains(corrections(0.7));
            }
            assertThat(names()).noneMatch(name -> name.startsWith("."));
            // Tried again, it is as if nothing had failed, and no copy is there twice.
            CorrectionsFile.beside(rig()).write(corrections(0.7));
            assertThat(standing()).contains(corrections(0.7));
            assertThat(names()).containsExactly("rig.corrections.1.yaml", "rig.corrections.yaml");
        }
        assertThat(failed).isGreaterThanOrEqualTo(8);
    }

    @Test
    void aFirstOneAppearsWholeOrNotAtAll() throws IOException {
        for (int at = 0; at < 4; at++) {
            CorrectionsFile file = CorrectionsFile.beside(rig(), new FailingDisk(at, false));
            assertThatThrownBy(() -> file.write(corrections(0.7))).isInstanceOf(IOException.class);
            assertThat(standing()).isIn(Optional.empty(), Optional.of(corrections(0.7)));
            Files.deleteIfExists(folder.resolve("rig.corrections.yaml"));
        }
    }

    @Test
    void aRigFileIsReadWithThemAndWithoutThemAsDeclared() throws IOException {
        Path example = Path.of("..", "examples", "sandpiper", "rig.yaml");
        Files.copy(example, rig());
        RigReading alone = RigReading.read("rig.yaml", RigFiles.read(rig()), new Folder(folder));
        CorrectionsFile.beside(rig()).write(corrections(0.7));
        RigReading both = RigReading.read("a/rig.yaml", RigFiles.read(rig()), new Folder(folder));
        assertThat(both.rig().orElseThrow().corrections().content()).isEqualTo(corrections(0.7));
        assertThat(both.rig().orElseThrow().corrections().ofAnotherRevision()).isTrue();
        assertThat(both.digest()).isEqualTo(alone.digest());
        assertThat(both.asDeclared().rig()).isEqualTo(alone.rig());
        Files.writeString(folder.resolve("rig.corrections.yaml"), "liftwright corrections: 7\n");
        RigReading broken = RigReading.read("rig.yaml", RigFiles.read(rig()), new Folder(folder));
        assertThat(broken.rig()).isEmpty();
        assertThat(broken.problems())
                .anySatisfy(
                        problem -> {
                            assertThat(problem.code()).isEqualTo(Problem.Code.UNSUPPORTED_VERSION);
                            assertThat(problem.at().file()).isEqualTo("rig.corrections.yaml");
                        });
        assertThat(broken.asDeclared().rig()).isEqualTo(alone.rig());
    }
}
