package liftwright.physics;

/**
 * Centre of mass and inertia of a body from scales and swings, for small, undamped swings. Symbols:
 * m mass, g standard gravity, T time of one whole swing there and back.
 *
 * <p>Sources: the compound pendulum and the bifilar suspension of any text on mechanics; Jardin and
 * Mueller, Optimized measurements of UAV mass moment of inertia with a bifilar pendulum, J.
 * Aircraft 46(3), 2009 (from memory) for the second.
 */
public final class Swing {

    private static final double PI2 = Math.PI * Math.PI;

    private Swing() {}

    /**
     * Place of the centre of mass between two supports: b F_b/(F_a + F_b) from the first.
     *
     * @param atFirst what the scale under the first support reads, any unit of force or mass
     * @param atSecond what that under the second reads, same unit
     * @param apartM distance of the supports, m
     */
    public static double betweenScalesM(double atFirst, double atSecond, double apartM) {
        return apartM * atSecond / (atFirst + atSecond);
    }

    /**
     * Inertia about the axis through the centre of mass, parallel to the pivot: m d (g T²/4π² − d),
     * kg·m². The difference of two like numbers: it is in doubt far more than T or d where the
     * pivot is far from the centre.
     *
     * @param pivotM distance d from the pivot to the centre of mass, m
     */
    public static double pendulumKgm2(double massKg, double pivotM, double swingS) {
        return massKg * pivotM * (Gravity.STANDARD_MPS2 * swingS * swingS / (4 * PI2) - pivotM);
    }

    /**
     * Inertia about the upright axis of a body hung from two cords of equal length, upright and at
     * equal distance from its centre: m g D² T²/(16 π² L), kg·m².
     *
     * @param cordM length L of each cord, m
     * @param apartM distance D of the cords, m
     */
    public static double twoCordsKgm2(double massKg, double cordM, double apartM, double swingS) {
        return massKg
                * Gravity.STANDARD_MPS2
                * apartM
                * apartM
                * swingS
                * swingS
                / (16 * PI2 * cordM);
    }

    /** Time of one swing between two cords, s: what to expect before measuring. */
    public static double twoCordsSwingS(
            double massKg, double cordM, double apartM, double inertiaKgm2) {
        return 4
                * Math.PI
                / apartM
                * Math.sqrt(inertiaKgm2 * cordM / (massKg * Gravity.STANDARD_MPS2));
    }

    /** Time of one swing about a pivot, s: what to expect before measuring. */
    public static double pendulumSwingS(double massKg, double pivotM, double inertiaKgm2) {
        return 2
                * Math.PI
                * Math.sqrt(
                        (inertiaKgm2 + massKg * pivotM * pivotM)
                                / (massKg * Gravity.STANDARD_MPS2 * pivotM));
    }

    /**
     * Swing of a large amplitude over that of a small one, 1/M(1, cos θ/2) with the mean M of
     * Gauss, which is (2/π) K(sin θ/2): 0.2 % at 10°, 1.7 % at 30°.
     *
     * @param amplitudeRad θ to each side, 0 to below π
     */
    public static double largeSwing(double amplitudeRad) {
        double a = 1;
        double b = Math.cos(amplitudeRad / 2);
        while (a - b > 1e-15) {
            double mean = (a + b) / 2;
            b = Math.sqrt(a * b);
            a = mean;
        }
        return 1 / a;
    }
}
