package liftwright.trials.measure;

import liftwright.physics.FanLaw;
import liftwright.physics.FanUnit;

/**
 * How a rotor follows a duty: J dΩ/dt = (I − I₀)/K_v − κ Ω², with I = (d V − Ω/K_v)/R and the
 * voltage V of a pack behind its resistance, V = E − R_s (s I + P/V), s = d + k_sw (1 − d); at the
 * controller's current limit I is that limit. Inductance is left out: its time constant is a
 * hundredth of the rotor's (common practice). The controller's own delay or ramp is not in it.
 *
 * @param unit coefficient block of {@link FanUnit}
 * @param emfV E
 * @param sourceOhm R_s
 * @param inertiaKgm2 J
 * @param duty d, 0 to 1
 */
@SuppressWarnings("ArrayRecordComponent") // read, never compared
record Spool(double[] unit, double emfV, double sourceOhm, double inertiaKgm2, double duty) {

    /** Share of a change at one time constant, 1 − 1/e. */
    static final double ONE_TIME = -Math.expm1(-1);

    /** Nodes and weights of the five-point rule of Gauss and Legendre on −1 to 1. */
    private static final double[] NODE = {
        0, Math.sqrt(5 - 2 * Math.sqrt(10.0 / 7)) / 3, Math.sqrt(5 + 2 * Math.sqrt(10.0 / 7)) / 3
    };

    private static final double[] WEIGHT = {
        128.0 / 225, (322 + 13 * Math.sqrt(70)) / 900, (322 - 13 * Math.sqrt(70)) / 900
    };
    private static final int PANELS = 48;

    static Spool of(OneFan.Bench bench, double duty) {
        return new Spool(
                bench.unit.clone(), bench.emfV(), bench.sourceOhm(), bench.inertiaKgm2(), duty);
    }

    /**
     * Time constant of a small change about a speed, J/(−dM/dΩ) with the torque M left over, s.
     * Where the current is free, −dM/dΩ = 1/(K_v² (R + d R_s s/(1 − R_s P/V²))) + b/K_v + (2 + β) κ
     * Ω; at the current limit without the first term.
     */
    double timeConstantS(double radps) {
        double kv = unit[FanUnit.KV];
        double damping =
                unit[FanUnit.NO_LOAD_SLOPE] / kv
                        + (2 + unit[FanUnit.TORQUE_DRIFT])
                                * unit[FanUnit.TORQUE]
                                * radps
                                * drift(radps);
        double volt = terminalV(radps);
        if (freeA(radps, volt) < unit[FanUnit.CURRENT_LIMIT]) {
            double source =
                    sourceOhm * share() / (1 - sourceOhm * unit[FanUnit.FIXED] / (volt * volt));
            damping += 1 / (kv * kv * (unit[FanUnit.RESISTANCE] + duty * source));
        }
        return inertiaKgm2 / damping;
    }

    /**
     * Time from one speed to a higher one at this duty, ∫ J dΩ/M, s; not a number where it never
     * gets there.
     */
    double timeS(double fromRadps, double toRadps) {
        double width = (toRadps - fromRadps) / PANELS;
        if (!(width > 0)) {
            return Double.NaN;
        }
        double sum = 0;
        for (int panel = 0; panel < PANELS; panel++) {
            double middle = fromRadps + (panel + 0.5) * width;
            for (int k = -2; k <= 2; k++) {
                double at = middle + Integer.signum(k) * NODE[Math.abs(k)] * width / 2;
                double torque = torqueNm(at);
                if (!(torque > 0)) {
                    return Double.NaN;
                }
                sum += WEIGHT[Math.abs(k)] / torque;
            }
        }
        return inertiaKgm2 * sum * width / 2;
    }

    /** Whether the controller's current limit holds it at a speed. */
    boolean isHeldByLimit(double radps) {
        return freeA(radps, terminalV(radps)) > unit[FanUnit.CURRENT_LIMIT];
    }

    /** Torque left over to speed the rotor up, N·m. */
    private double torqueNm(double radps) {
        double winding = Math.min(freeA(radps, terminalV(radps)), unit[FanUnit.CURRENT_LIMIT]);
        double still = unit[FanUnit.NO_LOAD] + unit[FanUnit.NO_LOAD_SLOPE] * radps;
        return (winding - still) / unit[FanUnit.KV]
                - unit[FanUnit.TORQUE] * radps * radps * drift(radps);
    }

    private double drift(double radps) {
        return FanLaw.drift(unit[FanUnit.TORQUE_DRIFT], radps, unit[FanUnit.REFERENCE_SPEED]);
    }

    /** s: current of the supply over that of the winding. */
    private double share() {
        return duty + unit[FanUnit.SWITCHING] * (1 - duty);
    }

    private double freeA(double radps, double volt) {
        return (duty * volt - radps / unit[FanUnit.KV]) / unit[FanUnit.RESISTANCE];
    }

    /** The higher root of V² (1 + R_s s d/R) − V (E + R_s s Ω/(K_v R)) + R_s P = 0. */
    private double terminalV(double radps) {
        double per = sourceOhm * share() / unit[FanUnit.RESISTANCE];
        double a = 1 + per * duty;
        double b = emfV + per * radps / unit[FanUnit.KV];
        double c = sourceOhm * unit[FanUnit.FIXED];
        return (b + Math.sqrt(Math.max(0, b * b - 4 * a * c))) / (2 * a);
    }
}
