package liftwright.trials.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.numerics.Roots;
import liftwright.physics.FanLaw;
import liftwright.physics.FanUnit;
import liftwright.physics.Fragment;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.FanType;
import liftwright.rig.LimitName;
import liftwright.rig.RigPath;

/** One fan above its declared top speed, behind a barrier, with what it would throw. */
final class ProofSpinCard {

    /** Of the declared top speed, and for how long; common practice. */
    static final double OVER = 1.05;

    static final double HELD_S = 60;

    /** Grades of balance on arrival, m/s. */
    private static final double GOOD_MPS = 0.0025;

    private static final double REJECT_MPS = 0.0063;

    private static final Doubts.LeftOut LAW =
            Doubts.LeftOut.even(
                    0.04, "torque that drifts over speed, a motor that warms; common practice");

    private record Spun(OneFan fan, double radps) {}

    private final Asked asked;
    private final Doubts doubts = new Doubts("proof-spin");
    private final Sheet sheet;
    private final List<Spun> spun = new ArrayList<>();
    private final List<Wanted> wanted = new ArrayList<>();
    private final List<List<Value>> pieces = new ArrayList<>();

    ProofSpinCard(Asked asked) {
        this.asked = asked;
        sheet = new Sheet(asked);
    }

    Optional<Measured> content() {
        sheet.step(
                "A closed box or pit, or plates round the plane of the rotor that were shown to stop"
                        + " the energies below; air can pass, pieces cannot. Nobody in the plane, none"
                        + " in the room: switch, tachometer and camera outside.");
        sheet.step(
                "Balance as it came, to G2.5 (ISO 21940-11); what is worse than G6.3 goes back.");
        asked.fanTypes().forEach(this::fan);
        sheet.table(
                "pieces",
                "What it would throw at that speed, and what the barrier has to stop",
                List.of(
                        "measuring-what",
                        "piece-mass",
                        "piece-speed",
                        "piece-energy",
                        "piece-pull"),
                pieces);
        words();
        sheet.leftOut(wanted);
        return Predicted.of(asked, doubts, wanted, Predicted.DRAWS, this::model).map(sheet::done);
    }

    private Predicted.Model model() {
        List<OneFan.Bench> benches = spun.stream().map(one -> one.fan.bench()).toList();
        return (p, out) -> {
            for (int k = 0; k < benches.size(); k++) {
                benches.get(k).load(p);
                double[] needs = needs(benches.get(k).unit, spun.get(k).radps);
                out[2 * k] = needs[0];
                out[2 * k + 1] = needs[1];
            }
        };
    }

    /**
     * Voltage at the controller at full duty, current of the supply and current of the winding that
     * hold a speed: I = I₀ + κ K_v Ω², V = I R + Ω/K_v.
     */
    static double[] needs(double[] unit, double radps) {
        double kv = unit[FanUnit.KV];
        double drift =
                FanLaw.drift(unit[FanUnit.TORQUE_DRIFT], radps, unit[FanUnit.REFERENCE_SPEED]);
        double winding =
                unit[FanUnit.NO_LOAD]
                        + unit[FanUnit.NO_LOAD_SLOPE] * radps
                        + unit[FanUnit.TORQUE] * kv * radps * radps * drift;
        double volt = winding * unit[FanUnit.RESISTANCE] + radps / kv;
        return new double[] {volt, winding + unit[FanUnit.FIXED] / volt, winding};
    }

    private void fan(FanType type) {
        RigPath at = RigPath.of("fan types", type.name(), "rotor");
        Optional<Quantity> top = type.rotor().topSpeed();
        if (top.isEmpty()) {
            sheet.note(
                    "no top speed is declared for "
                            + type.name()
                            + ": without one there is nothing to prove it against");
            sheet.write(at.child("top speed"), "top speed: ________ rpm");
            return;
        }
        double radps = OVER * top.get().si();
        Optional<OneFan> declared = OneFan.declare(asked, type, doubts);
        declared.ifPresentOrElse(
                fan -> electrical(fan, radps),
                () -> sheet.note("no pack feeds a fan of type " + type.name()));
        throwsWhat(type, radps);
        balance(type, top.get().si());
        sheet.good(
                Sentence.words(type.name() + ": ")
                        .then(Measure.ROTATION, radps)
                        .then(" for ")
                        .then(Measure.TIME, HELD_S)
                        .then(
                                ", then nothing cracked, rubbed, whitened or longer: blades looked at"
                                        + " with a glass, tip gap as before"));
        sheet.write(at.child("top speed"), "top speed: ________ rpm (as proved, over 1.05)");
    }

