package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.FastEffects;
import liftwright.physics.MotorLaw;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.FanType.Braking;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * What turning rotors do after a stop at full throttle on full packs: how long thrust lasts, and
 * where their energy goes. One finding a fan type, about its fastest fan; types that declare
 * neither inertia nor braking that gives energy back are passed over.
 */
final class SpoolFindings {

    /** Share of thrust that counts as none left. */
    private static final double TENTH = 0.1;

    private SpoolFindings() {}

    static List<Finding> of(Plant plant) {
        Rig rig = plant.rig();
        double[] p = plant.parameters().nominal();
        SteadyState full = plant.state();
        plant.solve(p, Effects.ALL.withCharge(false), plant.workspace(), full);
        List<Finding> findings = new ArrayList<>();
        for (FanType type : rig.fanTypes()) {
            int fastest = -1;
            for (int fan = 0; fan < full.fans(); fan++) {
                if (rig.fans().get(fan).type().equals(type)
                        && full.fanFed(fan)
                        && (fastest < 0 || full.fanSpeedRadps(fan) > full.fanSpeedRadps(fastest))) {
                    fastest = fan;
                }
            }
            if (fastest < 0 || full.fanSpeedRadps(fastest) <= 0) {
                continue;
            }
            Fan fan = rig.fans().get(fastest);
            Optional<Double> inertia = type.rotor().inertia().map(Quantity::si);
            if (inertia.isPresent()) {
                findings.add(coasting(rig, fan, inertia.get(), fastest, full));
            }
            if (type.controller()
                    .switching()
                    .braking()
                    .filter(Braking.FREEWHEEL::equals)
                    .isPresent()) {
                brakeRise(rig, fan, fastest, full).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static Finding coasting(
            Rig rig, Fan fan, double inertiaKgm2, int number, SteadyState full) {
        FanType type = fan.type();
        double speed = full.fanSpeedRadps(number);
        double kappa = full.fanShaftW(number) / (speed * speed * speed);
        double time = MotorLaw.coastTimeS(inertiaKgm2, kappa, speed, speed * Math.sqrt(TENTH));
        double limit = rig.limits().si(LimitName.KILL_TIME);
        Sentence sentence =
                Sentence.words("thrust of " + fan.id() + " is under a tenth ")
                        .then(Measure.TIME, time)
                        .then(" after a stop at ")
                        .then(Measure.ROTATION, speed)
                        .then(", coasting");
        Optional<Double> constantS = timeConstantS(type, inertiaKgm2, kappa, speed);
        if (constantS.isPresent()) {
            sentence =
                    sentence.then(
                                    "; after a small step of voltage its speed settles with a time constant of ")
                            .then(Measure.TIME, constantS.get());
        }
        boolean late = time > limit;
        return Finding.of(
                        late ? Severity.WARNS : Severity.NOTES,
                        "coasting",
                        late ? sentence.then("; longer than ").then(Measure.TIME, limit) : sentence,
                        energy(type, inertiaKgm2, speed))
                .about(fan.id().text())
                .at(RigPath.of("fan types", type.name(), "rotor", "inertia").toString())
                .against(
                        Value.of("coast-time", time),
                        new Finding.Limit(
                                Value.of("coast-time", limit),
                                LimitName.KILL_TIME.key()
                                        + ": "
                                        + rig.limits().origin(LimitName.KILL_TIME)));
    }

    /** Empty where a bench table has to tell the motor's values. */
    private static Optional<Double> timeConstantS(
            FanType type, double inertiaKgm2, double kappa, double speed) {
        FanType.Motor motor = type.motor();
        if (motor.speedConstant().isEmpty() || motor.windingResistance().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                MotorLaw.loadedTimeConstantS(
                        inertiaKgm2,
                        motor.windingResistance().get().si()
                                + type.controller().onResistance().si(),
                        motor.speedConstant().get().si(),
                        kappa,
                        speed));
    }

    private static String energy(FanType type, double inertiaKgm2, double speed) {
        String joule =
                String.format(
                        Locale.ROOT, "its rotor holds %.0f J", inertiaKgm2 * speed * speed / 2);
        return joule
                + type.controller()
                        .switching()
                        .braking()
                        .map(
                                braking ->
                                        switch (braking) {
                                            case COAST -> ", which drag takes";
                                            case SHORT ->
                                                    ", most of which each braked stop puts into the winding";
                                            case FREEWHEEL ->
                                                    ", part of which braking sends to the supply";
                                        })
                        .orElse("; whether it brakes is not declared");
    }

    private static Optional<Finding> brakeRise(Rig rig, Fan fan, int number, SteadyState full) {
        FanType type = fan.type();
        FanType.Controller own = type.controller();
        Optional<Double> rating =
                Stream.of(own.topVoltage(), own.capacitorVoltage())
                        .flatMap(Optional::stream)
                        .map(Quantity::si)
                        .min(Double::compare);
        RigPath at = RigPath.of("fan types", type.name(), "controller", "braking");
        if (rating.isEmpty() || own.capacitance().isEmpty() || type.rotor().inertia().isEmpty()) {
            return Optional.of(
                    Finding.of(
                                    Severity.NOTES,
                                    "brake-rise-cannot-be-told",
                                    Sentence.words(
                                            "how far braking lifts the input of "
                                                    + type.name()
                                                    + " cannot be told: declare "
                                                    + (type.rotor().inertia().isEmpty()
                                                            ? "the rotor's “inertia”"
                                                            : own.capacitance().isEmpty()
                                                                    ? "“capacitance”"
                                                                    : "“top voltage”")),
                                    "the rotor's energy goes into the capacitors when nothing else takes it")
                            .about(type.name())
                            .at(at.toString()));
        }
        double share =
                FastEffects.brakeShare(
                        full.fanTerminalV(number),
                        rating.get(),
                        type.rotor().inertia().get().si(),
                        full.fanSpeedRadps(number),
                        own.capacitance().get().si());
        if (share >= 1) {
            return Optional.empty();
        }
        boolean opens =
                rig.wiring().chains().stream()
                        .flatMap(chain -> chain.elements().stream())
                        .anyMatch(Element.Pole.class::isInstance);
        return Optional.of(
                Finding.of(
                                opens ? Severity.STOPS : Severity.WARNS,
                                "brake-rise",
                                Sentence.start()
                                        .then(Measure.PERCENT, share)
                                        .then(
                                                " of the energy in the rotor of "
                                                        + fan.id()
                                                        + " takes its controller's input to ")
                                        .then(Measure.VOLTAGE, rating.get())
                                        .then(
                                                opens
                                                        ? ", its rating, when it brakes into an open contactor"
                                                        : ", its rating, when it brakes after a fuse or a plug has opened"),
                                "with the pack gone, braking energy has nowhere to go but the capacitors: let it"
                                        + " coast, and command zero before the contactor opens")
                        .about(fan.id().text())
                        .at(at.toString())
                        .against(
                                Value.of("brake-share", share),
                                new Finding.Limit(
                                        Value.of("brake-share", 1),
                                        "energy balance, drag and winding left out")));
    }
}
