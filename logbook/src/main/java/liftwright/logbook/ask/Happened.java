package liftwright.logbook.ask;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.logbook.ask.LogbookAnswer.About;
import liftwright.logbook.entry.Incident;
import liftwright.logbook.entry.Note;
import liftwright.logbook.store.Flaw;
import liftwright.logbook.store.StoredIncident;

/** Incidents: what is known of each, on one clock. */
public final class Happened {

    private Happened() {}

    /** All of them, a row each. */
    public static LogbookAnswer all(About about, List<StoredIncident> incidents) {
        var rows = new ArrayList<List<Value>>();
        incidents.forEach(one -> Shown.fact(rows, one.id().text(), one.entry().what()));
        return LogbookAnswer.of(
                about,
                Outcome.HOLDS,
                Sentence.words(
                        LogbookAnswer.counted(incidents.size(), "incident", "incidents")
                                + " in "
                                + about.folder()),
                List.of(),
                rows.isEmpty()
                        ? List.of()
                        : List.of(
                                new Section.Table(
                                        "incidents",
                                        "Incidents",
                                        List.of("log-fact", "log-said"),
                                        rows)));
    }

    /**
     * One of them.
     *
     * @param notes that were written later
     * @param flaws of its files and of the logs that it froze
     */
    public static LogbookAnswer of(
            About about, StoredIncident stored, List<Note> notes, List<Flaw> flaws) {
        Incident incident = stored.entry();
        var sections = new ArrayList<Section>();
        sections.add(facts(stored, notes));
        if (!incident.timeline().isEmpty()) {
            sections.add(timeline(incident));
        }
        if (!incident.causes().isEmpty()) {
            sections.add(causes(incident));
        }
        return LogbookAnswer.of(
                about,
                flaws.isEmpty() ? Outcome.HOLDS : Outcome.DOES_NOT_HOLD,
                Sentence.words(
                        "incident "
                                + stored.id()
                                + ": "
                                + incident.what()
                                + (flaws.isEmpty()
                                        ? "; its logs are as they were frozen"
                                        : "; not everything is as it was frozen")),
                LogbookAnswer.findings(flaws),
                sections);
    }

    private static Section.Table facts(StoredIncident stored, List<Note> notes) {
        Incident incident = stored.entry();
        var rows = new ArrayList<List<Value>>();
        Shown.fact(rows, "written down by", incident.by());
        incident.logs()
                .forEach(
                        log ->
                                Shown.fact(
                                        rows,
                                        "frozen log",
                                        log.test() + ", " + log.digest().orElse("not frozen")));
        Shown.fact(
                rows,
                "card that should have caught it",
                incident.card().map(card -> card.text()).orElse("none")
                        + (incident.why().isEmpty() ? "" : ": " + incident.why()));
        incident.clocks()
                .forEach(
                        clock ->
                                Shown.fact(
                                        rows,
                                        "clock " + clock.name(),
                                        "shifted by " + clock.shiftS() + " s, " + clock.how()));
        notes.forEach(note -> Shown.fact(rows, "later, " + note.date(), note.text()));
        Shown.fact(rows, "all files", stored.digest());
        return new Section.Table(
                "incident-facts", "What is known", List.of("log-fact", "log-said"), rows);
    }

    private static Section.Table timeline(Incident incident) {
        var rows = new ArrayList<List<Value>>();
        for (Incident.Event event : incident.inOrder()) {
            rows.add(
                    List.of(
                            Value.of("event-time", incident.timeS(event)),
                            Value.words("event", event.what()),
                            Value.words("event-clock", event.clock())));
        }
        return new Section.Table(
                "incident-timeline",
                "What was seen, on one clock",
                List.of("event-time", "event", "event-clock"),
                rows);
    }

    private static Section.Table causes(Incident incident) {
        var rows = new ArrayList<List<Value>>();
        for (Incident.Cause cause : incident.causes()) {
            rows.add(
                    List.of(
                            Value.words("incident-cause", cause.cause()),
                            Value.words("speaks-for", String.join("; ", cause.speaksFor())),
                            Value.words(
                                    "speaks-against", String.join("; ", cause.speaksAgainst()))));
        }
        return new Section.Table(
                "incident-causes",
                "Causes that were thought of",
                List.of("incident-cause", "speaks-for", "speaks-against"),
                rows);
    }
}
