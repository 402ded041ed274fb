package liftwright.plant.heat;

import java.util.Arrays;
import liftwright.physics.FuseCurve;

/**
 * All bodies of heat of a rig in numbers, at one vector, in one thread; filled by {@link
 * HeatBank#load}.
 *
 * <p>Temperatures stand in one row: conductors and lumps node by node, then the first, second and
 * third shell of each node (a lump's have nothing in them), then the inner and the outer node of
 * each body.
 */
public final class HeatNumbers {

    /** Temperature at which the resistance of copper is stated, K. */
    static final double ROOM_K = 293.15;

    final Lines lines;
    final int nodes;
    final int bodies;

    double airK;

    /** Heat capacities in the order of the temperatures, J/K. */
    final double[] capacityJpK;

    /** From each conductor to its first shell, from that to the second, to the third, W/K. */
    final double[] wall1WpK;

    final double[] wall2WpK;
    final double[] wall3WpK;

    /** From each node to the next of its line, W/K; 0 at its end. */
    final double[] nextWpK;

    /** From a lump to the air, W/K; 0 for a cell of a wire. */
    final double[] lumpAirWpK;

    /** Resistance of each node of the positive line, of a wire at 20 °C, Ω. */
    final double[] ohm;

    /** How often each node's resistance counts in its chain: 2 where the return has another. */
    final double[] ways;

    /** Rise of that resistance, 1/K. */
    final double[] ohmPerK;

    /** Length of all conductors of a wire's cell, m; what its table is to be multiplied with. */
    final double[] surfaceM;

    final SurfaceTable[] table;

    /** Table of each of the lines' cells. */
    final int[] tableOf;

    /** Between the two nodes of each body, W/K. */
    final double[] betweenWpK;

    /** From the outer node of each body to the air when its fan is at full speed, W/K. */
    final double[] fullAirWpK;

    /** Loss of magnetism of each fan's magnets, 1/K. */
    final double[] fadePerK;

    final FuseCurve[] curve;
    final double[] fuseS;
    final int[] fuseNode;
    final int[] fuseChain;

    /** Growth of a joint's resistance above a temperature, 1/s; 0 where it does not grow. */
    final double[] growthPerS;

    final double[] growthAboveK;

    /** Scratch of {@link HeatFlow}. */
    final Layers kelvinOf;

    final Layers keptOf;
    final double[] squareA2;

    HeatNumbers(Lines lines, int bodies, int fans, int tables, int[] tableOf, int[] fuseNode) {
        this.lines = lines;
        this.bodies = bodies;
        this.tableOf = tableOf;
        this.fuseNode = fuseNode;
        nodes = lines.nodes;
        capacityJpK = new double[4 * nodes + 2 * bodies];
        Arrays.fill(capacityJpK, 1); // what a lump's shells have: nothing flows there
        wall1WpK = new double[nodes];
        wall2WpK = new double[nodes];
        wall3WpK = new double[nodes];
        nextWpK = new double[nodes];
        lumpAirWpK = new double[nodes];
        ohm = new double[nodes];
        ways = new double[nodes];
        ohmPerK = new double[nodes];
        surfaceM = new double[nodes];
        betweenWpK = new double[bodies];
        fullAirWpK = new double[bodies];
        fadePerK = new double[fans];
        growthPerS = new double[nodes];
        growthAboveK = new double[nodes];
        kelvinOf = new Layers(nodes, bodies);
        keptOf = new Layers(nodes, bodies);
        squareA2 = new double[nodes];
        table = new SurfaceTable[tables];
        Arrays.setAll(table, _ -> new SurfaceTable());
        curve = new FuseCurve[fuseNode.length];
        fuseS = new double[fuseNode.length];
        fuseChain = Arrays.stream(fuseNode).map(node -> lines.chainOf[node]).toArray();
    }

    public HeatState newState() {
        return new HeatState(capacityJpK.length, fuseNode.length, nodes);
    }

    public HeatLoad newLoad(int chains, int packs) {
        return new HeatLoad(chains, packs, bodies, fuseNode.length);
    }

    int inner(int body) {
        return 4 * nodes + body;
    }

    int outer(int body) {
        return 4 * nodes + bodies + body;
    }

    /** Temperature of the inner node of a body, K. */
    public double innerK(HeatState at, int body) {
        return at.kelvin[4 * nodes + body];
    }

    /** Temperature of the outer node of a body, K. */
    public double outerK(HeatState at, int body) {
        return at.kelvin[4 * nodes + bodies + body];
    }

    /** From the outer node of a body to the air when its fan is at full speed, W/K. */
    public double fullAirWpK(int body) {
        return fullAirWpK[body];
    }

    /** Loss of magnetism of a fan's magnets, 1/K. */
    public double fadePerK(int fan) {
        return fadePerK[fan];
    }

    /** Resistance of a node of the positive line as it is, Ω. */
    double nodeOhm(HeatState at, int node) {
        return ohm[node] * at.grown[node] * (1 + ohmPerK[node] * (at.kelvin[node] - ROOM_K));
    }

    /**
     * Resistances of the chains as warm as they are, out and back, Ω.
     *
     * @param chainOhm takes one value per chain; of one without nodes it stays 0
     */
    public void resistance(HeatState at, double[] chainOhm) {
        Arrays.fill(chainOhm, 0);
        for (int node = 0; node < nodes; node++) {
            chainOhm[lines.chainOf[node]] += ways[node] * nodeOhm(at, node);
        }
    }

    /**
     * Gains of the fuses at the currents of a load, which are there already.
     *
     * @param load in and out
     */
    public void gains(HeatLoad load) {
        load.fuses(curve, fuseChain);
    }
}
