package liftwright.plant.motion;

/**
 * A body that is held by lines, mats and what stands above: a fall into an overhead line, a climb
 * into lines that go down, a blow against a beam. For a run driven by fans see {@code
 * liftwright.plant.Runaway}, which meets the same surroundings.
 */
public final class TetherRun {

    private TetherRun() {}

    /**
     * From a moment on, without thrust.
     *
     * @param fromM height of the soles, ≥ 0, m
     * @param upMps speed, upward positive, m/s
     * @param horizonS how long at most, s
     */
    public static RunawayPath fall(
            Body body, double fromM, double upMps, Surroundings around, double horizonS) {
        return thrust(body, fromM, upMps, 0, 0, around, horizonS);
    }

    /**
     * With a steady upward thrust for a time, and none from then on.
     *
     * @param upN thrust, N
     * @param forS how long, ≥ 0, s
     */
    public static RunawayPath thrust(
            Body body,
            double fromM,
            double upMps,
            double upN,
            double forS,
            Surroundings around,
            double horizonS) {
        Lifting lifting =
                forS > 0
                        ? new SteadyThrust(new double[] {0, forS}, new double[] {upN, 0})
                        : new SteadyThrust(new double[] {0}, new double[] {0});
        return new Climb(body, around, lifting, true).run(fromM, upMps, forS, horizonS);
    }
}
