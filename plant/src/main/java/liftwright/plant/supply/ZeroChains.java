package liftwright.plant.supply;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Currents in chains without resistance. No voltage tells them; they follow from what enters and
 * leaves the nodes they join, as long as they form no loop among themselves. A chain that closes
 * such a loop carries a current that nothing determines; it is given as zero and named.
 */
final class ZeroChains {

    private final Topology.Graph graph;
    private final boolean[] without;

    /** Chains of the forest, each after all that hang below it, and the node below. */
    private final int[] chain;

    private final int[] below;
    private final List<Integer> undetermined;

    private ZeroChains(
            Topology.Graph graph,
            boolean[] without,
            int[] chain,
            int[] below,
            List<Integer> undetermined) {
        this.graph = graph;
        this.without = without;
        this.chain = chain;
        this.below = below;
        this.undetermined = List.copyOf(undetermined);
    }

    static ZeroChains of(
            Topology.Graph graph, boolean[] without, List<Integer> forest, List<Integer> loops) {
        int[] chain = new int[forest.size()];
        int[] below = new int[forest.size()];
        int[] degree = new int[graph.nodes];
        for (int c : forest) {
            degree[graph.chainFrom[c]]++;
            degree[graph.chainTo[c]]++;
        }
        List<Integer> left = new ArrayList<>(forest);
        int next = 0;
        while (!left.isEmpty()) {
            List<Integer> later = new ArrayList<>();
            for (int c : left) {
                int from = graph.chainFrom[c];
                int to = graph.chainTo[c];
                if (degree[from] == 1 || degree[to] == 1) {
                    chain[next] = c;
                    below[next++] = degree[from] == 1 ? from : to;
                    degree[from]--;
                    degree[to]--;
                } else {
                    later.add(c);
                }
            }
            left = later;
        }
        return new ZeroChains(graph, without, chain, below, loops);
    }

    /** Chains whose current nothing determines. */
    List<Integer> undetermined() {
        return undetermined;
    }

    int nodes() {
        return graph.nodes;
    }

    /**
     * @param packA in: discharge currents, A
     * @param loadA in: currents of the loads, A
     * @param chainA in: currents of chains with resistance; out: of the others
     * @param leavingA scratch, one per node of the graph
     */
    void fill(double[] packA, double[] loadA, double[] chainA, double[] leavingA) {
        if (chain.length == 0) {
            return;
        }
        Arrays.fill(leavingA, 0);
        for (int k = 0; k < packA.length; k++) {
            leavingA[graph.packNode[k]] -= packA[k];
        }
        for (int k = 0; k < loadA.length; k++) {
            leavingA[graph.loadNode[k]] += loadA[k];
        }
        for (int k = 0; k < chainA.length; k++) {
            if (!without[k]) {
                leavingA[graph.chainFrom[k]] += chainA[k];
                leavingA[graph.chainTo[k]] -= chainA[k];
            }
        }
        for (int k = 0; k < chain.length; k++) {
            int c = chain[k];
            int from = graph.chainFrom[c];
            int to = graph.chainTo[c];
            double out = leavingA[below[k]];
            // What leaves below comes in through this chain.
            chainA[c] = below[k] == to ? out : -out;
            leavingA[below[k] == to ? from : to] += out;
        }
    }
}
