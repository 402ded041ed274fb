package liftwright.plant.supply;

import liftwright.numerics.SymmetricFactor;

/**
 * Numbers of one network in one thread: what goes in, what comes out, and scratch. The first three
 * arrays are the caller's to fill before {@link Network#solve}.
 */
public final class NetworkState {

    /** In: rest voltage of each pack, V. */
    public final double[] emfV;

    /** In: resistance of each pack, Ω, above 0. */
    public final double[] packOhm;

    /** In: resistance of each chain, Ω; above 0 unless declared without any. */
    public final double[] chainOhm;

    final double[] packA;
    final double[] packTerminalV;
    final double[] loadTerminalV;
    final double[] loadA;
    final double[] chainA;
    final double[] chainLossW;
    boolean converged;
    int iterations;

    // Scratch; one per unknown unless said.
    final double[] referenceV; // one per island
    final double[] offset;
    final double[] trial;
    final double[] residual;
    final double[] step;
    final double[] fixedDiagonal;
    final double[] loadSlope;
    final double[] loadSum;
    final double[] startResidual;
    final double[] startSum;
    final double[] stepSlope;
    final double[] diagonal;
    final double[] coupling; // one per coupling
    final double[] linear; // currents that wiring and packs leave over at each unknown
    boolean linearKnown;
    final double[] triedV; // one per load: voltages asked last, and what it draws there
    final double[] triedA;
    final double[] triedS;
    final double[] packSiemens; // one per pack
    final double[] packOverV; // one per pack: rest voltage over the highest of its island
    final double[] leavingA; // one per node of the graph
    final SymmetricFactor factor;

    NetworkState(Network network) {
        int unknowns = network.topology.unknowns;
        int chains = network.topology.chainFrom.length;
        emfV = new double[network.topology.packUnknown.length];
        packOhm = new double[emfV.length];
        chainOhm = new double[chains];
        packA = new double[emfV.length];
        packTerminalV = new double[emfV.length];
        loadTerminalV = new double[network.topology.loadUnknown.length];
        loadA = new double[loadTerminalV.length];
        chainA = new double[chains];
        chainLossW = new double[chains];
        referenceV = new double[network.topology.islands];
        offset = new double[unknowns];
        trial = new double[unknowns];
        residual = new double[unknowns];
        step = new double[unknowns];
        fixedDiagonal = new double[unknowns];
        loadSlope = new double[unknowns];
        loadSum = new double[unknowns];
        startResidual = new double[unknowns];
        startSum = new double[unknowns];
        stepSlope = new double[unknowns];
        diagonal = new double[unknowns];
        coupling = new double[network.pattern.couplings()];
        linear = new double[unknowns];
        triedV = new double[loadA.length];
        triedA = new double[loadA.length];
        triedS = new double[loadA.length];
        packSiemens = new double[emfV.length];
        packOverV = new double[emfV.length];
        leavingA = new double[network.topology.zeroChains.nodes()];
        factor = network.pattern.newFactor();
    }

    /** Discharge current of a pack, A. */
    public double packA(int pack) {
        return packA[pack];
    }

    /** Voltage at the leads of a pack, V. */
    public double packTerminalV(int pack) {
        return packTerminalV[pack];
    }

    /** Voltage at a load, V; 0 without supply. */
    public double loadTerminalV(int load) {
        return loadTerminalV[load];
    }

    /** Current through a chain from its first node to its second, A. */
    public double chainA(int chain) {
        return chainA[chain];
    }

    /** Heat of a chain, W. */
    public double chainLossW(int chain) {
        return chainLossW[chain];
    }

    /** Current of a load, A. */
    public double loadA(int load) {
        return loadA[load];
    }

    /**
     * Power that is not accounted for at the solved point, over all power that the packs give: Σ E
     * I = Σ I² R + chains + Σ V I of the loads.
     */
    public double closure() {
        double given = 0;
        double taken = 0;
        for (int k = 0; k < emfV.length; k++) {
            given += emfV[k] * packA[k];
            taken += packA[k] * packA[k] * packOhm[k];
        }
        for (double watt : chainLossW) {
            taken += watt;
        }
        for (int load = 0; load < loadA.length; load++) {
            taken += loadTerminalV[load] * loadA[load];
        }
        return given == 0 ? Math.abs(taken) : Math.abs(1 - taken / given);
    }

    /** How many numbers the point has that {@link #tellPoint} tells. */
    public int pointSize() {
        return offset.length;
    }

    /** Writes the point last solved: the voltages at all nodes, as this network keeps them. */
    public void tellPoint(double[] to, int at) {
        System.arraycopy(offset, 0, to, at, offset.length);
    }

    /** Takes a point told before, with the same numbers put in, for {@link Network#resume}. */
    public void goOnFrom(double[] from, int at) {
        System.arraycopy(from, at, offset, 0, offset.length);
    }

    /** Whether the voltages settled. */
    public boolean converged() {
        return converged;
    }

    /** Newton steps taken. */
    public int iterations() {
        return iterations;
    }
}
