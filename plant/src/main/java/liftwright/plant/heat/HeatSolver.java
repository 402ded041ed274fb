package liftwright.plant.heat;

/**
 * Solves (C − a K) k = r for the increments of all temperatures, K being the slope of the heat kept
 * and a a time: the shells of a cell are eliminated into its conductor, then each line is a chain
 * of neighbours. Elimination in place; nothing is allocated.
 *
 * <p>K leaves out how the heat made rises with temperature; the method that uses it keeps its order
 * with any slope.
 */
final class HeatSolver {

    private final HeatNumbers n;

    /** Reciprocal pivots in the order of the temperatures. */
    private final double[] pivot;

    /** What an inner neighbour takes over of an outer one: shells 1 to 3 into theirs. */
    private final double[] share1;

    private final double[] share2;
    private final double[] share3;

    /** What a node takes over of the one before, and the coupling to the next. */
    private final double[] shareBefore;

    private final double[] coupling;
    private final double[] bodyShare;

    private final double[] surface;

    HeatSolver(HeatNumbers n) {
        this.n = n;
        pivot = new double[n.capacityJpK.length];
        share1 = new double[n.nodes];
        share2 = new double[n.nodes];
        share3 = new double[n.nodes];
        shareBefore = new double[n.nodes];
        coupling = new double[n.nodes];
        bodyShare = new double[n.bodies];
        surface = new double[n.nodes];
    }

    /**
     * Eliminates.
     *
     * @param kelvin temperatures at which surfaces are taken
     * @param load conductances of bodies to the air
     * @param a time, s
     */
    void factor(double[] kelvin, HeatLoad load, double a) {
        surfaces(kelvin);
        shells(a);
        lines(a);
        bodies(load, a);
    }

    private void surfaces(double[] kelvin) {
        int[] cells = n.lines.cells;
        int shell = 3 * n.nodes;
        for (int k = 0; k < cells.length; k++) {
            int node = cells[k];
            surface[node] =
                    n.surfaceM[node]
                            * n.table[n.tableOf[k]].slopeWpmK(kelvin[shell + node] - n.airK);
        }
    }

    private void shells(double a) {
        int m = n.nodes;
        double[] c = n.capacityJpK;
        double[] wall1 = n.wall1WpK;
        double[] wall2 = n.wall2WpK;
        double[] wall3 = n.wall3WpK;
        double[] lump = n.lumpAirWpK;
        for (int k = 0; k < m; k++) {
            double g1 = a * wall1[k];
            double g2 = a * wall2[k];
            double g3 = a * wall3[k];
            double p3 = 1 / (c[3 * m + k] + g3 + a * surface[k]);
            double s3 = g3 * p3;
            double p2 = 1 / (c[2 * m + k] + g2 + g3 - g3 * s3);
            double s2 = g2 * p2;
            double p1 = 1 / (c[m + k] + g1 + g2 - g2 * s2);
            double s1 = g1 * p1;
            pivot[3 * m + k] = p3;
            pivot[2 * m + k] = p2;
            pivot[m + k] = p1;
            share3[k] = s3;
            share2[k] = s2;
            share1[k] = s1;
            // Not yet a reciprocal.
            pivot[k] = c[k] + g1 - g1 * s1 + a * lump[k];
        }
    }

    private void lines(double a) {
        double[] next = n.nextWpK;
        for (Lines.Group group : n.lines.groups) {
            int width = group.width;
            for (int along = 0; along < group.length; along++) {
                int from = group.base + along * width;
                boolean first = along == 0;
                for (int at = from; at < from + width; at++) {
                    double own = pivot[at] + a * next[at];
                    if (!first) {
                        double g = coupling[at - width];
                        double s = g * pivot[at - width];
                        shareBefore[at] = s;
                        own += g - g * s;
                    }
                    coupling[at] = a * next[at];
                    pivot[at] = 1 / own;
                }
            }
        }
    }

    private void bodies(HeatLoad load, double a) {
        int inner = 4 * n.nodes;
        int outer = inner + n.bodies;
        double[] c = n.capacityJpK;
        for (int k = 0; k < n.bodies; k++) {
            double g = a * n.betweenWpK[k];
            double p = 1 / (c[outer + k] + g + a * load.toAirWpK[k]);
            double s = g * p;
            pivot[outer + k] = p;
            bodyShare[k] = s;
            pivot[inner + k] = 1 / (c[inner + k] + g - g * s);
        }
    }

    /** Solves in place: right sides in, increments out. */
    void solve(double[] r) {
        int m = n.nodes;
        for (int k = 0; k < m; k++) {
            r[2 * m + k] += share3[k] * r[3 * m + k];
            r[m + k] += share2[k] * r[2 * m + k];
            r[k] += share1[k] * r[m + k];
        }
        for (Lines.Group group : n.lines.groups) {
            along(group, r);
        }
        for (int k = 0; k < m; k++) {
            r[m + k] = pivot[m + k] * r[m + k] + share1[k] * r[k];
            r[2 * m + k] = pivot[2 * m + k] * r[2 * m + k] + share2[k] * r[m + k];
            r[3 * m + k] = pivot[3 * m + k] * r[3 * m + k] + share3[k] * r[2 * m + k];
        }
        int inner = 4 * m;
        int outer = inner + n.bodies;
        for (int k = 0; k < n.bodies; k++) {
            double own = (r[inner + k] + bodyShare[k] * r[outer + k]) * pivot[inner + k];
            r[inner + k] = own;
            r[outer + k] = pivot[outer + k] * r[outer + k] + bodyShare[k] * own;
        }
    }

    private void along(Lines.Group group, double[] r) {
        int width = group.width;
        int end = group.base + group.length * width;
        for (int at = group.base + width; at < end; at++) {
            r[at] += shareBefore[at] * r[at - width];
        }
        for (int at = end - width; at < end; at++) {
            r[at] *= pivot[at];
        }
        for (int at = end - width - 1; at >= group.base; at--) {
            r[at] = (r[at] + coupling[at] * r[at + width]) * pivot[at];
        }
    }
}
