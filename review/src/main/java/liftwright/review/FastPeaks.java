package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import liftwright.physics.FastEffects;
import liftwright.plant.Effects;
import liftwright.plant.LeadLoop;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.quantity.Quantity;
import liftwright.rig.FanType;
import liftwright.rig.LimitName;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;

/**
 * How high lead inductance drives the controllers' inputs within a millisecond, on full packs: when
 * a pack is plugged in, and when all fans are cut at full throttle. Leads are taken at {@link
 * FastEffects#HIGH_LEAD_HPM}.
 *
 * @param rig it is about
 * @param all peaks, one a loop of leads and event
 * @param untold loops whose length or capacitance is not declared
 */
record FastPeaks(Rig rig, List<Peak> all, List<LeadLoop> untold) {

    FastPeaks {
        all = List.copyOf(all);
        untold = List.copyOf(untold);
    }

    static FastPeaks of(Plant plant) {
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
        return new FastPeaks(rig, peaks, untold);
    }

    /** The peaks of an event, each against each rating that its controllers declare. */
    List<Against> against(Event event) {
        return all.stream()
                .filter(peak -> peak.event == event)
                .flatMap(peak -> against(rig, peak))
                .toList();
    }

    /** What drives it there. */
    enum Event {
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

        String code() {
            return code;
        }

        String does() {
            return does;
        }

        String cause() {
            return cause;
        }
    }

    /**
     * @param startV at the capacitors before the event
     */
    record Peak(Event event, LeadLoop loop, double startV, double volt) {
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
    record Against(Peak peak, PartId fan, RigPath at, LimitName name, double rating, double limit) {
        double overLimit() {
            return peak.volt / limit;
        }

        double overRating() {
            return peak.volt / rating;
        }
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
}
