package liftwright.plant.supply;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import liftwright.rig.Wiring;

/**
 * The wiring as a graph, after chains without any resistance have made their two nodes one. Nodes
 * that no pack reaches are left out: nothing can flow there.
 */
final class Topology {

    /** Live nodes: the unknowns of the network. */
    final int unknowns;

    /** Live islands: parts of the wiring that touch each other nowhere. */
    final int islands;

    /** −1 for a pack that is lost. */
    final int[] packUnknown;

    final int[] packIsland;

    /** −1 for a load that no pack reaches. */
    final int[] loadUnknown;

    /** −1 for a chain that no pack reaches, or that is open. */
    final int[] chainFrom;

    final int[] chainTo;
    final int[] islandOfUnknown;

    final ZeroChains zeroChains;

    private Topology(
            Graph graph,
            int[] unknownOfNode,
            int[] islandOfUnknown,
            int islands,
            boolean[] open,
            boolean[] lost,
            ZeroChains zeroChains) {
        this.unknowns = islandOfUnknown.length;
        this.islands = islands;
        this.islandOfUnknown = islandOfUnknown;
        this.zeroChains = zeroChains;
        packUnknown = through(graph.packNode, unknownOfNode);
        for (int pack = 0; pack < lost.length; pack++) {
            if (lost[pack]) {
                packUnknown[pack] = -1;
            }
        }
        packIsland = through(packUnknown, islandOfUnknown);
        loadUnknown = through(graph.loadNode, unknownOfNode);
        chainFrom = through(graph.chainFrom, unknownOfNode);
        chainTo = through(graph.chainTo, unknownOfNode);
        for (int chain = 0; chain < open.length; chain++) {
            if (open[chain]) {
                chainFrom[chain] = -1;
                chainTo[chain] = -1;
            }
        }
    }

    private static int[] through(int[] index, int[] map) {
        return Arrays.stream(index).map(i -> i < 0 ? -1 : map[i]).toArray();
    }

    /** The wiring with its names turned into numbers. */
    static final class Graph {
        final int nodes;
        final int[] packNode;
        final int[] loadNode;
        final int[] chainFrom;
        final int[] chainTo;

        Graph(List<String> packs, List<String> loads, List<Wiring.Chain> chains) {
            Map<String, Integer> number = new HashMap<>();
            packNode = packs.stream().mapToInt(name -> node(name, number)).toArray();
            loadNode = loads.stream().mapToInt(name -> node(name, number)).toArray();
            chainFrom = chains.stream().mapToInt(chain -> node(chain.from(), number)).toArray();
            chainTo = chains.stream().mapToInt(chain -> node(chain.to(), number)).toArray();
            nodes = number.size();
        }

        private static int node(String name, Map<String, Integer> number) {
            return number.computeIfAbsent(name, _ -> number.size());
        }
    }

    /**
     * @param without whether each chain has no resistance at all
     * @param open whether each chain is interrupted: as if it were not there
     * @param lost whether each pack neither gives nor takes; what it joins stays joined
     */
    static Topology of(Graph graph, boolean[] without, boolean[] open, boolean[] lost) {
        int nodes = graph.nodes;
        int chains = graph.chainFrom.length;
        NodeSets touching = new NodeSets(nodes);
        NodeSets merged = new NodeSets(nodes);
        List<Integer> forest = new ArrayList<>();
        List<Integer> loops = new ArrayList<>();
        for (int chain = 0; chain < chains; chain++) {
            if (open[chain]) {
                continue;
            }
            touching.join(graph.chainFrom[chain], graph.chainTo[chain]);
            if (without[chain]) {
                boolean joins = merged.join(graph.chainFrom[chain], graph.chainTo[chain]);
                (joins ? forest : loops).add(chain);
            }
        }
        boolean[] live = new boolean[nodes];
        for (int pack = 0; pack < lost.length; pack++) {
            live[touching.root(graph.packNode[pack])] |= !lost[pack];
        }
        int[] unknownOfNode = new int[nodes];
        int[] islandOfRoot = new int[nodes];
        int[] unknownOfRoot = new int[nodes];
        Arrays.fill(islandOfRoot, -1);
        Arrays.fill(unknownOfRoot, -1);
        List<Integer> islandOfUnknown = new ArrayList<>();
        int islands = 0;
        for (int node = 0; node < nodes; node++) {
            int root = touching.root(node);
            if (!live[root]) {
                unknownOfNode[node] = -1;
                continue;
            }
            if (islandOfRoot[root] < 0) {
                islandOfRoot[root] = islands++;
            }
            int one = merged.root(node);
            if (unknownOfRoot[one] < 0) {
                unknownOfRoot[one] = islandOfUnknown.size();
                islandOfUnknown.add(islandOfRoot[root]);
            }
            unknownOfNode[node] = unknownOfRoot[one];
        }
        return new Topology(
                graph,
                unknownOfNode,
                islandOfUnknown.stream().mapToInt(i -> i).toArray(),
                islands,
                open,
                lost,
                ZeroChains.of(graph, without, forest, loops));
    }
}
