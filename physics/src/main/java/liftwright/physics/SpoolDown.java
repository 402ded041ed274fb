package liftwright.physics;

/**
 * A rotor that is no longer driven: J Ω̇ = −(κ Ω² + b Ω + c) with the drag of the blades κ Ω², a
 * shorted winding b = K_t²/R and the still torque c of iron and bearings. With κ alone Ω = Ω₀/(1 +
 * t/τ), τ = J/(κ Ω₀). Solved in closed form (Riccati's equation): with U = κ Ω/J + b/2J and D =
 * (b/2J)² − κ c/J², U(t) = (U₀ + D T)/(1 + U₀ T), T = tanh(√D t)/√D or its tangent.
 *
 * <p>Valid in still air with constant density. Shorted windings at high speed carry less than K_t
 * Ω/R, since their inductance counts: the brake is an upper bound there [DRELA07]. A controller
 * that limits its braking current brakes less.
 */
public final class SpoolDown {

    private SpoolDown() {}

    /**
     * Time constant of blades alone, J/(κ Ω₀), s: at it, half the speed and a quarter of thrust.
     */
    public static double timeConstantS(double inertiaKgm2, double dragNms2, double rotorRadps) {
        return inertiaKgm2 / (dragNms2 * rotorRadps);
    }

    /** Brake of a shorted winding, K_t²/R, N·m·s. */
    public static double shortedNms(double torquePerA, double resistanceOhm) {
        return torquePerA * torquePerA / resistanceOhm;
    }

    /**
     * Time from one speed down to a lower one, s; infinite for a stop that nothing but the blades
     * or a winding brings about.
     *
     * @param fromRadps Ω₀ &gt; 0
     * @param toRadps 0 to Ω₀
     * @param inertiaKgm2 J &gt; 0
     * @param dragNms2 κ &gt; 0: torque over the square of speed
     * @param shortedNms b ≥ 0
     * @param stillNm c ≥ 0
     */
    public static double timeS(
            double fromRadps,
            double toRadps,
            double inertiaKgm2,
            double dragNms2,
            double shortedNms,
            double stillNm) {
        double a = checked(dragNms2, inertiaKgm2, shortedNms, stillNm);
        if (toRadps == 0 && stillNm == 0) {
            return Double.POSITIVE_INFINITY;
        }
        double half = shortedNms / (2 * inertiaKgm2);
        double d = half * half - a * stillNm / inertiaKgm2;
        double from = a * fromRadps + half;
        double to = a * toRadps + half;
        return untangled((from - to) / (from * to - d), d);
    }

    /** Speed after a time, rad/s; 0 once it stands. Arguments as above. */
    public static double speedRadps(
            double timeS,
            double fromRadps,
            double inertiaKgm2,
            double dragNms2,
            double shortedNms,
            double stillNm) {
        double stop = timeS(fromRadps, 0, inertiaKgm2, dragNms2, shortedNms, stillNm);
        if (timeS >= stop) {
            return 0;
        }
        double a = dragNms2 / inertiaKgm2;
        double half = shortedNms / (2 * inertiaKgm2);
        double d = half * half - a * stillNm / inertiaKgm2;
        double tangled = tangled(timeS, d);
        double from = a * fromRadps + half;
        return Math.max(0, ((from + d * tangled) / (1 + from * tangled) - half) / a);
    }

    /**
     * Push still to come: ∫ F dt from the moment of the cut until it stands, for a thrust that goes
     * with the square of speed, N·s; F₀ τ with blades alone. By ∫ Ω²/(a Ω² + b Ω + c) dΩ.
     *
     * @param thrustN F₀ at the moment of the cut, N
     */
    public static double impulseNs(
            double thrustN,
            double fromRadps,
            double inertiaKgm2,
            double dragNms2,
            double shortedNms,
            double stillNm) {
        double a = checked(dragNms2, inertiaKgm2, shortedNms, stillNm);
        double b = shortedNms / inertiaKgm2;
        double c = stillNm / inertiaKgm2;
        double square = a * fromRadps * fromRadps + b * fromRadps + c;
        double sum; // ∫ (b Ω + c)/(a Ω² + b Ω + c) dΩ
        if (c > 0) {
            double stop = timeS(fromRadps, 0, inertiaKgm2, dragNms2, shortedNms, stillNm);
            sum = b / (2 * a) * (Math.log(square / c) - b * stop) + c * stop;
        } else if (b > 0) {
            sum = b / a * Math.log1p(a * fromRadps / b);
        } else {
            sum = 0;
        }
        return thrustN / (fromRadps * fromRadps) * (fromRadps - sum) / a;
    }

    /** T of a time: tanh(√D t)/√D, t, or tan(√−D t)/√−D. */
    private static double tangled(double timeS, double d) {
        double root = Math.sqrt(Math.abs(d));
        if (root * timeS < 1e-6) {
            return timeS; // the next term is a third of (√D t)² of it
        }
        return (d > 0 ? Math.tanh(root * timeS) : Math.tan(root * timeS)) / root;
    }

    /** The time of a T. */
    private static double untangled(double tangled, double d) {
        double root = Math.sqrt(Math.abs(d));
        double x = root * tangled;
        if (x < 1e-6) {
            return tangled;
        }
        return (d > 0 ? Math.log1p(2 * x / (1 - x)) / 2 : Math.atan(x)) / root;
    }

    /** κ/J of numbers in range. */
    private static double checked(
            double dragNms2, double inertiaKgm2, double shortedNms, double stillNm) {
        if (!(dragNms2 > 0) || !(inertiaKgm2 > 0) || !(shortedNms >= 0) || !(stillNm >= 0)) {
            throw new IllegalArgumentException(
                    "a rotor has inertia and drag, and its brakes do not drive it");
        }
        return dragNms2 / inertiaKgm2;
    }
}
