package liftwright.plant.heat;

/**
 * One number for every body of heat, layer by layer: conductors and lumps of the lines, their three
 * shells, and the two nodes of the bodies. A row of temperatures with each layer in an array of its
 * own: loops over layers of equal length then run on many numbers at once, which they do not where
 * one array holds all.
 */
final class Layers {

    final double[] core;
    final double[] shell1;
    final double[] shell2;
    final double[] shell3;
    final double[] inner;
    final double[] outer;

    Layers(int nodes, int bodies) {
        core = new double[nodes];
        shell1 = new double[nodes];
        shell2 = new double[nodes];
        shell3 = new double[nodes];
        inner = new double[bodies];
        outer = new double[bodies];
    }

    /** Takes a row. */
    void split(double[] row) {
        int m = core.length;
        System.arraycopy(row, 0, core, 0, m);
        System.arraycopy(row, m, shell1, 0, m);
        System.arraycopy(row, 2 * m, shell2, 0, m);
        System.arraycopy(row, 3 * m, shell3, 0, m);
        System.arraycopy(row, 4 * m, inner, 0, inner.length);
        System.arraycopy(row, 4 * m + inner.length, outer, 0, outer.length);
    }

    /** Gives a row. */
    void join(double[] row) {
        int m = core.length;
        System.arraycopy(core, 0, row, 0, m);
        System.arraycopy(shell1, 0, row, m, m);
        System.arraycopy(shell2, 0, row, 2 * m, m);
        System.arraycopy(shell3, 0, row, 3 * m, m);
        System.arraycopy(inner, 0, row, 4 * m, inner.length);
        System.arraycopy(outer, 0, row, 4 * m + inner.length, outer.length);
    }
}
