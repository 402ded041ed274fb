package liftwright.flight.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.flight.loops.Loop;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.pilot.Steered;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.Pushed;
import liftwright.quantity.Measure;

/** What was found, worst first. */
final class FlightFindings {

    /** Below this a loop is called thin; common practice. */
    private static final double THIN_RAD = Math.toRadians(30);

    /** A larger share of the time with a fan at an end of its range is told. */
    private static final double OFTEN = 0.05;

    private final List<Finding> found = new ArrayList<>();

    static List<Finding> refused(LoopDesign.Refused refused) {
        List<Finding> found = new ArrayList<>();
        found.add(
                Finding.of(
                        Severity.STOPS,
                        "loops-refused",
                        Sentence.words("no loops: " + refused.words()),
                        "each number that alone would do is told below"));
        for (LoopDesign.Would would : refused.would()) {
            found.add(
                    Finding.of(
                            Severity.NOTES,
                            "loops-would-need",
                            Sentence.words(
                                    String.format(
                                            Locale.ROOT,
                                            "%s would do at %.3g %s; it is %.3g",
                                            would.what(),
                                            would.to(),
                                            would.unit(),
                                            would.now())),
                            "with all other numbers as declared"));
        }
        return found;
    }

    /** Axis by axis, worst first. */
    static List<Finding> person(Steered steered) {
        List<Finding> found = new ArrayList<>();
        for (Steered.AboutAxis axis : steered.axes()) {
            Severity severity =
                    switch (axis.holds()) {
                        case EASILY -> Severity.NOTES;
                        case HARDLY -> Severity.WARNS;
                        case NOT -> Severity.STOPS;
                    };
            found.add(
                    Finding.of(
                            severity,
                            "steered-by-a-person",
                            Sentence.words(
                                            axis.axis().name().toLowerCase(Locale.ROOT)
                                                    + " "
                                                    + axis.holds().words()
                                                    + ": ")
                                    .then(Measure.ANGLE, axis.practisedPhaseRad())
                                    .then(" of phase are left to one in practice"),
                            "a crossover pilot with the usual delay, leaning or with the arms"));
        }
        found.sort(Comparator.comparing(Finding::severity));
        return found;
    }

    static List<Finding> of(
            LoopDesign.Granted granted,
            FlightOutcome shown,
            List<FlightTables.Held> held,
            List<FlightOutcome> drawn) {
        FlightFindings own = new FlightFindings();
        own.ended(shown, drawn);
        held.forEach(one -> own.limit(one));
        own.pushed(shown);
        own.loops(granted);
        own.supply(shown);
        own.found.sort(Comparator.comparing(Finding::severity));
        return own.found;
    }

    private void ended(FlightOutcome shown, List<FlightOutcome> drawn) {
        boolean flown =
                shown.end() == FlightOutcome.End.LANDED || shown.end() == FlightOutcome.End.REACHED;
        if (!flown) {
            String last = shown.events().isEmpty() ? "" : shown.events().getLast().words();
            found.add(
                    Finding.of(
                            shown.end() == FlightOutcome.End.LOST
                                            || shown.end() == FlightOutcome.End.CLOSE
                                    ? Severity.STOPS
                                    : Severity.WARNS,
                            "flight-ended",
                            Sentence.words("the flight is " + shown.end().words() + " at ")
                                    .then(Measure.TIME, shown.durationS())
                                    .then(last.isEmpty() ? "" : ": " + last),
                            "as the events tell"));
        }
        long lost = drawn.stream().filter(one -> one.end() == FlightOutcome.End.LOST).count();
        if (lost > 0) {
            found.add(
                    Finding.of(
                            Severity.STOPS,
                            "drawn-flights-lost",
                            Sentence.words(
                                    lost + " of " + drawn.size() + " drawn flights are lost"),
                            "tolerances as declared, ± 30 % of inertia and lag, other air"));
        }
    }

    private void pushed(FlightOutcome shown) {
        for (Pushed one : shown.pushed()) {
            found.add(
                    Finding.of(
                            Severity.WARNS,
                            "pushed-by-jets",
                            Sentence.words("jets of others push " + one.name() + " with up to ")
                                    .then(Measure.THRUST, one.mostN())
                                    .then(
                                            String.format(
                                                    Locale.ROOT,
                                                    ", %.0f %% of its weight, at ",
                                                    100 * one.weightShare()))
                                    .then(Measure.TIME, one.atS()),
                            "free jets on its body and across its intakes; they take of its thrust"
                                    + " too"));
        }
    }

    private void limit(FlightTables.Held one) {
        int beyond = one.beyond();
        if (one.isKept() && beyond == 0) {
            return;
        }
        Measure measure =
                switch (one.field()) {
                    case "flight-angle" -> Measure.ANGLE;
                    case "flight-speed" -> Measure.SPEED;
                    default -> Measure.LENGTH;
                };
        found.add(
                Finding.of(
                                one.isKept() ? Severity.WARNS : Severity.STOPS,
                                "limit-left",
                                Sentence.words(one.words() + " ")
                                        .then(measure, one.value(), one.band())
                                        .then(" against at most ")
                                        .then(measure, one.limit())
                                        .then(
                                                beyond == 0
                                                        ? ""
                                                        : "; beyond it in "
                                                                + beyond
                                                                + " of "
                                                                + one.drawn().length
                                                                + " drawn flights"),
                                "the profile's limit")
                        .against(
                                Value.of(one.field(), one.value(), one.band()),
                                new Finding.Limit(
                                        Value.of(one.field(), one.limit()), "the profile")));
    }

    private void loops(LoopDesign.Granted granted) {
        for (Loop loop : granted.loops()) {
            if (loop.worst().phaseMarginRad() < THIN_RAD) {
                found.add(
                        Finding.of(
                                Severity.WARNS,
                                "margin-thin",
                                Sentence.words(
                                                loop.axis().words()
                                                        + ", "
                                                        + loop.level().words()
                                                        + ": with ± 30 % of inertia and lag ")
                                        .then(Measure.ANGLE, loop.worst().phaseMarginRad())
                                        .then(" of phase margin are left"),
                                "bound by " + loop.bound()));
            }
        }
    }

    private void supply(FlightOutcome shown) {
        shown.first()
                .ifPresent(
                        end ->
                                found.add(
                                        Finding.of(
                                                Severity.WARNS,
                                                "supply-limit",
                                                Sentence.words(
                                                                "the first limit of supply or heat, ")
                                                        .then(
                                                                end.cause()
                                                                        .name()
                                                                        .toLowerCase(Locale.ROOT)
                                                                        .replace('_', ' '))
                                                        .then(", is reached at ")
                                                        .then(Measure.TIME, end.timeS()),
                                                "charge and heat as endurance counts them")));
        double share = shown.figures().saturatedShare();
        if (share > OFTEN) {
            found.add(
                    Finding.of(
                            Severity.WARNS,
                            "fans-at-their-end",
                            Sentence.words(
                                    String.format(
                                            Locale.ROOT,
                                            "in %.0f %% of the time in the air a fan gives all it"
                                                    + " can",
                                            100 * share)),
                            "what it lacks the others give, or the tilt"));
        }
    }
}
