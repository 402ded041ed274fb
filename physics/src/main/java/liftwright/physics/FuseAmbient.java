package liftwright.physics;

/**
 * What warm air takes from a fuse: the share of its rating that it carries for long. One data
 * sheet's line for a 40 A fuse of MAXI size: 40 A at 20 °C, 34 A at 65 °C, 30 A at 85 °C, 22 A at
 * 125 °C [ISO8820]. Fuses with higher melting elements lose less; a maker's own line goes first.
 */
public final class FuseAmbient {

    /** Warmest air of the line, K. */
    public static final double WARMEST_K = 398.15;

    private static final double[] AIR_K = {293.15, 338.15, 358.15, WARMEST_K};
    private static final double[] SHARE = {1, 0.85, 0.75, 0.55};

    private FuseAmbient() {}

    /**
     * Share of the rating in air of a temperature, straight between the points. Below 20 °C it
     * stays 1: a colder fuse carries somewhat more, and opens later.
     *
     * @throws IllegalArgumentException above {@link #WARMEST_K}
     */
    public static double share(double airK) {
        if (!(airK > 0 && airK <= WARMEST_K)) {
            throw new IllegalArgumentException("the line of a fuse ends at 125 °C");
        }
        return LinearTable.value(AIR_K, SHARE, airK);
    }
}
