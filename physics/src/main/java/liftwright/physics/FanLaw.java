package liftwright.physics;

/**
 * What momentum theory says of a fan, and how losses of the installation act on it.
 *
 * <p>Momentum theory of the actuator disc in a duct of exit area A_e: T = ρ A_e V_e (V_e − V_a), P
 * = ½ ρ A_e V_e (V_e² − V_a²) [LEISHMAN]. The ratio σ = A_e/A compares the exit with the rotor's
 * annulus; an open rotor in still air is the case σ = ½ (its jet contracts to half the disc).
 */
public final class FanLaw {

    /** Above this K the loss is outside the law: measure a pressure–flow curve instead. */
    public static final double GREATEST_INTAKE_LOSS = 0.3;

    /** Ideal over electrical power beyond this is better than anything of this size. */
    public static final double CREDIBLE_ELECTRICAL_EFFICIENCY = 0.80;

    /** Ideal over shaft power beyond this is better than anything of this size. */
    public static final double CREDIBLE_SHAFT_EFFICIENCY = 0.85;

    /** Tip Mach number beyond which k_T and k_Q drift and noise rises steeply; common practice. */
    public static final double GREATEST_TIP_MACH = 0.6;

    /**
     * Descent faster than this share of the still-air exit speed is outside the inflow relation.
     */
    public static final double GREATEST_DESCENT_SHARE = 0.2;

    /** Up to this ε the series of {@link #exitShareOfSmall} leaves rounding alone. */
    public static final double SMALL_INFLOW = 0.1;

    // Of the root of x³ − ε x = 1 in powers of ε; those of 2, 5, 8 vanish.
    private static final double SERIES_1 = 1.0 / 3;
    private static final double SERIES_3 = -1.0 / 81;
    private static final double SERIES_4 = 1.0 / 243;
    private static final double SERIES_6 = -4.0 / 6561;
    private static final double SERIES_7 = 5.0 / 19683;
    private static final double SERIES_9 = -77.0 / 1_594_323;
    private static final double SERIES_10 = 104.0 / 4_782_969;

    /** How a claimed thrust and power compare with the ideal of the exit area. */
    public enum Plausibility {
        CREDIBLE,
        /** Not impossible, but beyond anything of this size: check the declaration. */
        BEYOND_THIS_SIZE,
        /** More than momentum theory allows: a value is wrong. */
        IMPOSSIBLE
    }

    private FanLaw() {}

    /**
     * Annulus swept by the blades A = π/4 (D² − D_h²), m².
     *
     * @param tipM tip diameter, m
     * @param hubM hub diameter, m, less than the tip
     */
    public static double annulusM2(double tipM, double hubM) {
        return Math.PI / 4 * (tipM * tipM - hubM * hubM);
    }

    /** Exit speed in still air V_e = √(T / (ρ A_e)), m/s [LEISHMAN]. */
    public static double exitSpeedMps(double thrustN, double densityKgpm3, double exitM2) {
        return Math.sqrt(thrustN / (densityKgpm3 * exitM2));
    }

    /** Mass flow in still air ρ A_e V_e = √(ρ A_e T), kg/s [LEISHMAN]. */
    public static double massFlowKgps(double thrustN, double densityKgpm3, double exitM2) {
        return Math.sqrt(thrustN * densityKgpm3 * exitM2);
    }

    /**
     * Least power that can make a thrust in still air, P_i = T^1.5 / √(4 ρ A_e), W [LEISHMAN]. For
     * an open rotor pass half the disc as exit area.
     */
    public static double idealPowerW(double thrustN, double densityKgpm3, double exitM2) {
        return thrustN * Math.sqrt(thrustN / (4 * densityKgpm3 * exitM2));
    }

