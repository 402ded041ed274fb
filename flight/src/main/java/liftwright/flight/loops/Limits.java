package liftwright.flight.loops;

/**
 * What the controller does not go beyond.
 *
 * @param tiltRad of the thrust from the upright, rad
 * @param speedMps over the ground, m/s
 * @param climbMps up or down, m/s
 * @param turnRadps about the upright axis, rad/s
 */
public record Limits(double tiltRad, double speedMps, double climbMps, double turnRadps) {

    /** 20°, 2 m/s, 1 m/s, 40°/s (common practice). */
    public static final Limits USUAL = new Limits(Math.toRadians(20), 2, 1, Math.toRadians(40));
}
