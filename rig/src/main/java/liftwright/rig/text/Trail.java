package liftwright.rig.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.rig.RigPath;

/**
 * The way along a path through a tree, as far as it goes.
 *
 * @param nodes from the root on, never empty
 * @param indices index of each node but the root among its parent's entries
 * @param missing the segments that found nothing; empty when the path is there
 */
record Trail(List<Node> nodes, List<Integer> indices, List<String> missing) {

    static Trail along(Node root, RigPath path) {
        var nodes = new ArrayList<Node>(List.of(root));
        var indices = new ArrayList<Integer>();
        var segments = path.segments();
        for (int depth = 0; depth < segments.size(); depth++) {
            String segment = segments.get(depth);
            int index =
                    switch (nodes.getLast()) {
                        case Node.Entries map -> Segments.indexIn(map, segment);
                        case Node.Items list -> Segments.indexIn(list, segment);
                        case Node.Scalar _ -> -1;
                    };
            if (index < 0) {
                return new Trail(nodes, indices, segments.subList(depth, segments.size()));
            }
            nodes.add(
                    switch (nodes.getLast()) {
                        case Node.Entries map -> map.entries().get(index).value();
                        case Node.Items list -> list.items().get(index);
                        case Node.Scalar scalar -> scalar;
                    });
            indices.add(index);
        }
        return new Trail(nodes, indices, List.of());
    }

    boolean complete() {
        return missing.isEmpty();
    }

    Node last() {
        return nodes.getLast();
    }

    int index() {
        return indices.getLast();
    }

    /** The way to the parent of the last node; empty at the root. */
    Optional<Trail> up() {
        return indices.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Trail(
                                nodes.subList(0, nodes.size() - 1),
                                indices.subList(0, indices.size() - 1),
                                missing));
    }
}
