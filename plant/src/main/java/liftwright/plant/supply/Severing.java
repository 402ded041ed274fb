package liftwright.plant.supply;

import java.util.Arrays;

/**
 * Takes chains and packs out of a network by its numbers alone, without planning it anew: what is
 * out has no conductance. A part of the wiring that loses every pack would leave voltages that
 * nothing determines; it stays tied by one of the chains or packs that are out, through which
 * nothing flows, because its loads are stopped. Allocates nothing unless a chain without resistance
 * is taken out, which only a new plan can do. For one thread.
 */
public final class Severing {

    private static final double OPEN = Double.POSITIVE_INFINITY;

    private final Circuit circuit;
    private final double[] packOhm;
    private final double[] chainOhm;
    private final boolean[] out;
    private final boolean[] gone;
    private int[] parent = {};
    private boolean[] live = {};

    /**
     * @param circuit whose numbers are changed; its loads that no pack reaches any more are the
     *     caller's to stop
     */
    public Severing(Circuit circuit) {
        this.circuit = circuit;
        packOhm = new double[circuit.state().packOhm.length];
        chainOhm = new double[circuit.state().chainOhm.length];
        out = new boolean[chainOhm.length];
        gone = new boolean[packOhm.length];
    }

    /** Takes the numbers of the circuit as those of the whole; it must be whole. */
    public void load() {
        System.arraycopy(circuit.state().packOhm, 0, packOhm, 0, packOhm.length);
        System.arraycopy(circuit.state().chainOhm, 0, chainOhm, 0, chainOhm.length);
    }

    /** The whole again. */
    public void restore() {
        circuit.close();
        System.arraycopy(packOhm, 0, circuit.state().packOhm, 0, packOhm.length);
        System.arraycopy(chainOhm, 0, circuit.state().chainOhm, 0, chainOhm.length);
    }

    /**
     * The whole without these.
     *
     * @param chains that open
     * @param packs that neither give nor take
     */
    public void sever(int[] chains, int[] packs) {
        restore();
        if (chains.length == 0 && packs.length == 0) {
            return;
        }
        for (int chain : chains) {
            if (circuit.plan().isWithout(chain)) {
                circuit.open(chain);
            }
        }
        Topology topology = circuit.plan().topology;
        NetworkState state = circuit.state();
        mark(chains, packs);
        connect(topology);
        for (int chain : chains) {
            int from = topology.chainFrom[chain];
            int to = topology.chainTo[chain];
            if (from < 0 || from == to) {
                continue;
            }
            int one = root(from);
            int other = root(to);
            if (one == other || (live[one] && live[other])) {
                state.chainOhm[chain] = OPEN;
            } else {
                live[one] |= live[other];
                parent[other] = one;
            }
        }
        for (int pack : packs) {
            int at = topology.packUnknown[pack];
            if (at >= 0 && live[root(at)]) {
                state.packOhm[pack] = OPEN;
            } else if (at >= 0) {
                live[root(at)] = true;
            }
        }
    }

    private void mark(int[] chains, int[] packs) {
        Arrays.fill(out, false);
        Arrays.fill(gone, false);
        for (int chain : chains) {
            out[chain] = true;
        }
        for (int pack : packs) {
            gone[pack] = true;
        }
    }

    /** Joins what stays joined, and tells what of it has a pack. */
    private void connect(Topology topology) {
        if (parent.length != topology.unknowns) {
            parent = new int[topology.unknowns];
            live = new boolean[topology.unknowns];
        }
        for (int node = 0; node < parent.length; node++) {
            parent[node] = node;
            live[node] = false;
        }
        for (int chain = 0; chain < out.length; chain++) {
            int from = topology.chainFrom[chain];
            if (!out[chain] && from >= 0) {
                parent[root(topology.chainTo[chain])] = root(from);
            }
        }
        for (int pack = 0; pack < gone.length; pack++) {
            int at = topology.packUnknown[pack];
            if (!gone[pack] && at >= 0) {
                live[root(at)] = true;
            }
        }
    }

    private int root(int node) {
        int at = node;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }
}
