package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Logs that are in no logbook are explained as well, and nothing of them stays. */
class ExplainFilesTest {

    /** Far less than four fans give at this throttle. */
    private static final double SHOWN_N = 31.5;

    @TempDir private Path folder;
    private Shell shell;

    @BeforeEach
    void aRigAndALog() throws IOException {
        Files.copy(Shell.EXAMPLES.resolve("sandpiper/rig.yaml"), folder.resolve("rig.yaml"));
        var log = new StringBuilder("time [s];gas;load\n");
        for (int k = 0; k <= 40; k++) {
            log.append(k * 0.25).append(k < 4 ? ";0;0\n" : ";60;" + SHOWN_N + "\n");
        }
        log.append("10.5;sixty;31\n");
        Files.writeString(folder.resolve("log.csv"), log);
        Files.writeString(
                folder.resolve("map.yaml"),
                """
                liftwright log map: 1
                columns:
                  - {head: "gas", is: throttle, unit: "%"}
                  - {head: "load", is: thrust, unit: N, error: 0.5}
                """);
        shell = new Shell(folder);
    }

    @Test
    void aLogByItsNameIsExplainedWithItsMapAndKeptNowhere() throws IOException {
        List<String> before = names();
        var ran = shell.run("explain", "rig.yaml", "log.csv", "--map", "map.yaml");
        assertThat(ran.code()).as(ran.err()).isEqualTo(1);
        assertThat(ran.out().replaceAll("\\s+", " "))
                .startsWith("not met: ")
                .contains("thrust leaves its band")
                .contains("measured 31.5 N");
        assertThat(ran.err()).contains("1 rows were set aside");
        assertThat(names()).isEqualTo(before);
    }

    @Test
    void whatIsNeitherATestNorALogIsRefused() {
        assertThat(shell.run("explain", "rig.yaml", "no.csv").err().replaceAll("\\s+", " "))
                .contains("liftwright log add brings one in");
        assertThat(shell.run("explain", "rig.yaml", "log.csv", "no.csv").code()).isEqualTo(2);
        var mapped = shell.run("explain", "rig.yaml", "2026-03-14-1", "--map", "map.yaml");
        assertThat(mapped.code()).isEqualTo(2);
        assertThat(mapped.err()).contains("--map is for logs that are files");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.map(Path::toString).sorted().toList();
        }
    }
}
