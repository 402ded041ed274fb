package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
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

/**
 * What lead inductance does to the controllers' capacitors within a millisecond, on full packs:
 * when a pack is plugged onto empty capacitors, and when all its fans are cut at full throttle.
 * Leads are taken at {@link FastEffects#HIGH_LEAD_HPM}. One finding an event and rating, about the
 * controller with the least margin; one note with the highest peak.
 */
final class FastFindings {

    private FastFindings() {}

    private enum Event {
        PLUG_IN("plug-in", "when a full pack is plugged in"),
        CUT("cut", "when all fans are cut at full throttle");

        private final String code;
        private final String when;

        Event(String code, String when) {
            this.code = code;
            this.when = when;
        }
    }

    private record Peak(Event event, LeadLoop loop, double volt) {}

    /** One peak against one rating. */
    private record Against(
            Peak peak, PartId fan, RigPath at, String what, LimitName name, double rating, double limit) {
        double margin() {
            return (limit - peak.volt) / limit;
        }
    }

    static List<Finding> of(Plant plant) {
        List<Peak> peaks = peaks(plant);
        List<Finding> findings = new ArrayList<>();
        for (Event event : Event.values()) {
            List<Against> all = new ArrayList<>();
            for (Peak peak : peaks) {
                if (peak.event == event) {
                    against(plant.rig(), peak, all);
                }
            }
            for (LimitName name :
                    List.of(
                            LimitName.CONTROLLER_VOLTAGE_SHARE,
                            LimitName.CAPACITOR_VOLTAGE_SHARE)) {
                all.stream()
                        .filter(one -> one.name == name && one.margin() < 0)
                        .min(Comparator.comparingDouble(Against::margin))
                        .map(worst -> exceeded(plant.rig(), worst))
                        .ifPresent(findings::add);
            }
        }
        peaks.stream()
                .max(Comparator.comparingDouble(Peak::volt))
                .map(FastFindings::note)
                .ifPresent(findings::add);
        return findings;
    }

    private static List<Peak> peaks(Plant plant) {
        double[] p = plant.parameters().nominal();
        SteadyState full = plant.state();
        plant.solve(p, Effects.ALL.withCharge(false), plant.workspace(), full);
        List<Peak> peaks = new ArrayList<>();
        for (LeadLoop loop : plant.leadLoops(p)) {
            double henry = loop.lengthM() * FastEffects.HIGH_LEAD_HPM;
            if (henry == 0) {
                continue; // no length declared: nothing to ring with
            }
            double ohm = loop.resistanceOhm();
            double farad = loop.capacitanceF();
            double source = loop.sourceV();
            peaks.add(
                    new Peak(
                            Event.PLUG_IN,
                            loop,
                            FastEffects.plugInPeakV(source, ohm, henry, farad)));
            double ampere = Math.max(0, full.packA(loop.pack()));
            peaks.add(
                    new Peak(
                            Event.CUT,
                            loop,
                            FastEffects.cutPeakV(
                                    source, source - ampere * ohm, ampere, ohm, henry, farad)));
        }
        return peaks;
    }

    private static void against(Rig rig, Peak peak, List<Against> into) {
        for (int number : peak.loop.fans()) {
            FanType type = rig.fans().get(number).type();
            RigPath at = RigPath.of("fan types", type.name(), "controller");
            PartId fan = rig.fans().get(number).id();
            add(
                    rig,
                    peak,
                    fan,
                    at.child("top voltage"),
                    "controller of ",
                    LimitName.CONTROLLER_VOLTAGE_SHARE,
                    type.controller().topVoltage(),
                    into);
            add(
                    rig,
                    peak,
                    fan,
                    at.child("capacitor voltage"),
                    "capacitors of ",
                    LimitName.CAPACITOR_VOLTAGE_SHARE,
                    type.controller().capacitorVoltage(),
                    into);
        }
    }

    private static void add(
            Rig rig,
            Peak peak,
            PartId fan,
            RigPath at,
            String what,
            LimitName name,
            Optional<Quantity> rating,
            List<Against> into) {
        rating.ifPresent(
                most ->
                        into.add(
                                new Against(
                                        peak,
                                        fan,
                                        at,
                                        what,
                                        name,
                                        most.si(),
                                        most.si() * rig.limits().si(name))));
    }

    private static Finding exceeded(Rig rig, Against worst) {
        Peak peak = worst.peak;
        return new Finding(
                peak.volt > worst.rating ? Severity.STOPS : Severity.WARNS,
                peak.event.code
                        + (worst.name == LimitName.CONTROLLER_VOLTAGE_SHARE
                                ? "-peak-controller"
                                : "-peak-capacitor"),
                Optional.of(worst.fan.text()),
                Optional.of(worst.at.toString()),
                Sentence.words("voltage at the " + worst.what + worst.fan + " " + peak.event.when + ": ")
                        .then(Measure.VOLTAGE, peak.volt)
                        .then(", above ")
                        .then(Measure.VOLTAGE, worst.limit),
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
                switch (peak.event) {
                    case PLUG_IN ->
                            "leads ring with empty capacitors; a precharge resistor keeps the peak at the pack's voltage";
                    case CUT ->
                            "the current in the leads has nowhere to go but the capacitors; shorter leads or more capacitance lower it";
                },
                List.of());
    }

    private static Finding note(Peak highest) {
        return new Finding(
                Severity.NOTES,
                "fast-effects",
                Optional.of(highest.loop.firstFan().text()),
                Optional.empty(),
                Sentence.words("highest peak at the controllers' capacitors: ")
                        .then(Measure.VOLTAGE, highest.volt)
                        .then(" " + highest.event.when + ", without precharge; leads of ")
                        .then(Measure.LENGTH, highest.loop.lengthM())
                        .then(" at 1 µH a metre, ")
                        .then(Measure.CAPACITANCE, highest.loop.capacitanceF()),
                Optional.of(Value.of("capacitor-peak", highest.volt)),
                Optional.empty(),
                "inductance of the leads is common practice, not declared; branches count as equal",
                List.of());
    }
}
