package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.numerics.Roots;
import liftwright.physics.FastEffects;
import liftwright.plant.Effects;
import liftwright.plant.LeadLoop;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.FanType;
import liftwright.rig.LimitName;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;

/**
 * What lead inductance does to the controllers' capacitors within a millisecond, on full packs:
 * when a pack is plugged in, and when all fans are cut at full throttle. Leads are taken at {@link
 * FastEffects#HIGH_LEAD_HPM}. One finding an event, about the controller with the least margin.
 *
 * <p>A peak at plug-in only warns: how a pack is plugged in is a habit of the crew, which the file
 * need not tell. A cut happens on every emergency.
 */
final class FastFindings {

    /** Capacitance is not searched for beyond this many times the declared one. */
    private static final double MOST_CAPACITANCE = 100;

    private FastFindings() {}

    private enum Event {
        PLUG_IN(
                "plug-in-peak",
                "plugging in a full pack drives ",
                "leads ring with capacitors that are not full: a pre-charge through a resistor keeps"
                        + " the peak near the pack's voltage (wiring/pre-charge)"),
        CUT(
                "cut-peak",
                "cutting all fans at full throttle drives ",
                "the current in the leads has nowhere to go but the capacitors");

        private final String code;
        private final String does;
        private final String cause;

        Event(String code, String does, String cause) {
            this.code = code;
            this.does = does;
            this.cause = cause;
        }
    }

    /**
     * @param startV at the capacitors before the event
     */
    private record Peak(Event event, LeadLoop loop, double startV, double volt) {
        static Peak of(Event event, LeadLoop loop, double startV) {
            return new Peak(
                    event, loop, startV, volt(loop, startV, loop.lengthM(), loop.capacitanceF()));
        }

        static double volt(LeadLoop loop, double startV, double lengthM, double farad) {
            return FastEffects.cutPeakV(
                    loop.sourceV(),
                    startV,
                    loop.currentA(),
                    loop.resistanceOhm(),
                    lengthM * FastEffects.HIGH_LEAD_HPM,
                    farad);
        }
    }

    /** One peak against one rating. */
    private record Against(
            Peak peak, PartId fan, RigPath at, LimitName name, double rating, double limit) {
        double overLimit() {
            return peak.volt / limit;
        }
    }

    static List<Finding> of(Plant plant) {
        Rig rig = plant.rig();
        double[] p = plant.parameters().nominal();
        SteadyState full = plant.state();
        plant.solve(p, Effects.ALL.withCharge(false), plant.workspace(), full);
        List<Peak> peaks = new ArrayList<>();
        List<LeadLoop> untold = new ArrayList<>();
        for (LeadLoop loop : plant.pluggedIn(p)) {
            if (loop.capacitanceF() == 0 || loop.lengthM() == 0) {
                untold.add(loop);
            } else {
                peaks.add(Peak.of(Event.PLUG_IN, loop, preChargedV(rig, loop)));
            }
        }
        for (LeadLoop loop : plant.cut(p, full)) {
            if (loop.capacitanceF() > 0 && loop.lengthM() > 0) {
                double sagged = loop.sourceV() - loop.currentA() * loop.resistanceOhm();
                peaks.add(Peak.of(Event.CUT, loop, sagged));
            }
        }
        List<Finding> findings = new ArrayList<>();
        for (Event event : Event.values()) {
            peaks.stream()
                    .filter(peak -> peak.event == event)
                    .flatMap(peak -> against(rig, peak))
                    .filter(one -> one.overLimit() > 1)
                    .max(
                            Comparator.comparingDouble(Against::overLimit)
                                    .thenComparing(Against::fan, Comparator.reverseOrder()))
                    .map(worst -> exceeded(rig, worst))
                    .ifPresent(findings::add);
        }
        if (findings.isEmpty()) {
            peaks.stream()
                    .max(Comparator.comparingDouble(Peak::volt))
                    .map(highest -> highest(rig, highest))
                    .ifPresent(findings::add);
        }
        cannotTell(rig, untold).ifPresent(findings::add);
        return findings;
    }

    private static double preChargedV(Rig rig, LeadLoop loop) {
        Optional<Wiring.PreCharge> path = rig.wiring().preCharge();
        if (path.isEmpty()) {
            return 0;
        }
        double timeConstantS = path.get().resistance().si() * loop.capacitanceF();
        double filled =
                path.get().time().map(time -> -Math.expm1(-time.si() / timeConstantS)).orElse(1.0);
        return filled * loop.sourceV();
    }

    private static Stream<Against> against(Rig rig, Peak peak) {
        return peak.loop.fans().stream()
                .map(number -> rig.fans().get(number))
                .flatMap(
                        fan -> {
                            FanType.Controller own = fan.type().controller();
                            RigPath at = RigPath.of("fan types", fan.type().name(), "controller");
                            return Stream.of(
                                            one(
                                                    rig,
                                                    peak,
                                                    fan.id(),
                                                    at.child("top voltage"),
                                                    LimitName.CONTROLLER_VOLTAGE_SHARE,
                                                    own.topVoltage()),
                                            one(
                                                    rig,
                                                    peak,
                                                    fan.id(),
                                                    at.child("capacitor voltage"),
                                                    LimitName.CAPACITOR_VOLTAGE_SHARE,
                                                    own.capacitorVoltage()))
                                    .flatMap(Optional::stream);
                        });
    }

