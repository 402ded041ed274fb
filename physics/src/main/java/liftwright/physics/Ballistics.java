package liftwright.physics;

/**
 * A body that falls or rises straight through still air, with drag that grows with the square of
 * speed: m v̇ = m g − ½ ρ C_d A v². The closed forms with tanh and ln cosh are those of any text on
 * mechanics. C_d A of a person upright is some 0.3 to 0.7 m² (common practice). Valid well below
 * the speed of sound and for falls over which ρ stays the same.
 */
public final class Ballistics {

    private Ballistics() {}

    /**
     * Speed at which drag carries the weight, √(2 m g/(ρ C_d A)), m/s.
     *
     * @param dragAreaM2 C_d A, m²; 0 for none, which gives infinity
     */
    public static double terminalMps(double massKg, double dragAreaM2, double densityKgpm3) {
        if (!(massKg > 0) || !(dragAreaM2 >= 0) || !(densityKgpm3 >= 0)) {
            throw new IllegalArgumentException(
                    "a mass is above 0, drag and density are not below 0");
        }
        return Math.sqrt(2 * massKg * Gravity.STANDARD_MPS2 / (densityKgpm3 * dragAreaM2));
    }

    /**
     * Speed after a time of falling from rest, v_t tanh(g t/v_t), m/s.
     *
     * @param terminalMps v_t, m/s; infinite in vacuum
     */
    public static double speedAfterMps(double timeS, double terminalMps) {
        double free = Gravity.STANDARD_MPS2 * timeS;
        return terminalMps == Double.POSITIVE_INFINITY
                ? free
                : terminalMps * Math.tanh(free / terminalMps);
    }

    /** Way after a time of falling from rest, (v_t²/g) ln cosh(g t/v_t), m. */
    public static double wayAfterM(double timeS, double terminalMps) {
        double g = Gravity.STANDARD_MPS2;
        if (terminalMps == Double.POSITIVE_INFINITY) {
            return g * timeS * timeS / 2;
        }
        return terminalMps * terminalMps / g * logCosh(g * timeS / terminalMps);
    }

    /**
     * Speed at the ground after a fall from rest, v_t √(1 − exp(−2 g h/v_t²)), m/s; √(2 g h) in
     * vacuum, which is never less.
     *
     * @param heightM h ≥ 0, m
     */
    public static double impactMps(double heightM, double terminalMps) {
        double square = 2 * Gravity.STANDARD_MPS2 * heightM;
        if (terminalMps == Double.POSITIVE_INFINITY) {
            return Math.sqrt(square);
        }
        return terminalMps * Math.sqrt(-Math.expm1(-square / (terminalMps * terminalMps)));
    }

    /** Height from which a fall in vacuum ends at a speed, v²/(2 g), m. */
    public static double heightOfM(double impactMps) {
        return impactMps * impactMps / (2 * Gravity.STANDARD_MPS2);
    }

    /**
     * Height still gained by a body thrown upwards, (v_t²/2 g) ln(1 + v²/v_t²), m; v²/(2 g) in
     * vacuum.
     */
    public static double riseM(double speedMps, double terminalMps) {
        if (terminalMps == Double.POSITIVE_INFINITY) {
            return heightOfM(speedMps);
        }
        double share = speedMps / terminalMps;
        return terminalMps * terminalMps / (2 * Gravity.STANDARD_MPS2) * Math.log1p(share * share);
    }

    /** ln cosh x without overflow for long falls and without cancellation for short ones. */
    private static double logCosh(double x) {
        if (Math.abs(x) > 1) {
            return Math.abs(x) + Math.log1p(Math.exp(-2 * Math.abs(x))) - Math.log(2);
        }
        double half = Math.sinh(x / 2);
        return Math.log1p(2 * half * half);
    }
}
