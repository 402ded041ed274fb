package liftwright.rig.draft;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Problem;
import liftwright.rig.RigPath;
import liftwright.rig.file.RigReading;
import liftwright.rig.text.Node;
import liftwright.rig.text.RigText;
import liftwright.rig.text.Span;

/**
 * A problem with the stretch of the rig file's text that it is about. One of a table beside the
 * file is about the value that names the table; what was found then says where in the table.
 *
 * @param problem as it was found
 * @param span in the text of the rig file; empty where nothing stands
 * @param found what was found, for the reader
 */
public record FoundProblem(Problem problem, Span span, String found) {

    /** All problems of a reading, in its order. */
    public static List<FoundProblem> of(RigReading reading) {
        var text = reading.text();
        return reading.problems().stream().map(problem -> of(problem, text)).toList();
    }

    private static FoundProblem of(Problem problem, RigText text) {
        var at = problem.at();
        if (at.file().equals(text.fileName())) {
            int from = text.offset(at.line(), at.column());
            return new FoundProblem(
                    problem,
                    new Span(from, end(problem, text, from), at.line(), at.column()),
                    problem.found());
        }
        String found =
                at.file()
                        + ", line "
                        + at.line()
                        + " column "
                        + at.column()
                        + ": "
                        + problem.found();
        Span named =
                text.root()
                        .flatMap(root -> naming(root, at.file()))
                        .orElseGet(() -> new Span(0, 0, 1, 1));
        return new FoundProblem(problem, named, found);
    }

    /** The end of what begins there: a value, a key, or else the line. */
    private static int end(Problem problem, RigText text, int from) {
        var path = RigPath.parse(problem.at().path());
        var value = text.span(path).filter(span -> span.from() == from && span.to() > from);
        if (value.isPresent()) {
            return firstLine(text.text(), from, value.get().to());
        }
        var key = text.root().flatMap(root -> key(root, path)).filter(span -> span.from() == from);
        return key.isPresent()
                ? key.get().to()
                : firstLine(text.text(), from, text.text().length());
    }

    /** A whole map or list underlined would hide what else is wrong in it. */
    private static int firstLine(String text, int from, int to) {
        int end = from;
        while (end < to && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        while (end > from && text.charAt(end - 1) == ' ') {
            end--;
        }
        return end;
    }

    private static Optional<Span> key(Node root, RigPath path) {
        Node node = root;
        Optional<Span> key = Optional.empty();
        for (String segment : path.segments()) {
            if (node instanceof Node.Entries(var entries, var _)) {
                var entry = entries.stream().filter(e -> e.key().equals(segment)).findFirst();
                if (entry.isEmpty()) {
                    return Optional.empty();
                }
                key = entry.map(Node.Entry::keySpan);
                node = entry.get().value();
            } else if (node instanceof Node.Items(var items, var _)) {
                var item = item(items, segment);
                if (item.isEmpty()) {
                    return Optional.empty();
                }
                key = Optional.empty();
                node = item.get();
            } else {
                return Optional.empty();
            }
        }
        return key;
    }

    private static Optional<Node> item(List<Node> items, String segment) {
        for (int i = 0; i < items.size(); i++) {
            boolean named =
                    items.get(i) instanceof Node.Entries map
                            && map.value("id").orElse(null)
                                    instanceof Node.Scalar(var id, var _, var _)
                            && id.equals(segment);
            if (named || segment.equals(Integer.toString(i + 1))) {
                return Optional.of(items.get(i));
            }
        }
        return Optional.empty();
    }

    /** The value that names a table: the table's name ends with it. */
    private static Optional<Span> naming(Node node, String table) {
        return switch (node) {
            case Node.Scalar(var value, var _, var span) ->
                    !value.isEmpty() && (table.equals(value) || table.endsWith("/" + value))
                            ? Optional.of(span)
                            : Optional.empty();
            case Node.Entries(var entries, var _) ->
                    entries.stream().flatMap(e -> naming(e.value(), table).stream()).findFirst();
            case Node.Items(var items, var _) ->
                    items.stream().flatMap(i -> naming(i, table).stream()).findFirst();
        };
    }
}
