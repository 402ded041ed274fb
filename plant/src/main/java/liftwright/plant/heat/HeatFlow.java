package liftwright.plant.heat;

/**
 * What heat each body keeps: what is made in it and flows in, less what flows out. The equations of
 * heat themselves; {@link HeatStep} steps them.
 */
final class HeatFlow {

    private HeatFlow() {}

    /**
     * @param kelvin temperatures
     * @param grown factors on the resistance of nodes
     * @param keptW takes what each body keeps, W
     */
    static void kept(
            HeatNumbers n, double[] kelvin, double[] grown, HeatLoad load, double[] keptW) {
        Layers t = n.kelvinOf;
        Layers q = n.keptOf;
        t.split(kelvin);
        made(n, t.core, grown, load, q.core);
        along(n, t.core, q.core);
        inner(n, t, q);
        outer(n, t, q);
        surfaces(n, t.shell3, q.shell3);
        bodies(n, t, load, q);
        q.join(keptW);
    }

    /** Heat made in each node of a line, less what a lump gives to the air. */
    private static void made(
            HeatNumbers n, double[] kelvin, double[] grown, HeatLoad load, double[] keptW) {
        double airK = n.airK;
        double[] square = n.squareA2;
        for (Lines.Group group : n.lines.groups) {
            int width = group.width;
            int end = group.base + group.length * width;
            for (int line = 0; line < width; line++) {
                double current = load.chainA[group.chain[line]];
                square[group.base + line] = current * current;
            }
            for (int at = group.base + width; at < end; at++) {
                square[at] = square[at - width];
            }
        }
        double[] ohm = n.ohm;
        double[] perK = n.ohmPerK;
        double[] lump = n.lumpAirWpK;
        for (int at = 0; at < keptW.length; at++) {
            double own = kelvin[at];
            keptW[at] =
                    square[at] * ohm[at] * grown[at] * (1 + perK[at] * (own - HeatNumbers.ROOM_K))
                            - lump[at] * (own - airK);
        }
    }

    /** What flows between neighbours of a line. */
    private static void along(HeatNumbers n, double[] kelvin, double[] keptW) {
        double[] next = n.nextWpK;
        for (Lines.Group group : n.lines.groups) {
            int width = group.width;
            int last = group.base + (group.length - 1) * width;
            for (int at = group.base; at < last; at++) {
                double flow = next[at] * (kelvin[at] - kelvin[at + width]);
                keptW[at] -= flow;
                keptW[at + width] += flow;
            }
        }
    }

    private static void inner(HeatNumbers n, Layers t, Layers q) {
        double[] wall1 = n.wall1WpK;
        double[] wall2 = n.wall2WpK;
        double[] t0 = t.core;
        double[] t1 = t.shell1;
        double[] t2 = t.shell2;
        double[] q0 = q.core;
        double[] q1 = q.shell1;
        double[] q2 = q.shell2;
        for (int k = 0; k < q0.length; k++) {
            double flow1 = wall1[k] * (t0[k] - t1[k]);
            double flow2 = wall2[k] * (t1[k] - t2[k]);
            q0[k] -= flow1;
            q1[k] = flow1 - flow2;
            q2[k] = flow2;
        }
    }

    private static void outer(HeatNumbers n, Layers t, Layers q) {
        double[] wall3 = n.wall3WpK;
        double[] t2 = t.shell2;
        double[] t3 = t.shell3;
        double[] q2 = q.shell2;
        double[] q3 = q.shell3;
        for (int k = 0; k < q3.length; k++) {
            double flow3 = wall3[k] * (t2[k] - t3[k]);
            q2[k] -= flow3;
            q3[k] = flow3;
        }
    }

    private static void surfaces(HeatNumbers n, double[] shellK, double[] keptW) {
        int[] cells = n.lines.cells;
        double airK = n.airK;
        for (int k = 0; k < cells.length; k++) {
            int node = cells[k];
            double warmer = shellK[node] - airK;
            keptW[node] -=
                    n.surfaceM[node] * n.table[n.tableOf[k]].conductanceWpmK(warmer) * warmer;
        }
    }

    private static void bodies(HeatNumbers n, Layers t, HeatLoad load, Layers q) {
        double airK = n.airK;
        double[] between = n.betweenWpK;
        double[] inner = t.inner;
        double[] outer = t.outer;
        double[] innerW = load.innerW;
        double[] outerW = load.outerW;
        double[] air = load.toAirWpK;
        double[] keptInner = q.inner;
        double[] keptOuter = q.outer;
        for (int k = 0; k < inner.length; k++) {
            double flow = between[k] * (inner[k] - outer[k]);
            keptInner[k] = innerW[k] - flow;
            keptOuter[k] = outerW[k] + flow - air[k] * (outer[k] - airK);
        }
    }

    /** Heat that all bodies together give to the air, W. */
    static double toAirW(HeatNumbers n, HeatState at, HeatLoad load) {
        double sum = 0;
        for (int node = 0; node < n.nodes; node++) {
            sum += n.lumpAirWpK[node] * (at.kelvin[node] - n.airK);
        }
        n.kelvinOf.split(at.kelvin);
        double[] given = new double[n.nodes];
        surfaces(n, n.kelvinOf.shell3, given);
        for (double flow : given) {
            sum -= flow;
        }
        for (int k = 0; k < n.bodies; k++) {
            sum += load.toAirWpK[k] * (n.outerK(at, k) - n.airK);
        }
        return sum;
    }
}
