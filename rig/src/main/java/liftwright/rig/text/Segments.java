package liftwright.rig.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.rig.Declaration.Tree;

/** How a segment of a path finds its entry. */
final class Segments {

    private Segments() {}

    /**
     * Index of the list entry whose {@code id} is {@code segment}, or else of the entry with that
     * number from 1; −1 if there is none.
     */
    static int indexIn(Node.Items list, String segment) {
        return index(list.items().stream().map(Segments::id).toList(), segment);
    }

    static int indexIn(Tree.Items list, String segment) {
        return index(list.items().stream().map(Segments::id).toList(), segment);
    }

    /** Index of the entry with key {@code segment}; −1 if there is none. */
    static int indexIn(Node.Entries map, String segment) {
        for (int i = 0; i < map.entries().size(); i++) {
            if (map.entries().get(i).key().equals(segment)) {
                return i;
            }
        }
        return -1;
    }

    private static int index(List<Optional<String>> ids, String segment) {
        int byId = ids.indexOf(Optional.of(segment));
        if (byId >= 0) {
            return byId;
        }
        // No sign, no leading zero, no other script's digits: one spelling for each number.
        if (!segment.matches("[1-9][0-9]{0,5}")) {
            return -1;
        }
        int number = Integer.parseInt(segment);
        return number <= ids.size() ? number - 1 : -1;
    }

    static Optional<String> id(Node node) {
        return node instanceof Node.Entries map
                        && map.value("id").orElse(null) instanceof Node.Scalar id
                ? Optional.of(id.value())
                : Optional.empty();
    }

    private static Optional<String> id(Tree tree) {
        return tree instanceof Tree.Entries(Map<String, Tree> byKey)
                        && byKey.get("id") instanceof Tree.Text(var id)
                ? Optional.of(id)
                : Optional.empty();
    }
}
