package liftwright.rig.text;

import java.util.ArrayList;
import java.util.List;
import liftwright.rig.Change;

/**
 * Finds the splices that make a change in a text. It aims at texts that a person would have
 * written; whether the result says what it should is checked by reading it again, so what it does
 * not understand may fail there.
 */
final class Splicer {

    private static final String BLOCK_OF_LINES =
            "A block of lines (`|` or `>`) stands there: change it by hand.";

    private final String text;
    private final Node root;
    private final Layout layout;
    private final Lines lines;

    Splicer(String text, Node root) {
        this.text = text;
        this.root = root;
        this.layout = new Layout(text);
        this.lines = layout.lines();
    }

    Plan plan(Change change) {
        Trail trail = Trail.along(root, change.at());
        return switch (change) {
            case Change.Set(var _, var value) -> set(trail, value);
            case Change.Add(var _, var key, var value) -> add(trail, key, value);
            case Change.Replace(var _, var value) -> replace(trail, value);
            case Change.Remove _ -> new Removal(layout, text).plan(trail);
            case Change.Move(var _, var index) -> move(trail, index);
        };
    }

    private Plan set(Trail trail, String value) {
        if (trail.complete()) {
            return trail.last() instanceof Node.Scalar scalar
                    ? scalar(trail, scalar, value, false)
                    : new Plan.Refused("More than one text stands there.");
        }
        return missing(trail, value, false);
    }

    private Plan add(Trail trail, String key, String value) {
        String written = FlowValue.write(value, true);
        String collection =
                key.isEmpty()
                        ? "[" + written + "]"
                        : "{" + FlowValue.key(key, true) + ": " + written + "}";
        if (!trail.complete()) {
            return missing(trail, collection, true);
        }
        return switch (trail.last()) {
            case Node.Entries map -> entry(trail, map, key, value);
            case Node.Items list -> item(trail, list, value);
            case Node.Scalar scalar -> scalar(trail, scalar, collection, true);
        };
    }

    /** Puts a value under keys that are not there, in one line. */
    private Plan missing(Trail trail, String value, boolean collection) {
        var keys = trail.missing();
        String written = value;
        boolean done = collection;
        for (int i = keys.size() - 1; i > 0; i--) {
            String inner = done ? written : FlowValue.quote(written, true, false);
            written = "{" + FlowValue.key(keys.get(i), true) + ": " + inner + "}";
            done = true;
        }
        return switch (trail.last()) {
            case Node.Entries map -> entry(trail, map, keys.getFirst(), written, done);
            case Node.Items _ -> new Plan.Refused("The list has no " + keys.getFirst() + ".");
            case Node.Scalar scalar -> {
                String inner = done ? written : FlowValue.quote(written, true, false);
                yield scalar(
                        trail,
                        scalar,
                        "{" + FlowValue.key(keys.getFirst(), true) + ": " + inner + "}",
                        true);
            }
        };
    }

    /** Puts another value in place of a scalar. */
    private Plan scalar(Trail trail, Node.Scalar scalar, String value, boolean collection) {
        if (layout.blockOfLines(scalar)) {
            return new Plan.Refused(BLOCK_OF_LINES);
        }
        int from = scalar.span().from();
        int to = scalar.span().to();
        boolean inFlow = layout.inFlow(trail);
        int marker = from;
        while (layout.at(marker - 1) == ' ') {
            marker--;
        }
        boolean behindColon = layout.at(marker - 1) == ':';
        boolean behindDash = layout.at(marker - 1) == '-' && !inFlow;
        if (value.isEmpty() && !collection && from < to && (behindColon || behindDash)) {
            return Plan.of(new Splice(marker, to, "")); // as nothing is written
        }
        String written = collection ? value : FlowValue.quote(value, inFlow, false);
        if (from < to) {
            return Plan.of(new Splice(from, to, written));
        }
        var parent = trail.up();
        if (parent.isPresent() && parent.get().last() instanceof Node.Entries map) {
            var entry = map.entries().get(trail.index());
            int colon = layout.afterColon(entry);
            int at = colon < 0 ? entry.keySpan().to() : colon;
            return Plan.of(new Splice(at, at, (colon < 0 ? ": " : " ") + written));
        }
        return Plan.of(new Splice(from, from, " " + written));
    }

    private Plan entry(Trail trail, Node.Entries map, String key, String value) {
        return entry(trail, map, key, value, FlowValue.collection(value));
    }

