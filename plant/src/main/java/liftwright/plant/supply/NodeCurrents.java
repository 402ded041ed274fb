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

    /** Unknown of each of the latter. */
    private final int[] liveLoadAt;

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
        liveLoads =
                IntStream.range(0, topology.loadUnknown.length)
                        .filter(load -> topology.loadUnknown[load] >= 0)
                        .toArray();
        liveLoadAt = Arrays.stream(liveLoads).map(load -> topology.loadUnknown[load]).toArray();
    }

    /** Takes the voltages and resistances of now; nothing is known of what flows. */
    void prepare(NetworkState s) {
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

    /** Currents that do not add up at each node, what its loads draw, and their slopes. */
    void evaluate(NetworkState s, double[] offset, Device device) {
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

    /** Currents that packs and chains leave over at each node. */
    void linearResidual(NetworkState s, double[] offset) {
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

    /** Adds currents of all loads to what is left over at their nodes. */
    void add(double[] loadA, double[] residual) {
        for (int k = 0; k < liveLoads.length; k++) {
            residual[liveLoadAt[k]] += loadA[liveLoads[k]];
        }
    }

    /** Writes the voltages of the loads that a pack reaches. */
    void loadVolts(NetworkState s) {
        for (int load : liveLoads) {
            s.loadTerminalV[load] = loadV(s, s.offset, load);
        }
    }

    /** Voltage of a load; 0 of one that no pack reaches, V. */
    double loadV(NetworkState s, double[] offset, int load) {
        int at = topology.loadUnknown[load];
        return at < 0 ? 0 : s.referenceV[topology.islandOfUnknown[at]] + offset[at];
    }

    /** Writes what flows at the voltages found. */
    void results(NetworkState s, Device device) {
        for (int pack = 0; pack < s.emfV.length; pack++) {
            s.packA[pack] = packCurrent(s, s.offset, pack);
            s.packTerminalV[pack] = s.emfV[pack] - s.packA[pack] * s.packOhm[pack];
        }
        for (int load = 0; load < s.loadTerminalV.length; load++) {
            boolean fed = topology.loadUnknown[load] >= 0;
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
