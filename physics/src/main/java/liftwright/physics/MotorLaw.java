package liftwright.physics;

/**
 * First-order steady model of a brushless motor and its controller: Ω = K_v (dV − R I), Q = (I −
 * I₀) / K_v [DRELA07]. I₀ = a + b Ω; b = 0 where one no-load point is known.
 */
public final class MotorLaw {

    /** Temperature coefficient of copper windings at 20 °C, 1/K [NBS100]. */
    public static final double WINDING_PER_K = 0.00393;

    /** Loss of remanence of neodymium magnets per kelvin; common practice. */
    public static final double MAGNET_LOSS_PER_K = 0.0011;

    /**
     * Switches conduct worse by this factor at 125 °C than at 25 °C; common practice 1.5 to 1.8.
     */
    public static final double SWITCH_RATIO_AT_125C = 1.65;

    private static final double ROOM_K = 293.15;

    private MotorLaw() {}

    /**
     * Speed under a load Q = κ Ω²: the positive root of κ K_v R Ω² + (1/K_v + b R) Ω + a R − dV =
     * 0, and 0 where dV ≤ a R (the motor does not turn).
     *
     * @param drivenV dV, duty × terminal voltage, V
     * @param torqueNms2 κ = k_Q ρ/ρ₀ ≥ 0, N·m·s²/rad²
     * @param kvRadpsV K_v &gt; 0, rad/s/V
     * @param resistanceOhm R = R_winding + R_on &gt; 0, Ω
     * @param noLoadA a ≥ 0, A
     * @param noLoadAspRad b ≥ 0, A·s/rad
     * @return rad/s
     */
    public static double speedRadps(
            double drivenV,
            double torqueNms2,
            double kvRadpsV,
            double resistanceOhm,
            double noLoadA,
            double noLoadAspRad) {
        double drive = drivenV - noLoadA * resistanceOhm;
        if (drive <= 0) {
            return 0;
        }
        double linear = 1 / kvRadpsV + noLoadAspRad * resistanceOhm;
        double square = torqueNms2 * kvRadpsV * resistanceOhm;
        // The form without cancellation; it also holds for κ = 0.
        return 2 * drive / (linear + Math.sqrt(linear * linear + 4 * square * drive));
    }

    /**
     * Speed at which a turning motor takes a given winding current under Q = κ Ω²: the positive
     * root of κ K_v Ω² + b Ω + a − I = 0, and 0 where I ≤ a.
     *
     * @throws IllegalArgumentException if neither κ nor b makes the current grow with speed
     */
    public static double speedAtCurrentRadps(
            double windingA,
            double torqueNms2,
            double kvRadpsV,
            double noLoadA,
            double noLoadAspRad) {
        double load = windingA - noLoadA;
        if (load <= 0) {
            return 0;
        }
        double square = torqueNms2 * kvRadpsV;
        double root = Math.sqrt(noLoadAspRad * noLoadAspRad + 4 * square * load);
        if (!(noLoadAspRad + root > 0)) {
            throw new IllegalArgumentException("an unloaded motor has no speed at a set current");
        }
        return 2 * load / (noLoadAspRad + root);
    }

    /**
     * The positive root of A Ω² (Ω/Ω_ref)^b + B Ω = C: a motor under a load whose coefficient
     * drifts with speed. The left side rises and is convex for b &gt; −1, so Newton's method falls
     * to the root from its first step on, doubling its digits.
     *
     * @param square A ≥ 0
     * @param linear B ≥ 0; A or B is above 0
     * @param right C; at 0 and below the answer is 0
     * @param exponent b &gt; −1
     * @param referenceRadps Ω_ref &gt; 0
     */
    static double driftedRoot(
            double square, double linear, double right, double exponent, double referenceRadps) {
        if (right <= 0) {
            return 0;
        }
        double speed = 2 * right / (linear + Math.sqrt(linear * linear + 4 * square * right));
        for (int k = 0; k < 60; k++) {
            double load = square * FanLaw.drift(exponent, speed, referenceRadps) * speed;
            double step = ((load + linear) * speed - right) / ((2 + exponent) * load + linear);
            speed -= step;
            if (Math.abs(step) <= 1e-9 * speed) {
                break; // what is left is the square of it
            }
        }
        return speed;
    }

