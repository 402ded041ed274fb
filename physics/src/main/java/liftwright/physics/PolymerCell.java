package liftwright.physics;

/**
 * An openly published polymer lithium-ion cell (0.85 Ah) as functions of its state of charge s: a
 * source of a plausible shape where none is measured, not a model of the builder's cell. Chen and
 * Rincón-Mora 2006 [CHEN06].
 */
public final class PolymerCell {

    /** Below this charge the published fits turn negative and are refused. */
    public static final double LEAST_CHARGE = 0.05;

    private PolymerCell() {}

    /** Open-circuit voltage, V; {@link #LEAST_CHARGE} ≤ s ≤ 1. */
    public static double openCircuitV(double charge) {
        double s = checked(charge);
        return -1.031 * Math.exp(-35 * s) + 3.685 + s * (0.2156 + s * (-0.1178 + s * 0.3201));
    }

    /** Resistance at once, Ω; range as above. */
    public static double instantOhm(double charge) {
        return 0.1562 * Math.exp(-24.37 * checked(charge)) + 0.07446;
    }

    /** Resistance of the fast pair, Ω. */
    public static double fastOhm(double charge) {
        return 0.3208 * Math.exp(-29.14 * checked(charge)) + 0.04669;
    }

    /** Capacitance of the fast pair, F. */
    public static double fastFarad(double charge) {
        return -752.9 * Math.exp(-13.51 * checked(charge)) + 703.6;
    }

    /** Resistance of the slow pair, Ω. */
    public static double slowOhm(double charge) {
        return 6.603 * Math.exp(-155.2 * checked(charge)) + 0.04984;
    }

    /** Capacitance of the slow pair, F. */
    public static double slowFarad(double charge) {
        return -6056 * Math.exp(-27.12 * checked(charge)) + 4475;
    }

    private static double checked(double charge) {
        if (!(charge >= LEAST_CHARGE && charge <= 1)) {
            throw new IllegalArgumentException(
                    "the published fit holds from charge 0.05 to 1, not " + charge);
        }
        return charge;
    }
}
