package liftwright.flight.loops;

/**
 * What is not rigid about a worn rig (common practice: harness 3 to 8 Hz, damping 0.1 to 0.3; legs
 * 0.7 to 1 Hz).
 *
 * @param harnessHz lowest frequency of the wearer in the harness, Hz; infinite where nobody wears
 *     it
 * @param harnessDamping share of critical damping, 1
 * @param harnessShare share of the inertia in roll and pitch that hangs in the harness, 0 to 1
 * @param massShare share of the mass that does, 0 to 1
 * @param legsHz of hanging legs that swing, Hz; infinite where nobody wears it
 */
public record Flexible(
        double harnessHz,
        double harnessDamping,
        double harnessShare,
        double massShare,
        double legsHz) {

    static final double LOWEST_HARNESS_HZ = 3;
    static final double LEAST_DAMPING = 0.1;
    static final double LOWEST_LEGS_HZ = 0.7;

    /** A frame has inertia of its own. */
    static final double MOST_SHARE = 0.9;

    /** Nothing gives. */
    public static final Flexible RIGID =
            new Flexible(Double.POSITIVE_INFINITY, 1, 0, 0, Double.POSITIVE_INFINITY);
}
