package liftwright.plant.supply;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
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
 * <p>Loads at fixed duty draw convex currents, and all start from the highest voltage there is.
 * Newton's iterates then fall onto the solution of highest voltage, which is where a rig that is
 * switched on from rest arrives. Steps that do not reduce the error (a controller enters or leaves
 * its current limit) are halved; where falling currents of limited loads outweigh the wiring, their
 * slope is left out of the step.
 */
public final class Network {

    /** Steps below this share of the rest voltage end the iteration. */
    private static final double SETTLED = 1e-11;

    /** Steps below this are not searched: rounding decides there whether the error falls. */
    private static final double NEARLY_SETTLED = 1e-8;

    private static final int MOST_STEPS = 80;
    private static final int MOST_HALVINGS = 30;

    final Topology topology;
    final SymmetricPattern pattern;

    /** Chain of each coupling of the pattern. */
    private final int[] couplingChain;

    private Network(Topology topology) {
        this.topology = topology;
        int[] from = topology.chainFrom;
        int[] to = topology.chainTo;
        couplingChain =
                IntStream.range(0, from.length).filter(chain -> from[chain] != to[chain]).toArray();
        pattern =
                SymmetricPattern.analyse(
                        Math.max(1, topology.unknowns),
                        Arrays.stream(couplingChain).map(chain -> from[chain]).toArray(),
                        Arrays.stream(couplingChain).map(chain -> to[chain]).toArray());
    }

    /**
     * Plans a network.
     *
     * @param packNodes node of each pack
     * @param loadNodes node of each load
     * @param wires the chains between nodes
     */
    public static Network of(List<String> packNodes, List<String> loadNodes, Wires wires) {
        List<Wiring.Chain> chains = wires.chains();
        Topology.Graph graph = new Topology.Graph(packNodes, loadNodes, chains);
        return new Network(Topology.of(graph, wires.without()));
    }

    public NetworkState newState() {
        return new NetworkState(this);
    }

    /** Whether a pack reaches this load. */
    public boolean isFed(int load) {
        return topology.loadUnknown[load] >= 0;
    }

