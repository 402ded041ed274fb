package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A table of measured turning is held against the balance of a rig. */
class MeasuredTurningTest {

    private static final Pattern TABLE = Pattern.compile("```text\n(.*?)```", Pattern.DOTALL);

    @TempDir private Path folder;

    private Shell.Ran asked(String table, String... more) throws IOException {
        Files.writeString(folder.resolve("turned.csv"), table);
        String[] words = new String[more.length + 5];
        words[0] = "review";
        words[1] = "balance";
        words[2] = CommandLineTest.example("curlew");
        words[3] = "--measured";
        words[4] = "turned.csv";
        System.arraycopy(more, 0, words, 5, more.length);
        return new Shell(folder).run(words);
    }

    /** The table of the page, and what the page says the answer has. */
    @Test
    void theTableOfThePageIsExplained() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "how-to", "find-why-it-turns.md"));
        var block = TABLE.matcher(page);
        assertThat(block.find()).isTrue();
        var ran = asked(block.group(1));
        assertThat(ran.code()).as(ran.err()).isBetween(0, 1);
        assertThat(ran.out())
                .contains("What explains the turning that was measured")
                .contains("Measured, declared, and with the first cause")
                .contains("none of these")
                .contains("best explained by");
        assertThat(ran.lines()).allMatch(line -> line.length() <= 100);
        var json = asked(block.group(1), "--json");
        assertThat(json.out())
                .contains("\"measured-causes\"")
                .contains("\"measured-rows\"")
                .contains("sizes of faults");
    }

    @Test
    void aBrokenTableIsToldAtItsCell() throws IOException {
        var ran = asked("yaw [rad/s²],yaw doubt [rad/s²]\n0.1,0.2\nfast,0.1\n");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("turned.csv:3:1").contains("a number");
        var fan = asked("yaw [rad/s²],yaw doubt [rad/s²],swap\n0.1,0.2,half turn nobody\n");
        assertThat(fan.code()).isEqualTo(2);
        assertThat(fan.err()).contains("turned.csv:2:9").contains("a fan of the rig");
    }
}