    /** Winding current of a motor held at a speed, I = (dV − Ω/K_v) / R, A. */
    public static double currentAtSpeedA(
            double drivenV, double speedRadps, double kvRadpsV, double resistanceOhm) {
        return (drivenV - speedRadps / kvRadpsV) / resistanceOhm;
    }

    /** Shaft torque (I − I₀) / K_v, N·m; I₀ at that speed. */
    public static double torqueNm(double windingA, double noLoadA, double kvRadpsV) {
        return (windingA - noLoadA) / kvRadpsV;
    }

    /** Efficiency shaft / electrical at voltage V and current I, constant I₀. */
    public static double efficiency(
            double volt, double windingA, double resistanceOhm, double noLoadA) {
        return (1 - windingA * resistanceOhm / volt) * (1 - noLoadA / windingA);
    }

    /** Current of best efficiency I* = √(I₀ V / R), A, constant I₀ [DRELA07]. */
    public static double bestCurrentA(double volt, double resistanceOhm, double noLoadA) {
        return Math.sqrt(noLoadA * volt / resistanceOhm);
    }

    /** Best efficiency η* = (1 − √(I₀ R / V))², constant I₀ [DRELA07]. */
    public static double bestEfficiency(double volt, double resistanceOhm, double noLoadA) {
        double lost = 1 - Math.sqrt(noLoadA * resistanceOhm / volt);
        return lost * lost;
    }

    /** Time constant of an unloaded motor after a voltage step, J R K_v², s. */
    public static double unloadedTimeConstantS(
            double inertiaKgm2, double resistanceOhm, double kvRadpsV) {
        return inertiaKgm2 * resistanceOhm * kvRadpsV * kvRadpsV;
    }

    /** The same linearised at speed Ω under Q = κ Ω²: J / (1/(R K_v²) + 2 κ Ω), s. */
    public static double loadedTimeConstantS(
            double inertiaKgm2,
            double resistanceOhm,
            double kvRadpsV,
            double torqueNms2,
            double speedRadps) {
        return inertiaKgm2
                / (1 / (resistanceOhm * kvRadpsV * kvRadpsV) + 2 * torqueNms2 * speedRadps);
    }

    /**
     * Time in which a coasting rotor falls from one speed to another under J dΩ/dt = −κ Ω²: J/κ
     * (1/Ω₁ − 1/Ω₀). Iron and bearings left out: a real rotor is sooner there.
     *
     * @param inertiaKgm2 J, kg·m²
     * @param torqueNms2 κ &gt; 0, N·m·s²/rad²
     * @param fromRadps Ω₀ ≥ Ω₁, rad/s
     * @param toRadps Ω₁ &gt; 0, rad/s
     * @return s
     */
    public static double coastTimeS(
            double inertiaKgm2, double torqueNms2, double fromRadps, double toRadps) {
        return inertiaKgm2 / torqueNms2 * (1 / toRadps - 1 / fromRadps);
    }

    /**
     * K_v of a warm motor, K_v20 / (1 − 0.0011 ΔT): weaker magnets make it faster and hungrier
     * (neodymium, common practice, 20 °C to 120 °C).
     */
    public static double kvAt(double kv20RadpsV, double magnetK) {
        return kvAt(kv20RadpsV, magnetK, MAGNET_LOSS_PER_K);
    }

    /**
     * The same with magnets of another loss.
     *
     * @param lossPerK of remanence, 1/K, ≥ 0
     */
    public static double kvAt(double kv20RadpsV, double magnetK, double lossPerK) {
        return kv20RadpsV / (1 - lossPerK * (magnetK - ROOM_K));
    }

    /** Winding resistance R₂₀ (1 + 0.00393 (T − 20 °C)), Ω [NBS100]. */
    public static double windingAt(double winding20Ohm, double windingK) {
        return winding20Ohm * (1 + WINDING_PER_K * (windingK - ROOM_K));
    }

    /**
     * On-resistance of the controller's switches, linear between 1 at 25 °C and {@link
     * #SWITCH_RATIO_AT_125C} at 125 °C (common practice).
     */
    public static double switchAt(double on25Ohm, double switchK) {
        return on25Ohm * (1 + (SWITCH_RATIO_AT_125C - 1) * (switchK - 298.15) / 100);
    }
}
