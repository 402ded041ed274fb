package liftwright.plant.supply;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import liftwright.numerics.SymmetricPattern;
import liftwright.rig.Wiring;

/**
 * The DC network: packs (a voltage behind a resistance), chains (resistances) and loads (nonlinear
 * currents) between nodes, any topology. Solved by Newton's method on the node voltages with a
 * sparse factorisation planned once. Immutable.
 *
 * <p>Unknown is each node's offset from the highest rest voltage of its island, not its voltage:
 * offsets are small, so differences between neighbours keep their digits.
 *
 * <p>Of several solutions the one of highest voltage is wanted: {@link Descent} says why, and how
 * it is reached.
 */
public final class Network {

    final Topology topology;
    final SymmetricPattern pattern;

    private final Topology.Graph graph;
    private final boolean[] without;
    private final boolean[] open;
    private final boolean[] lost;

    private final NodeCurrents currents;
    private final Descent descent;

    private Network(Topology.Graph graph, boolean[] without, boolean[] open, boolean[] lost) {
        this.graph = graph;
        this.without = without;
        this.open = open.clone();
        this.lost = lost.clone();
        topology = Topology.of(graph, without, open, lost);
        currents = new NodeCurrents(topology, this.lost);
        descent = new Descent(currents);
        pattern =
                SymmetricPattern.analyse(
                        Math.max(1, topology.unknowns), currents.couplingFrom, currents.couplingTo);
    }

    /**
     * Plans a network.
     *
     * @param packNodes node of each pack
     * @param loadNodes node of each load
     * @param wires the chains between nodes
     * @param open whether each chain is interrupted somewhere
     */
    public static Network of(
            List<String> packNodes, List<String> loadNodes, Wires wires, boolean[] open) {
        List<Wiring.Chain> chains = wires.chains();
        Topology.Graph graph = new Topology.Graph(packNodes, loadNodes, chains);
        return new Network(graph, wires.without(), open, new boolean[packNodes.size()]);
    }

    /** The same wiring with one chain more interrupted; planned anew. */
    Network opened(int chain) {
        boolean[] more = open.clone();
        more[chain] = true;
        return new Network(graph, without, more, lost);
    }

    /** The same wiring with one pack more that neither gives nor takes; planned anew. */
    Network lost(int pack) {
        boolean[] more = lost.clone();
        more[pack] = true;
        return new Network(graph, without, open, more);
    }

    /** Whether a pack neither gives nor takes. */
    public boolean isLost(int pack) {
        return lost[pack];
    }

    /** Whether a chain is interrupted. */
    public boolean isOpen(int chain) {
        return open[chain];
    }

    /** Whether a chain has no resistance at all: its two nodes are one. */
    boolean isWithout(int chain) {
        return without[chain];
    }

    public NetworkState newState() {
        return new NetworkState(this);
    }

    /** Whether a pack reaches this load. */
    public boolean isFed(int load) {
        return topology.loadUnknown[load] >= 0;
    }

    /** Island of a pack that is not lost, counted from 0. */
    public int islandOfPack(int pack) {
        return topology.packIsland[pack];
    }

    /** Island of a load that is fed. */
    public int islandOfLoad(int load) {
        return topology.islandOfUnknown[topology.loadUnknown[load]];
    }

    /** Island of a chain; empty for one that no pack reaches. */
    public OptionalInt islandOfChain(int chain) {
        int at = topology.chainFrom[chain];
        return at < 0 ? OptionalInt.empty() : OptionalInt.of(topology.islandOfUnknown[at]);
    }

    public int islands() {
        return topology.islands;
    }

    /**
     * Chains whose current nothing determines, because chains without resistance form a loop. Given
     * as zero.
     */
    public List<Integer> undeterminedChains() {
        return topology.zeroChains.undetermined();
    }

    /**
     * Voltages that the loads would find if none drew a current. Packs of one voltage show it
     * everywhere; unequal ones share out a circulating current. Writes only the loads' voltages.
     */
    public void rest(NetworkState s) {
        currents.prepare(s);
        if (topology.unknowns == 0) {
            return;
        }
        Arrays.fill(s.offset, 0);
        currents.linearResidual(s, s.offset);
        if (s.factor.factor(s.fixedDiagonal, s.coupling) >= 0) {
            s.converged = false;
            return;
        }
        s.factor.solve(s.residual, s.step);
        for (int i = 0; i < s.offset.length; i++) {
            s.offset[i] = -s.step[i];
        }
        for (int load = 0; load < s.loadTerminalV.length; load++) {
            s.loadTerminalV[load] = currents.loadV(s, s.offset, load);
        }
        s.converged = true;
    }

