package liftwright.physics;

/**
 * Momentum theory of a rotor without a duct, and its gain near the ground. Speeds come as shares of
 * the hover induced speed v_h = √(T / 2ρA), so that the relations hold for any size [LEISHMAN].
 */
public final class OpenRotor {

    /** Closest to the ground at which the ground relation is offered, height over radius. */
    public static final double LEAST_HEIGHT_OVER_RADIUS = 0.5;

    /** Descent from which the windmill branch holds, V_c / v_h. */
    public static final double WINDMILL_FROM = -2;

    /** Prouty's measured curve: height over diameter, rising. */
    private static final double[] HEIGHT_OVER_DIAMETER = {0.191, 0.459, 0.580, 0.784, 1.022, 1.2};

    /** The same: induced speed over its value out of ground effect. */
    private static final double[] INDUCED_SHARE = {0.678, 0.830, 0.874, 0.932, 0.975, 1.000};

    private OpenRotor() {}

    /**
     * Induced speed in hover, √(T / (2 ρ A)), m/s; the far wake moves at twice that.
     *
     * @param discM2 swept area A, m²
     */
    public static double hoverInducedMps(double thrustN, double densityKgpm3, double discM2) {
        return Math.sqrt(thrustN / (2 * densityKgpm3 * discM2));
    }

    /**
     * Induced speed v_i / v_h along the axis: −c/2 + √(c²/4 + 1) in climb and −c/2 − √(c²/4 − 1) in
     * the windmill state, c = V_c / v_h. Power over hover power at equal thrust is c + v_i / v_h.
     *
     * @param climb c, either ≥ 0 or ≤ {@link #WINDMILL_FROM}
     * @throws IllegalArgumentException between the two, where momentum theory has no steady flow
     *     (vortex ring)
     */
    public static double axialInducedShare(double climb) {
        if (climb >= 0) {
            return -climb / 2 + Math.sqrt(climb * climb / 4 + 1);
        }
        if (climb <= WINDMILL_FROM) {
            return -climb / 2 - Math.sqrt(climb * climb / 4 - 1);
        }
        throw new IllegalArgumentException(
                "momentum theory has no steady flow for a descent of "
                        + -climb
                        + " of the hover induced speed");
    }

    /** Induced speed v_i / v_h in edgewise flow V / v_h, disc level: Glauert's relation. */
    public static double edgewiseInducedShare(double edgewise) {
        double half = edgewise * edgewise / 2;
        // √(√(h² + 1) − h) without its cancellation in fast flow.
        return 1 / Math.sqrt(Math.sqrt(half * half + 1) + half);
    }

    /**
     * Thrust near the ground over thrust far from it at equal power, 1 / (1 − (R/4z)²)
     * [CHEESEMAN55]. A low estimate: measured rotors gain more ({@link #groundThrustMeasured}). Not
     * for ducted fans, nor for groups of jets.
     *
     * @param heightOverRadius z/R ≥ {@link #LEAST_HEIGHT_OVER_RADIUS}; the form diverges at 0.25
     * @throws IllegalArgumentException below that
     */
    public static double groundThrust(double heightOverRadius) {
        double share = 1 / (4 * checked(heightOverRadius));
        return 1 / (1 - share * share);
    }

    /**
     * The same from Prouty's measured induced speeds, (v_i / v_i∞)^(−2/3), an upper estimate
     * [PROUTY86, digitised]; 1 above z/D = 1.2.
     *
     * @param heightOverRadius as above
     */
    public static double groundThrustMeasured(double heightOverRadius) {
        double share =
                LinearTable.value(
                        HEIGHT_OVER_DIAMETER, INDUCED_SHARE, checked(heightOverRadius) / 2);
        return Math.pow(share, -2.0 / 3);
    }

    private static double checked(double heightOverRadius) {
        if (!(heightOverRadius >= LEAST_HEIGHT_OVER_RADIUS)) {
            throw new IllegalArgumentException(
                    "the ground relation begins half a radius above ground, not at "
                            + heightOverRadius);
        }
        return heightOverRadius;
    }
}
