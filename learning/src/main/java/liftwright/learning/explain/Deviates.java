package liftwright.learning.explain;

import java.util.List;
import liftwright.plant.parameters.ParameterTable;

/** Doubts of the rig as declared, carried over to the opened rig. */
final class Deviates {

    private Deviates() {}

    /**
     * Numbers of the opened rig.
     *
     * @param z one deviate for each doubt
     */
    static double[] at(Bench bench, List<Doubts.Doubt> doubts, double[] z) {
        ParameterTable plain = bench.plainTable();
        double[] rows = new double[plain.size()];
        double[] p = bench.openVector();
        for (int d = 0; d < z.length; d++) {
            Doubts.Doubt doubt = doubts.get(d);
            if (z[d] != 0 && doubt.open().isPresent()) {
                Doubts.Opened open = doubt.open().get();
                open.change().of().at(open.step() * z[d], p);
            } else if (z[d] != 0) {
                rows[plain.indexOf(doubt.name())] = z[d];
            }
        }
        double[] moved = new double[plain.size()];
        plain.at(rows, moved);
        double[] nominal = plain.nominal();
        for (int row = 0; row < moved.length; row++) {
            if (moved[row] != nominal[row]) {
                carry(bench, plain.rows().get(row).name(), moved[row] - nominal[row], p);
            }
        }
        return p;
    }

    /** A number of all of a kind is in the opened rig one of each part. */
    private static void carry(Bench bench, String name, double change, double[] p) {
        ParameterTable open = bench.openTable();
        for (int row = 0; row < p.length; row++) {
            String own = open.rows().get(row).name();
            if (own.equals(name) || own.endsWith(": " + name)) {
                p[row] += change;
            }
        }
    }
}