    /** A new entry at the end of a map. */
    private Plan entry(
            Trail trail, Node.Entries map, String key, String value, boolean collection) {
        boolean inFlow = layout.inFlow(trail);
        String written =
                FlowValue.key(key, inFlow)
                        + ": "
                        + (collection ? value : FlowValue.quote(value, inFlow, false));
        if (layout.flow(map)) {
            if (map.entries().isEmpty()) {
                int at = map.span().from() + 1;
                return Plan.of(new Splice(at, at, written));
            }
            int at = layout.end(map.entries().getLast());
            return Plan.of(new Splice(at, at, ", " + written));
        }
        if (inFlow) {
            return new Plan.Refused("A pair in a list has no braces to add to.");
        }
        return line(layout.end(map.entries().getLast()), Layout.indent(map.span()) + written);
    }

    /** A new item at the end of a list. */
    private Plan item(Trail trail, Node.Items list, String value) {
        boolean inFlow = layout.inFlow(trail);
        String written = FlowValue.write(value, inFlow);
        if (layout.flow(list)) {
            if (list.items().isEmpty()) {
                int at = list.span().from() + 1;
                return Plan.of(new Splice(at, at, written));
            }
            int at = list.items().getLast().span().to();
            return Plan.of(new Splice(at, at, ", " + written));
        }
        return line(list.span().to(), Layout.indent(list.span()) + "- " + written);
    }

    /** A line of its own below the one that holds {@code end}. */
    private Plan line(int end, String line) {
        int at = layout.lastOnLine(end);
        return Plan.of(new Splice(at, at, layout.lineEnding(end) + line));
    }

    private Plan replace(Trail trail, String value) {
        boolean inFlow = trail.up().map(layout::inFlow).orElse(false);
        Node node = trail.last();
        if (node instanceof Node.Scalar scalar) {
            return scalar(trail, scalar, value, FlowValue.collection(value));
        }
        String written = FlowValue.write(value, inFlow);
        Span span = node.span();
        if (layout.flow(node) || inFlow) {
            return Plan.of(new Splice(span.from(), span.to(), written));
        }
        int marker = new Removal(layout, text).marker(trail);
        if (marker < 0) {
            return new Plan.Refused("The whole file can only be changed entry by entry.");
        }
        int markerLine = lines.indexOf(marker);
        if (markerLine == lines.indexOf(span.from())) {
            return Plan.of(new Splice(span.from(), span.to(), written));
        }
        // From `key:` and the lines below it to `key: value`.
        return Plan.of(
                new Splice(marker, marker, " " + written),
                new Splice(lines.end(markerLine), layout.lastOnLine(span.to()), ""));
    }

    /** Moves a list entry: the places stay, their contents change. */
    private Plan move(Trail trail, int to) {
        var up = trail.up();
        if (up.isEmpty() || !(up.get().last() instanceof Node.Items list)) {
            return new Plan.Refused("Only entries of lists move.");
        }
        var slots = new ArrayList<Splice>();
        for (int i = 0; i < list.items().size(); i++) {
            slots.add(slot(list, i));
        }
        if (layout.flow(list)) {
            for (int i = 1; i < slots.size(); i++) {
                if (text.substring(slots.get(i - 1).to(), slots.get(i).from()).contains("#")) {
                    return new Plan.Refused(
                            "Comments stand between the entries of that list: move it by hand.");
                }
            }
        } else if (!layout.beginsLine(list.span().from())) {
            return new Plan.Refused("The list begins behind a dash: move its entry by hand.");
        }
        var moved = new ArrayList<>(slots);
        moved.add(to, moved.remove(trail.index()));
        var splices = new ArrayList<Splice>();
        for (int i = 0; i < slots.size(); i++) {
            if (!slots.get(i).replacement().equals(moved.get(i).replacement())) {
                splices.add(
                        new Splice(
                                slots.get(i).from(),
                                slots.get(i).to(),
                                moved.get(i).replacement()));
            }
        }
        return new Plan.Splices(List.copyOf(splices));
    }

    /** Where a list entry stands with what it owns, without its line ending. */
    private Splice slot(Node.Items list, int index) {
        int from = list.items().get(index).span().from();
        int to = list.items().get(index).span().to();
        if (!layout.flow(list)) {
            from = lines.start(layout.ownedFrom(layout.dash(list, index)));
            to = layout.lastOnLine(to);
        }
        return new Splice(from, to, text.substring(from, to));
    }
}
