package liftwright.rig.complete;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.rig.text.Node;
import liftwright.rig.text.YamlText;

/**
 * Where a mark stands in a text.
 *
 * @param root the whole file
 * @param holders the maps and lists that hold it, from the root on
 * @param keys under which each is held by the one before, and the mark by the last where it is a
 *     value; empty for an entry of a list
 * @param asKey whether it stands as a key of the last holder
 */
record Marked(Node root, List<Node> holders, List<Optional<String>> keys, boolean asKey) {

    /** Nobody writes this. */
    static final String MARK = "here7f3a91";

    Marked {
        holders = List.copyOf(holders);
        keys = List.copyOf(keys);
    }

    /** Reads the text, as far as it can be read, and finds the mark in it. */
    static Optional<Marked> find(String text) {
        return YamlText.read("", text.getBytes(StandardCharsets.UTF_8))
                .root()
                .flatMap(
                        root -> {
                            var search = new Search();
                            return search.in(root)
                                    ? Optional.of(
                                            new Marked(
                                                    root,
                                                    search.holders,
                                                    search.keys,
                                                    search.asKey))
                                    : Optional.empty();
                        });
    }

    /** The other keys of the map that holds the mark. */
    List<String> siblings() {
        return !holders.isEmpty() && holders.getLast() instanceof Node.Entries map
                ? map.entries().stream()
                        .map(Node.Entry::key)
                        .filter(key -> !key.equals(MARK))
                        .toList()
                : List.of();
    }

    private static final class Search {
        private final List<Node> holders = new ArrayList<>();
        private final List<Optional<String>> keys = new ArrayList<>();
        private boolean asKey;

        boolean in(Node node) {
            return switch (node) {
                case Node.Scalar(var value, var _, var _) -> value.equals(MARK);
                case Node.Entries(var entries, var _) -> {
                    holders.add(node);
                    for (var entry : entries) {
                        if (entry.key().equals(MARK)) {
                            asKey = true;
                            yield true;
                        }
                        if (below(Optional.of(entry.key()), entry.value())) {
                            yield true;
                        }
                    }
                    holders.removeLast();
                    yield false;
                }
                case Node.Items(var items, var _) -> {
                    holders.add(node);
                    for (var item : items) {
                        if (below(Optional.empty(), item)) {
                            yield true;
                        }
                    }
                    holders.removeLast();
                    yield false;
                }
            };
        }

        private boolean below(Optional<String> key, Node value) {
            keys.add(key);
            if (in(value)) {
                return true;
            }
            keys.removeLast();
            return false;
        }
    }
}
