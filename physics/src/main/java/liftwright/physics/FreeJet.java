package liftwright.physics;

/**
 * A round turbulent jet into still air, from an exit of area A_e with D_e = √(4 A_e/π): beyond its
 * core the speed on the axis is V_e · 6.1 D_e/x and falls to half of that at 0.096 x from the axis,
 * a Gaussian between. The two constants together carry the whole momentum of the exit (turbulent
 * free jets, from memory; the closure is tested). Neighbouring jets merge: not for groups of fans.
 */
public final class FreeJet {

    /** Length of the core over the diameter of the exit. */
    public static final double CORE_DIAMETERS = 6.1;

    /** Radius of half the speed over the distance. */
    static final double HALF_SPEED_SLOPE = 0.096;

    private FreeJet() {}

    /**
     * Share of the jet's momentum that meets a small body on the axis: beyond the core that within
     * a disc of the body's area, 1 − exp(−2 ln 2 (a/r½)²) with a² = A/π; within the core, where
     * speed is even over the exit's width, A/A_e and at most 1.
     *
     * @param areaM2 A, m², &gt; 0
     * @param distanceM x from the exit, m, ≥ 0
     * @param exitAreaM2 A_e, m², &gt; 0
     */
    public static double momentumShare(double areaM2, double distanceM, double exitAreaM2) {
        if (!(areaM2 > 0) || !(distanceM >= 0) || !(exitAreaM2 > 0)) {
            throw new IllegalArgumentException("areas are above 0 and a distance is not below 0");
        }
        double core = CORE_DIAMETERS * Math.sqrt(4 * exitAreaM2 / Math.PI);
        if (distanceM < core) {
            return Math.min(1, areaM2 / exitAreaM2);
        }
        double half = HALF_SPEED_SLOPE * distanceM;
        return -Math.expm1(-2 * Math.log(2) * areaM2 / (Math.PI * half * half));
    }
}
