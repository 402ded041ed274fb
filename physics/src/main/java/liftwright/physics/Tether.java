package liftwright.physics;

/**
 * A line that catches a mass: a spring that only pulls. The closed forms are for a line without
 * mass or damping, an anchor that does not give and a body that does not either: measured peaks are
 * lower where any of them takes energy, and higher where an anchor swings against the catch.
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
     * Greatest pull in a line that holds a mass down as it comes up with a speed under a steady
     * force, F + √(F² + m k v²), N: as above with F in place of the weight.
     *
     * @param netUpN F, thrust less weight, N; below 0 the weight helps
     */
    public static double holdDownPeakN(
            double massKg, double speedMps, double netUpN, double stiffnessNpm) {
        return netUpN + Math.sqrt(netUpN * netUpN + massKg * stiffnessNpm * speedMps * speedMps);
    }

    /**
     * Pull of the line, k x + c ẋ while it is stretched, N, and never below 0: a line cannot push.
     *
     * @param stretchM x beyond its length, m; at or below 0 it is slack
     * @param stretchMps ẋ, m/s
     * @param dampingNspm c ≥ 0, N·s/m
     */
    public static double pullN(
            double stretchM, double stretchMps, double stiffnessNpm, double dampingNspm) {
        return stretchM <= 0 ? 0 : Math.max(0, stiffnessNpm * stretchM + dampingNspm * stretchMps);
    }

    /** Stiffness of two in a row, a line and what it hangs on, k₁ k₂/(k₁ + k₂), N/m. */
    public static double inRowNpm(double firstNpm, double secondNpm) {
        return firstNpm * secondNpm / (firstNpm + secondNpm);
    }
}