    /**
     * The same in a stream towards the rotor, P_i = ½ T (V_e + V_a) with T = ρ A_e V_e (V_e − V_a),
     * W [LEISHMAN].
     *
     * @param inflowMps V_a, m/s, ≥ 0
     */
    public static double idealPowerWithInflowW(
            double thrustN, double densityKgpm3, double exitM2, double inflowMps) {
        double exitMps =
                (inflowMps
                                + Math.sqrt(
                                        inflowMps * inflowMps
                                                + 4 * thrustN / (densityKgpm3 * exitM2)))
                        / 2;
        return thrustN * (exitMps + inflowMps) / 2;
    }

    /** Share of the thrust that the rotor carries, the duct carrying the rest: 1 / (2σ). */
    public static double rotorShare(double expansion) {
        return 1 / (2 * expansion);
    }

    /** Judges a claim η = ideal power / claimed power, electrical or at the shaft. */
    public static Plausibility plausibility(double idealOverClaimed, boolean electrical) {
        double credible = electrical ? CREDIBLE_ELECTRICAL_EFFICIENCY : CREDIBLE_SHAFT_EFFICIENCY;
        if (idealOverClaimed > 1) {
            return Plausibility.IMPOSSIBLE;
        }
        return idealOverClaimed > credible ? Plausibility.BEYOND_THIS_SIZE : Plausibility.CREDIBLE;
    }

    /**
     * Thrust left at equal shaft power by an added loss: (1 + K)^(−2/3). From P = ½ ρ A_e V_e³ (1 +
     * K) and T = ρ A_e V_e². Applied to k_T with k_Q kept.
     *
     * @param loss K, added total-pressure loss over the exit dynamic pressure; the law holds up to
     *     {@link #GREATEST_INTAKE_LOSS}
     */
    public static double installedThrustFactor(double loss) {
        return Math.pow(1 + loss, -2.0 / 3);
    }

    /** Exit speed left at equal shaft power by an added loss: (1 + K)^(−1/3). */
    public static double installedExitSpeedFactor(double loss) {
        return 1 / Math.cbrt(1 + loss);
    }

    /** Whether K is within the range in which the two factors hold. */
    public static boolean intakeLossInRange(double loss) {
        return loss >= 0 && loss <= GREATEST_INTAKE_LOSS;
    }

    /**
     * Factor of a coefficient that drifts with speed, (Ω/Ω_ref)^a: blades of this size work better
     * at higher Reynolds number. Fitted to rows, an empirical form: it holds where there were rows.
     *
     * @param exponent a, 1; above −1
     * @param speedRadps Ω ≥ 0; 0 gives 1, since nothing is multiplied by it there
     * @param referenceRadps Ω_ref &gt; 0, at which the coefficient holds; unused where a = 0
     */
    public static double drift(double exponent, double speedRadps, double referenceRadps) {
        return exponent == 0 || speedRadps <= 0
                ? 1
                : Math.pow(speedRadps / referenceRadps, exponent);
    }

    /** Thrust and torque at equal speed scale as ρ/ρ₀, ρ₀ = 1.225 kg/m³. */
    public static double densityFactor(double densityKgpm3) {
        return densityKgpm3 / Air.REFERENCE_DENSITY_KGPM3;
    }

    /** Thrust at equal shaft power and figure of merit scales as (ρ/ρ₀)^(1/3). */
    public static double densityFactorAtEqualPower(double densityKgpm3) {
        return Math.cbrt(densityFactor(densityKgpm3));
    }

    /** Tip Mach number Ω D / (2 a). */
    public static double tipMach(double speedRadps, double tipM, double soundMps) {
        return speedRadps * tipM / (2 * soundMps);
    }

    /** Electrical speed a controller must follow: mechanical speed × pole pairs, rad/s. */
    public static double electricalSpeedRadps(double speedRadps, int polePairs) {
        return speedRadps * polePairs;
    }

