package liftwright.plant.supply;

import java.util.Arrays;

/** Disjoint sets of nodes. */
final class NodeSets {
    private final int[] parent;

    NodeSets(int nodes) {
        parent = new int[nodes];
        Arrays.setAll(parent, i -> i);
    }

    /** The node that stands for the set of this one. */
    int root(int node) {
        int at = node;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    /** Makes the sets of two nodes one; whether they were apart. */
    boolean join(int one, int two) {
        int first = root(one);
        int second = root(two);
        parent[second] = first;
        return first != second;
    }
}
