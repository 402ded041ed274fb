package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/** The verb {@code disperse} as a user types it. */
class DisperseVerbTest {

    @TempDir private Path folder;
    private Shell shell;

    @BeforeEach
    void rigsAndAProfile() throws IOException {
        Files.copy(Shell.EXAMPLES.resolve("curlew/rig.yaml"), folder.resolve("rig.yaml"));
        Files.copy(Shell.EXAMPLES.resolve("sandpiper/rig.yaml"), folder.resolve("refused.yaml"));
        Files.writeString(
                folder.resolve("short.yaml"),
                """
                liftwright profile: 1
                name: up and down
                start: {on: held, height: 1 m}
                steps:
                  - hold: 2 s
                  - land: 0.4 m/s
                """);
        shell = new Shell(folder);
    }

    private Shell.Ran disperse(String... more) {
        String[] words = new String[more.length + 5];
        String[] first = {"disperse", "rig.yaml", "--profile", "short.yaml", "--seed=5"};
        System.arraycopy(first, 0, words, 0, first.length);
        System.arraycopy(more, 0, words, first.length, more.length);
        return shell.run(words);
    }

    /** Parts flown apart, put together in another order, are the whole byte for byte. */
    @Test
    void partsPutTogetherAreTheWhole() throws IOException {
        var whole = disperse("--flights", "5", "--into", "whole.csv");
        assertThat(whole.out()).as(whole.err()).contains("of 5 flights kept every limit");
        disperse("--from", "4", "--to", "5", "--into", "late.csv");
        disperse("--from", "1", "--to", "3", "--into", "early.csv");
        disperse("--merge", "late.csv", "--merge", "early.csv", "--into", "both.csv");
        assertThat(folder.resolve("both.csv")).hasSameBinaryContentAs(folder.resolve("whole.csv"));
    }

    @Test
    void aRigWithoutLoopsIsAnsweredAllTheSame() {
        var ran = shell.run("disperse", "refused.yaml", "--profile", "short.yaml", "--json");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).contains("\"question\":\"flight\"", "loops-refused");
        assertThat(ran.err()).contains("no flight was flown");
        assertThat(folder.resolve("flights")).doesNotExist();
    }

    /** As {@code fly} does: located problems, in words or as JSON. */
    @Test
    void aProfileThatDoesNotReadIsToldAsJsonToo() throws IOException {
        Files.writeString(
                folder.resolve("wrong.yaml"),
                "liftwright profile: 1\nsteps:\n  - make live: 2 s\n  - lift: {to: 1.5 kg}\n");
        for (String verb : List.of("fly", "disperse")) {
            var words = shell.run(verb, "rig.yaml", "--profile", "wrong.yaml");
            assertThat(words.code()).as(verb).isEqualTo(2);
            assertThat(words.out()).as(verb).contains("wrong.yaml:4:");
            var ran = shell.run(verb, "rig.yaml", "--profile", "wrong.yaml", "--json");
            assertThat(ran.code()).as(verb).isEqualTo(2);
            var problem = JsonMapper.shared().readTree(ran.out()).get("problems").get(0);
            assertThat(problem.get("line").asInt()).as(ran.out()).isEqualTo(4);
        }
        assertThat(folder.resolve("flights")).doesNotExist();
    }
}
