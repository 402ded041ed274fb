package liftwright.physics;

/**
 * The operating point of a whole fan unit (rotor, motor, controller) at a terminal voltage and a
 * duty: the kernel a network solver calls in its loop. Nothing is allocated; coefficients and
 * results live in blocks of the caller's arrays.
 *
 * <p>Rotor T = k_T (ρ/ρ₀) Ω² (Ω/Ω_ref)^a, Q = k_Q (ρ/ρ₀) Ω² (Ω/Ω_ref)^b, a and b 0 unless rows on a
 * stand show them; motor as {@link MotorLaw}; controller I_bus = d I + k_sw I (1 − d) + P_fix/V,
 * which draws everything it heats itself with, so that power closes: {@code V · I_bus = shaft +
 * copper + iron + switching + fixed}.
 *
 * <p>A unit whose winding current would exceed its limit has its duty lowered until the current
 * equals the limit. The bus current then falls with rising voltage (constant torque), so the slope
 * is negative there; value is continuous at the seam, slope is not.
 */
public final class FanUnit {

    // Coefficient block.
    /** Installed thrust coefficient k_T ρ/ρ₀, N·s²/rad². */
    public static final int THRUST = 0;

    /** Torque coefficient κ = k_Q ρ/ρ₀, N·m·s²/rad². */
    public static final int TORQUE = 1;

    /** K_v, rad/s/V. */
    public static final int KV = 2;

    /** R = winding + switches, Ω. */
    public static final int RESISTANCE = 3;

    /** No-load current a at standstill, A. */
    public static final int NO_LOAD = 4;

    /** Rise of the no-load current with speed b, A·s/rad. */
    public static final int NO_LOAD_SLOPE = 5;

    /** Switching loss k_sw, 1, from 0 to below 1. */
    public static final int SWITCHING = 6;

    /** Power P_fix that the controller takes at any throttle, W. */
    public static final int FIXED = 7;

    /** Winding-current limit, A; {@link Double#POSITIVE_INFINITY} where none is declared. */
    public static final int CURRENT_LIMIT = 8;

    /** Drift of the thrust coefficient over speed a, 1; above −1. */
    public static final int THRUST_DRIFT = 9;

    /** Drift of the torque coefficient over speed b, 1; above −1. */
    public static final int TORQUE_DRIFT = 10;

    /** Speed Ω_ref at which the coefficients hold, rad/s; unused where nothing drifts. */
    public static final int REFERENCE_SPEED = 11;

    /** Length of a coefficient block. */
    public static final int COEFFICIENTS = 12;

    // Result block.
    /** Ω, rad/s. */
    public static final int SPEED = 0;

    /** Winding current, A. */
    public static final int WINDING_CURRENT = 1;

    /** Current drawn from the bus, A. */
    public static final int BUS_CURRENT = 2;

    /** Its derivative by the terminal voltage, S; at fixed duty, or at the limit if limited. */
    public static final int BUS_SLOPE = 3;

    /** Duty in effect: the one asked for, or the lowered one. */
    public static final int DUTY = 4;

    /** One of {@link #FREE}, {@link #CURRENT_LIMITED}, {@link #SATURATED}. */
    public static final int STATE = 5;

    /** Length of a result block. */
    public static final int RESULTS = 6;

    /** State: the duty asked for is in effect. */
    public static final double FREE = 0;

    /** State: the controller lowered the duty to hold its current limit. */
    public static final double CURRENT_LIMITED = 1;

    /** State of {@link #holdSpeed}: the speed cannot be held, full duty is in effect. */
    public static final double SATURATED = 2;

    // Account block.
    /** Thrust in still air, N. */
    public static final int THRUST_N = 0;

    /** Shaft torque, N·m. */
    public static final int TORQUE_NM = 1;

    /** Shaft power, W. */
    public static final int SHAFT_W = 2;

    /** I²R of winding and switches together, W. */
    public static final int COPPER_W = 3;

    /** I₀ Ω/K_v: iron, bearings, windage, W. */
    public static final int IRON_W = 4;

    /** k_sw V I (1 − d), W. */
    public static final int SWITCHING_W = 5;

    /** P_fix as drawn, W. */
    public static final int FIXED_W = 6;

    /** Length of an account block. */
    public static final int ACCOUNTS = 7;

    /**
     * Below this voltage no controller runs; the fixed loss is continued as a resistor there, so
     * that a solver's trial voltages give finite, continuous currents, V.
     */
    public static final double LEAST_CONTROLLER_V = 1;

