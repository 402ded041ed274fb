package liftwright.review.stand;

import liftwright.physics.FreeJet;
import liftwright.rig.stand.Stand;

/**
 * What jet and walls do to a stand, until somebody measures it. The force of the jet on a body is
 * between half the momentum that meets it (a small bluff body, drag coefficient about 1) and all of
 * it (a plate that turns it aside). What walls do has no law for ducted fans: bounds of common
 * practice, by distance in rotor diameters.
 */
final class Guesses {

    /** More of the jet than this on weighed parts makes a stand of another kind. */
    static final double MOST_OF_THE_JET = 0.2;

    private static final double LEAST_OF_MOMENTUM = 0.5;
    private static final double MOST_OF_MOMENTUM = 1.0;

    private static final double[] BEHIND_DIAMETERS = {1, 2, 3, 5, 10};
    private static final double[] BEHIND_BOUND = {0.05, 0.02, 0.01, 0.005, 0.002};
    private static final double[] FRONT_DIAMETERS = {0.5, 1, 2, 4};
    private static final double[] FRONT_BOUND = {0.05, 0.02, 0.005, 0.002};

    private Guesses() {}

    /** Share of the jet's momentum that meets the stand. */
    static double met(Stand.Jet.Placed jet) {
        return FreeJet.momentumShare(jet.areaM2(), jet.distanceM(), jet.exitAreaM2());
    }

    /** Share of the thrust that the reading misses, in the middle of its bounds. */
    static double jetLoss(Stand.Jet jet) {
        return switch (jet) {
            case Stand.Jet.Placed placed ->
                    met(placed) * (LEAST_OF_MOMENTUM + MOST_OF_MOMENTUM) / 2;
            case Stand.Jet.Measured(var loss) -> loss.si();
        };
    }

    static double jetHalfWidth(Stand.Jet.Placed jet) {
        return met(jet) * (MOST_OF_MOMENTUM - LEAST_OF_MOMENTUM) / 2;
    }

    /** Bound of what a wall behind does, share of the thrust. */
    static double behind(double diameters) {
        return at(BEHIND_DIAMETERS, BEHIND_BOUND, diameters);
    }

    /** Bound of what a wall in front does, share of the thrust. */
    static double inFront(double diameters) {
        return at(FRONT_DIAMETERS, FRONT_BOUND, diameters);
    }

    /**
     * Straight between the points on paper with two logarithmic scales, and even beyond the last.
     */
    private static double at(double[] x, double[] y, double value) {
        if (value < x[0]) {
            throw new IllegalArgumentException("nothing is known nearer than " + x[0]);
        }
        for (int i = 1; i < x.length; i++) {
            if (value < x[i]) {
                double t = Math.log(value / x[i - 1]) / Math.log(x[i] / x[i - 1]);
                return y[i - 1] * Math.pow(y[i] / y[i - 1], t);
            }
        }
        return y[y.length - 1];
    }
}
