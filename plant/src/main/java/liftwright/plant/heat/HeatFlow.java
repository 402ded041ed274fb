package liftwright.plant.heat;

import java.util.Arrays;

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
        lines(n, kelvin, grown, load, keptW);
        shells(n, kelvin, keptW);
        surfaces(n, kelvin, keptW);
        bodies(n, kelvin, load, keptW);
    }

    private static void lines(
            HeatNumbers n, double[] kelvin, double[] grown, HeatLoad load, double[] keptW) {
        double airK = n.airK;
        double[] ohm = n.ohm;
        double[] perK = n.ohmPerK;
        double[] lump = n.lumpAirWpK;
        double[] next = n.nextWpK;
        for (Lines.Group group : n.lines.groups) {
            int width = group.width;
            for (int line = 0; line < width; line++) {
                double current = load.chainA[group.chain[line]];
                double square = current * current;
                int at = group.base + line;
                double fromBefore = 0;
                for (int along = 0; along < group.length; along++, at += width) {
                    double own = kelvin[at];
                    double made =
                            square
                                    * ohm[at]
                                    * grown[at]
                                    * (1 + perK[at] * (own - HeatNumbers.ROOM_K));
                    double toNext =
                            along + 1 < group.length ? next[at] * (own - kelvin[at + width]) : 0;
                    keptW[at] = made - lump[at] * (own - airK) + fromBefore - toNext;
                    fromBefore = toNext;
                }
            }
        }
    }

    private static void shells(HeatNumbers n, double[] kelvin, double[] keptW) {
        int m = n.nodes;
        double[] wall1 = n.wall1WpK;
        double[] wall2 = n.wall2WpK;
        double[] wall3 = n.wall3WpK;
        for (int k = 0; k < m; k++) {
            double flow1 = wall1[k] * (kelvin[k] - kelvin[m + k]);
            double flow2 = wall2[k] * (kelvin[m + k] - kelvin[2 * m + k]);
            double flow3 = wall3[k] * (kelvin[2 * m + k] - kelvin[3 * m + k]);
            keptW[k] -= flow1;
            keptW[m + k] = flow1 - flow2;
            keptW[2 * m + k] = flow2 - flow3;
            keptW[3 * m + k] = flow3;
        }
    }

    private static void surfaces(HeatNumbers n, double[] kelvin, double[] keptW) {
        int[] cells = n.lines.cells;
        int shell = 3 * n.nodes;
        for (int k = 0; k < cells.length; k++) {
            int node = cells[k];
            double warmer = kelvin[shell + node] - n.airK;
            keptW[shell + node] -=
                    n.surfaceM[node] * n.table[n.tableOf[k]].conductanceWpmK(warmer) * warmer;
        }
    }

    private static void bodies(HeatNumbers n, double[] kelvin, HeatLoad load, double[] keptW) {
        int inner = 4 * n.nodes;
        int outer = inner + n.bodies;
        for (int k = 0; k < n.bodies; k++) {
            double flow = n.betweenWpK[k] * (kelvin[inner + k] - kelvin[outer + k]);
            keptW[inner + k] = load.innerW[k] - flow;
            keptW[outer + k] =
                    load.outerW[k] + flow - load.toAirWpK[k] * (kelvin[outer + k] - n.airK);
        }
    }

    /** Heat that all bodies together give to the air, W. */
    static double toAirW(HeatNumbers n, HeatState at, HeatLoad load) {
        double sum = 0;
        for (int node = 0; node < n.nodes; node++) {
            sum += n.lumpAirWpK[node] * (at.kelvin[node] - n.airK);
        }
        double[] scratch = new double[at.keptW.length];
        Arrays.fill(scratch, 0);
        surfaces(n, at.kelvin, scratch);
        for (double flow : scratch) {
            sum -= flow;
        }
        for (int k = 0; k < n.bodies; k++) {
            sum += load.toAirWpK[k] * (n.outerK(at, k) - n.airK);
        }
        return sum;
    }
}
