package liftwright.review.wiring;

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
import liftwright.physics.Inrush;
import liftwright.plant.LeadLoop;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/**
 * The current that fills the controllers' capacitors when a full pack meets them, and what a
 * pre-charge has to bear. The voltage peak of the same event is another finding.
 */
final class Capacitors {

    /** Most of the voltage that may be left across a contactor as it closes: common practice. */
    static final double LEFT_SHARE = 0.05;

    /** Time within which a suggested pre-charge gets there, s. */
    private static final double SUGGESTED_S = 1;

    private Capacitors() {}

    static List<Finding> findings(Plant plant) {
        Rig rig = plant.rig();
        List<LeadLoop> loops =
                plant.pluggedIn(plant.parameters().nominal()).stream()
                        .filter(loop -> loop.capacitanceF() > 0)
                        .toList();
        if (loops.isEmpty()) {
            return List.of(); // that capacitance is missing is told with the voltage peaks
        }
        List<Finding> findings = new ArrayList<>();
        Optional<Wiring.PreCharge> path = rig.wiring().preCharge();
        if (path.isPresent()) {
            LeadLoop most =
                    loops.stream()
                            .max(Comparator.comparingDouble(LeadLoop::capacitanceF))
                            .orElseThrow();
            findings.add(resistor(rig, most, path.get()));
            tooShort(rig, most, path.get()).ifPresent(findings::add);
        } else {
            loops.stream()
                    .filter(loop -> loop.lengthM() > 0)
                    .max(Comparator.comparingDouble(Capacitors::peakA))
                    .ifPresent(loop -> findings.add(unlimited(rig, loop)));
        }
        return findings;
    }

    /** At the least inductance of its leads: there the current is highest. */
    static double peakA(LeadLoop loop) {
        return FastEffects.inrushPeakA(
                loop.sourceV(),
                loop.resistanceOhm(),
                loop.lengthM() * FastEffects.LOW_LEAD_HPM,
                loop.capacitanceF());
    }

    static double storedJ(LeadLoop loop) {
        return Inrush.energyJ(loop.capacitanceF(), loop.sourceV());
    }

    private static String joule(LeadLoop loop) {
        return String.format(Locale.ROOT, "%.1f J", storedJ(loop));
    }

    private static Finding unlimited(Rig rig, LeadLoop loop) {
        boolean contacts =
                rig.wiring().chains().stream()
                        .flatMap(chain -> chain.elements().stream())
                        .anyMatch(Element.Pole.class::isInstance);
        double ohm = Inrush.preChargeOhm(SUGGESTED_S, loop.capacitanceF(), 1 - LEFT_SHARE);
        double peak = peakA(loop);
        return Finding.of(
                        contacts ? Severity.WARNS : Severity.NOTES,
                        "inrush",
                        Sentence.words(
                                        contacts
                                                ? "a contactor that closes onto empty capacitors carries "
                                                : "plugging a full pack onto empty capacitors drives ")
                                .then(Measure.CURRENT, peak)
                                .then(
                                        " for a moment and burns "
                                                + joule(loop)
                                                + " in contacts and leads; a pre-charge through ")
                                .then(Measure.RESISTANCE, ohm)
                                .then(" leaves 5 % of the voltage after ")
                                .then(Measure.TIME, SUGGESTED_S)
                                .then(" and bears ")
                                .then(
                                        Measure.POWER,
                                        loop.sourceV() * Inrush.peakA(loop.sourceV(), ohm))
                                .then(" at first"),
                        "capacitors that are empty are a short for a moment: sparks pit plugs and weld"
                                + " contacts; leads count 0.6 µH for each metre, common practice")
                .about(fan(rig, loop))
                .at("wiring")
                .judging(Value.of("inrush-current", peak));
    }

    private static Finding resistor(Rig rig, LeadLoop loop, Wiring.PreCharge path) {
        double ohm = path.resistance().si();
        double fullS = Inrush.fillS(ohm, loop.capacitanceF(), 1 - LEFT_SHARE);
        double watt = loop.sourceV() * Inrush.peakA(loop.sourceV(), ohm);
        return Finding.of(
                        Severity.NOTES,
                        "pre-charge",
                        Sentence.words("the pre-charge resistor takes ")
                                .then(Measure.POWER, watt)
                                .then(" at first and " + joule(loop) + " each time; after ")
                                .then(Measure.TIME, fullS)
                                .then(
                                        " it leaves 5 % of the voltage; onto a short it would take the first")
                                .then(" power for as long as it acts"),
                        "as much energy goes into the resistor as into the capacitors: read its pulse"
                                + " rating")
                .about(fan(rig, loop))
                .at("wiring/pre-charge")
                .judging(Value.of("pre-charge-power", watt));
    }

    private static Optional<Finding> tooShort(Rig rig, LeadLoop loop, Wiring.PreCharge path) {
        Optional<Double> left =
                path.time()
                        .map(Quantity::si)
                        .map(
                                time ->
                                        Math.exp(
                                                -time
                                                        / (path.resistance().si()
                                                                * loop.capacitanceF())));
        return left.filter(share -> share > LEFT_SHARE)
                .map(
                        share ->
                                Finding.of(
                                                Severity.WARNS,
                                                "pre-charge-short",
                                                Sentence.words("the pre-charge ends while ")
                                                        .then(Measure.PERCENT, share)
                                                        .then(
                                                                " of the voltage still stands across the"
                                                                        + " contact that closes; it needs ")
                                                        .then(
                                                                Measure.TIME,
                                                                Inrush.fillS(
                                                                        path.resistance().si(),
                                                                        loop.capacitanceF(),
                                                                        1 - LEFT_SHARE)),
                                                "what is left drives an inrush through the contact")
                                        .about(fan(rig, loop))
                                        .at("wiring/pre-charge/for")
                                        .against(
                                                Value.of("pre-charge-left", share),
                                                new Finding.Limit(
                                                        Value.of("pre-charge-left", LEFT_SHARE),
                                                        "common practice")));
    }

    private static String fan(Rig rig, LeadLoop loop) {
        return rig.fans().get(loop.fans().getFirst()).id().text();
    }
}
