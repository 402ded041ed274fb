package liftwright.physics;

/** Controllers and motors in the stream of their own fan. */
public final class FanCooling {

    /**
     * Share of the full-speed conductance that is left when the fan stands: natural convection and
     * radiation of a body this size against forced air at tens of m/s, some 10 against 250 W/(m²·K)
     * (common practice).
     */
    public static final double STANDING_SHARE = 0.04;

    private static final double EXPONENT = 0.7;

    private FanCooling() {}

    /**
     * Conductance to the air at a share of full speed over that at full speed: share^0.7, at least
     * {@link #STANDING_SHARE}. Forced convection goes by Re^0.6 on fins and bars and by Re^0.8 on
     * plates [INCROPERA]; a stream goes by the fan's speed.
     *
     * @param speedShare 0 and above; beyond 1 the law goes on
     */
    public static double share(double speedShare) {
        if (!(speedShare >= 0)) {
            throw new IllegalArgumentException("a share of speed is not " + speedShare);
        }
        return Math.max(Math.pow(speedShare, EXPONENT), STANDING_SHARE);
    }
}
