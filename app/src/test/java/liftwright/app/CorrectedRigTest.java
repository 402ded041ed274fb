package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import liftwright.plant.CorrectionMaker;
import liftwright.plant.Plant;
import liftwright.plant.parameters.ParameterTable;
import liftwright.rig.Rig;
import liftwright.rig.correction.Corrections;
import liftwright.rig.correction.Grounds;
import liftwright.rig.file.CorrectionsFile;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every verb reads what tests found beside a rig file, and none with --as-declared. */
class CorrectedRigTest {

    private static final List<List<String>> VERBS =
            List.of(
                    List.of("check", "--json", "rig.yaml"),
                    List.of("review", "lift", "--json", "--seed", "7", "rig.yaml"),
                    List.of("review", "lift", "--seed", "7", "rig.yaml"),
                    List.of("card", "rig.yaml", "--on", "2026-03-14"));

    @TempDir private Path folder;
    private Path rig;

    @BeforeEach
    void aRigOfTheirOwn() throws IOException {
        rig = folder.resolve("rig.yaml");
        Files.copy(Shell.EXAMPLES.resolve("sandpiper/rig.yaml"), rig);
    }

    private void correct(double installation) throws IOException {
        RigReading reading = RigReading.read("rig.yaml", Files.readAllBytes(rig));
        Rig declared = reading.rig().orElseThrow();
        ParameterTable table = Plant.assembleHeated(declared).parameters();
        var group =
                new CorrectionMaker(declared, table)
                        .make(
                                "installation",
                                new CorrectionMaker.Posterior(
                                        new int[] {table.indexOf("fan types/F460/installation")},
                                        new double[] {installation},
                                        new boolean[] {true},
                                        new double[] {1e-4}),
                                new Grounds(
                                        List.of(
                                                new Grounds.Test(
                                                        "2026-03-14-1",
                                                        "sha256:" + "0".repeat(64))),
                                        OptionalDouble.of(1),
                                        2));
        CorrectionsFile.beside(rig)
                .write(new Corrections(reading.digest(), declared.revision(), List.of(group)));
    }

    private String printed(List<String> verb, String... more) {
        var words = new ArrayList<>(verb);
        words.addAll(List.of(more));
        Shell.Ran ran = new Shell(folder).run(words.toArray(new String[0]));
        return ran.code() + ran.out();
    }

    @Test
    void asDeclaredPrintsTheSameBytesAsAFolderWithoutTheFile() throws IOException {
        List<String> before = VERBS.stream().map(this::printed).toList();
        correct(0.80);
        List<String> with = VERBS.stream().map(this::printed).toList();
        for (int i = 0; i < VERBS.size(); i++) {
            assertThat(printed(VERBS.get(i), "--as-declared")).isEqualTo(before.get(i));
        }
        assertThat(with.get(1)).isNotEqualTo(before.get(1)).contains("\"corrected\":{\"held\":1");
        assertThat(with.get(2).replaceAll("\\s+", " "))
                .contains("1 value in force")
                .contains("found by test 2026-03-14-1");
        assertThat(with.get(3)).isNotEqualTo(before.get(3));
    }

    @Test
    void whatIsWrongWithTheFileIsToldAtItsPlaceAndAsDeclaredGoesOn() throws IOException {
        String before = printed(VERBS.get(1));
        Files.writeString(folder.resolve("rig.corrections.yaml"), "liftwright corrections: 9\n");
        assertThat(printed(List.of("check", "rig.yaml")))
                .startsWith("2")
                .contains("rig.corrections.yaml:1:25");
        assertThat(printed(VERBS.get(1), "--as-declared")).isEqualTo(before);
    }
}
