package liftwright.physics;

/**
 * What stands on the ground by its weight: when a push slides it or tips it, and how far a standing
 * person may lean while thrust takes weight off the feet.
 */
public final class Footing {

    private Footing() {}

    /**
     * Push sideways at which a body tips about the edge of its feet, W d/h, N.
     *
     * @param loadN W on the ground: weight less what lifts, N; at or below 0 nothing holds it
     * @param toEdgeM d from the line of the load to the edge on the far side of the push, m
     * @param pushHeightM h of the push above the ground, m; infinite push at 0
     */
    public static double tipsAtN(double loadN, double toEdgeM, double pushHeightM) {
        double holding = Math.max(0, loadN) * Math.max(0, toEdgeM);
        return holding == 0 ? 0 : holding / pushHeightM;
    }

    /** Push sideways at which it slides, μ W, N. */
    public static double slidesAtN(double loadN, double friction) {
        return friction * Math.max(0, loadN);
    }

    /** Friction below which it slides before it tips, d/h. */
    public static double slidesFirstBelow(double toEdgeM, double pushHeightM) {
        return toEdgeM / pushHeightM;
    }

    /**
     * Greatest lean from which a person standing stiff comes back without a step, sin θ = (1 − T/W)
     * d/l, rad: the ground pushes with W − T at most at the edge of the foot, weight tips with W l
     * sin θ, and thrust along the body has no lever about the ankles (inverted pendulum [HOF05]).
     * Zero once thrust carries the weight: near it a wearer balances worse, not better.
     *
     * @param thrustOverWeight T/W, ≥ 0
     * @param toEdgeM d from the ankle to the edge of the foot, m
     * @param centreM l of the centre of mass above the ankle, m
     */
    public static double greatestLeanRad(double thrustOverWeight, double toEdgeM, double centreM) {
        double sine = Math.max(0, 1 - thrustOverWeight) * toEdgeM / centreM;
        return Math.asin(Math.min(1, sine));
    }

    /**
     * Greatest speed of the centre of mass, standing upright, from which the person comes back
     * without a step: v/ω₀ ≤ (1 − T/W) d with ω₀ = √(g/l), m/s [HOF05].
     */
    public static double greatestSwayMps(double thrustOverWeight, double toEdgeM, double centreM) {
        return Math.max(0, 1 - thrustOverWeight)
                * toEdgeM
                * Math.sqrt(Gravity.STANDARD_MPS2 / centreM);
    }
}
