package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The verb {@code fly} as a user types it. */
class FlyVerbTest {

    private static final String SHORT =
            """
            liftwright profile: 1
            name: up and down
            start: {on: held, height: 1 m}
            steps:
              - hold: 2 s
              - land: 0.4 m/s
            """;

    @TempDir private Path folder;
    private Shell shell;

    @BeforeEach
    void aRigAndAProfile() throws IOException {
        Files.copy(Shell.EXAMPLES.resolve("curlew/rig.yaml"), folder.resolve("rig.yaml"));
        Files.copy(Shell.EXAMPLES.resolve("sandpiper/rig.yaml"), folder.resolve("refused.yaml"));
        Files.writeString(folder.resolve("short.yaml"), SHORT);
        shell = new Shell(folder);
    }

    @Test
    void oneFlightIsToldAndWrittenWithItsLoops() throws IOException {
        String[] words = {
            "fly",
            "rig.yaml",
            "--profile",
            "short.yaml",
            "--flight",
            "3",
            "--seed",
            "5",
            "--csv",
            "flight.csv",
            "--loops",
            "loops.json",
            "--allocation",
            "allocation.csv"
        };
        var ran = shell.run(words);
        assertThat(ran.out()).as(ran.err()).contains("flight 3 flown alone");
        JsonNode loops =
                JsonMapper.builder()
                        .build()
                        .readTree(Files.readString(folder.resolve("loops.json")));
        assertThat(loops.isObject()).isTrue();
        List<String> rows = Files.readAllLines(folder.resolve("allocation.csv"));
        assertThat(rows).hasSize(1 + 8);
        // A newton of every fan of the flat module is a newton of lift.
        for (String row : rows.subList(1, rows.size())) {
            assertThat(Double.parseDouble(row.split(",", -1)[1])).isCloseTo(1, within(0.02));
        }
        assertThat(Files.readAllLines(folder.resolve("flight.csv")).getFirst()).contains("[s]");
        assertThat(shell.run(words).code()).as("never overwrites").isEqualTo(2);
    }

    @Test
    void withoutLoopsNothingIsWrittenAndTheNumberIsNamed() {
        var ran = shell.run("fly", "refused.yaml", "--loops", "loops.csv");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out().replaceAll("\\s+", " ")).contains("not met: no loops: ", " would do");
        assertThat(ran.err()).contains("loops.csv was not written");
        assertThat(folder.resolve("loops.csv")).doesNotExist();
    }

    @Test
    void aTornProfileIsToldAtItsPlace() throws IOException {
        Files.writeString(folder.resolve("short.yaml"), SHORT.replace("hold: 2 s", "hover: 2 s"));
        var ran = shell.run("fly", "rig.yaml", "--profile", "short.yaml");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).contains("short.yaml:5:");
    }
}
