package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.numerics.Roots;
import liftwright.plant.LeadLoop;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.rig.FanType;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * What {@link FastPeaks} do to the controllers, as findings: one an event, about the controller
 * with the least margin.
 *
 * <p>A peak at plug-in only warns: how a pack is plugged in is a habit of the crew, which the file
 * need not tell. A cut happens on every emergency.
 */
final class FastFindings {

    /** Capacitance is not searched for beyond this many times the declared one. */
    private static final double MOST_CAPACITANCE = 100;

    private FastFindings() {}

    static List<Finding> of(Plant plant) {
        Rig rig = plant.rig();
        FastPeaks peaks = FastPeaks.of(plant);
        List<Finding> findings = new ArrayList<>();
        for (FastPeaks.Event event : FastPeaks.Event.values()) {
            peaks.against(event).stream()
                    .filter(one -> one.overLimit() > 1)
                    .max(
                            Comparator.comparingDouble(FastPeaks.Against::overLimit)
                                    .thenComparing(
                                            FastPeaks.Against::fan, Comparator.reverseOrder()))
                    .map(worst -> exceeded(rig, worst))
                    .ifPresent(findings::add);
        }
        if (findings.isEmpty()) {
            peaks.all().stream()
                    .max(Comparator.comparingDouble(FastPeaks.Peak::volt))
                    .map(highest -> highest(rig, highest))
                    .ifPresent(findings::add);
        }
        cannotTell(rig, peaks.untold()).ifPresent(findings::add);
        return findings;
    }

    private static Finding exceeded(Rig rig, FastPeaks.Against worst) {
        FastPeaks.Peak peak = worst.peak();
        boolean stops = peak.event() == FastPeaks.Event.CUT && peak.volt() > worst.rating();
        return Finding.of(
                        stops ? Severity.STOPS : Severity.WARNS,
                        peak.event().code(),
                        remedy(
                                Sentence.words(
                                                peak.event().does()
                                                        + "the input of "
                                                        + worst.fan()
                                                        + " to ")
                                        .then(Measure.VOLTAGE, peak.volt())
                                        .then(", above ")
                                        .then(Measure.VOLTAGE, worst.limit()),
                                peak,
                                worst.limit()),
                        peak.event().cause())
                .about(worst.fan().text())
                .at(worst.at().toString())
                .against(
                        Value.of("capacitor-peak", peak.volt()),
                        new Finding.Limit(
                                Value.of("capacitor-peak", worst.limit()),
                                String.format(
                                        Locale.ROOT,
                                        "%.0f %% of the declared rating, %s: %s",
                                        100 * worst.limit() / worst.rating(),
                                        worst.name().key(),
                                        rig.limits().origin(worst.name()))));
    }

    /** The lead length, and the capacitance, at which the peak would be the limit. */
    private static Sentence remedy(Sentence sentence, FastPeaks.Peak peak, double limitV) {
        LeadLoop loop = peak.loop();
        Sentence told =
                sentence.then("; leads of ")
                        .then(Measure.LENGTH, loop.lengthM())
                        .then(" and ")
                        .then(Measure.CAPACITANCE, loop.capacitanceF());
        Optional<Double> length =
                where(
                        metre ->
                                FastPeaks.Peak.volt(loop, peak.startV(), metre, loop.capacitanceF())
                                        - limitV,
                        1e-3 * loop.lengthM(),
                        loop.lengthM());
        Optional<Double> farad =
                where(
                        more ->
                                FastPeaks.Peak.volt(loop, peak.startV(), loop.lengthM(), more)
                                        - limitV,
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

    private static Finding highest(Rig rig, FastPeaks.Peak highest) {
        LeadLoop loop = highest.loop();
        PartId fan = rig.fans().get(loop.fans().getFirst()).id();
        return Finding.of(
                        Severity.NOTES,
                        "fast-effects",
                        Sentence.words(highest.event().does() + "the input of " + fan + " to ")
                                .then(Measure.VOLTAGE, highest.volt())
                                .then(", the highest of such peaks; leads of ")
                                .then(Measure.LENGTH, loop.lengthM())
                                .then(" and ")
                                .then(Measure.CAPACITANCE, loop.capacitanceF()),
                        "leads count 1 µH for each metre of run, out and back together: common practice")
                .about(fan.text())
                .judging(Value.of("capacitor-peak", highest.volt()));
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
                Finding.of(
                                Severity.NOTES,
                                "peaks-cannot-be-told",
                                Sentence.words(
                                        "how high plugging in and cutting drive the input of "
                                                + type.name()
                                                + " cannot be told: "
                                                + (noCapacitance
                                                        ? "its controller declares no “capacitance”"
                                                        : "its wiring declares no “run” with a length")),
                                "the peak follows from lead length and capacitance")
                        .about(type.name())
                        .at(
                                noCapacitance
                                        ? RigPath.of("fan types", type.name(), "controller")
                                                .toString()
                                        : "wiring"));
    }
}