    private FanUnit() {}

    /**
     * Operating point at a duty.
     *
     * @param unit array that holds the coefficient block
     * @param unitAt where it begins
     * @param terminalV voltage at the controller, V; at 0 and below the unit is a dead load
     * @param duty 0 to 1
     * @param point array that takes the result block
     * @param pointAt where it begins
     */
    public static void operate(
            double[] unit, int unitAt, double terminalV, double duty, double[] point, int pointAt) {
        double kv = unit[unitAt + KV];
        double kappa = unit[unitAt + TORQUE];
        double resistance = unit[unitAt + RESISTANCE];
        double noLoad = unit[unitAt + NO_LOAD];
        double noLoadSlope = unit[unitAt + NO_LOAD_SLOPE];
        double driven = duty * Math.max(terminalV, 0);
        double drift = unit[unitAt + TORQUE_DRIFT];
        double speed;
        if (drift == 0) {
            speed = MotorLaw.speedRadps(driven, kappa, kv, resistance, noLoad, noLoadSlope);
        } else {
            double reference = unit[unitAt + REFERENCE_SPEED];
            speed =
                    MotorLaw.driftedRoot(
                            kappa * kv * resistance,
                            1 / kv + noLoadSlope * resistance,
                            driven - noLoad * resistance,
                            drift,
                            reference);
            kappa *= FanLaw.drift(drift, speed, reference);
        }
        double winding;
        double windingSlope;
        if (speed > 0) {
            winding = noLoad + (noLoadSlope + kappa * kv * speed) * speed;
            double load = noLoadSlope + (2 + drift) * kappa * kv * speed;
            windingSlope = duty * load / (1 / kv + resistance * load);
        } else {
            // At rest below the no-load current the winding is a resistor.
            winding = driven / resistance;
            windingSlope = terminalV > 0 ? duty / resistance : 0;
        }
        if (winding > unit[unitAt + CURRENT_LIMIT]) {
            limit(unit, unitAt, terminalV, point, pointAt);
            return;
        }
        double share = duty + unit[unitAt + SWITCHING] * (1 - duty);
        point[pointAt + SPEED] = speed;
        point[pointAt + WINDING_CURRENT] = winding;
        point[pointAt + BUS_CURRENT] =
                share * winding + fixedCurrentA(unit[unitAt + FIXED], terminalV);
        point[pointAt + BUS_SLOPE] =
                share * windingSlope + fixedSlopeS(unit[unitAt + FIXED], terminalV);
        point[pointAt + DUTY] = duty;
        point[pointAt + STATE] = FREE;
    }

    private static void limit(
            double[] unit, int unitAt, double terminalV, double[] point, int pointAt) {
        double winding = unit[unitAt + CURRENT_LIMIT];
        double drift = unit[unitAt + TORQUE_DRIFT];
        double speed =
                drift == 0
                        ? MotorLaw.speedAtCurrentRadps(
                                winding,
                                unit[unitAt + TORQUE],
                                unit[unitAt + KV],
                                unit[unitAt + NO_LOAD],
                                unit[unitAt + NO_LOAD_SLOPE])
                        : MotorLaw.driftedRoot(
                                unit[unitAt + TORQUE] * unit[unitAt + KV],
                                unit[unitAt + NO_LOAD_SLOPE],
                                winding - unit[unitAt + NO_LOAD],
                                drift,
                                unit[unitAt + REFERENCE_SPEED]);
        atCurrent(unit, unitAt, terminalV, speed, winding, CURRENT_LIMITED, point, pointAt);
    }

    /**
     * Operating point at which the unit holds a speed (a thrust is asked for): the duty is found.
     * Where full duty or the current limit gives less speed, that point is given instead and {@link
     * #STATE} says so.
     *
     * @param speedRadps wanted speed, ≥ 0; parameters otherwise as {@link #operate}
     */
    public static void holdSpeed(
            double[] unit,
            int unitAt,
            double terminalV,
            double speedRadps,
            double[] point,
            int pointAt) {
        operate(unit, unitAt, terminalV, 1, point, pointAt);
        if (point[pointAt + SPEED] < speedRadps) {
            if (point[pointAt + STATE] == FREE) {
                point[pointAt + STATE] = SATURATED;
            }
            return;
        }
        if (speedRadps <= 0) {
            operate(unit, unitAt, terminalV, 0, point, pointAt);
            return;
        }
        double kappa = unit[unitAt + TORQUE] * torqueDrift(unit, unitAt, speedRadps);
        double winding =
                unit[unitAt + NO_LOAD]
                        + (unit[unitAt + NO_LOAD_SLOPE] + kappa * unit[unitAt + KV] * speedRadps)
                                * speedRadps;
        atCurrent(unit, unitAt, terminalV, speedRadps, winding, FREE, point, pointAt);
    }

