package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the pages tell a reader to type must work, and what they list must be there. */
class PagesTest {

    private static final Path DOCS = Path.of("..", "docs");
    private static final Pattern ANY_BLOCK =
            Pattern.compile("```([a-z]*)\n(.*?)```", Pattern.DOTALL);
    private static final Pattern ANSWER_BLOCK =
            Pattern.compile("```\n((?:met|not met|cannot be told): .*?)```", Pattern.DOTALL);
    private static final Pattern COMMAND =
            Pattern.compile("\\./liftwright (review [a-z]+ examples/[a-z/.]+)");
    private static final Pattern OPTION = Pattern.compile("--[a-z]+(?:-[a-z]+)*");

    @TempDir private Path folder;

    /**
     * A tutorial is walked in a folder that holds the examples; every line that it shows as printed
     * is printed by the command before it, however many blanks part its columns.
     */
    @ParameterizedTest
    @CsvSource({"first-evening, 12, 0", "why-it-turned, 3, 9", "missing-lift, 10, 7"})
    void aTutorialsCommandsRunAndPrintWhatItShows(String name, int asked, int shown)
            throws IOException {
        copyExamples();
        String page = Files.readString(DOCS.resolve("tutorial/" + name + ".md"));
        int ran = 0;
        int lines = 0;
        String printed = "";
        for (MatchResult block : ANY_BLOCK.matcher(page).results().toList()) {
            boolean commands = block.group(1).equals("sh");
            for (String line : block.group(2).lines().toList()) {
                if (!commands) {
                    assertThat(printed).as(name).contains(line.strip());
                    lines++;
                } else if (line.startsWith("./liftwright ")) {
                    printed = words(asked(line));
                    ran++;
                } else {
                    doWithFiles(line.split(" ", -1));
                }
            }
        }
        assertThat(ran).isEqualTo(asked);
        assertThat(lines).isEqualTo(shown);
    }

    private void copyExamples() throws IOException {
        try (Stream<Path> files = Files.walk(Shell.EXAMPLES)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path to = folder.resolve("examples").resolve(Shell.EXAMPLES.relativize(file));
                Files.createDirectories(to.getParent());
                Files.copy(file, to);
            }
        }
    }

    private String asked(String command) {
        var ran = new Shell(folder).run(command.substring("./liftwright ".length()).split(" ", -1));
        assertThat(ran.code()).as(command + ran.err()).isBetween(0, 1);
        return ran.out();
    }

    private static String words(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private void doWithFiles(String[] words) throws IOException {
        switch (words[0]) {
            case "mkdir" -> Files.createDirectory(folder.resolve(words[1]));
            case "cp" -> Files.copy(folder.resolve(words[1]), folder.resolve(words[2]));
            case "diff" ->
                    assertThat(Files.mismatch(folder.resolve(words[1]), folder.resolve(words[2])))
                            .as("where they differ")
                            .isNotNegative();
            default -> throw new AssertionError("who runs " + words[0]);
        }
    }

    @Test
    void thePageOfTheCommandLineListsEveryOptionAndNoOther() throws IOException {
        String page = Files.readString(DOCS.resolve("reference/command-line.md"));
        var help = new StringBuilder();
        for (List<String> verb :
                List.of(
                        List.<String>of(),
                        List.of("check"),
                        List.of("new"),
                        List.of("review"),
                        List.of("card"),
                        List.of("compare"),
                        List.of("fit"),
                        List.of("log"),
                        List.of("explain"),
                        List.of("fly"),
                        List.of("disperse"),
                        List.of("open"))) {
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
}
