package liftwright.physics;

/** The section of a metric bolt that bears. */
public final class Bolt {

    private Bolt() {}

    /**
     * Stress area, π/4 (d − 0.9382 P)², m² [ISO898]: times the proof stress of its class the pull
     * that leaves no stretch, times the tensile stress that at which it tears.
     *
     * @param diameterM d, m
     * @param pitchM P, m
     */
    public static double stressAreaM2(double diameterM, double pitchM) {
        double core = diameterM - 0.9382 * pitchM;
        return Math.PI / 4 * core * core;
    }
}