    private void electrical(OneFan fan, double radps) {
        spun.add(new Spun(fan, radps));
        String name = fan.type().name();
        wanted.add(
                Wanted.of(
                        name + ", voltage at the controller, full throttle",
                        Measure.VOLTAGE,
                        Instruments.VOLTMETER,
                        LAW));
        wanted.add(
                Wanted.of(
                        name + ", current of the supply", Measure.CURRENT, Instruments.CLAMP, LAW));
        OneFan.Bench bench = fan.bench();
        bench.load(doubts.rows().table().nominal());
        double[] needs = needs(bench.unit, radps);
        OptionalDouble throttle = throttle(bench, radps);
        String pack = asked.rig().packs().get(fan.pack()).id().text();
        if (throttle.isPresent()) {
            sheet.step(
                    Sentence.words(name + " on pack " + pack + ", full: ")
                            .then(Measure.PERCENT, throttle.getAsDouble())
                            .then(" throttle gives ")
                            .then(Measure.ROTATION, radps)
                            .then("; go by the tachometer"));
        } else {
            bench.operate(1);
            sheet.step(
                    Sentence.words(name + " on pack " + pack + " comes to ")
                            .then(Measure.ROTATION, bench.speedRadps())
                            .then(", not to ")
                            .then(Measure.ROTATION, radps)
                            .then(": it needs a supply of ")
                            .then(Measure.VOLTAGE, needs[0])
                            .then(" at ")
                            .then(Measure.CURRENT, needs[1])
                            .then(", a stiff one with its own cut"));
        }
        bounds(fan.type(), bench, needs[0], radps);
    }

    /** Throttle at which the fan on its pack holds the speed; empty where it does not get there. */
    static OptionalDouble throttle(OneFan.Bench bench, double radps) {
        bench.operate(1);
        if (!(bench.speedRadps() >= radps)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                Roots.bracketed(
                        duty -> {
                            bench.operate(duty);
                            return bench.speedRadps() - radps;
                        },
                        0,
                        1,
                        1e-12));
    }

    /** What the controller would not bear. */
    private void bounds(FanType type, OneFan.Bench bench, double volt, double radps) {
        FanType.Controller controller = type.controller();
        double voltShare = asked.rig().limits().si(LimitName.CONTROLLER_VOLTAGE_SHARE);
        double turnShare = asked.rig().limits().si(LimitName.ELECTRICAL_SPEED_SHARE);
        controller
                .topVoltage()
                .filter(top -> volt > voltShare * top.si())
                .ifPresent(
                        top ->
                                sheet.step(
                                        Sentence.words(
                                                        "Not with its own controller: that voltage is"
                                                                + " above ")
                                                .then(Measure.PERCENT, voltShare)
                                                .then(" of its ")
                                                .then(Measure.VOLTAGE, top.si())));
        double hazardV = asked.rig().limits().si(LimitName.HAZARDOUS_VOLTAGE);
        if (volt > hazardV) {
            sheet.note(
                    Sentence.words("that is above ")
                            .then(Measure.VOLTAGE, hazardV)
                            .then(
                                    ", which counts as hazardous: guards, gloves, capacitors"
                                            + " discharged and measured before anyone touches ("
                                            + asked.rig()
                                                    .limits()
                                                    .origin(LimitName.HAZARDOUS_VOLTAGE)
                                            + ")"));
        }
        double[] needs = needs(bench.unit, radps);
        if (needs[2] > bench.unit[FanUnit.CURRENT_LIMIT]) {
            sheet.step(
                    Sentence.words("Not with its own controller: its current limit of ")
                            .then(Measure.CURRENT, bench.unit[FanUnit.CURRENT_LIMIT])
                            .then(" holds it below that speed"));
        }
        if (controller.topElectricalSpeed().isPresent() && type.motor().polePairs().isPresent()) {
            double most =
                    turnShare
                            * controller.topElectricalSpeed().get().si()
                            / type.motor().polePairs().getAsInt();
            if (radps > most) {
                sheet.step(
                        Sentence.words("Not with its own controller: it follows only to ")
                                .then(Measure.ROTATION, most));
            }
        }
    }

