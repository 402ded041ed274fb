package liftwright.plant.supply;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import liftwright.numerics.SymmetricFactor;
import liftwright.numerics.SymmetricPattern;
import liftwright.physics.FastEffects;

/**
 * Currents that a fuse or a contactor would have to break: a dead short right behind it, E/R of the
 * rest of the network seen from there, from the worse of its two sides. Loads feed nothing back.
 * For reports, not for loops.
 */
public final class FaultCurrents {

    /** Chains without resistance count as this much, Ω: far below any real joint. */
    private static final double NEXT_TO_NOTHING_OHM = 1e-9;

    private final Topology.Graph graph;
    private final int[] couplingChain;
    private final SymmetricPattern pattern;

    private FaultCurrents(Topology.Graph graph) {
        this.graph = graph;
        couplingChain =
                IntStream.range(0, graph.chainFrom.length)
                        .filter(chain -> graph.chainFrom[chain] != graph.chainTo[chain])
                        .toArray();
        pattern =
                SymmetricPattern.analyse(
                        Math.max(1, graph.nodes),
                        Arrays.stream(couplingChain).map(chain -> graph.chainFrom[chain]).toArray(),
                        Arrays.stream(couplingChain).map(chain -> graph.chainTo[chain]).toArray());
    }

    public static FaultCurrents of(List<String> packNodes, List<String> loadNodes, Wires wires) {
        return new FaultCurrents(new Topology.Graph(packNodes, loadNodes, wires.chains()));
    }

    /**
     * Greatest prospective current through one element of a chain, A.
     *
     * @param emfV rest voltage of each pack, V
     * @param packOhm resistance of each pack, Ω
     * @param chainOhm resistance of each chain, Ω
     * @param leadingOhm resistance of the chain from its first node to behind the element, Ω
     * @param trailingOhm the same from its second node to before the element, Ω
     */
    public double prospectiveA(
            double[] emfV,
            double[] packOhm,
            double[] chainOhm,
            int chain,
            double leadingOhm,
            double trailingOhm) {
        NodeSets rest = new NodeSets(graph.nodes);
        for (int other : couplingChain) {
            if (other != chain) {
                rest.join(graph.chainFrom[other], graph.chainTo[other]);
            }
        }
        boolean[] live = new boolean[graph.nodes];
        for (int node : graph.packNode) {
            live[rest.root(node)] = true;
        }
        double[] diagonal = new double[pattern.size()];
        double[] source = new double[pattern.size()];
        double[] coupling = new double[couplingChain.length];
        for (int k = 0; k < couplingChain.length; k++) {
            int other = couplingChain[k];
            if (other != chain) {
                double siemens = 1 / Math.max(chainOhm[other], NEXT_TO_NOTHING_OHM);
                coupling[k] = -siemens;
                diagonal[graph.chainFrom[other]] += siemens;
                diagonal[graph.chainTo[other]] += siemens;
            }
        }
        for (int pack = 0; pack < emfV.length; pack++) {
            diagonal[graph.packNode[pack]] += 1 / packOhm[pack];
            source[graph.packNode[pack]] += emfV[pack] / packOhm[pack];
        }
        for (int node = 0; node < graph.nodes; node++) {
            if (!live[rest.root(node)]) {
                diagonal[node] += 1; // grounded: any value serves where nothing flows
            }
        }
        SymmetricFactor factor = pattern.newFactor();
        int singular = factor.factor(diagonal, coupling);
        if (singular >= 0) {
            throw new IllegalStateException("the wiring is singular at node " + singular);
        }
        double[] open = new double[pattern.size()];
        factor.solve(source, open);
        double worst = 0;
        int from = graph.chainFrom[chain];
        int to = graph.chainTo[chain];
        if (live[rest.root(from)]) {
            worst = prospectiveA(factor, open, from, leadingOhm);
        }
        if (live[rest.root(to)]) {
            worst = Math.max(worst, prospectiveA(factor, open, to, trailingOhm));
        }
        return worst;
    }

    private double prospectiveA(SymmetricFactor factor, double[] open, int node, double ohm) {
        double[] unit = new double[pattern.size()];
        unit[node] = 1;
        factor.solve(unit, unit);
        return FastEffects.prospectiveA(open[node], unit[node] + ohm);
    }
}
