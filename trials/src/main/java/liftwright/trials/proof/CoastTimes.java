package liftwright.trials.proof;

import java.util.Optional;
import liftwright.physics.MotorLaw;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.plant.motion.RotorInertia;
import liftwright.quantity.Quantity;
import liftwright.rig.Fan;

/**
 * How long rotors give thrust after their drive ended, from full throttle on full packs: what a log
 * of current does not show. They coast against their own air; one that may be braked may stop at
 * once.
 *
 * @param half until the slowest has half of its thrust
 * @param tenth until it has a tenth
 */
record CoastTimes(Span half, Span tenth) {

    /** Empty where no fan turns at full throttle. */
    static Optional<CoastTimes> of(Plant plant) {
        SteadyState full = plant.state();
        plant.solve(
                plant.parameters().nominal(),
                Effects.ALL.withCharge(false),
                plant.workspace(),
                full);
        Optional<CoastTimes> all = Optional.empty();
        for (int k = 0; k < plant.rig().fans().size(); k++) {
            double speed = full.fanSpeedRadps(k);
            if (!full.fanFed(k) || speed <= 0 || full.fanShaftW(k) <= 0) {
                continue;
            }
            Fan fan = plant.rig().fans().get(k);
            double kappa = full.fanShaftW(k) / (speed * speed * speed);
            CoastTimes own =
                    new CoastTimes(
                            span(fan, kappa, speed, speed * Math.sqrt(0.5)),
                            span(fan, kappa, speed, speed * Math.sqrt(0.1)));
            all =
                    Optional.of(
                            all.map(
                                            was ->
                                                    new CoastTimes(
                                                            was.half.worst(own.half),
                                                            was.tenth.worst(own.tenth)))
                                    .orElse(own));
        }
        return all;
    }

    private static Span span(Fan fan, double kappa, double from, double to) {
        Quantity inertia =
                fan.type().rotor().inertia().orElseGet(() -> RotorInertia.estimate(fan.type()));
        double low = Math.max(0, inertia.si() - inertia.tolerance().minus());
        double high = inertia.si() + inertia.tolerance().plus();
        boolean coasts =
                fan.type().controller().switching().braking().isPresent()
                        && switch (fan.type().controller().switching().braking().get()) {
                            case COAST -> true;
                            case SHORT, FREEWHEEL -> false;
                        };
        return new Span(
                coasts && low > 0 ? MotorLaw.coastTimeS(low, kappa, from, to) : 0,
                MotorLaw.coastTimeS(high, kappa, from, to));
    }
}
