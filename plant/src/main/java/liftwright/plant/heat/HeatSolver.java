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
    private final Layers capacity;

    /** Reciprocal pivots. */
    private final Layers pivot;

    private final Layers right;

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
        capacity = new Layers(n.nodes, n.bodies);
        pivot = new Layers(n.nodes, n.bodies);
        right = new Layers(n.nodes, n.bodies);
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
        capacity.split(n.capacityJpK);
        surfaces(kelvin);
        outerShells(a);
        innerShells(a);
        lines(a);
        bodies(load, a);
    }

    private void surfaces(double[] kelvin) {
        int[] cells = n.lines.cells;
        int shell = 3 * n.nodes;
        double airK = n.airK;
        for (int k = 0; k < cells.length; k++) {
            int node = cells[k];
            double warmer = kelvin[shell + node] - airK;
            surface[node] = n.surfaceM[node] * n.table[n.tableOf[k]].slopeWpmK(warmer);
        }
    }

    private void outerShells(double a) {
        double[] c2 = capacity.shell2;
        double[] c3 = capacity.shell3;
        double[] pivot2 = pivot.shell2;
        double[] pivot3 = pivot.shell3;
        double[] wall2 = n.wall2WpK;
        double[] wall3 = n.wall3WpK;
        for (int k = 0; k < pivot3.length; k++) {
            double g3 = a * wall3[k];
            double p3 = 1 / (c3[k] + g3 + a * surface[k]);
            double s3 = g3 * p3;
            pivot3[k] = p3;
            share3[k] = s3;
            pivot2[k] = 1 / (c2[k] + a * wall2[k] + g3 - g3 * s3);
        }
    }

    private void innerShells(double a) {
        double[] c0 = capacity.core;
        double[] c1 = capacity.shell1;
        double[] pivot0 = pivot.core;
        double[] pivot1 = pivot.shell1;
        double[] pivot2 = pivot.shell2;
        double[] wall1 = n.wall1WpK;
        double[] wall2 = n.wall2WpK;
        double[] lump = n.lumpAirWpK;
        for (int k = 0; k < pivot1.length; k++) {
            double g1 = a * wall1[k];
            double g2 = a * wall2[k];
            double s2 = g2 * pivot2[k];
            double p1 = 1 / (c1[k] + g1 + g2 - g2 * s2);
            double s1 = g1 * p1;
            pivot1[k] = p1;
            share2[k] = s2;
            share1[k] = s1;
            // Not yet a reciprocal.
            pivot0[k] = c0[k] + g1 - g1 * s1 + a * lump[k];
        }
    }

    private void lines(double a) {
        double[] next = n.nextWpK;
        double[] own = pivot.core;
        for (int at = 0; at < own.length; at++) {
            coupling[at] = a * next[at];
        }
        for (Lines.Group group : n.lines.groups) {
            int width = group.width;
            int second = group.base + width;
            int end = group.base + group.length * width;
            for (int at = group.base; at < second; at++) {
                own[at] = 1 / (own[at] + coupling[at]);
            }
            for (int at = second; at < end; at++) {
                double g = coupling[at - width];
                double s = g * own[at - width];
                shareBefore[at] = s;
                own[at] = 1 / (own[at] + coupling[at] + g - g * s);
            }
        }
    }

    private void bodies(HeatLoad load, double a) {
        double[] inner = capacity.inner;
        double[] outer = capacity.outer;
        double[] between = n.betweenWpK;
        double[] air = load.toAirWpK;
        double[] innerPivot = pivot.inner;
        double[] outerPivot = pivot.outer;
        for (int k = 0; k < innerPivot.length; k++) {
            double g = a * between[k];
            double p = 1 / (outer[k] + g + a * air[k]);
            double s = g * p;
            outerPivot[k] = p;
            bodyShare[k] = s;
            innerPivot[k] = 1 / (inner[k] + g - g * s);
        }
    }

    /** Solves in place: right sides in, increments out. */
    void solve(double[] row) {
        right.split(row);
        intoCores(right.core, right.shell1, right.shell2, right.shell3);
        for (Lines.Group group : n.lines.groups) {
            along(group, right.core, pivot.core);
        }
        outOfCores(right.core, right.shell1, right.shell2, right.shell3);
        bodies(right.inner, right.outer);
        right.join(row);
    }

    private void intoCores(double[] r0, double[] r1, double[] r2, double[] r3) {
        for (int k = 0; k < r0.length; k++) {
            double second = r2[k] + share3[k] * r3[k];
            double first = r1[k] + share2[k] * second;
            r2[k] = second;
            r1[k] = first;
            r0[k] += share1[k] * first;
        }
    }

    private void along(Lines.Group group, double[] r, double[] reciprocal) {
        int width = group.width;
        int end = group.base + group.length * width;
        for (int at = group.base + width; at < end; at++) {
            r[at] += shareBefore[at] * r[at - width];
        }
        for (int at = end - width; at < end; at++) {
            r[at] *= reciprocal[at];
        }
        for (int at = end - width - 1; at >= group.base; at--) {
            r[at] = (r[at] + coupling[at] * r[at + width]) * reciprocal[at];
        }
    }

    private void outOfCores(double[] r0, double[] r1, double[] r2, double[] r3) {
        double[] pivot1 = pivot.shell1;
        double[] pivot2 = pivot.shell2;
        double[] pivot3 = pivot.shell3;
        for (int k = 0; k < r0.length; k++) {
            double first = pivot1[k] * r1[k] + share1[k] * r0[k];
            double second = pivot2[k] * r2[k] + share2[k] * first;
            r1[k] = first;
            r2[k] = second;
            r3[k] = pivot3[k] * r3[k] + share3[k] * second;
        }
    }

    private void bodies(double[] inner, double[] outer) {
        double[] innerPivot = pivot.inner;
        double[] outerPivot = pivot.outer;
        for (int k = 0; k < inner.length; k++) {
            double own = (inner[k] + bodyShare[k] * outer[k]) * innerPivot[k];
            inner[k] = own;
            outer[k] = outerPivot[k] * outer[k] + bodyShare[k] * own;
        }
    }
}
