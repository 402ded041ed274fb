package liftwright.rig.shape;

import java.util.ArrayList;
import liftwright.rig.Declaration;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.shape.bind.Shelf;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.table.Tables;
import liftwright.rig.text.Node;

/** Makes rigs from declarations in memory, as after a change; the same path as for files. */
public final class Binder {

    /** What problems call a declaration that no file holds. */
    private static final String NO_FILE = "";

    private Binder() {}

    /** The rig of a declaration; its problems carry paths, and line and column 0. */
    public static Read bind(Declaration declaration) {
        return bind(declaration, Tables.NONE);
    }

    /**
     * The same with the tables that were read for it, or for what it was before a change.
     *
     * @param tables of the rig as it was read
     */
    public static Read bind(Declaration declaration, Tables tables) {
        return RigReader.read(NO_FILE, node(declaration.root()), declaration, Shelf.of(tables));
    }

    private static Node node(Tree tree) {
        return switch (tree) {
            case Tree.Text(var value) -> new Node.Scalar(value, false, Spot.NOWHERE);
            case Tree.Items(var items) ->
                    new Node.Items(items.stream().map(Binder::node).toList(), Spot.NOWHERE);
            case Tree.Entries(var byKey) -> {
                var entries = new ArrayList<Node.Entry>(byKey.size());
                byKey.forEach(
                        (key, value) ->
                                entries.add(new Node.Entry(key, Spot.NOWHERE, node(value))));
                yield new Node.Entries(entries, Spot.NOWHERE);
            }
        };
    }
}
