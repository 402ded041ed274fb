package liftwright.review.cause.truth;

import java.util.HashMap;
import java.util.Map;

/** Thrust of a fan at a throttle, all fans on one pack: back voltage, winding, pack in series. */
final class Motors {

    private static final double SPEED_CONSTANT = 520 * Math.PI / 30;
    private static final double WINDING_OHM = 0.012;
    private static final double NO_LOAD_A = 2.5;
    private static final double SPEED = 26000 * Math.PI / 30;
    private static final double PACK_V = 14 * 4.17;
    private static final double PACK_OHM = 14 * 0.9e-3 / 8;

    private final Plan plan;
    private final Map<Double, Double> known = new HashMap<>();

    Motors(Plan plan) {
        this.plan = plan;
    }

    /** Torque of a shaft for each newton of thrust, m. */
    double torqueM() {
        return plan.powerW() / SPEED / plan.thrustN();
    }

    double thrustN(double duty) {
        return known.computeIfAbsent(duty, this::settled);
    }

    private double settled(double duty) {
        double coefficient = plan.thrustN() / (SPEED * SPEED);
        double busV = PACK_V;
        double speed = 0;
        for (int round = 0; round < 100; round++) {
            double low = 0;
            double high = duty * busV * SPEED_CONSTANT;
            for (int half = 0; half < 45; half++) {
                double w = (low + high) / 2;
                double amps = (duty * busV - w / SPEED_CONSTANT) / WINDING_OHM;
                double torque = (amps - NO_LOAD_A) / SPEED_CONSTANT;
                boolean faster = torque > torqueM() * coefficient * w * w;
                low = faster ? w : low;
                high = faster ? high : w;
            }
            speed = low;
            double drawn = duty * (duty * busV - speed / SPEED_CONSTANT) / WINDING_OHM;
            busV += 0.3 * (PACK_V - PACK_OHM * drawn * plan.fans() - busV);
        }
        return coefficient * speed * speed;
    }
}
