package liftwright.review.kill;

import java.util.List;
import java.util.Optional;
import liftwright.physics.MotorLaw;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.quantity.Quantity;
import liftwright.rig.Contactor;
import liftwright.rig.Fan;
import liftwright.rig.Kill;
import liftwright.rig.Reaction;
import liftwright.rig.Rig;

/**
 * How long thrust lasts after the press of a kill, from full throttle on full packs: the delay of
 * its signal, the contactor where nothing is commanded to zero before, and rotors that coast. A
 * controller that brakes is quicker; one whose supply was cut may not brake at all.
 */
final class KillTimes {

    /** Share of thrust that counts as none left. */
    private static final double TENTH = 0.1;

    private final Rig rig;
    private final SteadyState full;

    private KillTimes(Rig rig, SteadyState full) {
        this.rig = rig;
        this.full = full;
    }

    static KillTimes of(Plant plant) {
        SteadyState full = plant.state();
        double[] p = plant.parameters().nominal();
        plant.solve(p, Effects.ALL.withCharge(false), plant.workspace(), full);
        return new KillTimes(plant.rig(), full);
    }

    /** Full throttle on full packs. */
    SteadyState full() {
        return full;
    }

    /**
     * From the press until no fan that it stops has a tenth of its thrust, s; empty where the
     * inertia of a rotor is not declared or it stops none.
     *
     * @param left fans that it does not stop
     */
    Optional<Double> pressToStillS(Kill kill, List<String> left) {
        Optional<Double> coast = coastS(left);
        return coast.map(still -> kill.delay().si() + openingS(kill) + still);
    }

    private double openingS(Kill kill) {
        return kill.order() == Kill.Order.OPEN_AT_ONCE
                ? rig.wiring().contactors().stream()
                        .filter(one -> kill.opens().contains(one.name()))
                        .map(Contactor::opensIn)
                        .mapToDouble(Quantity::si)
                        .max()
                        .orElse(0)
                : 0;
    }

    private Optional<Double> coastS(List<String> left) {
        double longest = -1;
        for (int number = 0; number < rig.fans().size(); number++) {
            Fan fan = rig.fans().get(number);
            double speed = full.fanSpeedRadps(number);
            if (left.contains(fan.id().text()) || speed <= 0) {
                continue;
            }
            Optional<Quantity> inertia = fan.type().rotor().inertia();
            if (inertia.isEmpty()) {
                return Optional.empty();
            }
            double kappa = full.fanShaftW(number) / (speed * speed * speed);
            longest =
                    Math.max(
                            longest,
                            MotorLaw.coastTimeS(
                                    inertia.get().si(), kappa, speed, speed * Math.sqrt(TENTH)));
        }
        return longest < 0 ? Optional.empty() : Optional.of(longest);
    }

    /** The first type that turns and tells no inertia. */
    Optional<Fan> withoutInertia() {
        return rig.fans().stream()
                .filter(fan -> fan.type().rotor().inertia().isEmpty())
                .findFirst();
    }

    /** From a surprise to the press, s: as declared, or the usual one of who holds it. */
    double reactionS(Kill kill) {
        return Reaction.of(rig, kill).middleS();
    }
}
