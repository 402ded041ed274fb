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
 * <p>Several solutions can exist, because a load that holds its current or its thrust draws less
 * the higher its voltage. Wanted is the one of highest voltage, where a rig that is switched on
 * from rest arrives. It is reached from above: the iterates start at the highest voltage there is
 * and only fall, and none falls below that solution. A step from such a point x keeps above it if
 * at each node D ≥ (I(x) − I(next)) / (x − next), where D is the slope of the loads that the step
 * reckons with (the network is an M-matrix; Ortega and Rheinboldt, Iterative Solution of Nonlinear
 * Equations in Several Variables, 1970, chapter 13). Newton's D = I′(x) does so wherever currents
 * are convex; where a step runs over a concave bend (a controller enters its current limit on the
 * way up) it is repeated with the slope of the chord.
 */
public final class Network {

    /** Steps below this share of the rest voltage end the iteration. */
    private static final double SETTLED = 1e-11;

    /** Steps below this are not repeated: rounding decides there what lies above. */
    private static final double NEARLY_SETTLED = 1e-8;

    /** A node is below the wanted solution only by more than this share of its load current. */
    private static final double BELOW = 1e-10;

    /** The same where one goes on from a solution: a few millionths of a millivolt. */
    private static final double SETTLED_AGAIN = 1e-10;

    /** A step so short is followed by the slopes that it was found with, once more. */
    private static final double SHORT = 1e-3;

    private static final int FEW_STEPS = 8;
    private static final int MOST_STEPS = 200;
    private static final int MOST_CHORDS = 40;

    final Topology topology;
    final SymmetricPattern pattern;

    private final Topology.Graph graph;
    private final boolean[] without;
    private final boolean[] open;
    private final boolean[] lost;

    /** Chain of each coupling of the pattern, and the unknowns at its ends. */
    private final int[] couplingChain;

    private final int[] couplingFrom;
    private final int[] couplingTo;

    /** Packs that are not lost and loads that are fed: what counts in the loop. */
    private final int[] livePacks;

    private final int[] liveLoads;

    /** Unknown of each of the latter. */
    private final int[] liveLoadAt;

