package liftwright.plant.heat;

import java.util.ArrayList;
import java.util.List;

/** The linear systems 1 − h J of bodies of two nodes, the outer of which gives to the air. */
final class TwoNodes {

    private final List<double[]> bodies = new ArrayList<>();
    private double factoredS;

    /** Forgets all; those that follow are for a step. */
    void begin(double h) {
        bodies.clear();
        factoredS = h;
    }

    /** A body with its inner node's component, the outer one behind it. */
    void add(int at, double inner, double outer, double between, double air) {
        bodies.add(
                new double[] {
                    at,
                    1 + factoredS * between / inner,
                    -factoredS * between / inner,
                    -factoredS * between / outer,
                    1 + factoredS * (between + air) / outer
                });
    }

    /** A right-hand side in, what solves it out. */
    void solve(double[] f) {
        for (double[] m : bodies) {
            int at = (int) m[0];
            double det = m[1] * m[4] - m[2] * m[3];
            double in = (m[4] * f[at] - m[2] * f[at + 1]) / det;
            double out = (m[1] * f[at + 1] - m[3] * f[at]) / det;
            f[at] = in;
            f[at + 1] = out;
        }
    }
}
