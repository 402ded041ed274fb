package liftwright.rig.text;

import java.nio.charset.StandardCharsets;
import liftwright.rig.Declaration.Tree;

/** A value of an edit, as it is written in one line. */
sealed interface FlowValue {

    record Good(Tree tree) implements FlowValue {}

    record Bad(String reason) implements FlowValue {}

    /** Reads a flow collection, if it begins as one; anything else is a text as it is. */
    static FlowValue read(String text) {
        if (barred(text)) {
            return new Bad("A value stands in one line and holds no invisible characters.");
        }
        if (!collection(text)) {
            return new Good(new Tree.Text(text));
        }
        var reading = YamlText.read("value", ("- " + text).getBytes(StandardCharsets.UTF_8));
        if (!reading.problems().isEmpty()) {
            var problem = reading.problems().getFirst();
            return new Bad(
                    "The value cannot be read: "
                            + problem.found()
                            + " where "
                            + problem.expected()
                            + " should stand.");
        }
        if (reading.root().orElse(null) instanceof Node.Items(var items, var _)
                && items.size() == 1
                && items.getFirst().span().to() == text.length() + 2) {
            return new Good(Declarations.tree(items.getFirst()));
        }
        return new Bad("The value does not end where its bracket closes.");
    }

    static boolean collection(String text) {
        return text.startsWith("{") || text.startsWith("[");
    }

    /** Whether something in it breaks lines or does not show. */
    static boolean barred(String text) {
        return text.codePoints().anyMatch(c -> c == '\n' || Characters.barredInValues(c));
    }

    /** The value of an edit as it stands in a line: flow collections as they are given. */
    static String write(String text, boolean inFlow) {
        return collection(text) ? text : quote(text, inFlow, false);
    }

    /** A key as it stands in a line. */
    static String key(String text, boolean inFlow) {
        return quote(text, inFlow, true);
    }

    /** The text in the plainest way that reads as itself: bare, in single or in double quotes. */
    static String quote(String text, boolean inFlow, boolean asKey) {
        if (!text.isEmpty() && readsAs(text, text, inFlow, asKey)) {
            return text;
        }
        String single = "'" + text.replace("'", "''") + "'";
        if (readsAs(single, text, inFlow, asKey)) {
            return single;
        }
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\t", "\\t") + '"';
    }

    private static boolean readsAs(String written, String text, boolean inFlow, boolean asKey) {
        String line = asKey ? written + ": x" : "x: " + written;
        String probe = inFlow ? "{" + line + ", y: z}" : line + "\ny: z";
        var reading = YamlText.read("value", probe.getBytes(StandardCharsets.UTF_8));
        return reading.problems().isEmpty()
                && reading.root().orElse(null) instanceof Node.Entries map
                && map.entries().size() == 2
                && map.entries().getFirst().key().equals(asKey ? text : "x")
                && map.entries().getFirst().value() instanceof Node.Scalar(var value, var _, var _)
                && value.equals(asKey ? "x" : text);
    }
}
