package liftwright.plant.heat;

import java.util.Arrays;

/**
 * Voltages of a few nodes joined by resistances, sources and loads, by dense nodal analysis and
 * Newton's method from the last answer.
 */
final class DenseNetwork {

    /** What a load draws at a voltage, A. */
    interface Load {
        double ampere(int load, double volt);
    }

    /** A branch between two nodes; of no use if it is open. */
    record Branch(int from, int to) {}

    private final int nodes;
    private final Branch[] branches;
    private final int[] packNode;
    private final int[] loadNode;
    final boolean[] open;
    final double[] volt;
    final double[] branchA;
    final double[] packA;

    DenseNetwork(int nodes, Branch[] branches, int[] packNode, int[] loadNode) {
        this.nodes = nodes;
        this.branches = branches;
        this.packNode = packNode;
        this.loadNode = loadNode;
        open = new boolean[branches.length];
        volt = new double[nodes];
        branchA = new double[branches.length];
        packA = new double[packNode.length];
    }

    /** Whether a way leads from a node to any pack. */
    boolean[] live() {
        boolean[] live = new boolean[nodes];
        for (int node : packNode) {
            live[node] = true;
        }
        for (boolean grew = true; grew; ) {
            grew = false;
            for (int k = 0; k < branches.length; k++) {
                Branch b = branches[k];
                if (!open[k] && live[b.from] != live[b.to]) {
                    live[b.from] = true;
                    live[b.to] = true;
                    grew = true;
                }
            }
        }
        return live;
    }

    void solve(double[] emfV, double[] packOhm, double[] branchOhm, Load loads) {
        boolean[] live = live();
        double top = Arrays.stream(emfV).max().orElseThrow();
        for (int n = 0; n < nodes; n++) {
            if (live[n] && volt[n] < top / 4) {
                volt[n] = top;
            }
        }
        double move = Double.POSITIVE_INFINITY;
        for (int k = 0; k < 200 && move > 1e-11 * top; k++) {
            move = newton(live, emfV, packOhm, branchOhm, loads);
        }
        if (!(move <= 1e-9 * top)) {
            throw new AssertionError("the reference's network does not settle");
        }
        for (int k = 0; k < branches.length; k++) {
            Branch b = branches[k];
            branchA[k] = open[k] || !live[b.from] ? 0 : (volt[b.from] - volt[b.to]) / branchOhm[k];
        }
        for (int k = 0; k < packA.length; k++) {
            packA[k] = (emfV[k] - volt[packNode[k]]) / packOhm[k];
        }
    }

    private double newton(
            boolean[] live, double[] emfV, double[] packOhm, double[] branchOhm, Load loads) {
        double[][] m = new double[nodes][nodes + 1];
        for (int n = 0; n < nodes; n++) {
            if (!live[n]) {
                m[n][n] = 1;
                volt[n] = 0;
            }
        }
        for (int k = 0; k < branches.length; k++) {
            Branch b = branches[k];
            if (!open[k] && live[b.from]) {
                double g = 1 / branchOhm[k];
                m[b.from][b.from] += g;
                m[b.to][b.to] += g;
                m[b.from][b.to] -= g;
                m[b.to][b.from] -= g;
                double flow = g * (volt[b.from] - volt[b.to]);
                m[b.from][nodes] += flow;
                m[b.to][nodes] -= flow;
            }
        }
        for (int k = 0; k < packNode.length; k++) {
            int n = packNode[k];
            m[n][n] += 1 / packOhm[k];
            m[n][nodes] += (volt[n] - emfV[k]) / packOhm[k];
        }
        for (int k = 0; k < loadNode.length; k++) {
            int n = loadNode[k];
            if (live[n]) {
                double h = 1e-5 * volt[n];
                double rise = loads.ampere(k, volt[n] + h) - loads.ampere(k, volt[n] - h);
                m[n][n] += rise / (2 * h);
                m[n][nodes] += loads.ampere(k, volt[n]);
            }
        }
        double[] step = eliminated(m);
        double most = 0;
        for (int n = 0; n < nodes; n++) {
            double by = Math.clamp(step[n], -0.2 * volt[n] - 1e-9, 0.2 * volt[n] + 1e-9);
            most = Math.max(most, Math.abs(by));
            volt[n] -= by;
        }
        return most;
    }

    private static double[] eliminated(double[][] m) {
        int n = m.length;
        for (int c = 0; c < n; c++) {
            int best = c;
            for (int r = c + 1; r < n; r++) {
                best = Math.abs(m[r][c]) > Math.abs(m[best][c]) ? r : best;
            }
            double[] swap = m[c];
            m[c] = m[best];
            m[best] = swap;
            for (int r = c + 1; r < n; r++) {
                double f = m[r][c] / m[c][c];
                for (int k = c; f != 0 && k <= n; k++) {
                    m[r][k] -= f * m[c][k];
                }
            }
        }
        double[] x = new double[n];
        for (int r = n - 1; r >= 0; r--) {
            double sum = m[r][n];
            for (int k = r + 1; k < n; k++) {
                sum -= m[r][k] * x[k];
            }
            x[r] = sum / m[r][r];
        }
        return x;
    }
}
