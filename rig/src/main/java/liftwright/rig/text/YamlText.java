package liftwright.rig.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import liftwright.rig.Problem;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads the part of YAML 1.2 that rig files use: maps, lists and texts, in block or flow layout,
 * with comments. Whatever else YAML can do is a problem at its place.
 */
public final class YamlText {

    /** Largest file, bytes. */
    public static final int MOST_BYTES = 1 << 20;

    /** Deepest nesting of maps and lists. */
    public static final int MOST_DEPTH = 32;

    /** Most keys, values and collections in one file. */
    public static final int MOST_NODES = 50_000;

    /** After so many syntax errors the rest is hardly about the file any more. */
    private static final int MOST_SYNTAX_PROBLEMS = 20;

    private final Source source;
    private final List<Located> syntax = new ArrayList<>();
    private TreeBuilder builder;

    private YamlText(Source source) {
        this.source = source;
        this.builder = new TreeBuilder(source);
    }

    /**
     * Reads a file. Never throws: whatever stands in it gives a tree or problems.
     *
     * @param fileName as problems shall call it
     * @param bytes the file, UTF-8 with or without byte order mark
     */
    public static Reading read(String fileName, byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            var tooLarge =
                    new Problem(
                            Problem.Code.TOO_LARGE,
                            new Problem.Place(fileName, 1, 1, ""),
                            "a file of more than " + MOST_BYTES + " bytes",
                            "at most " + MOST_BYTES + " bytes",
                            "Is this a rig file? Keep measured tables in files of their own.");
            return new Reading("", Optional.empty(), List.of(tooLarge));
        }
        var source = Source.decode(bytes);
        if (!source.worthReading()) {
            return new Reading(
                    source.text(), Optional.empty(), inOrder(fileName, source, source.problems()));
        }
        var reader = new YamlText(source);
        reader.readPastErrors();
        var problems = new ArrayList<>(source.problems());
        problems.addAll(reader.syntax);
        problems.addAll(reader.builder.problems());
        return new Reading(
                source.text(),
                Optional.ofNullable(reader.builder.root()),
                inOrder(fileName, source, problems));
    }

    /**
     * Blanks what a syntax error spoils, with the lines that hang from it, and reads again, so that
     * one slip does not hide the others.
     */
    private void readPastErrors() {
        while (true) {
            var slip = readOnce();
            if (slip == null) {
                return;
            }
            syntax.add(slip.problem());
            if (syntax.size() == MOST_SYNTAX_PROBLEMS || !source.blank(slip)) {
                return;
            }
            builder = new TreeBuilder(source);
        }
    }

    private @Nullable Slip readOnce() {
        var settings = LoadSettings.builder().setUseMarks(true).build();
        try {
            for (var event : new Parse(settings).parseString(source.working())) {
                if (!builder.take(event)) {
                    return null;
                }
            }
            return null;
        } catch (MarkedYamlEngineException error) {
            return new SyntaxWords(source, builder).explain(error);
        } catch (YamlEngineException | IndexOutOfBoundsException error) {
            return new SyntaxWords(source, builder).explainUnknown();
        } finally {
            builder.closeAll();
        }
    }

    private static List<Problem> inOrder(String file, Source source, List<Located> problems) {
        return problems.stream()
                .sorted(Comparator.comparingInt(Located::offset))
                .map(p -> p.in(file, source.lines()))
                .distinct()
                .toList();
    }
}