    /** Voltages and currents with the loads at work. Allocates nothing. */
    public void solve(NetworkState s, Device device) {
        currents.prepare(s);
        if (topology.unknowns > 0) {
            descent.iterate(s, device);
        }
        currents.results(s);
    }

    /**
     * Voltages and currents again after a little has changed since they were solved: Newton's
     * method from where they were, which goes on along the same solutions. Where that does not
     * settle at once, solved as if for the first time. Allocates nothing.
     */
    public void resume(NetworkState s, Device device) {
        currents.prepare(s);
        if (topology.unknowns > 0 && !descent.settles(s, device)) {
            descent.iterate(s, device);
        }
        currents.results(s);
    }

    /**
     * Voltages at the loads after less has changed: one step with the slopes that the last solution
     * ended with. Holds while each load draws by the same piece of its law as there; what it misses
     * the next call sees and mends. Writes the loads' voltages alone. Allocates nothing.
     */
    public void follow(NetworkState s, Device device) {
        if (topology.unknowns == 0) {
            return;
        }
        double[] linear = s.linear;
        double[] residual = s.residual;
        double[] step = s.step;
        if (!s.linearKnown) {
            currents.linearResidual(s, s.offset);
            System.arraycopy(residual, 0, linear, 0, linear.length);
            s.linearKnown = true;
        }
        System.arraycopy(linear, 0, residual, 0, linear.length);
        // What was written last still is the voltage of each load.
        device.operate(s.loadTerminalV, s.triedA);
        currents.add(s.triedA, residual);
        s.factor.solve(residual, step);
        // (L + S) step = residual tells what L step is, without asking the wiring again.
        double[] offset = s.offset;
        double[] diagonal = s.diagonal;
        double[] fixed = s.fixedDiagonal;
        for (int i = 0; i < linear.length; i++) {
            offset[i] -= step[i];
            linear[i] += (diagonal[i] - fixed[i]) * step[i] - residual[i];
        }
        currents.loadVolts(s);
    }

    /**
     * Makes ready for the sensitivities below, at the point last solved.
     *
     * @return false where the network is singular there
     */
    public boolean linearise(NetworkState s, Device device) {
        currents.evaluate(s, s.offset, device);
        for (int i = 0; i < s.diagonal.length; i++) {
            s.diagonal[i] = s.fixedDiagonal[i] + s.loadSlope[i];
        }
        return topology.unknowns == 0 || s.factor.factor(s.diagonal, s.coupling) < 0;
    }

    /**
     * How much every load's voltage falls for each ampere that one load takes more: its own and,
     * through what they share, the others'. After {@link #linearise}.
     *
     * @param load the one that takes more
     * @param ohm takes −dV/dI for every load, Ω; 0 where none follows
     */
    public void dropPerAmpere(NetworkState s, int load, double[] ohm) {
        Arrays.fill(s.residual, 0);
        int at = topology.loadUnknown[load];
        if (at >= 0) {
            s.residual[at] = 1;
        }
        spread(s, ohm);
    }

    /**
     * How much every load's voltage rises for each volt that one pack has more. After {@link
     * #linearise}.
     *
     * @param pack the one that has more
     * @param share takes dV/dE for every load, 1
     */
    public void risePerVolt(NetworkState s, int pack, double[] share) {
        Arrays.fill(s.residual, 0);
        if (!lost[pack]) {
            s.residual[topology.packUnknown[pack]] = 1 / s.packOhm[pack];
        }
        spread(s, share);
    }

    private void spread(NetworkState s, double[] out) {
        if (topology.unknowns > 0) {
            s.factor.solve(s.residual, s.step);
        }
        for (int load = 0; load < out.length; load++) {
            int at = topology.loadUnknown[load];
            out[load] = at < 0 ? 0 : s.step[at];
        }
    }
}
