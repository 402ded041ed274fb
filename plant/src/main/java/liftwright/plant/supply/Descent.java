package liftwright.plant.supply;

import java.util.Arrays;

/**
 * Newton's method on the voltages of a network, from above. Immutable.
 *
 * <p>Several solutions can exist, because a load that holds its current or its thrust draws less
 * the higher its voltage. Wanted is the one of highest voltage, where a rig that is switched on
 * from rest arrives. It is reached from above: the iterates start at the highest voltage there is
 * and only fall, and none falls below that solution. A step from such a point x keeps above it if
 * at each node D ≥ (I(x) − I(next)) / (x − next), where D is the slope of the loads that the step
 * reckons with (the network is an M-matrix; Ortega and Rheinboldt, Iterative Solution of Nonlinear
 * Equations in Several Variables, 1970, chapter 13). Newton's D = I′(x) does so wherever currents
 * are convex; where a step runs over a concave bend (a controller enters its current limit on the
 * way up) it is repeated with the slope of the chord.
 */
final class Descent {

    /** Steps below this share of the rest voltage end the iteration. */
    private static final double SETTLED = 1e-11;

    /** Steps below this are not repeated: rounding decides there what lies above. */
    private static final double NEARLY_SETTLED = 1e-8;

    /** A node is below the wanted solution only by more than this share of its load current. */
    private static final double BELOW = 1e-10;

    /** The same where one goes on from a solution: a few millionths of a millivolt. */
    private static final double SETTLED_AGAIN = 1e-10;

    /** A step so short is followed by the slopes that it was found with, once more. */
    private static final double SHORT = 1e-3;

    private static final int FEW_STEPS = 8;
    private static final int MOST_STEPS = 200;
    private static final int MOST_CHORDS = 40;

    private final NodeCurrents currents;

    Descent(NodeCurrents currents) {
        this.currents = currents;
    }

    /** From the highest voltage there is. */
    void iterate(NetworkState s, Device device) {
        double scale = scale(s);
        s.iterations = 0;
        Arrays.fill(s.offset, 0);
        currents.evaluate(s, s.offset, device);
        while (s.iterations < MOST_STEPS) {
            s.iterations++;
            keep(s);
            boolean chord = false;
            for (int tries = 0; ; tries++) {
                if (!direction(s, chord)) {
                    return;
                }
                double length = move(s, device);
                if (length <= NEARLY_SETTLED * scale || tries == MOST_CHORDS) {
                    System.arraycopy(s.trial, 0, s.offset, 0, s.offset.length);
                    s.converged = length <= SETTLED * scale;
                    break;
                }
                if (!steepen(s)) {
                    System.arraycopy(s.trial, 0, s.offset, 0, s.offset.length);
                    break;
                }
                chord = true;
            }
            if (s.converged) {
                return;
            }
        }
    }

    /** From where the voltages are; whether they settled within a few steps. */
    boolean settles(NetworkState s, Device device) {
        double scale = scale(s);
        currents.evaluate(s, s.offset, device);
        while (s.iterations < FEW_STEPS) {
            s.iterations++;
            keep(s);
            if (!direction(s, false)) {
                return false;
            }
            double length = move(s, device);
            System.arraycopy(s.trial, 0, s.offset, 0, s.offset.length);
            if (length <= SETTLED_AGAIN * scale
                    || (length <= SHORT * scale && closes(s, SETTLED * scale))) {
                s.converged = true;
                return true;
            }
        }
        return false;
    }

    /**
     * Goes on with what the slopes of the last step leave over; mostly that is next to nothing, and
     * a matrix and a look at all loads are saved.
     *
     * @return whether it was no more than this, V
     */
    private boolean closes(NetworkState s, double leastV) {
        s.factor.solve(s.residual, s.step);
        double length = 0;
        for (int i = 0; i < s.offset.length; i++) {
            length = Math.max(length, Math.abs(s.step[i]));
        }
        if (length > leastV) {
            return false;
        }
        for (int i = 0; i < s.offset.length; i++) {
            s.offset[i] -= s.step[i];
        }
        return true;
    }

    /** Remembers what {@link NodeCurrents#evaluate} found at the point a step starts from. */
    private static void keep(NetworkState s) {
        System.arraycopy(s.residual, 0, s.startResidual, 0, s.residual.length);
        System.arraycopy(s.loadSlope, 0, s.stepSlope, 0, s.loadSlope.length);
        System.arraycopy(s.loadSum, 0, s.startSum, 0, s.loadSum.length);
    }

    /**
     * The step with the slopes to reckon with; false where the network is singular.
     *
     * @param chord whether slopes were raised; then falling currents are not reckoned with either
     */
    private boolean direction(NetworkState s, boolean chord) {
        double[] diagonal = s.diagonal;
        double[] fixed = s.fixedDiagonal;
        double[] slopes = s.stepSlope;
        for (int i = 0; i < diagonal.length; i++) {
            double slope = chord ? Math.max(slopes[i], 0) : slopes[i];
            diagonal[i] = fixed[i] + slope;
        }
        if (s.factor.factor(diagonal, s.coupling) >= 0 || !s.factor.isPositive()) {
            // Falling currents outweigh the wiring: without them the step is shorter and sure.
            for (int i = 0; i < diagonal.length; i++) {
                diagonal[i] = fixed[i] + Math.max(slopes[i], 0);
            }
            if (s.factor.factor(diagonal, s.coupling) >= 0) {
                return false;
            }
        }
        s.factor.solve(s.startResidual, s.step);
        return true;
    }

    /** Goes the step and evaluates there; returns the longest change of a voltage, V. */
    private double move(NetworkState s, Device device) {
        double[] trial = s.trial;
        double[] offset = s.offset;
        double[] step = s.step;
        double length = 0;
        for (int i = 0; i < offset.length; i++) {
            trial[i] = offset[i] - step[i];
            length = Math.max(length, Math.abs(step[i]));
        }
        currents.evaluate(s, trial, device);
        return length;
    }

    /**
     * Raises the slopes of nodes that the step took below the wanted solution to those of the
     * chord; false where there is none.
     */
    private static boolean steepen(NetworkState s) {
        double[] residual = s.residual;
        double[] step = s.step;
        boolean any = false;
        for (int i = 0; i < residual.length; i++) {
            // Most nodes are left by the first question.
            if (residual[i] < 0
                    && step[i] > 0
                    && residual[i] < -BELOW * Math.max(s.startSum[i], Math.abs(s.loadSum[i]))) {
                double chord = (s.startSum[i] - s.loadSum[i]) / step[i];
                if (chord > s.stepSlope[i]) {
                    // A little more than the chord, so that equal chords do not repeat for ever.
                    s.stepSlope[i] = chord + 0.05 * Math.abs(chord);
                    any = true;
                }
            }
        }
        return any;
    }

    private static double scale(NetworkState s) {
        double scale = 0;
        for (double volt : s.referenceV) {
            scale = Math.max(scale, Math.abs(volt));
        }
        return scale;
    }
}
