package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A table beside a rig file is read with it from any folder, and its problems are told with it. */
class TablesTest {

    private static final String TABLE =
            """
            voltage [V],bus current [A],duty [%],speed [rpm],thrust [N]
            48.9,55.2,80,20600,57.2
            48.1,98.0,100,25200,85.5
            """;

    @TempDir private Path folder;
    private Path table = Path.of("");

    @BeforeEach
    void nameATable() throws IOException {
        String rig = Files.readString(Shell.EXAMPLES.resolve("mudlark/rig.yaml"));
        String named =
                rig.replaceFirst("\n    at speed:", "\n    bench: rows/fan.csv\n    at speed:");
        assertThat(named).isNotEqualTo(rig);
        Files.createDirectories(folder.resolve("mine/rows"));
        Files.writeString(folder.resolve("mine/rig.yaml"), named);
        table = Files.writeString(folder.resolve("mine/rows/fan.csv"), TABLE);
    }

    private Shell.Ran check(String... more) {
        String[] words = new String[more.length + 2];
        words[0] = "check";
        words[1] = "mine";
        System.arraycopy(more, 0, words, 2, more.length);
        return new Shell(folder).run(words);
    }

    @Test
    void itIsFoundFromAnyFolder() {
        assertThat(check().code()).as(check().out()).isZero();
        assertThat(new Shell(folder.resolve("mine")).run("check", "rig.yaml").code()).isZero();
    }

    @Test
    void itsProblemsAreToldWithTheRigs() throws IOException {
        Files.writeString(table, TABLE.replace("98.0,100,", "98.0,140,"));
        var ran = check();
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).contains("mine/rows/fan.csv:3:11: duty").contains("1 problem");
        assertThat(check("--json").out()).contains("\"file\":\"mine/rows/fan.csv\",\"line\":3");
        assertThat(new Shell(folder).run("review", "lift", "mine").code()).isEqualTo(2);
    }

    /** Rows of a current a million times too small are a fault of the table, not of the program. */
    @Test
    void rowsThatMakeNoFanAreToldInWords() throws IOException {
        Files.writeString(
                table,
                """
                voltage [V],bus current [A],duty [%],speed [rpm],thrust [N]
                48.9,0.0002,80,20600,57.2
                48.1,0.0001,100,25200,85.5
                48.1,0.0001,100,25300,85.5
                """);
        var ran = new Shell(folder).run("review", "lift", "mine");
        assertThat(ran.code()).as(ran.err()).isEqualTo(2);
        assertThat(ran.err()).contains("rows/fan.csv give no fan F140").contains("another unit");
    }

    @Test
    void itIsMissedWhereItIsNamed() throws IOException {
        Files.delete(table);
        assertThat(check().code()).isEqualTo(2);
        assertThat(check().out()).containsPattern("mine/rig.yaml:\\d+:12: fan types/.*/bench");
    }

    @Test
    void theDigestChangesWithIt() throws IOException {
        String before = digest();
        assertThat(digest()).isEqualTo(before);
        Files.writeString(table, TABLE.replace("85.5", "85.6"));
        assertThat(digest()).isNotEqualTo(before);
    }

    private String digest() {
        var found = Pattern.compile("sha256:[0-9a-f]{64}").matcher(check("--json").out());
        assertThat(found.find()).isTrue();
        return found.group();
    }
}
