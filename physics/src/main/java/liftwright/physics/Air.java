package liftwright.physics;

/**
 * Air at a site: the standard troposphere, moist density, and what follows from temperature.
 *
 * <p>Standard values: ISO 2533:1975 and US Standard Atmosphere 1976 [US76], which agree below 11 km
 * geopotential height. Every kernel is a pure function of SI values.
 */
public final class Air {

    /** Sea-level temperature of the standard atmosphere, K [US76]. */
    public static final double SEA_LEVEL_K = 288.15;

    /** Sea-level pressure of the standard atmosphere, Pa [US76]. */
    public static final double SEA_LEVEL_PA = 101_325;

    /** Density at which fan coefficients are stated, kg/m³: the standard sea level [US76]. */
    public static final double REFERENCE_DENSITY_KGPM3 = 1.225;

    /** Temperature falls by this per metre of geopotential height, K/m [US76]. */
    public static final double LAPSE_KPM = 0.0065;

    /** Earth radius of the geopotential height, m [US76]. */
    public static final double EARTH_RADIUS_M = 6_356_766;

    /** Specific gas constant of dry air, J/(kg·K) [US76]. */
    public static final double DRY_GAS_JPKGK = 287.05307;

    /** Specific gas constant of water vapour, J/(kg·K) (ISO 2533 companion value, rounded). */
    public static final double VAPOUR_GAS_JPKGK = 461.5;

    /** Least geopotential height at which the troposphere formulas are offered, m [US76]. */
    public static final double LEAST_HEIGHT_M = -5_000;

    /** Geopotential height of the tropopause: above it the formulas do not hold, m [US76]. */
    public static final double TROPOPAUSE_M = 11_000;

    /** Ratio of specific heats of air [US76]. */
    private static final double HEAT_RATIO = 1.4;

    /** g M / (R L), the exponent of pressure over temperature [US76]. */
    private static final double PRESSURE_EXPONENT = 5.25588;

    private Air() {}

    /**
     * Geopotential height H = R z / (R + z) [US76].
     *
     * @param elevationM geometric elevation above mean sea level, m
     * @return m
     */
    public static double geopotentialM(double elevationM) {
        return EARTH_RADIUS_M * elevationM / (EARTH_RADIUS_M + elevationM);
    }

    /**
     * Standard temperature T = 288.15 K − 0.0065 K/m · H [US76].
     *
     * @param geopotentialM from {@link #LEAST_HEIGHT_M} to {@link #TROPOPAUSE_M}
     * @return K
     * @throws IllegalArgumentException outside that range
     */
    public static double standardTemperatureK(double geopotentialM) {
        if (!(geopotentialM >= LEAST_HEIGHT_M && geopotentialM <= TROPOPAUSE_M)) {
            throw new IllegalArgumentException(
                    "the standard troposphere runs from -5000 m to 11000 m geopotential, not "
                            + geopotentialM
                            + " m");
        }
        return SEA_LEVEL_K - LAPSE_KPM * geopotentialM;
    }

    /**
     * Standard pressure p = 101325 Pa · (T / 288.15 K)^5.25588 [US76].
     *
     * @param geopotentialM from {@link #LEAST_HEIGHT_M} to {@link #TROPOPAUSE_M}
     * @return Pa
     * @throws IllegalArgumentException outside that range
     */
    public static double standardPressurePa(double geopotentialM) {
        double ratio = standardTemperatureK(geopotentialM) / SEA_LEVEL_K;
        return SEA_LEVEL_PA * Math.pow(ratio, PRESSURE_EXPONENT);
    }

    /** Standard density at a geopotential height, kg/m³; range as for the pressure [US76]. */
    public static double standardDensityKgpm3(double geopotentialM) {
        return standardPressurePa(geopotentialM)
                / (DRY_GAS_JPKGK * standardTemperatureK(geopotentialM));
    }

    /**
     * Saturation pressure of water vapour over water, e_s = 611.21 Pa · exp(17.502 t / (240.97 +
     * t)), t in °C, without the enhancement factor [BUCK81]. Within 0.1 % from −20 °C to 50 °C (the
     * range of Buck's fit).
     *
     * @param temperatureK air temperature, K
     * @return Pa
     */
    public static double saturationPressurePa(double temperatureK) {
        double celsius = temperatureK - 273.15;
        return 611.21 * Math.exp(17.502 * celsius / (240.97 + celsius));
    }

    /**
     * Density of moist air as an ideal mixture, ρ = (p − e) / (R_d T) + e / (R_v T), e = RH · e_s.
     * Within 0.05 % of CIPM-2007 [CIPM07] for weather at the ground.
     *
     * @param pressurePa station pressure, Pa
     * @param temperatureK K
     * @param relativeHumidity 0 to 1
     * @return kg/m³
     */
    public static double densityKgpm3(
            double pressurePa, double temperatureK, double relativeHumidity) {
        double vapourPa = relativeHumidity * saturationPressurePa(temperatureK);
        return (pressurePa - vapourPa) / (DRY_GAS_JPKGK * temperatureK)
                + vapourPa / (VAPOUR_GAS_JPKGK * temperatureK);
    }

    /**
     * Density altitude: the geopotential height at which the standard density equals the given one,
     * H = T₀/L · (1 − (ρ/ρ₀)^(1/4.25588)) [US76].
     *
     * @param densityKgpm3 kg/m³, &gt; 0
     * @return m; negative for air denser than the standard sea level
     */
    public static double densityAltitudeM(double densityKgpm3) {
        double ratio = densityKgpm3 * DRY_GAS_JPKGK * SEA_LEVEL_K / SEA_LEVEL_PA;
        return SEA_LEVEL_K / LAPSE_KPM * (1 - Math.pow(ratio, 1 / (PRESSURE_EXPONENT - 1)));
    }

    /** Speed of sound in dry air a = √(1.4 R T), m/s [US76]. */
    public static double speedOfSoundMps(double temperatureK) {
        return Math.sqrt(HEAT_RATIO * DRY_GAS_JPKGK * temperatureK);
    }

    /** Dynamic viscosity μ = 1.458e-6 T^1.5 / (T + 110.4), Pa·s; Sutherland's form [US76]. */
    public static double viscosityPas(double temperatureK) {
        return 1.458e-6 * temperatureK * Math.sqrt(temperatureK) / (temperatureK + 110.4);
    }

    /** Thermal conductivity k = 2.64638e-3 T^1.5 / (T + 245.4 · 10^(−12/T)), W/(m·K) [US76]. */
    public static double conductivityWpmK(double temperatureK) {
        return 2.64638e-3
                * temperatureK
                * Math.sqrt(temperatureK)
                / (temperatureK + 245.4 * Math.pow(10, -12 / temperatureK));
    }
}
