package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of tests tells what lift each of them lacks. */
class LogLiftTest {

    private static final double SHOWN_N = 31.5;
    private static final Pattern MISSING =
            Pattern.compile(
                    "([0-9]+) N \\(([0-9]+) to ([0-9]+) N\\) of [0-9]+ N of lift are missing");

    @TempDir private Path folder;
    private Shell shell;

    @BeforeEach
    void aLogbook() throws IOException {
        Files.copy(Shell.EXAMPLES.resolve("sandpiper/rig.yaml"), folder.resolve("rig.yaml"));
        log("log.csv", "gas;load", k -> k < 4 ? "0;0" : "60;" + SHOWN_N);
        log("mute.csv", "load", k -> k < 4 ? "0" : "" + SHOWN_N);
        Files.writeString(
                folder.resolve("map.yaml"),
                """
                liftwright log map: 1
                columns:
                  - {head: "gas", is: throttle, unit: "%"}
                  - {head: "load", is: thrust, unit: N, error: 0.5}
                """);
        shell = new Shell(folder);
        for (String file : new String[] {"log.csv", "mute.csv"}) {
            var ran =
                    shell.run(
                            "log",
                            "add",
                            "rig.yaml",
                            file,
                            "--map",
                            "map.yaml",
                            "--date",
                            "2026-03-14");
            assertThat(ran.code()).as(ran.err()).isZero();
        }
    }

    private void log(String name, String heads, java.util.function.IntFunction<String> row)
            throws IOException {
        var text = new StringBuilder("time [s];" + heads + "\n");
        for (int k = 0; k <= 40; k++) {
            text.append(k * 0.25).append(';').append(row.apply(k)).append('\n');
        }
        Files.writeString(folder.resolve(name), text);
    }

    @Test
    void listsWhatExplainFinds() {
        var listed = shell.run("log", "list", "rig.yaml", "--json");
        assertThat(listed.code()).as(listed.err()).isZero();
        var found =
                Pattern.compile(
                                "test-missing[^}]*?\"si\":(-?[0-9.]+)[^}]*?\"low\":(-?[0-9.]+)[^}]*?\"high\":(-?[0-9.]+)")
                        .matcher(listed.out())
                        .results()
                        .toList();
        assertThat(found).as(listed.out()).hasSize(1);
        MatchResult one = found.getFirst();
        double missing = Double.parseDouble(one.group(1));
        assertThat(missing)
                .isBetween(Double.parseDouble(one.group(2)), Double.parseDouble(one.group(3)));
        String explained =
                shell.run("explain", "rig.yaml", "2026-03-14-1").out().replaceAll("\\s+", " ");
        var same = MISSING.matcher(explained).results().toList();
        assertThat(same).as(explained).hasSize(1);
        double[] told = new double[3];
        double[] list = new double[3];
        for (int k = 0; k < 3; k++) {
            told[k] = Double.parseDouble(same.getFirst().group(k + 1));
            list[k] = Double.parseDouble(one.group(k + 1));
        }
        assertThat(list[0]).isCloseTo(told[0], within(2.0));
        // Half the draws: the ends of the band are where they were to a quarter of its width.
        assertThat(list[1]).isCloseTo(told[1], within((told[2] - told[1]) / 4));
        assertThat(list[2]).isCloseTo(told[2], within((told[2] - told[1]) / 4));
    }

    @Test
    void tellsWhereItCannotBeTold() {
        String listed = shell.run("log", "list", "rig.yaml").out().replaceAll("\\s+", " ");
        assertThat(listed).contains("not computed: no").contains("throttle was recorded");
        assertThat(shell.run("log", "list", "rig.yaml", "--no-lift").out())
                .doesNotContain("missing");
    }
}
