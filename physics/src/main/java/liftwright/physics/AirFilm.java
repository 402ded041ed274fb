package liftwright.physics;

/**
 * Dry air in the film at a warm surface: what the laws of heat exchange ask of it, at the film
 * temperature (the mean of surface and air) and the station pressure. Viscosity and conductivity
 * are those of {@link Air}. Offered from {@link #COLDEST_K} to {@link #WARMEST_K}; moisture of
 * weather changes the exchange by less than 1 % (from memory).
 */
public final class AirFilm {

    /** Coldest film the fits are offered for, K. */
    public static final double COLDEST_K = 200;

    /** Warmest film the fits are offered for, K. */
    public static final double WARMEST_K = 600;

    private AirFilm() {}

    /**
     * Density of dry air, p/(R T), kg/m³ [US76].
     *
     * @throws IllegalArgumentException for a film outside the range or a pressure not above 0
     */
    public static double densityKgpm3(double pressurePa, double filmK) {
        if (!(pressurePa > 0 && pressurePa < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("pressure is above 0, not " + pressurePa + " Pa");
        }
        return pressurePa / (Air.DRY_GAS_JPKGK * inRange(filmK));
    }

    /** Dynamic viscosity, Pa·s (Sutherland) [US76]; range as for the density. */
    public static double viscosityPas(double filmK) {
        return Air.viscosityPas(inRange(filmK));
    }

    /** Thermal conductivity, W/(m·K) [US76]; range as for the density. */
    public static double conductivityWpmK(double filmK) {
        return Air.conductivityWpmK(inRange(filmK));
    }

    /**
     * Specific heat at constant pressure, 1002.5 + 275e-6 (T − 200 K)², J/(kg·K) [DIXON07]: within
     * 0.6 % of the tables of [INCROPERA]; range as for the density.
     */
    public static double specificHeatJpkgK(double filmK) {
        double above = inRange(filmK) - 200;
        return 1002.5 + 275e-6 * above * above;
    }

    /**
     * Prandtl number c_p μ/k; within 2 % of the tables of [INCROPERA]; range as for the density.
     */
    public static double prandtl(double filmK) {
        return specificHeatJpkgK(filmK) * viscosityPas(filmK) / conductivityWpmK(filmK);
    }

    private static double inRange(double filmK) {
        if (!(filmK >= COLDEST_K && filmK <= WARMEST_K)) {
            throw new IllegalArgumentException(
                    "a film of air is offered from 200 K to 600 K, not " + filmK + " K");
        }
        return filmK;
    }
}
