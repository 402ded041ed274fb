package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A formula that names its source names one that the list of sources has. */
class SourceKeysTest {

    private static final Pattern USED = Pattern.compile("\\[([A-Z][A-Z0-9.]{3,})[],]");
    private static final Pattern LISTED = Pattern.compile("^\\| \\[([A-Z0-9.]+)] ");

    @Test
    void theListOfSourcesHasExactlyTheKeysInUse() throws IOException {
        Set<String> used = new TreeSet<>();
        for (String room :
                List.of(
                        "physics",
                        "numerics",
                        "plant",
                        "review",
                        "trials",
                        "logbook",
                        "learning",
                        "flight")) {
            used.addAll(keysIn(Path.of("..", room, "src", "main", "java")));
        }
        Set<String> listed =
                Files.readAllLines(Path.of("..", "docs", "reference", "sources.md")).stream()
                        .map(LISTED::matcher)
                        .filter(java.util.regex.Matcher::find)
                        .map(match -> match.group(1))
                        .collect(Collectors.toCollection(TreeSet::new));
        assertThat(used).hasSizeGreaterThan(15).isEqualTo(listed);
    }

    private static Set<String> keysIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .flatMap(file -> USED.matcher(text(file)).results())
                    .map(match -> match.group(1))
                    .collect(Collectors.toSet());
        }
    }

    /** The comments of a file. */
    private static String text(Path file) {
        try {
            // In code, brackets hold an index.
            return Files.readAllLines(file).stream()
                    .map(String::strip)
                    .filter(line -> line.startsWith("*") || line.startsWith("/"))
                    .collect(Collectors.joining("\n"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
