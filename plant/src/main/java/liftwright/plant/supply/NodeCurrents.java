package liftwright.plant.supply;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What currents leave over at each unknown of a network: those of packs and chains, which go
 * straight with the voltages, and those of the loads. Immutable.
 */
final class NodeCurrents {

    private final Topology topology;
    private final boolean[] lost;

    /** Chain of each coupling of the pattern, and the unknowns at its ends. */
    private final int[] couplingChain;

    final int[] couplingFrom;
    final int[] couplingTo;

    /** Packs that are not lost and loads that are fed: what counts in the loop. */
    private final int[] livePacks;

    private final int[] liveLoads;

    /** Unknown of each of them, and island of each of the latter. */
    private final int[] livePackAt;

    private final int[] liveLoadAt;
    private final int[] liveLoadIsland;

    /**
     * @param lost whether each pack neither gives nor takes
     */
    NodeCurrents(Topology topology, boolean[] lost) {
        this.topology = topology;
        this.lost = lost;
        int[] from = topology.chainFrom;
        int[] to = topology.chainTo;
        couplingChain =
                IntStream.range(0, from.length)
                        .filter(chain -> from[chain] >= 0 && from[chain] != to[chain])
                        .toArray();
        couplingFrom = Arrays.stream(couplingChain).map(chain -> from[chain]).toArray();
        couplingTo = Arrays.stream(couplingChain).map(chain -> to[chain]).toArray();
        livePacks = IntStream.range(0, lost.length).filter(pack -> !lost[pack]).toArray();
        livePackAt = Arrays.stream(livePacks).map(pack -> topology.packUnknown[pack]).toArray();
        liveLoads =
                IntStream.range(0, topology.loadUnknown.length)
                        .filter(load -> topology.loadUnknown[load] >= 0)
                        .toArray();
        liveLoadAt = Arrays.stream(liveLoads).map(load -> topology.loadUnknown[load]).toArray();
        liveLoadIsland =
                Arrays.stream(liveLoadAt).map(at -> topology.islandOfUnknown[at]).toArray();
    }

    /** Takes the voltages and resistances of now; nothing is known of what flows. */
    void prepare(NetworkState s) {
        Arrays.fill(s.referenceV, Double.NEGATIVE_INFINITY);
        Arrays.fill(s.fixedDiagonal, 0);
        s.converged = topology.unknowns == 0;
        s.iterations = 0;
        s.linearKnown = false;
        Arrays.fill(s.loadTerminalV, 0);
        for (int pack : livePacks) {
            int island = topology.packIsland[pack];
            s.referenceV[island] = Math.max(s.referenceV[island], s.emfV[pack]);
        }
        for (int k = 0; k < livePacks.length; k++) {
            int pack = livePacks[k];
            double siemens = 1 / s.packOhm[pack];
            s.packSiemens[pack] = siemens;
            s.packOverV[pack] = s.emfV[pack] - s.referenceV[topology.packIsland[pack]];
            s.fixedDiagonal[livePackAt[k]] += siemens;
        }
        for (int k = 0; k < couplingChain.length; k++) {
            int chain = couplingChain[k];
            double siemens = 1 / s.chainOhm[chain];
            s.coupling[k] = -siemens;
            s.fixedDiagonal[couplingFrom[k]] += siemens;
            s.fixedDiagonal[couplingTo[k]] += siemens;
        }
    }

    /** Currents that do not add up at each node, what its loads draw, and their slopes. */
    void evaluate(NetworkState s, double[] offset, Device device) {
        linearResidual(s, offset);
        double[] slopes = s.loadSlope;
        double[] sums = s.loadSum;
        double[] residual = s.residual;
        Arrays.fill(slopes, 0);
        Arrays.fill(sums, 0);
        for (int k = 0; k < liveLoads.length; k++) {
            s.triedV[liveLoads[k]] = s.referenceV[liveLoadIsland[k]] + offset[liveLoadAt[k]];
        }
        device.operate(liveLoads, s.triedV, s.triedA, s.triedS);
        for (int k = 0; k < liveLoads.length; k++) {
            int at = liveLoadAt[k];
            sums[at] += s.triedA[liveLoads[k]];
            slopes[at] += s.triedS[liveLoads[k]];
        }
        for (int i = 0; i < residual.length; i++) {
            residual[i] += sums[i];
        }
    }

    /** Currents that packs and chains leave over at each node. */
    void linearResidual(NetworkState s, double[] offset) {
        double[] residual = s.residual;
        double[] coupling = s.coupling;
        Arrays.fill(residual, 0);
        for (int k = 0; k < livePacks.length; k++) {
            int at = livePackAt[k];
            residual[at] -= packCurrent(s, offset[at], livePacks[k]);
        }
        for (int k = 0; k < couplingChain.length; k++) {
            int from = couplingFrom[k];
            int to = couplingTo[k];
            double current = (offset[from] - offset[to]) * coupling[k];
            residual[from] -= current;
            residual[to] += current;
        }
    }

    private static double packCurrent(NetworkState s, double offsetV, int pack) {
        return (s.packOverV[pack] - offsetV) * s.packSiemens[pack];
    }

    /** Adds currents of all loads to what is left over at their nodes. */
    void add(double[] loadA, double[] residual) {
        for (int k = 0; k < liveLoads.length; k++) {
            residual[liveLoadAt[k]] += loadA[liveLoads[k]];
        }
    }

    /** Writes the voltages of the loads that a pack reaches. */
    void loadVolts(NetworkState s) {
        for (int k = 0; k < liveLoads.length; k++) {
            s.loadTerminalV[liveLoads[k]] =
                    s.referenceV[liveLoadIsland[k]] + s.offset[liveLoadAt[k]];
        }
    }

    /** Voltage of a load; 0 of one that no pack reaches, V. */
    double loadV(NetworkState s, double[] offset, int load) {
        int at = topology.loadUnknown[load];
        return at < 0 ? 0 : s.referenceV[topology.islandOfUnknown[at]] + offset[at];
    }

    /** Writes what flows at the voltages found, loads as they were asked last. */
    void results(NetworkState s) {
        for (int pack = 0; pack < s.emfV.length; pack++) {
            double current =
                    lost[pack] ? 0 : packCurrent(s, s.offset[topology.packUnknown[pack]], pack);
            s.packA[pack] = current;
            s.packTerminalV[pack] = s.emfV[pack] - current * s.packOhm[pack];
        }
        Arrays.fill(s.loadA, 0);
        for (int load : liveLoads) {
            s.loadA[load] = s.triedA[load];
        }
        loadVolts(s);
        Arrays.fill(s.chainA, 0);
        Arrays.fill(s.chainLossW, 0);
        for (int k = 0; k < couplingChain.length; k++) {
            int chain = couplingChain[k];
            double volt = s.offset[couplingFrom[k]] - s.offset[couplingTo[k]];
            double current = -s.coupling[k] * volt;
            s.chainA[chain] = current;
            s.chainLossW[chain] = volt * current;
        }
        topology.zeroChains.fill(s.packA, s.loadA, s.chainA, s.leavingA);
    }
}
