package liftwright.logbook.entry;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.logbook.entry.Incident.Cause;
import liftwright.logbook.entry.Incident.Event;
import liftwright.logbook.entry.Incident.FrozenLog;
import liftwright.logbook.entry.Incident.OtherClock;
import liftwright.quantity.Quantity;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.text.Node;
import liftwright.trials.CardId;

/** Makes an incident of the tree of its file, or tells everything that is wrong with it. */
final class IncidentBinder {

    private final Problems problems;
    private final Stating stating;
    private final Set<String> clocks = new HashSet<>();

    IncidentBinder(Problems problems) {
        this.problems = problems;
        this.stating = new Stating(problems);
    }

    Optional<Incident> read(Node root) {
        return IncidentKeys.SECTION
                .read(root, Spot.top(root.span()), problems)
                .flatMap(this::incident);
    }

    private Optional<Incident> incident(Fields fields) {
        Optional<LocalDate> date = stating.date(fields, IncidentKeys.DATE);
        Optional<String> what = stating.words(fields, IncidentKeys.WHAT);
        Optional<CardId> card = stating.card(fields, IncidentKeys.CARD);
        List<FrozenLog> logs =
                Stating.sections(fields, IncidentKeys.LOGS).stream()
                        .flatMap(one -> log(one).stream())
                        .toList();
        List<OtherClock> others =
                Stating.sections(fields, IncidentKeys.CLOCKS).stream()
                        .flatMap(one -> clock(one).stream())
                        .toList();
        List<Event> events =
                Stating.sections(fields, IncidentKeys.TIMELINE).stream()
                        .flatMap(one -> event(one).stream())
                        .toList();
        List<Cause> causes =
                Stating.sections(fields, IncidentKeys.CAUSES).stream()
                        .flatMap(one -> cause(one).stream())
                        .toList();
        if (problems.hasErrors() || date.isEmpty() || what.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Incident(
                        date.get(),
                        what.get(),
                        fields.get(IncidentKeys.BY).orElse(""),
                        logs,
                        others,
                        events,
                        causes,
                        card,
                        fields.get(IncidentKeys.WHY).orElse("")));
    }

    private Optional<FrozenLog> log(Fields fields) {
        Optional<Stated<String>> stated = fields.stated(IncidentKeys.TEST);
        Optional<EntryId> test = stated.flatMap(name -> EntryId.parse(name.value()));
        if (stated.isPresent() && test.isEmpty()) {
            problems.add(
                    Code.UNKNOWN_WORD,
                    stated.get().spot(),
                    Problems.quote(stated.get().value()),
                    "the name of a test such as 2026-03-14-1",
                    "`liftwright log list` lists them.");
        }
        Optional<String> digest = stating.digest(fields, IncidentKeys.DIGEST);
        return test.map(id -> new FrozenLog(id, digest));
    }

    private Optional<OtherClock> clock(Fields fields) {
        Optional<String> name = stating.words(fields, IncidentKeys.NAME);
        Optional<Quantity> shift = fields.get(IncidentKeys.SHIFT);
        Optional<String> how = fields.get(IncidentKeys.HOW);
        if (name.isPresent() && !clocks.add(name.get())) {
            problems.add(
                    Code.DUPLICATE_ID,
                    fields.spotOf(IncidentKeys.NAME),
                    Problems.quote(name.get()) + " again",
                    "every clock once",
                    "");
        }
        return name.isEmpty() || shift.isEmpty() || how.isEmpty()
                ? Optional.empty()
                : Optional.of(new OtherClock(name.get(), shift.get().si(), how.get()));
    }

    private Optional<Event> event(Fields fields) {
        Optional<Quantity> time = fields.get(IncidentKeys.TIME);
        Optional<String> seen = stating.words(fields, IncidentKeys.SEEN);
        Optional<Stated<String>> clock = fields.stated(IncidentKeys.CLOCK);
        if (clock.isPresent() && !clocks.contains(clock.get().value())) {
            problems.add(
                    Code.NO_SUCH_PART,
                    clock.get().spot(),
                    "the clock " + Problems.quote(clock.get().value()),
                    "a clock of the list “clocks”",
                    "Leave it out for the clock of the incident.");
        }
        return time.isEmpty() || seen.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Event(
                                time.get().si(), clock.map(Stated::value).orElse(""), seen.get()));
    }

    private Optional<Cause> cause(Fields fields) {
        return stating.words(fields, IncidentKeys.CAUSE)
                .map(
                        cause ->
                                new Cause(
                                        cause,
                                        Stating.texts(fields, IncidentKeys.FOR),
                                        Stating.texts(fields, IncidentKeys.AGAINST)));
    }
}
