package liftwright.physics;

/**
 * How a body that is free to turn answers to a steady moment about one axis. Moving air damps it: a
 * fan at distance r from the axis carries its mass flow ṁ sideways at ω r, which takes the moment ṁ
 * r² ω (momentum drag). So I ω̇ = M − c ω, with c = Σ ṁ r².
 *
 * <p>Source: momentum theory; the differential equation is of first order and solved in closed
 * form. Valid while the cross-flow stays small against the jet (ω r below about 0.15 of the exit
 * speed, from memory).
 */
public final class Turning {

    private static final int MOST_STEPS = 200;

    private Turning() {}

    /**
     * Angle after a time from rest, rad: α/k (t − (1 − e^(−k t))/k), ½ α t² without damping.
     *
     * @param accelerationRadps2 M/I at the start, rad/s²
     * @param dampingPerS c/I, ≥ 0, 1/s
     * @param timeS s, ≥ 0
     */
    public static double angleRad(double accelerationRadps2, double dampingPerS, double timeS) {
        double x = dampingPerS * timeS;
        // (x − 1 + e^−x)/x² by its series where the closed form would lose all digits.
        double shape =
                x < 1e-3
                        ? 0.5 - x / 6 + x * x / 24 - x * x * x / 120
                        : (x + Math.expm1(-x)) / (x * x);
        return accelerationRadps2 * timeS * timeS * shape;
    }

    /**
     * Time from rest to an angle, s; infinite without acceleration.
     *
     * @param accelerationRadps2 its magnitude counts
     * @param angleRad above 0
     */
    public static double timeS(double accelerationRadps2, double dampingPerS, double angleRad) {
        double rate = Math.abs(accelerationRadps2);
        if (rate == 0) {
            return Double.POSITIVE_INFINITY;
        }
        double low = Math.sqrt(2 * angleRad / rate); // undamped: never later
        double high = 2 * low + 2 * angleRad * dampingPerS / rate;
        for (int k = 0; k < MOST_STEPS && high - low > 1e-13 * high; k++) {
            double middle = (low + high) / 2;
            if (angleRad(rate, dampingPerS, middle) < angleRad) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /**
     * Moment that a spinning rotor gives its mount while the body turns about an axis square to the
     * spin, J Ω ω, N·m, square to both.
     *
     * @param rotorRadps Ω of the rotor
     * @param bodyRadps ω of the body
     */
    public static double gyroscopicNm(double inertiaKgm2, double rotorRadps, double bodyRadps) {
        return inertiaKgm2 * rotorRadps * bodyRadps;
    }
}
