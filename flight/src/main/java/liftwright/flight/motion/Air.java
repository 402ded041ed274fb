package liftwright.flight.motion;

/**
 * The air that a rig flies in: mean wind, turbulence, a gust, its own wash near the floor. One
 * speed for the whole rig at a time. For one flight.
 */
public final class Air {

    /** Wind at the start of the step that was asked last, scene axes, m/s. */
    final double[] start = new double[3];

    /** The same at its end. */
    final double[] end = new double[3];

    private Air() {}

    /** Air that does not move. */
    public static Air still() {
        return new Air();
    }

    /**
     * Moves on by a step.
     *
     * @param state of the rig at its start
     */
    void advance(double dtS, BodyState state) {
        // nothing moves yet
    }

    /** Wind at the end of the last step, scene axes, m/s. */
    public void wind(double[] out) {
        System.arraycopy(end, 0, out, 0, end.length);
    }
}
