package liftwright.physics;

/**
 * Bolts that hold a foot to the ground. Prising, the ground's own strength and an anchor's hold in
 * concrete are not in it: where those give first, declare the strength of one anchor instead.
 */
public final class Bolt {

    /** Shear that a bolt bears over its tension, thread in the joint (common practice). */
    public static final double SHEAR_SHARE = 0.6;

    private Bolt() {}

    /**
     * Section that bears, π/4 (d − 0.9382 P)², m² [ISO898].
     *
     * @param diameterM d, m
     * @param pitchM P, m
     */
    public static double stressAreaM2(double diameterM, double pitchM) {
        double core = diameterM - 0.9382 * pitchM;
        return Math.PI / 4 * core * core;
    }

    /** Pull that leaves no stretch, N. */
    public static double proofN(MetricBolt size, BoltClass made) {
        return size.stressAreaM2() * made.proofPa();
    }

    /** Pull at which it tears, N. */
    public static double tensileN(MetricBolt size, BoltClass made) {
        return size.stressAreaM2() * made.tensilePa();
    }

    /**
     * Pull on one of several bolts as a stiff foot turns about an edge, M d_i/Σ d_j², N: pulls grow
     * straight with the distance from the edge. Only bolts on the lifting side count; a bolt on the
     * edge takes nothing.
     *
     * @param momentNm M that weight does not hold, N·m; at or below 0 nothing pulls
     * @param awayM {@code in:} d of every bolt from the edge, m; at or below 0 counts for nothing
     * @param which of them
     */
    public static double pullN(double momentNm, double[] awayM, int which) {
        double square = 0;
        for (double away : awayM) {
            square += away > 0 ? away * away : 0;
        }
        return momentNm <= 0 || awayM[which] <= 0 ? 0 : momentNm * awayM[which] / square;
    }

    /**
     * How far a bolt is used by pull and shear together, √((N/N_r)² + (V/V_r)²); 1 is all (common
     * practice).
     */
    public static double used(double pullN, double pullBornN, double shearN, double shearBornN) {
        return Math.hypot(pullN / pullBornN, shearN / shearBornN);
    }
}