    /** Island of a pack, counted from 0. */
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
        prepare(s);
        if (topology.unknowns == 0) {
            return;
        }
        Arrays.fill(s.offset, 0);
        linearResidual(s, s.offset);
        if (s.factor.factor(s.fixedDiagonal, s.coupling) >= 0) {
            s.converged = false;
            return;
        }
        s.factor.solve(s.residual, s.step);
        for (int i = 0; i < s.offset.length; i++) {
            s.offset[i] = -s.step[i];
        }
        for (int load = 0; load < s.loadTerminalV.length; load++) {
            s.loadTerminalV[load] = loadV(s, s.offset, load);
        }
        s.converged = true;
    }

    /** Voltages and currents with the loads at work. Allocates nothing. */
    public void solve(NetworkState s, Device device) {
        prepare(s);
        if (topology.unknowns > 0) {
            iterate(s, device);
        }
        results(s, device);
    }

    private void prepare(NetworkState s) {
        Arrays.fill(s.referenceV, Double.NEGATIVE_INFINITY);
        Arrays.fill(s.fixedDiagonal, 0);
        s.converged = topology.unknowns == 0;
        s.iterations = 0;
        Arrays.fill(s.loadTerminalV, 0);
        for (int pack = 0; pack < s.emfV.length; pack++) {
            int island = topology.packIsland[pack];
            s.referenceV[island] = Math.max(s.referenceV[island], s.emfV[pack]);
            s.fixedDiagonal[topology.packUnknown[pack]] += 1 / s.packOhm[pack];
        }
        for (int k = 0; k < couplingChain.length; k++) {
            int chain = couplingChain[k];
            double siemens = 1 / s.chainOhm[chain];
            s.coupling[k] = -siemens;
            s.fixedDiagonal[topology.chainFrom[chain]] += siemens;
            s.fixedDiagonal[topology.chainTo[chain]] += siemens;
        }
    }

    private void iterate(NetworkState s, Device device) {
        double scale = 0;
        for (double volt : s.referenceV) {
            scale = Math.max(scale, Math.abs(volt));
        }
        Arrays.fill(s.offset, 0);
        double error = evaluate(s, s.offset, device);
        while (s.iterations < MOST_STEPS) {
            s.iterations++;
            if (!direction(s)) {
                return;
            }
            double length = 0;
            for (double each : s.step) {
                length = Math.max(length, Math.abs(each));
            }
            double share = length <= NEARLY_SETTLED * scale ? 1 : bounded(s);
            double next = move(s, share, device);
            if (length > NEARLY_SETTLED * scale) {
                for (int halving = 0; !(next < error) && halving < MOST_HALVINGS; halving++) {
                    share /= 2;
                    next = move(s, share, device);
                }
            }
            System.arraycopy(s.trial, 0, s.offset, 0, s.offset.length);
            error = next;
            if (length <= SETTLED * scale) {
                s.converged = true;
                return;
            }
        }
    }

    /** Newton's direction into {@code step}; false where the network is singular. */
    private boolean direction(NetworkState s) {
        for (int i = 0; i < s.diagonal.length; i++) {
            s.diagonal[i] = s.fixedDiagonal[i] + s.loadSlope[i];
        }
        if (s.factor.factor(s.diagonal, s.coupling) < 0) {
            s.factor.solve(s.residual, s.step);
            double along = 0;
            for (int i = 0; i < s.step.length; i++) {
                along += s.step[i] * s.residual[i];
            }
            if (along >= 0) {
                negate(s.step);
                return true;
            }
        }
        for (int i = 0; i < s.diagonal.length; i++) {
            s.diagonal[i] = s.fixedDiagonal[i] + Math.max(s.loadSlope[i], 0);
        }
        if (s.factor.factor(s.diagonal, s.coupling) >= 0) {
            return false;
        }
        s.factor.solve(s.residual, s.step);
        negate(s.step);
        return true;
    }

    private static void negate(double[] x) {
        for (int i = 0; i < x.length; i++) {
            x[i] = -x[i];
        }
    }

    /** Greatest share of the step that takes no load below a tenth of its voltage at once. */
    private double bounded(NetworkState s) {
        double share = 1;
        for (int load = 0; load < s.loadTerminalV.length; load++) {
            int at = topology.loadUnknown[load];
            if (at >= 0) {
                double volt = loadV(s, s.offset, load);
                double after = volt + s.step[at];
                if (volt > 0 && after < 0.1 * volt) {
                    share = Math.min(share, 0.9 * volt / (volt - after));
                }
            }
        }
        return share;
    }

    private double move(NetworkState s, double share, Device device) {
        for (int i = 0; i < s.offset.length; i++) {
            s.trial[i] = s.offset[i] + share * s.step[i];
        }
        return evaluate(s, s.trial, device);
    }

    /** Currents that do not add up at each node, and their slopes; returns the sum of squares. */
    private double evaluate(NetworkState s, double[] offset, Device device) {
        linearResidual(s, offset);
        Arrays.fill(s.loadSlope, 0);
        for (int load = 0; load < s.loadTerminalV.length; load++) {
            int at = topology.loadUnknown[load];
            if (at >= 0) {
                device.operate(load, loadV(s, offset, load));
                s.residual[at] += device.currentA(load);
                s.loadSlope[at] += device.slopeS(load);
            }
        }
        double sum = 0;
        for (double each : s.residual) {
            sum += each * each;
        }
        return sum;
    }

    private void linearResidual(NetworkState s, double[] offset) {
        Arrays.fill(s.residual, 0);
        for (int pack = 0; pack < s.emfV.length; pack++) {
            s.residual[topology.packUnknown[pack]] -= packCurrent(s, offset, pack);
        }
        for (int k = 0; k < couplingChain.length; k++) {
            int chain = couplingChain[k];
            int from = topology.chainFrom[chain];
            int to = topology.chainTo[chain];
            double current = (offset[from] - offset[to]) / s.chainOhm[chain];
            s.residual[from] += current;
            s.residual[to] -= current;
        }
    }

    private double packCurrent(NetworkState s, double[] offset, int pack) {
        double reference = s.referenceV[topology.packIsland[pack]];
        return (s.emfV[pack] - reference - offset[topology.packUnknown[pack]]) / s.packOhm[pack];
    }

    private double loadV(NetworkState s, double[] offset, int load) {
        int at = topology.loadUnknown[load];
        return at < 0 ? 0 : s.referenceV[topology.islandOfUnknown[at]] + offset[at];
    }

    private void results(NetworkState s, Device device) {
        for (int pack = 0; pack < s.emfV.length; pack++) {
            s.packA[pack] = packCurrent(s, s.offset, pack);
            s.packTerminalV[pack] = s.emfV[pack] - s.packA[pack] * s.packOhm[pack];
        }
        for (int load = 0; load < s.loadTerminalV.length; load++) {
            boolean fed = isFed(load);
            s.loadTerminalV[load] = loadV(s, s.offset, load);
            s.loadA[load] = fed ? device.currentA(load) : 0;
        }
        Arrays.fill(s.chainA, 0);
        Arrays.fill(s.chainLossW, 0);
        for (int chain : couplingChain) {
            double volt = s.offset[topology.chainFrom[chain]] - s.offset[topology.chainTo[chain]];
            s.chainA[chain] = volt / s.chainOhm[chain];
            s.chainLossW[chain] = volt * s.chainA[chain];
        }
        topology.zeroChains.fill(s.packA, s.loadA, s.chainA, s.leavingA);
    }
}
