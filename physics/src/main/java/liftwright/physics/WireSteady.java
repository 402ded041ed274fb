package liftwright.physics;

/** A wire that has carried the same current for long: where its temperature ends. */
public final class WireSteady {

    /** Hottest surface that is looked for, K: beyond every insulation. */
    public static final double HOTTEST_SURFACE_K = 700;

    private WireSteady() {}

    /**
     * Steady temperature of the conductor of a long horizontal wire in the open: I² R′(T) through
     * the wall and from the surface.
     *
     * @param currentA in one conductor, A
     * @param ohmpm resistance of one conductor at 20 °C, Ω/m
     * @param outerM outer diameter, m
     * @param wallWpmK conductance of the wall, W/(m·K); infinite for a bare wire
     * @param airK air, K
     * @param pressurePa station pressure, Pa
     * @param airMps air across the wire, m/s
     * @param emissivity 0 to 1
     * @return K; infinite where the surface would pass {@link #HOTTEST_SURFACE_K}
     */
    public static double conductorK(
            double currentA,
            double ohmpm,
            double outerM,
            double wallWpmK,
            double airK,
            double pressurePa,
            double airMps,
            double emissivity) {
        double low = airK;
        double high = HOTTEST_SURFACE_K;
        if (surplusWpm(
                        currentA,
                        ohmpm,
                        outerM,
                        wallWpmK,
                        high,
                        airK,
                        pressurePa,
                        airMps,
                        emissivity)
                > 0) {
            return Double.POSITIVE_INFINITY;
        }
        while (high - low > 1e-10 * HOTTEST_SURFACE_K) {
            double surface = (low + high) / 2;
            boolean warms =
                    surplusWpm(
                                    currentA,
                                    ohmpm,
                                    outerM,
                                    wallWpmK,
                                    surface,
                                    airK,
                                    pressurePa,
                                    airMps,
                                    emissivity)
                            > 0;
            low = warms ? surface : low;
            high = warms ? high : surface;
        }
        double heatWpm =
                SurfaceExchange.wireWpmK(outerM, low, airK, pressurePa, airMps, emissivity)
                        * (low - airK);
        return low + heatWpm / wallWpmK;
    }

    /** Heat made above heat given, at a surface temperature. */
    private static double surplusWpm(
            double currentA,
            double ohmpm,
            double outerM,
            double wallWpmK,
            double surfaceK,
            double airK,
            double pressurePa,
            double airMps,
            double emissivity) {
        double given =
                SurfaceExchange.wireWpmK(outerM, surfaceK, airK, pressurePa, airMps, emissivity)
                        * (surfaceK - airK);
        double conductor = surfaceK + given / wallWpmK;
        return currentA * currentA * ohmpm * Conductor.copperFactor(conductor) - given;
    }
}
