package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.Discharge;
import liftwright.plant.heat.HeatPart;
import liftwright.quantity.Measure;
import liftwright.rig.Element;
import liftwright.rig.LimitName;
import liftwright.rig.Pack;
import liftwright.rig.Rig;

/** What a builder should know of the heat of a flight. */
final class HeatFindings {

    private final Rig rig;
    private final HeatParts parts;
    private final HeatFlight flight;
    private final HeatRun run;

    private HeatFindings(Rig rig, HeatParts parts, HeatFlight flight, HeatRun run) {
        this.rig = rig;
        this.parts = parts;
        this.flight = flight;
        this.run = run;
    }

    static List<Finding> of(Rig rig, HeatParts parts, HeatFlight flight, HeatRun run) {
        var all = new HeatFindings(rig, parts, flight, run);
        List<Finding> findings = new ArrayList<>();
        findings.addAll(all.limits());
        findings.addAll(all.openings());
        findings.addAll(all.damaged());
        findings.addAll(all.cold());
        all.touch().ifPresent(findings::add);
        HeatBeyondLaws.of(parts, run).ifPresent(findings::add);
        all.firstLimit().ifPresent(findings::add);
        return findings;
    }

    /**
     * Each kind of part that passes its limit in what is asked, the first of its kind; soonest
     * first.
     */
    private List<Finding> limits() {
        record Timed(double atS, Finding finding) {}
        List<Timed> timed = new ArrayList<>();
        for (HeatParts.Group group : parts.groups()) {
            int first = -1;
            int count = 0;
            for (int part : group.parts()) {
                double at = askedAt(part);
                count += at < Double.POSITIVE_INFINITY ? 1 : 0;
                if (at < Double.POSITIVE_INFINITY && (first < 0 || at < askedAt(first))) {
                    first = part;
                }
            }
            if (first >= 0) {
                timed.add(new Timed(askedAt(first), limit(group, first, count)));
            }
        }
        timed.sort(Comparator.comparingDouble(Timed::atS));
        return timed.stream().map(Timed::finding).toList();
    }

    private double askedAt(int part) {
        return run.asked().heatReachedS(part).orElse(Double.POSITIVE_INFINITY);
    }

    private Finding limit(HeatParts.Group group, int part, int count) {
        double at = askedAt(part);
        HeatPart one = parts.part(part);
        double hottestK = run.asked().hottestK(part);
        boolean resting = at > run.flownS();
        Sentence sentence =
                Sentence.words(parts.what(part) + " (" + parts.id(part) + ") reaches ")
                        .then(Measure.TEMPERATURE, one.limitK())
                        .then(insulation(part));
        sentence =
                resting
                        ? sentence.then(" in the rest, ")
                                .then(Measure.TIME, at - run.flownS())
                                .then(" after the fans stop")
                        : sentence.then(" after ").then(Measure.TIME, at);
        sentence =
                sentence.then(", and comes to ")
                        .then(Measure.TEMPERATURE, hottestK)
                        .then(count > 1 ? "; so do " + (count - 1) + " like it" : "");
        return Finding.of(
                        Severity.STOPS,
                        "limit-" + HeatParts.word(group.kind()).replace(' ', '-'),
                        sentence,
                        why(part, resting))
                .about(parts.id(part))
                .at(one.declaredAt().toString())
                .against(
                        Value.of("hottest", hottestK),
                        new Finding.Limit(Value.of("hottest", one.limitK()), one.limitOrigin()));
    }

    /** What the limit of a wire is taken off. */
    private Sentence insulation(int part) {
        if (!(parts.element(part).orElse(null) instanceof Element.Run run)) {
            return Sentence.start();
        }
        Sentence of =
                Sentence.words(", ")
                        .then(
                                Measure.TEMPERATURE_DIFFERENCE,
                                rig.limits().si(LimitName.WIRE_BELOW_CLASS))
                        .then(" below its class of ")
                        .then(Measure.TEMPERATURE, run.covering().classK())
                        .then(" (" + run.covering().material().word());
        return of.then(
                run.covering().declared()
                        ? "),"
                        : ", the least heat-proof, since no insulation is declared),");
    }

