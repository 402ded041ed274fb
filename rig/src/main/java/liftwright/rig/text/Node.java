package liftwright.rig.text;

import java.util.List;
import java.util.Optional;

/**
 * A value of a file with its place. Spans hold the value and nothing else: a flow collection from
 * bracket to bracket, a block collection from its first key or dash to the end of its last scalar.
 */
public sealed interface Node {

    Span span();

    /** A map; its keys are distinct and in the order of the file. */
    record Entries(List<Entry> entries, Span span) implements Node {
        public Entries {
            entries = List.copyOf(entries);
        }

        /** The value under {@code key}, if any. */
        public Optional<Node> value(String key) {
            return entries.stream().filter(e -> e.key().equals(key)).map(Entry::value).findFirst();
        }
    }

    /** A list. */
    record Items(List<Node> items, Span span) implements Node {
        public Items {
            items = List.copyOf(items);
        }
    }

    /**
     * A single text. What stands for nothing, as in {@code key:}, is the empty text with an empty
     * span.
     *
     * @param value what it says, without quotes
     * @param quoted whether it stands in quotes or is a block of lines
     */
    record Scalar(String value, boolean quoted, Span span) implements Node {}

    /**
     * A key and its value.
     *
     * @param key what it says, without quotes
     * @param keySpan where it stands, quotes included
     */
    record Entry(String key, Span keySpan, Node value) {}
}