    private void throwsWhat(FanType type, double radps) {
        String name = type.name();
        FanType.Rotor rotor = type.rotor();
        if (rotor.bladeMass().isPresent() && rotor.bladeCentre().isPresent()) {
            double kg = rotor.bladeMass().get().si();
            double radiusM = rotor.bladeCentre().get().si();
            double mps = Fragment.speedMps(radiusM, radps);
            piece(name + ", a blade", kg, mps, Fragment.rootLoadN(kg, radiusM, radps));
        } else {
            sheet.note("blade mass and blade centre of " + name + " are not declared");
        }
        if (rotor.mass().isPresent() && rotor.inertia().isPresent()) {
            double kg = rotor.mass().get().si();
            double inertia = rotor.inertia().get().si();
            double mps = Fragment.sectorMps(inertia, kg, radps);
            piece(name + ", a third of the rotor", kg / 3, mps, kg / 3 * mps * radps);
            sheet.note(
                    Sentence.words(name + ": the whole rotor stores ")
                            .then(Measure.IMPACT_ENERGY, inertia * radps * radps / 2)
                            .then(" at that speed, J Ω²/2"));
        } else {
            sheet.note("mass and inertia of the rotor of " + name + " are not declared");
        }
    }

    /** What the grades of balance let it shake with at its top speed. */
    private void balance(FanType type, double topRadps) {
        Optional<Quantity> mass = type.rotor().mass();
        if (mass.isEmpty()) {
            return;
        }
        double kg = mass.get().si();
        sheet.good(
                Sentence.words(type.name() + " as it came shakes with at most ")
                        .then(Measure.THRUST, unbalanceN(kg, GOOD_MPS, topRadps))
                        .then(" once a revolution at top speed (G2.5); above ")
                        .then(Measure.THRUST, unbalanceN(kg, REJECT_MPS, topRadps))
                        .then(" it goes back (G6.3; ISO 21940-11, from memory)"));
    }

    /**
     * Force of an unbalance of grade G: its mass centre lies e = G/Ω off the axis, so that m e Ω² =
     * m G Ω, N.
     *
     * @param gradeMps G, m/s
     */
    static double unbalanceN(double massKg, double gradeMps, double radps) {
        return massKg * gradeMps * radps;
    }

    private void piece(String words, double kg, double mps, double pullN) {
        double joule = Fragment.energyJ(kg, mps);
        pieces.add(
                List.of(
                        Value.words("measuring-what", words),
                        Value.of("piece-mass", kg),
                        Value.of("piece-speed", mps),
                        Value.of("piece-energy", joule),
                        Value.of("piece-pull", pullN)));
        double hazardJ = asked.rig().limits().si(LimitName.FRAGMENT_ENERGY);
        if (joule >= hazardJ) {
            sheet.note(
                    Sentence.words(words + " carries more than the ")
                            .then(Measure.IMPACT_ENERGY, hazardJ)
                            .then(
                                    " that count as hazardous ("
                                            + asked.rig().limits().origin(LimitName.FRAGMENT_ENERGY)
                                            + ")"));
        }
    }

    private void words() {
        sheet.step(
                Sentence.words("Up in steps to the speed, ")
                        .then(Measure.TIME, HELD_S)
                        .then(" there, off, wait until it stands and ten minutes more. Once."));
        sheet.good("vibration no more after than before, at the same speed");
        sheet.note(
                "105 % of top speed loads a blade with 110 % of its pull. That it held once says"
                        + " little of fatigue: what was proved runs below "
                        + ThrustCard.percent(asked.rig().limits().si(LimitName.ROTOR_SPEED_SHARE))
                        + " of top speed.");
    }
}