    private Network(Topology.Graph graph, boolean[] without, boolean[] open, boolean[] lost) {
        this.graph = graph;
        this.without = without;
        this.open = open.clone();
        this.lost = lost.clone();
        topology = Topology.of(graph, without, open, lost);
        int[] from = topology.chainFrom;
        int[] to = topology.chainTo;
        couplingChain =
                IntStream.range(0, from.length)
                        .filter(chain -> from[chain] >= 0 && from[chain] != to[chain])
                        .toArray();
        couplingFrom = Arrays.stream(couplingChain).map(chain -> from[chain]).toArray();
        couplingTo = Arrays.stream(couplingChain).map(chain -> to[chain]).toArray();
        livePacks = IntStream.range(0, lost.length).filter(pack -> !lost[pack]).toArray();
        liveLoads = IntStream.range(0, topology.loadUnknown.length).filter(this::isFed).toArray();
        liveLoadAt = Arrays.stream(liveLoads).map(load -> topology.loadUnknown[load]).toArray();
        pattern =
                SymmetricPattern.analyse(Math.max(1, topology.unknowns), couplingFrom, couplingTo);
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

    /**
     * Voltages and currents again after a little has changed since they were solved: Newton's
     * method from where they were, which goes on along the same solutions. Where that does not
     * settle at once, solved as if for the first time. Allocates nothing.
     */
    public void resume(NetworkState s, Device device) {
        prepare(s);
        if (topology.unknowns > 0 && !settles(s, device)) {
            iterate(s, device);
        }
        results(s, device);
    }

    private boolean settles(NetworkState s, Device device) {
        double scale = scale(s);
        evaluate(s, s.offset, device);
        while (s.iterations < FEW_STEPS) {
            s.iterations++;
            keep(s);
            if (!direction(s, false)) {
                return false;
            }
            double length = move(s, device);
            System.arraycopy(s.trial, 0, s.offset, 0, s.offset.length);
            if (length <= SETTLED_AGAIN * scale
                    || (length <= SHORT * scale && closes(s, SETTLED * scale))) {
                s.converged = true;
                return true;
            }
        }
        return false;
    }

    /**
     * Goes on with what the slopes of the last step leave over; mostly that is next to nothing, and
     * a matrix and a look at all loads are saved.
     *
     * @return whether it was no more than this, V
     */
    private boolean closes(NetworkState s, double leastV) {
        s.factor.solve(s.residual, s.step);
        double length = 0;
        for (int i = 0; i < s.offset.length; i++) {
            length = Math.max(length, Math.abs(s.step[i]));
        }
        if (length > leastV) {
            return false;
        }
        for (int i = 0; i < s.offset.length; i++) {
            s.offset[i] -= s.step[i];
        }
        return true;
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
        double[] followedA = s.followedA;
        if (!s.linearKnown) {
            linearResidual(s, s.offset);
            System.arraycopy(residual, 0, linear, 0, linear.length);
            s.linearKnown = true;
        }
        System.arraycopy(linear, 0, residual, 0, linear.length);
        // What was written last still is the voltage of each load.
        device.operate(s.loadTerminalV, followedA);
        for (int k = 0; k < liveLoads.length; k++) {
            residual[liveLoadAt[k]] += followedA[liveLoads[k]];
        }
        s.factor.solve(residual, step);
        // (L + S) step = residual tells what L step is, without asking the wiring again.
        double[] offset = s.offset;
        double[] diagonal = s.diagonal;
        double[] fixed = s.fixedDiagonal;
        for (int i = 0; i < linear.length; i++) {
            offset[i] -= step[i];
            linear[i] += (diagonal[i] - fixed[i]) * step[i] - residual[i];
        }
        for (int load : liveLoads) {
            s.loadTerminalV[load] = loadV(s, s.offset, load);
        }
    }

    /**
     * Makes ready for the sensitivities below, at the point last solved.
     *
     * @return false where the network is singular there
     */
    public boolean linearise(NetworkState s, Device device) {
        evaluate(s, s.offset, device);
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

    private void prepare(NetworkState s) {
        Arrays.fill(s.referenceV, Double.NEGATIVE_INFINITY);
        Arrays.fill(s.fixedDiagonal, 0);
        s.converged = topology.unknowns == 0;
        s.iterations = 0;
        s.linearKnown = false;
        Arrays.fill(s.loadTerminalV, 0);
        for (int pack = 0; pack < s.emfV.length; pack++) {
            if (lost[pack]) {
                continue;
            }
            int island = topology.packIsland[pack];
            s.referenceV[island] = Math.max(s.referenceV[island], s.emfV[pack]);
            s.packSiemens[pack] = 1 / s.packOhm[pack];
            s.fixedDiagonal[topology.packUnknown[pack]] += s.packSiemens[pack];
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
        double scale = scale(s);
        s.iterations = 0;
        Arrays.fill(s.offset, 0);
        evaluate(s, s.offset, device);
        while (s.iterations < MOST_STEPS) {
            s.iterations++;
            keep(s);
            boolean chord = false;
            for (int tries = 0; ; tries++) {
                if (!direction(s, chord)) {
                    return;
                }
                double length = move(s, device);
                if (length <= NEARLY_SETTLED * scale || tries == MOST_CHORDS) {
                    System.arraycopy(s.trial, 0, s.offset, 0, s.offset.length);
                    s.converged = length <= SETTLED * scale;
                    break;
                }
                if (!steepen(s)) {
                    System.arraycopy(s.trial, 0, s.offset, 0, s.offset.length);
                    break;
                }
                chord = true;
            }
            if (s.converged) {
                return;
            }
        }
    }

    private static double scale(NetworkState s) {
        double scale = 0;
        for (double volt : s.referenceV) {
            scale = Math.max(scale, Math.abs(volt));
        }
        return scale;
    }

    /** Remembers what {@link #evaluate} found at the point a step starts from. */
    private static void keep(NetworkState s) {
        System.arraycopy(s.residual, 0, s.startResidual, 0, s.residual.length);
        System.arraycopy(s.loadSlope, 0, s.stepSlope, 0, s.loadSlope.length);
        System.arraycopy(s.loadSum, 0, s.startSum, 0, s.loadSum.length);
    }

    /**
     * The step with the slopes to reckon with; false where the network is singular.
     *
     * @param chord whether slopes were raised; then falling currents are not reckoned with either
     */
    private boolean direction(NetworkState s, boolean chord) {
        double[] diagonal = s.diagonal;
        double[] fixed = s.fixedDiagonal;
        double[] slopes = s.stepSlope;
        for (int i = 0; i < diagonal.length; i++) {
            double slope = chord ? Math.max(slopes[i], 0) : slopes[i];
            diagonal[i] = fixed[i] + slope;
        }
        if (s.factor.factor(diagonal, s.coupling) >= 0 || !s.factor.isPositive()) {
            // Falling currents outweigh the wiring: without them the step is shorter and sure.
            for (int i = 0; i < diagonal.length; i++) {
                diagonal[i] = fixed[i] + Math.max(slopes[i], 0);
            }
            if (s.factor.factor(diagonal, s.coupling) >= 0) {
                return false;
            }
        }
        s.factor.solve(s.startResidual, s.step);
        return true;
    }

    /** Goes the step and evaluates there; returns the longest change of a voltage, V. */
    private double move(NetworkState s, Device device) {
        double[] trial = s.trial;
        double[] offset = s.offset;
        double[] step = s.step;
        double length = 0;
        for (int i = 0; i < offset.length; i++) {
            trial[i] = offset[i] - step[i];
            length = Math.max(length, Math.abs(step[i]));
        }
        evaluate(s, trial, device);
        return length;
    }

    /**
     * Raises the slopes of nodes that the step took below the wanted solution to those of the
     * chord; false where there is none.
     */
    private static boolean steepen(NetworkState s) {
        double[] residual = s.residual;
        double[] step = s.step;
        boolean any = false;
        for (int i = 0; i < residual.length; i++) {
            // Most nodes are left by the first question.
            if (residual[i] < 0
                    && step[i] > 0
                    && residual[i] < -BELOW * Math.max(s.startSum[i], Math.abs(s.loadSum[i]))) {
                double chord = (s.startSum[i] - s.loadSum[i]) / step[i];
                if (chord > s.stepSlope[i]) {
                    // A little more than the chord, so that equal chords do not repeat for ever.
                    s.stepSlope[i] = chord + 0.05 * Math.abs(chord);
                    any = true;
                }
            }
        }
        return any;
    }

    /** Currents that do not add up at each node, what its loads draw, and their slopes. */
    private void evaluate(NetworkState s, double[] offset, Device device) {
        linearResidual(s, offset);
        double[] slopes = s.loadSlope;
        double[] sums = s.loadSum;
        double[] residual = s.residual;
        Arrays.fill(slopes, 0);
        Arrays.fill(sums, 0);
        for (int load : liveLoads) {
            int at = topology.loadUnknown[load];
            device.operate(load, s.referenceV[topology.islandOfUnknown[at]] + offset[at]);
            sums[at] += device.currentA(load);
            slopes[at] += device.slopeS(load);
        }
        for (int i = 0; i < residual.length; i++) {
            residual[i] += sums[i];
        }
    }

    private void linearResidual(NetworkState s, double[] offset) {
        double[] residual = s.residual;
        double[] coupling = s.coupling;
        Arrays.fill(residual, 0);
        for (int pack : livePacks) {
            residual[topology.packUnknown[pack]] -= packCurrent(s, offset, pack);
        }
        for (int k = 0; k < couplingChain.length; k++) {
            int from = couplingFrom[k];
            int to = couplingTo[k];
            double current = (offset[from] - offset[to]) * coupling[k];
            residual[from] -= current;
            residual[to] += current;
        }
    }

    private double packCurrent(NetworkState s, double[] offset, int pack) {
        if (lost[pack]) {
            return 0;
        }
        double reference = s.referenceV[topology.packIsland[pack]];
        return (s.emfV[pack] - reference - offset[topology.packUnknown[pack]])
                * s.packSiemens[pack];
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
