package liftwright.rig.text;

import java.util.Collections;
import java.util.LinkedHashMap;
import liftwright.rig.Declaration;
import liftwright.rig.Declaration.Tree;

/** From a tree with places to the declaration that it states. */
public final class Declarations {

    private Declarations() {}

    /** What {@code root} says, without its places. */
    public static Declaration of(Node root) {
        return new Declaration(tree(root));
    }

    static Tree tree(Node node) {
        return switch (node) {
            case Node.Entries(var entries, var _) -> {
                var byKey = new LinkedHashMap<String, Tree>();
                entries.forEach(entry -> byKey.put(entry.key(), tree(entry.value())));
                yield new Tree.Entries(Collections.unmodifiableMap(byKey));
            }
            case Node.Items(var items, var _) ->
                    new Tree.Items(items.stream().map(Declarations::tree).toList());
            case Node.Scalar(var value, var _, var _) -> new Tree.Text(value);
        };
    }
}
