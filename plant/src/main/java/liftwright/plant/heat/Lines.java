package liftwright.plant.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The chains of a rig as lines of nodes: a lump for a joint, a fuse or a pole, cells for a run.
 * Lines of one pattern stand side by side, node by node, so that a loop over them runs over
 * neighbours in memory. Immutable.
 */
final class Lines {

    /** Places of an element that is one lump. */
    static final double[] LUMP = {};

    /** Places of an element that is nothing: a run without length. */
    static final double[] NOTHING = {0};

    /** Lines of one pattern. */
    static final class Group {
        /** Its first node. */
        final int base;

        /** How many lines. */
        final int width;

        /** How many nodes each has. */
        final int length;

        /** Chain of each line. */
        final int[] chain;

        Group(int base, int length, int[] chain) {
            this.base = base;
            this.width = chain.length;
            this.length = length;
            this.chain = chain;
        }

        int node(int line, int along) {
            return base + along * width + line;
        }
    }

    final Group[] groups;

    /** All nodes. */
    final int nodes;

    /** Chain and element of each node; elements count through the rig. */
    final int[] chainOf;

    final int[] elementOf;

    /** Nodes that are cells of a run, and the share of the run that each is. */
    final int[] cells;

    final double[] share;

    /** Where in its run the temperature of such a node stands, as a share of the run's length. */
    final double[] place;

    /** Nodes of each element, in order; the neighbours of a lump are beside it in its line. */
    final int[][] nodesOf;

    /** Node before and after each one in its line; −1 at an end. */
    final int[] before;

    final int[] after;

    /**
     * @param places of each chain, for each element: the places of its cells, as shares of its
     *     length; empty for a lump
     */
    Lines(List<List<double[]>> places) {
        int elements = places.stream().mapToInt(List::size).sum();
        Map<String, List<Integer>> alike = new LinkedHashMap<>();
        int[] firstElement = new int[places.size()];
        int next = 0;
        for (int chain = 0; chain < places.size(); chain++) {
            firstElement[chain] = next;
            next += places.get(chain).size();
            StringBuilder pattern = new StringBuilder();
            for (double[] cells : places.get(chain)) {
                pattern.append(cells.length == 0 ? "l" : "w".repeat(count(cells)));
            }
            if (!pattern.isEmpty()) {
                alike.computeIfAbsent(pattern.toString(), _ -> new ArrayList<>()).add(chain);
            }
        }
        List<Group> made = new ArrayList<>();
        int base = 0;
        for (Map.Entry<String, List<Integer>> entry : alike.entrySet()) {
            int[] chains = entry.getValue().stream().mapToInt(Integer::intValue).toArray();
            made.add(new Group(base, entry.getKey().length(), chains));
            base += entry.getKey().length() * chains.length;
        }
        groups = made.toArray(new Group[0]);
        nodes = base;
        chainOf = new int[nodes];
        elementOf = new int[nodes];
        share = new double[nodes];
        place = new double[nodes];
        before = new int[nodes];
        after = new int[nodes];
        nodesOf = new int[elements][];
        Arrays.fill(nodesOf, new int[0]);
        boolean[] wire = new boolean[nodes];
        for (Group group : groups) {
            for (int line = 0; line < group.width; line++) {
                place(group, line, places.get(group.chain[line]), firstElement, wire);
            }
        }
        cells = IntStream.range(0, nodes).filter(node -> wire[node]).toArray();
    }

    private void place(
            Group group, int line, List<double[]> elements, int[] firstElement, boolean[] wire) {
        int chain = group.chain[line];
        int along = 0;
        for (int k = 0; k < elements.size(); k++) {
            double[] cells = elements.get(k);
            double[] shares = LineGrid.shares(cells);
            int[] own = new int[count(cells)];
            for (int cell = 0; cell < own.length; cell++) {
                int node = group.node(line, along);
                own[cell] = node;
                chainOf[node] = chain;
                elementOf[node] = firstElement[chain] + k;
                wire[node] = cells.length > 0;
                share[node] = cells.length > 0 ? shares[cell] : 1;
                place[node] = cells.length > 0 ? cells[cell] : 0;
                before[node] = along == 0 ? -1 : node - group.width;
                after[node] = along == group.length - 1 ? -1 : node + group.width;
                along++;
            }
            nodesOf[firstElement[chain] + k] = own;
        }
    }

    private static int count(double[] cells) {
        return cells.length == 0 ? 1 : cells[0] == 0 ? 0 : cells.length;
    }

    boolean isWire(int node) {
        return Arrays.binarySearch(cells, node) >= 0;
    }
}