    /**
     * Exit speed with axial inflow at equal shaft power: the largest root of (1 + K) V_e³ − V_a²
     * V_e = (1 + K) V_e0³. Momentum theory; at fixed duty the motor unloads as well, so solve it
     * together with the motor.
     *
     * @param stillExitMps V_e0 ≥ 0, exit speed in still air with the same loss
     * @param inflowMps V_a, air-relative speed along the thrust, m/s; holds for V_a ≥ 0 and for
     *     descent |V_a| &lt; {@link #GREATEST_DESCENT_SHARE} V_e0 (see {@link #inflowInRange})
     * @param loss K ≥ 0
     * @return V_e ≥ V_e0
     */
    public static double exitSpeedWithInflowMps(
            double stillExitMps, double inflowMps, double loss) {
        double still = stillExitMps * stillExitMps * stillExitMps;
        double inflow = inflowMps * inflowMps / (1 + loss);
        double exit = stillExitMps + Math.sqrt(inflow);
        // The cubic is convex and not negative here, so Newton falls monotonically onto its root.
        while (true) {
            double value = exit * (exit * exit - inflow) - still;
            double next = exit - value / (3 * exit * exit - inflow);
            if (!(next < exit)) {
                return exit;
            }
            exit = next;
        }
    }

    /**
     * The same as a share of the still-air exit speed, for loops: x of (1 + K) x³ − u² x = 1 + K.
     *
     * @param inflowShare u = V_a/V_e0
     * @param loss K ≥ 0
     * @return V_e/V_e0 ≥ 1
     */
    public static double exitShareWithInflow(double inflowShare, double loss) {
        return exitShare(inflowShare * inflowShare / (1 + loss));
    }

    /**
     * The same again by ε = u²/(1 + K): x of x³ − ε x = 1. Up to ε = ½ by the root's series 1 + ε/3
     * − ε³/81 + ε⁴/243 − …, with a step of Newton's where ε is above a tenth: that leaves rounding.
     *
     * @param inflow ε ≥ 0
     */
    public static double exitShare(double inflow) {
        if (inflow > 0.5) {
            return exitSpeedWithInflowMps(1, Math.sqrt(inflow), 0);
        }
        double exit = exitShareOfSmall(inflow);
        return inflow <= SMALL_INFLOW
                ? exit
                : exit - (exit * (exit * exit - inflow) - 1) / (3 * exit * exit - inflow);
    }

    /**
     * The series of {@link #exitShare} alone: to rounding up to {@link #SMALL_INFLOW}, and without
     * a branch, for loops over many fans.
     *
     * @param inflow ε ≥ 0
     */
    public static double exitShareOfSmall(double inflow) {
        double cube = inflow * inflow * inflow;
        double high = SERIES_6 + inflow * SERIES_7 + cube * (SERIES_9 + inflow * SERIES_10);
        return 1 + inflow * SERIES_1 + cube * (SERIES_3 + inflow * SERIES_4 + cube * high);
    }

    /** Whether the inflow relation holds: V_a ≥ 0, or a small descent. */
    public static boolean inflowInRange(double stillExitMps, double inflowMps) {
        return inflowMps > -GREATEST_DESCENT_SHARE * stillExitMps;
    }

    /** Thrust with axial inflow T = ρ A_e V_e (V_e − V_a), N [LEISHMAN]. */
    public static double thrustWithInflowN(
            double densityKgpm3, double exitM2, double exitMps, double inflowMps) {
        return densityKgpm3 * exitM2 * exitMps * (exitMps - inflowMps);
    }

    /**
     * Momentum drag of cross-flow: all air taken in is turned into the axis, ρ A_e V_e V_c, N,
     * against the cross-flow, acting at the intake plane (a force and a moment). Outside the law
     * when the lip stalls, from about V_c/V_e = 0.15 (from memory).
     */
    public static double momentumDragN(
            double densityKgpm3, double exitM2, double exitMps, double crossMps) {
        return densityKgpm3 * exitM2 * exitMps * crossMps;
    }
}
