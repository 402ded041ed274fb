package liftwright.logbook.entry;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import liftwright.trials.CardId;

/**
 * Something that went wrong: what is known, held fast before anybody explains it.
 *
 * @param date the day
 * @param what happened, in a sentence
 * @param by who wrote it down; may be empty
 * @param logs tests whose logs tell of it, frozen by their digests
 * @param clocks other clocks that its timeline was read on
 * @param timeline in the order in which it was written
 * @param causes that were thought of, each with what speaks for it and against it
 * @param card that should have caught it; empty where none does
 * @param why that card, or why none; may be empty
 */
public record Incident(
        LocalDate date,
        String what,
        String by,
        List<FrozenLog> logs,
        List<OtherClock> clocks,
        List<Event> timeline,
        List<Cause> causes,
        Optional<CardId> card,
        String why) {

    public Incident {
        logs = List.copyOf(logs);
        clocks = List.copyOf(clocks);
        timeline = List.copyOf(timeline);
        causes = List.copyOf(causes);
    }

    /** The same with its logs frozen. */
    public Incident with(List<FrozenLog> frozen) {
        return new Incident(date, what, by, frozen, clocks, timeline, causes, card, why);
    }

    /**
     * @param test in this logbook
     * @param digest of it; empty until it is frozen
     */
    public record FrozenLog(EntryId test, Optional<String> digest) {}

    /**
     * @param name such as {@code film}
     * @param shiftS added to its time to get that of the incident, s
     * @param how it was aligned, in words
     */
    public record OtherClock(String name, double shiftS, String how) {}

    /**
     * @param timeS on its clock, s
     * @param clock name of a clock; empty for that of the incident
     * @param what was seen
     */
    public record Event(double timeS, String clock, String what) {}

    /**
     * @param cause in words
     * @param speaksFor what was observed that it explains
     * @param speaksAgainst what was observed that it does not
     */
    public record Cause(String cause, List<String> speaksFor, List<String> speaksAgainst) {
        public Cause {
            speaksFor = List.copyOf(speaksFor);
            speaksAgainst = List.copyOf(speaksAgainst);
        }
    }

    /** Time of an event on the one clock, s. */
    public double timeS(Event event) {
        return event.timeS()
                + clocks.stream()
                        .filter(clock -> clock.name().equals(event.clock()))
                        .mapToDouble(OtherClock::shiftS)
                        .sum();
    }

    /** All events in the order in which they happened. */
    public List<Event> inOrder() {
        return timeline.stream().sorted(Comparator.comparingDouble(this::timeS)).toList();
    }
}
