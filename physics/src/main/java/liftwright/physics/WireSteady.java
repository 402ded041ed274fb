package liftwright.physics;

/**
 * A long horizontal wire in the open that has come to rest: what it gives to the air, and where a
 * steady current takes it. For choosing and checking; not for steps in time.
 *
 * @param ohmpm resistance of one conductor at 20 °C, Ω/m
 * @param outerM outer diameter, m
 * @param wallWpmK conductance of the wall, W/(m·K); infinite for a bare wire
 * @param airK air and room, K
 * @param pressurePa station pressure, Pa
 * @param airMps air across the wire, m/s
 * @param emissivity 0 to 1
 */
public record WireSteady(
        double ohmpm,
        double outerM,
        double wallWpmK,
        double airK,
        double pressurePa,
        double airMps,
        double emissivity) {

    /** Hottest surface that is looked for, K: beyond every insulation. */
    public static final double HOTTEST_SURFACE_K = 700;

    private static final double FINE_K = 1e-9;

    /** Refuses a wire that is none; {@link SurfaceExchange#wireWpmK} refuses the rest. */
    public WireSteady {
        if (!(ohmpm > 0) || !(wallWpmK > 0) || !(airK < HOTTEST_SURFACE_K)) {
            throw new IllegalArgumentException("a wire has resistance and a wall, below 700 K");
        }
        SurfaceExchange.wireWpmK(outerM, airK, airK, pressurePa, airMps, emissivity);
    }

    /**
     * Steady temperature of the conductor, K: where I² R′(T) is what the surface gives.
     *
     * @param currentA in one conductor, A
     * @return K; infinite where the surface would pass {@link #HOTTEST_SURFACE_K}
     */
    public double conductorK(double currentA) {
        double low = airK;
        double high = HOTTEST_SURFACE_K;
        if (warms(currentA, high)) {
            return Double.POSITIVE_INFINITY;
        }
        while (high - low > FINE_K) {
            double middle = (low + high) / 2;
            if (warms(currentA, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return conductorAtK(low);
    }

    /** Whether a current makes more heat than a surface at this temperature gives. */
    private boolean warms(double currentA, double surfaceK) {
        double factor = Conductor.copperFactor(conductorAtK(surfaceK));
        return currentA * currentA * ohmpm * factor > givenWpm(surfaceK);
    }

    private double conductorAtK(double surfaceK) {
        return surfaceK + givenWpm(surfaceK) / wallWpmK;
    }

    private double givenWpm(double surfaceK) {
        return SurfaceExchange.wireWpmK(outerM, surfaceK, airK, pressurePa, airMps, emissivity)
                * (surfaceK - airK);
    }

    /**
     * Heat that the wire gives while its conductor is held at a temperature, through wall and
     * surface, W/m.
     *
     * @param conductorK from the air up to what a surface at {@link #HOTTEST_SURFACE_K} asks for
     */
    public double heatWpm(double conductorK) {
        if (!(conductorK >= airK && conductorK <= conductorAtK(HOTTEST_SURFACE_K))) {
            throw new IllegalArgumentException(
                    "a conductor is from the air's temperature up, not " + conductorK + " K");
        }
        double low = airK;
        double high = HOTTEST_SURFACE_K;
        while (high - low > FINE_K) {
            double middle = (low + high) / 2;
            if (conductorAtK(middle) < conductorK) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return givenWpm(low);
    }

    /**
     * How much more heat the wire loses than it makes for each kelvin that its conductor is warmer,
     * W/(m·K): the slope of {@link #heatWpm} less that of I² R′(T). This is what a fin's h P is in
     * a wire that heats itself.
     *
     * @param currentA in one conductor, A
     * @param conductorK a kelvin and more above the air
     */
    public double slopeWpmK(double currentA, double conductorK) {
        double half = 0.5;
        return heatWpm(conductorK + half)
                - heatWpm(conductorK - half)
                - currentA * currentA * ohmpm * Conductor.COPPER_PER_K;
    }
}