    private String why(int part, boolean resting) {
        HeatPart one = parts.part(part);
        return switch (one.kind()) {
            case WIRE ->
                    "copper heats with the square of current, and what a wire this thin gives off"
                            + " grows only with its girth";
            case JOINT -> whyJoint(part);
            case FUSE, POLE ->
                    "its resistance heats with the square of current; wires beside it draw heat off only while they are cooler";
            case SWITCHES, CONTROLLER ->
                    resting
                            ? "the stream that cools it stops with the fan, and what its switches"
                                    + " stored goes into the sink"
                            : "its switches heat with the square of current, against the stream of"
                                    + " its own fan alone";
            case WINDING ->
                    "copper heats with the square of current, and all of it has to leave through"
                            + " the case";
            case MAGNETS ->
                    resting
                            ? "the stream that cools the case stops with the fan, and the winding is"
                                    + " warmer than the case"
                            : "the heat of iron and winding leaves through the case that they sit in";
            case CELLS ->
                    "cells heat with the square of current, and a pack hardly cools in minutes";
        };
    }

    private String whyJoint(int part) {
        Optional<Element> element = parts.element(part);
        if (element.isPresent()
                && element.get() instanceof Element.Joint joint
                && joint.wear().damage().si() > 1) {
            return "it is damaged: more resistance makes more heat, and no more is given off";
        }
        return hotterNeighbour(part)
                .map(
                        other ->
                                "the "
                                        + parts.what(other)
                                        + " beside it is hotter still and heats it")
                .orElse("its resistance heats with the square of current");
    }

    /** A run of the same chain that gets hotter than a joint. */
    private Optional<Integer> hotterNeighbour(int part) {
        HeatPart one = parts.part(part);
        for (int other = 0; other < parts.all().size(); other++) {
            HeatPart wire = parts.part(other);
            if (wire.kind() == HeatPart.Kind.WIRE
                    && wire.owner() == one.owner()
                    && run.asked().hottestK(other) > run.asked().hottestK(part)) {
                return Optional.of(other);
            }
        }
        return Optional.empty();
    }

    /** Fuses that open in what is asked. */
    private List<Finding> openings() {
        List<Finding> findings = new ArrayList<>();
        for (HeatParts.Group group : parts.groups()) {
            if (group.kind() != HeatPart.Kind.FUSE) {
                continue;
            }
            Optional<Integer> first =
                    group.parts().stream()
                            .filter(run.asked()::opened)
                            .min(Comparator.comparingDouble(this::openedS));
            first.ifPresent(part -> findings.add(opening(part)));
        }
        return findings;
    }

    private double openedS(int part) {
        return run.asked().openedS(part).orElse(Double.POSITIVE_INFINITY);
    }

    private Finding opening(int part) {
        return Finding.of(
                        Severity.STOPS,
                        "fuse-opens",
                        Sentence.words(parts.what(part) + " (" + parts.id(part) + ") opens after ")
                                .then(Measure.TIME, openedS(part))
                                .then("; what it feeds is dead from then on"),
                        "a fuse carries heat from one moment to the next, and its time is up")
                .about(parts.id(part))
                .at(parts.part(part).declaredAt().toString())
                .judging(Value.of("fuse-share", 1));
    }

    /** Joints that are declared damaged, with what that costs them. */
    private List<Finding> damaged() {
        List<Finding> findings = new ArrayList<>();
        for (HeatParts.Group group : parts.groups()) {
            int part = HeatWorst.inWhatIsAsked(parts, group, run);
            if (parts.element(part).orElse(null) instanceof Element.Joint joint
                    && joint.wear().damage().si() > 1) {
                double damage = joint.wear().damage().si();
                findings.add(
                        Finding.of(
                                        Severity.WARNS,
                                        "damaged-joint",
                                        Sentence.words(
                                                        parts.what(part)
                                                                + " ("
                                                                + parts.id(part)
                                                                + ") has ")
                                                .then(Measure.RATIO, damage)
                                                .then(
                                                        " times the resistance of a new one, and comes to ")
                                                .then(
                                                        Measure.TEMPERATURE,
                                                        run.asked().hottestK(part)),
                                        "damage grows with heat and heat with damage: take it apart, clean"
                                                + " or replace it")
                                .about(parts.id(part))
                                .at(group.declaredAt().toString())
                                .judging(Value.of("damage", damage)));
            }
        }
        return findings;
    }

