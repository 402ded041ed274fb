package liftwright.physics;

/**
 * A line that catches a mass. The closed forms are for a line without mass or damping, an anchor
 * that does not give and a body that does not either: measured peaks are lower where any of them
 * takes energy, and higher where an anchor swings against the catch.
 */
public final class Tether {

    private Tether() {}

    /**
     * Greatest pull after a free fall, m g (1 + √(1 + 2 h k/(m g))), N; 2 m g without any slack.
     *
     * @param slackM h ≥ 0 fallen before the line is straight, m
     * @param stiffnessNpm k, N/m
     */
    public static double dropPeakN(double massKg, double slackM, double stiffnessNpm) {
        double weight = massKg * Gravity.STANDARD_MPS2;
        return weight * (1 + Math.sqrt(1 + 2 * slackM * stiffnessNpm / weight));
    }

    /**
     * Greatest pull when a mass comes with a speed into a line that is just straight, m g + √((m
     * g)² + m k v²), N.
     *
     * @param speedMps v ≥ 0 away from the anchor, downwards, m/s
     */
    public static double catchPeakN(double massKg, double speedMps, double stiffnessNpm) {
        double weight = massKg * Gravity.STANDARD_MPS2;
        return weight + Math.sqrt(weight * weight + massKg * stiffnessNpm * speedMps * speedMps);
    }

    /**
     * Pull of a line that is a spring beside a damper and never pushes, max(0, k s + c ds/dt) while
     * it is stretched, N.
     *
     * @param stretchM s beyond the length at which it is straight, m; at or below 0 it is slack
     * @param rateMps ds/dt, m/s
     * @param dampingNspm c ≥ 0, N·s/m
     */
    public static double pullN(
            double stretchM, double rateMps, double stiffnessNpm, double dampingNspm) {
        return stretchM > 0 ? Math.max(0, stiffnessNpm * stretchM + dampingNspm * rateMps) : 0;
    }
}
