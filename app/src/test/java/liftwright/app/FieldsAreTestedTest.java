package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import liftwright.answer.Field;
import liftwright.answer.Fields;
import org.junit.jupiter.api.Test;

/** A number without a row, or a row whose test is not there, is found before a user does. */
class FieldsAreTestedTest {

    private static final Path HOUSE = Path.of("..").toAbsolutePath().normalize();
    private static final Pattern MADE =
            Pattern.compile("Value\\s*\\.(?:of|words)\\(\\s*\"([a-z0-9-]+)\"");
    private static final Pattern STEP = Pattern.compile("new Stage\\(\\s*\"([a-z0-9-]+)\"");
    private static final Pattern LIMIT = Pattern.compile("->\\s*\"([a-z0-9]+(?:-[a-z0-9]+)+)\";");

    @Test
    void everyFieldOfAQuestionHasItsRow() throws IOException {
        var used = new TreeSet<String>();
        List<Path> sources = new ArrayList<>(sources("review", "main"));
        sources.addAll(sources("trials", "main"));
        sources.addAll(sources("logbook", "main"));
        sources.addAll(sources("learning", "main"));
        sources.addAll(sources("flight", "main"));
        for (Path source : sources) {
            String text = Files.readString(source);
            for (Pattern pattern : List.of(MADE, STEP, LIMIT)) {
                pattern.matcher(text).results().map(result -> result.group(1)).forEach(used::add);
            }
        }
        assertThat(used)
                .as("the patterns still find what the questions write")
                .contains("thrust-to-weight", "step-density", "fault-current", "fan-lift")
                .hasSizeGreaterThan(20);
        assertThat(used).allSatisfy(id -> assertThat(Fields.find(id)).as(id).isPresent());
    }

    @Test
    void theTestOfEveryRowExists() throws IOException {
        var missing = new ArrayList<String>();
        for (Field field : Fields.all()) {
            String[] name = field.test().split("\\.", -1);
            List<Path> files = new ArrayList<>();
            for (String room :
                    List.of(
                            "quantity",
                            "numerics",
                            "physics",
                            "rig",
                            "answer",
                            "plant",
                            "review",
                            "trials",
                            "logbook",
                            "learning",
                            "flight",
                            "report",
                            "app")) {
                files.addAll(
                        sources(room, "test").stream()
                                .filter(path -> path.endsWith(name[0] + ".java"))
                                .toList());
            }
            var method =
                    Pattern.compile(
                            "@(?:Parameterized)?Test(?:\\s+@\\w+(?:\\([^)]*\\))?)*\\s+void "
                                    + name[1]
                                    + "\\(");
            boolean found = false;
            for (Path file : files) {
                found |= method.matcher(Files.readString(file)).find();
            }
            if (!found) {
                missing.add(field.id() + ": " + field.test());
            }
        }
        assertThat(missing).isEmpty();
    }

    private static List<Path> sources(String room, String kind) throws IOException {
        Path folder = HOUSE.resolve(room).resolve("src").resolve(kind).resolve("java");
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }
}
