package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the pages tell a reader to type must work, and what they list must be there. */
class PagesTest {

    private static final Path DOCS = Path.of("..", "docs");
    private static final Pattern SHELL_BLOCK = Pattern.compile("```sh\n(.*?)```", Pattern.DOTALL);
    private static final Pattern ANSWER_BLOCK =
            Pattern.compile("```\n((?:met|not met|cannot be told): .*?)```", Pattern.DOTALL);
    private static final Pattern COMMAND =
            Pattern.compile("\\./liftwright (review [a-z]+ examples/[a-z/.]+)");
    private static final Pattern OPTION = Pattern.compile("--[a-z]+(?:-[a-z]+)*");

    @TempDir private Path folder;

    @Test
    void theTutorialsCommandsRun() throws IOException {
        Path example = Files.createDirectories(folder.resolve("examples/sandpiper"));
        Files.copy(Shell.EXAMPLES.resolve("sandpiper/rig.yaml"), example.resolve("rig.yaml"));
        String page = Files.readString(DOCS.resolve("tutorial/first-evening.md"));
        var outputs = new ArrayList<String>();
        for (String command : commands(page)) {
            String[] words = command.split(" ", -1);
            switch (words[0]) {
                case "mkdir" -> Files.createDirectory(folder.resolve(words[1]));
                case "cp" -> Files.copy(folder.resolve(words[1]), folder.resolve(words[2]));
                case "./liftwright" -> {
                    var ran = new Shell(folder).run(command.substring(13).split(" ", -1));
                    assertThat(ran.code()).as(command + ran.err()).isBetween(0, 1);
                    outputs.add(ran.out());
                }
                default -> throw new AssertionError("who runs " + command);
            }
        }
        assertThat(outputs).hasSize(7);
        assertThat(outputs.getFirst()).startsWith("not met: lift over weight");
    }

    @Test
    void thePageOfTheCommandLineListsEveryOptionAndNoOther() throws IOException {
        String page = Files.readString(DOCS.resolve("reference/command-line.md"));
        var help = new StringBuilder();
        for (List<String> verb :
                List.of(List.<String>of(), List.of("check"), List.of("new"), List.of("review"))) {
            var words = new ArrayList<>(verb);
            words.add("--help");
            help.append(new Shell(folder).run(words.toArray(new String[0])).out());
        }
        assertThat(options(page)).isEqualTo(options(help.toString()));
    }

    /**
     * What the front page shows is what its commands print today; … stands for what is left out.
     */
    @Test
    void theFrontPageShowsWhatTheProgramPrints() throws IOException {
        Path root = DOCS.resolveSibling("README.md");
        String page = Files.readString(root);
        var repository = new Shell(Shell.EXAMPLES.resolve(".."));
        int shown = 0;
        for (MatchResult block : ANSWER_BLOCK.matcher(page).results().toList()) {
            String command = lastCommand(page.substring(0, block.start()));
            String printed = repository.run(command.split(" ", -1)).out();
            for (String run : block.group(1).split("\n?…\n", -1)) {
                assertThat(printed).as(command).contains(run.strip());
                shown++;
            }
        }
        assertThat(shown).isGreaterThan(5);
    }

    private static String lastCommand(String text) {
        return COMMAND.matcher(text)
                .results()
                .map(found -> found.group(1).strip())
                .reduce((_, last) -> last)
                .orElseThrow();
    }

    private static List<String> options(String text) {
        return OPTION.matcher(text).results().map(r -> r.group()).distinct().sorted().toList();
    }

    private static List<String> commands(String page) {
        return SHELL_BLOCK
                .matcher(page)
                .results()
                .flatMap(block -> block.group(1).lines())
                .toList();
    }
}
