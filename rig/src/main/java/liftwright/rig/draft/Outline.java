package liftwright.rig.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.rig.RigPath;
import liftwright.rig.text.Node;
import liftwright.rig.text.RigText;
import liftwright.rig.text.Span;

/**
 * The file as a tree to find one's way in.
 *
 * @param path where it stands
 * @param key of its map, or the id or number of an entry of a list
 * @param value text of a single value; empty for maps and lists
 * @param span from its key, or from its beginning in a list, to the end of its value
 * @param children what it holds
 */
public record Outline(
        RigPath path, String key, Optional<String> value, Span span, List<Outline> children) {

    public Outline {
        children = List.copyOf(children);
    }

    /** What stands at the top of a file, as far as it can be read. */
    public static List<Outline> of(RigText text) {
        return text.root().map(root -> children(root, RigPath.of())).orElse(List.of());
    }

    private static List<Outline> children(Node node, RigPath path) {
        return switch (node) {
            case Node.Scalar _ -> List.of();
            case Node.Entries(var entries, var _) ->
                    entries.stream().map(e -> of(e.value(), path, e.key(), whole(e))).toList();
            case Node.Items(var items, var _) -> {
                var children = new ArrayList<Outline>(items.size());
                for (int i = 0; i < items.size(); i++) {
                    Node item = items.get(i);
                    children.add(of(item, path, name(item, i), item.span()));
                }
                yield children;
            }
        };
    }

    private static Span whole(Node.Entry entry) {
        Span key = entry.keySpan();
        int to = Math.max(key.to(), entry.value().span().to());
        return new Span(key.from(), to, key.line(), key.column());
    }

    private static Outline of(Node node, RigPath above, String key, Span span) {
        var path = above.child(key);
        Optional<String> value =
                node instanceof Node.Scalar(var text, var _, var _)
                        ? Optional.of(text)
                        : Optional.empty();
        return new Outline(path, key, value, span, children(node, path));
    }

    /** Paths call an entry by its id, or by its number from 1. */
    private static String name(Node item, int index) {
        return item instanceof Node.Entries map
                        && map.value("id").orElse(null) instanceof Node.Scalar(var id, var _, var _)
                        && !id.isEmpty()
                ? id
                : Integer.toString(index + 1);
    }
}
