package liftwright.physics;

/**
 * A plug, a lug or a solder joint as one lump between wires. Its maker's rating is a test: with the
 * rated wire at the rated current in still air it warms by 30 K [EIA36470]. In that test the wire
 * takes heat from the joint, or gives it; only the rest goes to the air.
 */
public final class JointHeat {

    /** Rise of a joint at its rated current, K [EIA36470]. */
    public static final double RATED_RISE_K = 30;

    /** Air of the rating test, K: a room at 25 °C [EIA36470]. */
    public static final double RATED_AIR_K = 298.15;

    /** Tin–lead solder (63/37) melts, K: 183 °C (common practice). */
    public static final double LEAD_SOLDER_MELTS_K = 456.15;

    /** Tin–silver–copper solder begins to melt, K: 217 °C (common practice). */
    public static final double TIN_SOLDER_MELTS_K = 490.15;

    /**
     * Heat that a small body gives to still air, convection and radiation, W/(m²·K): the low end of
     * 10–15 (common practice).
     */
    private static final double FLOOR_WPM2K = 10;

    private JointHeat() {}

    /**
     * Conductance into a long wire at its mouth, √(k A h P), W/K (fin) [INCROPERA]: heat into the
     * wire is this times the joint's excess over the temperature the wire has by itself. Long: four
     * fin lengths √(k A/h P) and more.
     *
     * @param conductorWpmK k of the conductor, W/(m·K)
     * @param sectionM2 A of the conductor, m²
     * @param acrossWpmK h P, from the conductor to the air per metre, W/(m·K)
     */
    public static double finWpK(double conductorWpmK, double sectionM2, double acrossWpmK) {
        return Math.sqrt(conductorWpmK * sectionM2 * acrossWpmK);
    }

    /**
     * Length over which a joint's excess falls to 1/e along a wire, √(k A/(h P)), m [INCROPERA].
     */
    public static double finLengthM(double conductorWpmK, double sectionM2, double acrossWpmK) {
        return Math.sqrt(conductorWpmK * sectionM2 / acrossWpmK);
    }

    /**
     * Conductance of a joint to the air, so that the rated test gives 30 K: I_r² R/30 K − G_fins (1
     * − ΔT_w/30 K), and never below {@link #floorWpK}.
     *
     * @param ratedA I_r, A
     * @param newOhm R of the joint as new, one pole, Ω
     * @param finsWpK G_fins of all rated wires that leave the joint, W/K
     * @param wireRiseK ΔT_w that the rated wire has by itself at the rated current, K
     * @param floorWpK least value, W/K
     */
    public static double airWpK(
            double ratedA, double newOhm, double finsWpK, double wireRiseK, double floorWpK) {
        if (!(ratedA > 0) || !(newOhm >= 0) || !(finsWpK >= 0) || !(floorWpK >= 0)) {
            throw new IllegalArgumentException(
                    "a joint has a rating above 0, and no resistance, fin or floor below it");
        }
        double whole = ratedA * ratedA * newOhm / RATED_RISE_K;
        double intoWires = finsWpK * (1 - wireRiseK / RATED_RISE_K);
        return Math.max(whole - intoWires, floorWpK);
    }

    /**
     * Least conductance to still air of a joint of a heat capacity: 10 W/(m²·K) over the surface of
     * a sphere of that volume of copper or brass, (36 π)^⅓ V^⅔. No body of the volume has less
     * surface, so no joint exchanges less.
     *
     * @param heatCapacityJpK one pole, J/K
     */
    public static double floorWpK(double heatCapacityJpK) {
        double volumeM3 = heatCapacityJpK / Conductor.COPPER_JPM3K;
        return FLOOR_WPM2K * Math.cbrt(36 * Math.PI * volumeM3 * volumeM3);
    }
}
