package liftwright.physics;

/**
 * A slender beam clamped at one end and loaded at the other: slope, way and twist of its tip.
 *
 * <p>Bending after Euler and Bernoulli, twist after Saint-Venant; the same section all along,
 * linear material. Range: length at least ten diameters (below that shear adds: at ten, under 2 %
 * for tubes, from memory) and slopes up to 10°, where the linear theory is off by less than 2 %. A
 * clamp that gives is not in it: measured rigidities hold it. Source: [TIMOSHENKO].
 */
public final class Cantilever {

    /** Greatest slope or twist for which the linear theory is used, rad. */
    public static final double GREATEST_RAD = Math.toRadians(10);

    private Cantilever() {}

    /**
     * Second moment of area of a round tube: π/64 (D⁴ − d⁴), m⁴; twice that resists torsion.
     *
     * @param outsideM diameter D, m
     * @param wallM thickness, at most D/2, m
     */
    public static double tubeSecondMomentM4(double outsideM, double wallM) {
        double insideM = outsideM - 2 * wallM;
        return Math.PI / 64 * (Math.pow(outsideM, 4) - Math.pow(insideM, 4));
    }

    /** Slope of the tip under a force across: F l²/(2 E I), rad. */
    public static double slopeOfForceRad(double forceN, double lengthM, double bendingNm2) {
        return forceN * lengthM * lengthM / (2 * bendingNm2);
    }

    /** Slope of the tip under a moment across: M l/(E I), rad. */
    public static double slopeOfMomentRad(double momentNm, double lengthM, double bendingNm2) {
        return momentNm * lengthM / bendingNm2;
    }

    /** Way of the tip under a force across: F l³/(3 E I), m. */
    public static double wayOfForceM(double forceN, double lengthM, double bendingNm2) {
        return forceN * lengthM * lengthM * lengthM / (3 * bendingNm2);
    }

    /** Way of the tip under a moment across: M l²/(2 E I), m. */
    public static double wayOfMomentM(double momentNm, double lengthM, double bendingNm2) {
        return momentNm * lengthM * lengthM / (2 * bendingNm2);
    }

    /** Twist of the tip under a torque about the beam: T l/(G J), rad. */
    public static double twistRad(double torqueNm, double lengthM, double torsionNm2) {
        return torqueNm * lengthM / torsionNm2;
    }
}
