package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FanCheckTest {

    @TempDir private Path folder;

    private static String table() {
        return CommandLineTest.example("bench") + "/f140-bench.csv";
    }

    private Shell shell() {
        return new Shell(folder);
    }

    @Test
    void theExampleNamesItsOutlierAndDrawsItsFan() {
        var ran = shell().run("check", "--fan", table(), "--exit-area", "128 cm²");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.lines().getFirst()).startsWith("met: ");
        assertThat(ran.out())
                .contains("line 12 follows no law of the others")
                .contains("thrust [N] over speed [rpm]")
                .contains("Coefficients in still air");
        assertThat(ran.lines()).allMatch(line -> line.length() <= 100);
    }

    /** Half the exit area needs the square root of two of the power. */
    @Test
    void tooSmallAnExitCannotBe() {
        var ran = shell().run("check", "--fan", table(), "--exit-area", "30 cm²");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.lines().getFirst()).startsWith("not met: ");
        assertThat(ran.out())
                .containsPattern("would need 1\\d\\d(\\.\\d)? % of its electrical power");
    }

    @Test
    void jsonIsOneAnswerALine() {
        var ran =
                shell().run(
                                "check", "--fan", "--json", table(), "--tip", "140 mm", "--hub",
                                "52 mm");
        assertThat(ran.lines()).hasSize(1);
        assertThat(ran.out())
                .startsWith("{\"schema\":\"liftwright/answer-fan/1.0\"")
                .contains("\"kind\":\"plot\"");
    }

    @Test
    void thePictureIsWrittenOnce() throws IOException {
        var ran = shell().run("check", "--fan", table(), "--plot", "fan.svg");
        assertThat(ran.code()).isZero();
        assertThat(Files.readString(folder.resolve("fan.svg")))
                .startsWith("<svg ")
                .contains("speed [rpm]", "thrust [N]");
        var again = shell().run("check", "--fan", table(), "--plot", "fan.svg");
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("not overwritten");
    }

    @Test
    void aTypeOfARigIsComparedWithTheRows() {
        var ran =
                shell().run(
                                "check",
                                "--fan",
                                table(),
                                "--rig",
                                CommandLineTest.example("mudlark"),
                                "--type",
                                "F140");
        assertThat(ran.out()).contains("What is declared, and what the rows say");
        var none =
                shell().run(
                                "check",
                                "--fan",
                                table(),
                                "--rig",
                                CommandLineTest.example("mudlark"),
                                "--type",
                                "Nought");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("no fan type Nought").contains("F140");
    }

    @Test
    void aBrokenTableHasItsProblemsAtTheirPlaces() throws IOException {
        Files.writeString(
                folder.resolve("bad.csv"),
                """
                voltage [V],current [A],thrust [N]
                40,50,twelve
                """);
        var ran = shell().run("check", "--fan", "bad.csv", "nowhere.csv");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.lines().getFirst()).startsWith("bad.csv does not read as a bench table");
        assertThat(ran.out())
                .containsPattern("bad\\.csv:1:\\d+")
                .containsPattern("bad\\.csv:2:\\d+");
        assertThat(ran.err()).contains("no file or folder nowhere.csv");
        assertThat(shell().run("check", "--fan", "--json", "bad.csv").out())
                .contains("\"reads\":false");
    }

    @Test
    void wrongOptionsAreUsage() {
        for (String[] wrong :
                new String[][] {
                    {"--exit-area", "128"},
                    {"--tip", "-3 mm"},
                    {"--tip", "50 mm", "--hub", "60 mm"},
                    {"--type", "F140"},
                    {"--stand"}
                }) {
            var words = new ArrayList<String>(List.of("check", "--fan", table()));
            words.addAll(List.of(wrong));
            assertThat(shell().run(words.toArray(new String[0])).code())
                    .as(String.join(" ", wrong))
                    .isEqualTo(2);
        }
        assertThat(shell().run("check", table(), "--plot", "a.svg").code())
                .as("a plot of a rig")
                .isEqualTo(2);
    }
}
