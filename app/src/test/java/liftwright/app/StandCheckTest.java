package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StandCheckTest {

    private static final Pattern PLAN =
            Pattern.compile("```yaml\n(stand: 1.*?)```", Pattern.DOTALL);

    @TempDir private Path folder;

    @Test
    void theExampleSaysWhatToImproveFirst() {
        var ran = shell().run("check", "--stand", CommandLineTest.example("stand"));
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.lines().getFirst()).startsWith("not met: a thrust of 92 N");
        assertThat(ran.out()).contains("first to improve").contains("stand of Barn");
        assertThat(ran.lines()).allMatch(line -> line.length() <= 100);
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void jsonIsOneAnswerALineAndRepeats() {
        String example = CommandLineTest.example("stand");
        var ran = shell().run("check", "--stand", "--json", example);
        assertThat(ran.lines()).hasSize(1);
        assertThat(ran.out()).startsWith("{\"schema\":\"liftwright/answer-stand/1.0\"");
        assertThat(shell().run("check", "--stand", "--json", example).out()).isEqualTo(ran.out());
    }

    /** The page's plan is the example's, and gives its answer. */
    @Test
    void thePlanOfThePageReads() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "how-to", "plan-a-thrust-stand.md"));
        var plan = PLAN.matcher(page);
        assertThat(plan.find()).isTrue();
        Files.writeString(folder.resolve("page.yaml"), plan.group(1));
        var ran = shell().run("check", "--stand", "page.yaml");
        assertThat(ran.lines().getFirst())
                .isEqualTo(
                        shell().run("check", "--stand", CommandLineTest.example("stand"))
                                .lines()
                                .getFirst());
    }

    @Test
    void aStandThatDoesIsClear() throws IOException {
        Files.createDirectory(folder.resolve("mine"));
        Files.writeString(
                folder.resolve("mine/stand.yaml"), text().replace("wanted: 1.5 %", "wanted: 3 %"));
        var ran = shell().run("check", "--stand", "mine");
        assertThat(ran.code()).isZero();
        assertThat(ran.lines().getFirst()).startsWith("met: ");
    }

    @Test
    void aBadPlanHasItsProblemsAtTheirPlacesAndHoldsUpNoOther() throws IOException {
        Files.writeString(
                folder.resolve("bad.yaml"), text().replace("rating: 200 N", "rating: 200 kg"));
        var ran =
                shell().run(
                                "check",
                                "--stand",
                                "bad.yaml",
                                CommandLineTest.example("stand"),
                                "nowhere");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.lines().getFirst())
                .isEqualTo("bad.yaml does not read as a thrust stand: 1 problem");
        assertThat(ran.out())
                .containsPattern("bad\\.yaml:\\d+:\\d+: cell/rating")
                .contains("stand of Barn");
        assertThat(ran.err()).contains("no file or folder nowhere");
        var json = shell().run("check", "--stand", "--json", "bad.yaml");
        assertThat(json.out()).contains("\"reads\":false").contains("wrong-unit");
        assertThat(json.code()).isEqualTo(2);
    }

    private static String text() throws IOException {
        return Files.readString(Path.of(CommandLineTest.example("stand"), "stand.yaml"));
    }

    private Shell shell() {
        return new Shell(folder);
    }
}