    private static Optional<Against> one(
            Rig rig, Peak peak, PartId fan, RigPath at, LimitName name, Optional<Quantity> rating) {
        return rating.map(
                most ->
                        new Against(
                                peak, fan, at, name, most.si(), most.si() * rig.limits().si(name)));
    }

    private static Finding exceeded(Rig rig, Against worst) {
        Peak peak = worst.peak;
        boolean stops = peak.event == Event.CUT && peak.volt > worst.rating;
        return new Finding(
                stops ? Severity.STOPS : Severity.WARNS,
                peak.event.code,
                Optional.of(worst.fan.text()),
                Optional.of(worst.at.toString()),
                remedy(
                        Sentence.words(peak.event.does + "the input of " + worst.fan + " to ")
                                .then(Measure.VOLTAGE, peak.volt)
                                .then(", above ")
                                .then(Measure.VOLTAGE, worst.limit),
                        peak,
                        worst.limit),
                Optional.of(Value.of("capacitor-peak", peak.volt)),
                Optional.of(
                        new Finding.Limit(
                                Value.of("capacitor-peak", worst.limit),
                                String.format(
                                        Locale.ROOT,
                                        "%.0f %% of the declared rating, %s: %s",
                                        100 * worst.limit / worst.rating,
                                        worst.name.key(),
                                        rig.limits().origin(worst.name)))),
                peak.event.cause,
                List.of());
    }

    /** The lead length, and the capacitance, at which the peak would be the limit. */
    private static Sentence remedy(Sentence sentence, Peak peak, double limitV) {
        LeadLoop loop = peak.loop;
        Sentence told =
                sentence.then("; leads of ")
                        .then(Measure.LENGTH, loop.lengthM())
                        .then(" and ")
                        .then(Measure.CAPACITANCE, loop.capacitanceF());
        Optional<Double> length =
                where(
                        metre -> Peak.volt(loop, peak.startV, metre, loop.capacitanceF()) - limitV,
                        1e-3 * loop.lengthM(),
                        loop.lengthM());
        Optional<Double> farad =
                where(
                        more -> Peak.volt(loop, peak.startV, loop.lengthM(), more) - limitV,
                        loop.capacitanceF(),
                        MOST_CAPACITANCE * loop.capacitanceF());
        if (length.isPresent()) {
            told = told.then("; ").then(Measure.LENGTH, length.get()).then(" would not exceed it");
        }
        if (farad.isPresent()) {
            told =
                    told.then(length.isPresent() ? ", nor would " : "; ")
                            .then(Measure.CAPACITANCE, farad.get())
                            .then(length.isPresent() ? "" : " would not exceed it");
        }
        return told;
    }

    private static Optional<Double> where(DoubleUnaryOperator over, double low, double high) {
        return over.applyAsDouble(low) * over.applyAsDouble(high) < 0
                ? Optional.of(Roots.bracketed(over, low, high, 1e-6 * high))
                : Optional.empty();
    }

    private static Finding highest(Rig rig, Peak highest) {
        LeadLoop loop = highest.loop;
        PartId fan = rig.fans().get(loop.fans().getFirst()).id();
        return new Finding(
                Severity.NOTES,
                "fast-effects",
                Optional.of(fan.text()),
                Optional.empty(),
                Sentence.words(highest.event.does + "the input of " + fan + " to ")
                        .then(Measure.VOLTAGE, highest.volt)
                        .then(", the highest of such peaks; leads of ")
                        .then(Measure.LENGTH, loop.lengthM())
                        .then(" and ")
                        .then(Measure.CAPACITANCE, loop.capacitanceF()),
                Optional.of(Value.of("capacitor-peak", highest.volt)),
                Optional.empty(),
                "leads count 1 µH for each metre of run, out and back together: common practice",
                List.of());
    }

    /** Only where a rating is declared to hold a peak against. */
    private static Optional<Finding> cannotTell(Rig rig, List<LeadLoop> untold) {
        List<FanType> rated =
                untold.stream()
                        .flatMap(loop -> loop.fans().stream())
                        .map(fan -> rig.fans().get(fan).type())
                        .distinct()
                        .filter(
                                type ->
                                        type.controller().topVoltage().isPresent()
                                                || type.controller().capacitorVoltage().isPresent())
                        .toList();
        if (rated.isEmpty()) {
            return Optional.empty();
        }
        FanType type =
                rated.stream()
                        .filter(one -> one.controller().capacitance().isEmpty())
                        .findFirst()
                        .orElse(rated.getFirst());
        boolean noCapacitance = type.controller().capacitance().isEmpty();
        return Optional.of(
                new Finding(
                        Severity.NOTES,
                        "peaks-cannot-be-told",
                        Optional.of(type.name()),
                        Optional.of(
                                noCapacitance
                                        ? RigPath.of("fan types", type.name(), "controller")
                                                .toString()
                                        : "wiring"),
                        Sentence.words(
                                "how high plugging in and cutting drive the input of "
                                        + type.name()
                                        + " cannot be told: "
                                        + (noCapacitance
                                                ? "its controller declares no “capacitance”"
                                                : "its wiring declares no “run” with a length")),
                        Optional.empty(),
                        Optional.empty(),
                        "the peak follows from lead length and capacitance",
                        List.of()));
    }
}