    /** The point with winding current and speed fixed: the duty follows the voltage. */
    private static void atCurrent(
            double[] unit,
            int unitAt,
            double terminalV,
            double speed,
            double winding,
            double state,
            double[] point,
            int pointAt) {
        double driven = winding * unit[unitAt + RESISTANCE] + speed / unit[unitAt + KV];
        double duty = driven / terminalV;
        double switching = unit[unitAt + SWITCHING];
        point[pointAt + SPEED] = speed;
        point[pointAt + WINDING_CURRENT] = winding;
        point[pointAt + BUS_CURRENT] =
                winding * (duty + switching * (1 - duty))
                        + fixedCurrentA(unit[unitAt + FIXED], terminalV);
        point[pointAt + BUS_SLOPE] =
                -winding * (1 - switching) * duty / terminalV
                        + fixedSlopeS(unit[unitAt + FIXED], terminalV);
        point[pointAt + DUTY] = duty;
        point[pointAt + STATE] = state;
    }

    /**
     * Where the power of an operating point goes.
     *
     * @param point a result block written for this unit at this voltage
     * @param account takes the account block from {@code accountAt}
     */
    public static void account(
            double[] unit,
            int unitAt,
            double terminalV,
            double[] point,
            int pointAt,
            double[] account,
            int accountAt) {
        double speed = point[pointAt + SPEED];
        double winding = point[pointAt + WINDING_CURRENT];
        double volt = Math.max(terminalV, 0);
        double torque = unit[unitAt + TORQUE] * speed * speed * torqueDrift(unit, unitAt, speed);
        double noLoad = unit[unitAt + NO_LOAD] + unit[unitAt + NO_LOAD_SLOPE] * speed;
        account[accountAt + THRUST_N] = thrustN(unit, unitAt, speed);
        account[accountAt + TORQUE_NM] = torque;
        account[accountAt + SHAFT_W] = torque * speed;
        account[accountAt + COPPER_W] = winding * winding * unit[unitAt + RESISTANCE];
        account[accountAt + IRON_W] = noLoad * speed / unit[unitAt + KV];
        account[accountAt + SWITCHING_W] =
                unit[unitAt + SWITCHING] * volt * winding * (1 - point[pointAt + DUTY]);
        account[accountAt + FIXED_W] = volt * fixedCurrentA(unit[unitAt + FIXED], terminalV);
    }

    /** Thrust of a unit in still air at a speed, N. */
    public static double thrustN(double[] unit, int unitAt, double speedRadps) {
        return unit[unitAt + THRUST]
                * speedRadps
                * speedRadps
                * FanLaw.drift(
                        unit[unitAt + THRUST_DRIFT], speedRadps, unit[unitAt + REFERENCE_SPEED]);
    }

    /** Speed at which a unit gives a thrust ≥ 0 in still air: the inverse of the above, rad/s. */
    public static double speedAtThrustRadps(double[] unit, int unitAt, double newton) {
        double square = newton / unit[unitAt + THRUST];
        double drift = unit[unitAt + THRUST_DRIFT];
        if (drift == 0) {
            return Math.sqrt(square);
        }
        double reference = unit[unitAt + REFERENCE_SPEED];
        return reference * Math.pow(square / (reference * reference), 1 / (2 + drift));
    }

    private static double torqueDrift(double[] unit, int unitAt, double speedRadps) {
        return FanLaw.drift(
                unit[unitAt + TORQUE_DRIFT], speedRadps, unit[unitAt + REFERENCE_SPEED]);
    }

    private static double fixedCurrentA(double fixedW, double volt) {
        return volt >= LEAST_CONTROLLER_V
                ? fixedW / volt
                : fixedW * Math.max(volt, 0) / (LEAST_CONTROLLER_V * LEAST_CONTROLLER_V);
    }

    private static double fixedSlopeS(double fixedW, double volt) {
        if (volt >= LEAST_CONTROLLER_V) {
            return -fixedW / (volt * volt);
        }
        return volt > 0 ? fixedW / (LEAST_CONTROLLER_V * LEAST_CONTROLLER_V) : 0;
    }
}