    /** Packs colder at the start than cells should be. */
    private List<Finding> cold() {
        double leastK = rig.limits().si(LimitName.CELL_AT_START);
        List<Finding> findings = new ArrayList<>();
        Optional<Integer> coldest = Optional.empty();
        int count = 0;
        for (int part = 0; part < parts.all().size(); part++) {
            if (parts.part(part).kind() == HeatPart.Kind.CELLS && startK(part) < leastK) {
                count++;
                if (coldest.isEmpty() || startK(part) < startK(coldest.get())) {
                    coldest = Optional.of(part);
                }
            }
        }
        int cold = count;
        coldest.ifPresent(
                part -> {
                    Pack pack = rig.packs().get(parts.part(part).owner());
                    findings.add(
                            Finding.of(
                                            Severity.WARNS,
                                            "cold-cells",
                                            Sentence.words(
                                                            "the cells of "
                                                                    + pack.id()
                                                                    + " start at ")
                                                    .then(Measure.TEMPERATURE, startK(part))
                                                    .then(", colder than ")
                                                    .then(Measure.TEMPERATURE, leastK)
                                                    .then(
                                                            cold > 1
                                                                    ? "; so do those of "
                                                                            + (cold - 1)
                                                                            + " other packs"
                                                                    : ""),
                                            "cold cells have more resistance and sag further; warm the packs"
                                                    + " before the flight")
                                    .about(pack.id().text())
                                    .at(pack.declaredAt().child("temperature").toString())
                                    .against(
                                            Value.of("cell-at-start", startK(part)),
                                            new Finding.Limit(
                                                    Value.of("cell-at-start", leastK),
                                                    rig.limits().origin(LimitName.CELL_AT_START))));
                });
        return findings;
    }

    private double startK(int part) {
        return run.curve().getFirst().kelvin().get(part);
    }

    /** What no bare hand should touch afterwards: a note, since it stops no flight. */
    private Optional<Finding> touch() {
        double touchK = rig.limits().si(LimitName.TOUCH_TEMPERATURE);
        int hottest = -1;
        int count = 0;
        for (int part = 0; part < parts.all().size(); part++) {
            if (isWithinReach(parts.part(part).kind()) && run.asked().hottestK(part) > touchK) {
                count++;
                if (hottest < 0 || run.asked().hottestK(part) > run.asked().hottestK(hottest)) {
                    hottest = part;
                }
            }
        }
        if (hottest < 0) {
            return Optional.empty();
        }
        double kelvin = run.asked().hottestK(hottest);
        return Optional.of(
                Finding.of(
                                Severity.NOTES,
                                "hot-to-touch",
                                Sentence.words(
                                                (count == 1
                                                                ? "one part gets"
                                                                : count + " parts get")
                                                        + " hotter than bare skin bears, the hottest "
                                                        + parts.what(hottest)
                                                        + " ("
                                                        + parts.id(hottest)
                                                        + ") with ")
                                        .then(Measure.TEMPERATURE, kelvin),
                                "metal at this temperature burns at a touch; insulation over it is somewhat"
                                        + " cooler")
                        .about(parts.id(hottest))
                        .at(parts.part(hottest).declaredAt().toString())
                        .against(
                                Value.of("hottest", kelvin),
                                new Finding.Limit(
                                        Value.of("hottest", touchK),
                                        rig.limits().origin(LimitName.TOUCH_TEMPERATURE))));
    }

    /** Junctions and windings lie inside something. */
    private static boolean isWithinReach(HeatPart.Kind kind) {
        return switch (kind) {
            case WIRE, JOINT, FUSE, POLE, CONTROLLER, MAGNETS, CELLS -> true;
            case SWITCHES, WINDING -> false;
        };
    }

    private Optional<Finding> firstLimit() {
        return run.first()
                .map(
                        (Discharge.End end) ->
                                Finding.of(
                                                Severity.NOTES,
                                                "first-limit",
                                                Sentence.words(
                                                                CauseWords.told(rig, parts, end)
                                                                        + " comes first, after ")
                                                        .then(
                                                                Measure.TIME,
                                                                flight.airS(end.timeS()))
                                                        .then(" of " + flight.task().words() + ": ")
                                                        .then(CauseWords.limit(rig, parts, end)),
                                                CauseWords.why(end.cause()))
                                        .about(
                                                end.part()
                                                        .map(
                                                                part ->
                                                                        CauseWords.part(
                                                                                rig,
                                                                                parts,
                                                                                end.cause(),
                                                                                part)))
                                        .judging(
                                                Value.of(
                                                        "time-to-limit",
                                                        flight.airS(end.timeS()))));
    }
}
