package liftwright.rig;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a rig file says, without layout, comments or places: the tree that changes are applied to
 * and that rigs are made from. Two files that say the same in other words of layout have equal
 * declarations.
 *
 * @param root the whole file
 */
public record Declaration(Tree root) {

    /** What stands at a path; empty where nothing does. */
    public Optional<Tree> at(RigPath path) {
        Optional<Tree> tree = Optional.of(root);
        for (String segment : path.segments()) {
            tree = tree.flatMap(above -> child(above, segment));
        }
        return tree;
    }

    private static Optional<Tree> child(Tree tree, String segment) {
        return switch (tree) {
            case Tree.Entries(var byKey) -> Optional.ofNullable(byKey.get(segment));
            case Tree.Items(var items) -> item(items, segment);
            case Tree.Text _ -> Optional.empty();
        };
    }

    private static Optional<Tree> item(List<Tree> items, String segment) {
        for (int i = 0; i < items.size(); i++) {
            boolean named =
                    items.get(i) instanceof Tree.Entries(var byKey)
                            && new Tree.Text(segment).equals(byKey.get("id"));
            if (named || segment.equals(Integer.toString(i + 1))) {
                return Optional.of(items.get(i));
            }
        }
        return Optional.empty();
    }

    /** A value of the file: a map in order, a list, or a text. */
    public sealed interface Tree {
        record Entries(Map<String, Tree> byKey) implements Tree {}

        record Items(List<Tree> items) implements Tree {}

        record Text(String value) implements Tree {}
    }
}
