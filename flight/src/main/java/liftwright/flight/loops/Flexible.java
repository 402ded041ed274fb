package liftwright.flight.loops;

/**
 * What is not rigid about a worn rig (common practice: harness 3 to 8 Hz, damping 0.1 to 0.3; legs
 * 0.7 to 1 Hz).
 *
 * @param harnessHz lowest frequency of the wearer in the harness, Hz; infinite where nobody wears
 *     it
 * @param harnessDamping share of critical damping, 1
 * @param harnessShare share of the inertia that hangs in the harness, 0 to 1
 * @param legsHz of hanging legs that swing, Hz; infinite where nobody wears it
 */
public record Flexible(
        double harnessHz, double harnessDamping, double harnessShare, double legsHz) {

    /** Nothing gives. */
    public static final Flexible RIGID =
            new Flexible(Double.POSITIVE_INFINITY, 1, 0, Double.POSITIVE_INFINITY);

    /** A wearer of whom nothing more is known (the lower end of common practice). */
    public static final Flexible WEARER = new Flexible(3, 0.1, 0.3, 0.7);
}
