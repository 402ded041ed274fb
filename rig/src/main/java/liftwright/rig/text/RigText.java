package liftwright.rig.text;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.rig.Change;
import liftwright.rig.Declaration;
import liftwright.rig.Problem;
import liftwright.rig.RigPath;
import org.jspecify.annotations.Nullable;

/**
 * A rig file as it stands: the text is the truth. Changes splice it at located spans; there is no
 * writer of whole files. Immutable: undo is to go back to the text before.
 */
public final class RigText {

    private final String fileName;
    private final byte[] bytes;
    private final Reading reading;

    /** Found when first asked for; whoever finds it finds the same. */
    private @Nullable Lines lines;

    private RigText(String fileName, byte[] bytes) {
        this.fileName = fileName;
        this.bytes = bytes;
        this.reading = YamlText.read(fileName, bytes);
    }

    /** Reads a file; see {@link YamlText#read}. */
    public static RigText read(String fileName, byte[] bytes) {
        return new RigText(fileName, bytes.clone());
    }

    /** What came of an edit. */
    public sealed interface Edit {

        /**
         * @param text the file after all changes
         * @param steps what each change did, in order
         */
        record Changed(RigText text, List<Step> steps) implements Edit {
            public Changed {
                steps = List.copyOf(steps);
            }
        }

        /**
         * Nothing was changed.
         *
         * @param change the first that could not be made
         * @param reason a sentence for the one who asked
         */
        record Refused(Change change, String reason) implements Edit {}
    }

    /**
     * One change made in the text.
     *
     * @param change what was asked
     * @param splices what it replaced in the text that the step before left; every other character
     *     stayed
     */
    public record Step(Change change, List<Splice> splices) {
        public Step {
            splices = List.copyOf(splices);
        }
    }

    public String fileName() {
        return fileName;
    }

    /** The file, byte by byte. */
    public byte[] bytes() {
        return bytes.clone();
    }

    public String text() {
        return reading.text();
    }

    /** The tree, as far as it could be read. */
    public Optional<Node> root() {
        return reading.root();
    }

    /** What is wrong with it as YAML. */
    public List<Problem> problems() {
        return reading.problems();
    }

    /** What it says; empty if there is nothing to go on with. */
    public Optional<Declaration> declaration() {
        return reading.root().map(Declarations::of);
    }

    /** Where the value at {@code path} stands; empty if there is none. */
    public Optional<Span> span(RigPath path) {
        return reading.root()
                .map(root -> Trail.along(root, path))
                .filter(Trail::complete)
                .map(trail -> trail.last().span());
    }

    /** The same as a place to show; empty if nothing stands at {@code path}. */
    public Optional<Problem.Place> place(RigPath path) {
        return span(path)
                .map(
                        span ->
                                new Problem.Place(
                                        fileName, span.line(), span.column(), path.toString()));
    }

    /**
     * The offset of a place, UTF-16 units of {@link #text()}.
     *
     * @param line from 1; beyond the last one means the end of the text
     * @param column from 1, code points; beyond the end of the line means the end of the line
     */
    public int offset(int line, int column) {
        Lines found = lines;
        if (found == null) {
            found = new Lines(text());
            lines = found;
        }
        if (line > found.count()) {
            return text().length();
        }
        int from = found.start(Math.max(1, line) - 1);
        int end = found.end(Math.max(1, line) - 1);
        int steps = Math.max(1, column) - 1;
        return steps > text().codePointCount(from, end)
                ? end
                : text().offsetByCodePoints(from, steps);
    }

    /**
     * Makes the changes one after the other, all or none. After each the text is read again and
     * must say what the change makes of the declaration, in the same order; else it is refused.
     */
    public Edit with(List<Change> changes) {
        RigText now = this;
        var steps = new ArrayList<Step>();
        for (var change : changes) {
            switch (now.with(change)) {
                case Edit.Refused refused -> {
                    return refused;
                }
                case Edit.Changed(var next, var done) -> {
                    now = next;
                    steps.addAll(done);
                }
            }
        }
        return new Edit.Changed(now, steps);
    }

    private Edit with(Change change) {
        var root = reading.root();
        if (root.isEmpty() || !reading.problems().isEmpty()) {
            return new Edit.Refused(
                    change, "The file cannot be read as it stands: mend its problems first.");
        }
        return switch (Edits.apply(Declarations.of(root.get()), change)) {
            case Edited.Refused(var reason) -> new Edit.Refused(change, reason);
            case Edited.Done(var declared) -> spliced(root.get(), change, declared);
        };
    }

    private Edit spliced(Node root, Change change, Declaration declared) {
        return switch (new Splicer(text(), root).plan(change)) {
            case Plan.Refused(var reason) -> new Edit.Refused(change, reason);
            case Plan.Splices(var splices) -> {
                String after = Splice.apply(text(), splices);
                var next = new RigText(fileName, after.getBytes(StandardCharsets.UTF_8));
                boolean agrees =
                        next.problems().isEmpty()
                                && next.declaration().filter(d -> same(d, declared)).isPresent();
                yield agrees
                        ? new Edit.Changed(next, List.of(new Step(change, splices)))
                        : new Edit.Refused(
                                change,
                                "The text at that place is laid out in a way that cannot be edited"
                                        + " here: change it by hand.");
            }
        };
    }

    private static boolean same(Declaration one, Declaration other) {
        // Maps compare without their order, and the order belongs to the builder.
        return one.equals(other) && one.toString().equals(other.toString());
    }
}
