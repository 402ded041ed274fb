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

    /** Length of the core, m. */
    public static double coreM(double exitAreaM2) {
        return CORE_DIAMETERS * Math.sqrt(4 * exitAreaM2 / Math.PI);
    }

    /**
     * Radius about the axis within which a share of the jet's momentum flows: beyond the core that
     * of the Gaussian, r½ √(−ln(1 − share)/(2 ln 2)); at the exit that of an even stream, R_e
     * √share; straight between the two, which is this project's own.
     *
     * @param share 0 to below 1
     * @param distanceM x from the exit, m, ≥ 0
     * @param exitAreaM2 A_e, m², &gt; 0
     */
    public static double radiusM(double share, double distanceM, double exitAreaM2) {
        if (!(share >= 0 && share < 1) || !(distanceM >= 0) || !(exitAreaM2 > 0)) {
            throw new IllegalArgumentException(
                    "a share is below 1, distance and area are positive");
        }
        double core = coreM(exitAreaM2);
        double spread = HALF_SPEED_SLOPE * Math.sqrt(-Math.log1p(-share) / (2 * Math.log(2)));
        if (distanceM >= core) {
            return spread * distanceM;
        }
        double exit = Math.sqrt(share * exitAreaM2 / Math.PI);
        return exit + (spread * core - exit) * distanceM / core;
    }

    /**
     * Speed on the axis over that at the exit: min(1, 6.1 D/x) with D = √N D_e for N equal
     * neighbours that have merged.
     *
     * @param merged N, ≥ 1
     */
    public static double axisSpeedShare(double distanceM, double exitAreaM2, int merged) {
        if (!(distanceM >= 0) || !(exitAreaM2 > 0) || merged < 1) {
            throw new IllegalArgumentException("distance, area and number are positive");
        }
        double core = coreM(exitAreaM2) * Math.sqrt(merged);
        return distanceM <= core ? 1 : core / distanceM;
    }

    /**
     * Speed at a place over that at the exit: beyond the core the Gaussian about the axis; within
     * it even out to a radius and from there a Gaussian's flank of the half-width 0.096 x, the
     * radius such that ∫u² dA is that of the exit (this project's own). What several jets give at
     * one place adds up in u², as Reichardt found of jets that merge (1942, from memory); N equal
     * ones far off so have {@link #axisSpeedShare} of N.
     *
     * @param distanceM x from the exit along the axis, m, ≥ 0
     * @param offM from the axis, m, ≥ 0
     * @param exitAreaM2 A_e, m², &gt; 0
     */
    public static double speedShare(double distanceM, double offM, double exitAreaM2) {
        if (!(distanceM >= 0) || !(offM >= 0) || !(exitAreaM2 > 0)) {
            throw new IllegalArgumentException("distances and area are positive");
        }
        double core = coreM(exitAreaM2);
        double half = HALF_SPEED_SLOPE * distanceM;
        if (distanceM >= core) {
            return core / distanceM * flank(offM / half);
        }
        // π e² + 2π e h √(π/(8 ln 2)) + π h²/(2 ln 2) = A_e
        double across = half * Math.sqrt(Math.PI / (2 * Math.log(2)));
        double rest = exitAreaM2 / Math.PI - half * half / (2 * Math.log(2));
        double even = Math.max(0, (Math.sqrt(across * across + 4 * rest) - across) / 2);
        return offM <= even ? 1 : flank((offM - even) / half);
    }

    /** 2^(−s²). */
    private static double flank(double s) {
        return Math.exp(-Math.log(2) * s * s);
    }

    /**
     * Speed of the wall jet along the ground over that at the exit: (r/D)^−1.1, ± 30 % (from
     * memory), for r &gt; 2 D.
     *
     * @param radiusM r from where the jet meets the ground, m
     * @param diameterM D of the jet or of the merged jets, m
     * @throws IllegalArgumentException within 2 D, where the law does not hold
     */
    public static double wallSpeedShare(double radiusM, double diameterM) {
        if (!(diameterM > 0) || !(radiusM >= 2 * diameterM)) {
            throw new IllegalArgumentException("a wall jet begins two diameters out");
        }
        return Math.pow(radiusM / diameterM, -1.1);
    }

    /**
     * Distance along the ground to which the wall jet is faster than a share of the exit's speed, D
     * share^(−1/1.1), and 2 D at least, m; the inverse of {@link #wallSpeedShare}.
     *
     * @param share above 0
     * @param diameterM D of the jet or of the merged jets, m
     */
    public static double wallReachM(double share, double diameterM) {
        if (!(share > 0) || !(diameterM > 0)) {
            throw new IllegalArgumentException("share and diameter are above 0");
        }
        return diameterM * Math.max(2, Math.pow(share, -1 / 1.1));
    }

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
