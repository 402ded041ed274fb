package liftwright.review;

import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.FastEffects;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.thrust.FanUnits;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.FanType;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * Ripple that partial throttle leaves on the controllers' capacitors, at the worst throttle, charge
 * as declared. Only for fans whose controllers declare capacitance and switching frequency.
 */
final class RippleFinding {

    private static final int STEPS = 20;

    private RippleFinding() {}

    private record Worst(int fan, double throttle, double share, double volt, double ampere) {}

    static Optional<Finding> of(Plant plant) {
        Rig rig = plant.rig();
        Discharge start = EnduranceJudge.declared(plant, true);
        Worst worst = null;
        for (int step = 1; step <= STEPS; step++) {
            double throttle = (double) step / STEPS;
            start.follow(new Order.Throttle(throttle), 0, run -> {});
            FanUnits units = start.fans().units();
            for (int fan = 0; fan < units.fans(); fan++) {
                double terminalV = start.network().loadTerminalV(fan);
                double ripple = rippleV(rig.fans().get(fan).type().controller(), units, fan);
                if (ripple > 0
                        && terminalV > 0
                        && (worst == null || ripple / terminalV > worst.share)) {
                    worst =
                            new Worst(
                                    fan,
                                    throttle,
                                    ripple / terminalV,
                                    ripple,
                                    FastEffects.rippleA(units.windingA(fan), units.duty(fan)));
                }
            }
        }
        return Optional.ofNullable(worst).map(found -> finding(rig, found));
    }

    /** 0 where it cannot be told. */
    private static double rippleV(FanType.Controller own, FanUnits units, int fan) {
        FanType.Switching switching = own.switching();
        if (own.capacitance().isEmpty() || switching.frequency().isEmpty()) {
            return 0;
        }
        double winding = units.windingA(fan);
        double duty = units.duty(fan);
        if (duty >= 1) {
            return 0; // nothing switches
        }
        return FastEffects.rippleV(
                        winding,
                        duty,
                        switching.frequency().get().si(),
                        own.capacitance().get().si())
                + winding * switching.capacitorResistance().map(Quantity::si).orElse(0.0);
    }

    private static Finding finding(Rig rig, Worst worst) {
        FanType type = rig.fans().get(worst.fan).type();
        String fan = rig.fans().get(worst.fan).id().text();
        double limit = rig.limits().si(LimitName.RIPPLE_SHARE);
        boolean beyond = worst.share > limit;
        Sentence sentence =
                Sentence.words("ripple at the capacitors of " + fan + " is at most ")
                        .then(Measure.VOLTAGE, worst.volt)
                        .then(" peak to peak and ")
                        .then(Measure.CURRENT, worst.ampere)
                        .then(" rms, near ")
                        .then(Measure.PERCENT, worst.throttle)
                        .then(" throttle: ")
                        .then(Measure.PERCENT, worst.share)
                        .then(" of the voltage there");
        if (beyond) {
            sentence = sentence.then(", above ").then(Measure.PERCENT, limit);
        }
        return Finding.of(
                        beyond ? Severity.WARNS : Severity.NOTES,
                        "ripple",
                        sentence,
                        "the leads carry the mean current, the capacitors all that differs from it")
                .about(fan)
                .at(RigPath.of("fan types", type.name(), "controller", "capacitance").toString())
                .against(
                        Value.of("ripple", worst.share),
                        new Finding.Limit(
                                Value.of("ripple", limit),
                                LimitName.RIPPLE_SHARE.key()
                                        + ": "
                                        + rig.limits().origin(LimitName.RIPPLE_SHARE)));
    }
}
