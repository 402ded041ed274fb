package liftwright.physics;

/**
 * Copper conductors: gauge rule, resistance, and the adiabatic limit. Gauge numbers are American
 * wire gauge; 0 is 1/0, −1 is 2/0, −2 is 3/0, −3 is 4/0.
 */
public final class Conductor {

    /** Volume resistivity of annealed copper at 20 °C (100 % IACS), Ω·m [NBS100]. */
    public static final double COPPER_OHMM = 1.7241e-8;

    /** Temperature coefficient of that copper at 20 °C, 1/K [NBS100]. */
    public static final double COPPER_PER_K = 0.00393;

    /** Heat capacity of copper per volume, J/(m³·K) [IEC60949]. */
    public static final double COPPER_JPM3K = 3.45e6;

    /** Thermal conductivity of conductor copper near 100 °C, W/(m·K) [INCROPERA]. */
    public static final double COPPER_WPMK = 390;

    /** Smallest conductor the gauge rule is offered for, AWG. */
    public static final int THINNEST_AWG = 40;

    /** Largest conductor of the gauge rule, AWG 4/0. */
    public static final int THICKEST_AWG = -3;

    private static final double ROOM_K = 293.15;

    /**
     * Metals of the adiabatic law: K at 20 °C and the inferred zero-resistance point [IEC60949].
     */
    public enum Metal {
        COPPER(226, 234.5),
        ALUMINIUM(148, 228);

        private final double constant;
        private final double zeroC;

        Metal(double constant, double zeroC) {
            this.constant = constant;
            this.zeroC = zeroC;
        }
    }

    private Conductor() {}

    /**
     * Diameter of a solid conductor, 0.127 mm · 92^((36 − n)/39) [ASTMB258].
     *
     * @param gauge AWG from {@link #THICKEST_AWG} to {@link #THINNEST_AWG}
     * @return m
     * @throws IllegalArgumentException outside that range
     */
    public static double solidDiameterM(int gauge) {
        if (gauge < THICKEST_AWG || gauge > THINNEST_AWG) {
            throw new IllegalArgumentException(
                    "the gauge rule runs from 4/0 (-3) to 40, not " + gauge);
        }
        return 0.127e-3 * Math.pow(92, (36 - gauge) / 39.0);
    }

    /** Section of a solid conductor, m² [ASTMB258]; range as for the diameter. */
    public static double solidAreaM2(int gauge) {
        double diameter = solidDiameterM(gauge);
        return Math.PI / 4 * diameter * diameter;
    }

    /** Resistance of a copper section at 20 °C, Ω/m. */
    public static double copperOhmpm(double areaM2) {
        return COPPER_OHMM / areaM2;
    }

    /** Resistance over its value at 20 °C, 1 + 0.00393 (T − 20 °C) [NBS100]; −50 °C to 250 °C. */
    public static double copperFactor(double wireK) {
        return 1 + COPPER_PER_K * (wireK - ROOM_K);
    }

    /**
     * Resistance of a run out and back.
     *
     * @param ohmpm of one conductor at its temperature, Ω/m
     * @param oneWayM length one way, m
     * @param parallel equal conductors side by side each way, ≥ 1
     * @return Ω
     */
    public static double outAndBackOhm(double ohmpm, double oneWayM, int parallel) {
        return 2 * ohmpm * oneWayM / parallel;
    }

    /**
     * Adiabatic withstand k = K √ln(1 + (θ_f − θ_i) / (θ₀ + θ_i)), for S k = I √t [IEC60949]. Holds
     * while no heat leaves the conductor (up to about 5 s, less for thin wires).
     *
     * @param fromK start temperature, K
     * @param toK final temperature, K, not below the start
     * @return A·√s/mm²
     */
    public static double adiabaticWithstand(Metal metal, double fromK, double toK) {
        double start = metal.zeroC + (fromK - 273.15);
        return metal.constant * Math.sqrt(Math.log1p((toK - fromK) / start));
    }

    /** Time to that final temperature, t = (k S / I)², s; section in m². */
    public static double adiabaticTimeS(double withstand, double areaM2, double currentA) {
        double root = withstand * (areaM2 * 1e6) / currentA;
        return root * root;
    }
}
