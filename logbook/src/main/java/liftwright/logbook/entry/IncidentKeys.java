package liftwright.logbook.entry;

import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;

/** The words of {@code incident.yaml}, format 1. */
final class IncidentKeys {

    static final Key<Integer> HEAD =
            required(
                    "liftwright incident",
                    new Whole("the format", 1, 1),
                    "Format of the file.",
                    "1");
    static final Key<String> DATE =
            required("date", new Text(Stating.DATE), "The day.", "2026-03-14");
    static final Key<String> WHAT =
            required("what", new Text("a sentence"), "What happened.", "\"left.3 stopped\"");
    static final Key<String> BY =
            open("by", new Text("a name"), "Who wrote it down.", "\"A. Wader\"", "not told");

    static final Key<String> TEST =
            required("test", new Text("the name of a test"), "A test.", "2026-03-14-1");
    static final Key<String> DIGEST =
            open(
                    "digest",
                    new Text("a digest"),
                    "Of the test, when it was frozen.",
                    "\"sha256:…\"",
                    "it is not frozen yet");
    static final Key<List<Stated<Fields>>> LOGS =
            open(
                    "logs",
                    ListOf.any(
                            "logs",
                            Section.of("frozen log", "A log that tells of it.", TEST, DIGEST)),
                    "Tests whose logs tell of it.",
                    "[{test: 2026-03-14-1}]",
                    "nothing was logged");

    static final Key<String> NAME =
            required("name", new Text("the name of a clock"), "What it is called.", "\"film\"");
    static final Key<Quantity> SHIFT =
            required("shift", Amount.any(Measure.TIME), "Added to its time.", "2.3 s");
    static final Key<String> HOW =
            required("how", new Text("how"), "How it was aligned.", "\"by the clap\"");
    static final Key<List<Stated<Fields>>> CLOCKS =
            open(
                    "clocks",
                    ListOf.any(
                            "clocks",
                            Section.of("other clock", "Another clock.", NAME, SHIFT, HOW)),
                    "Other clocks that times were read on.",
                    "[{name: \"film\", shift: 2.3 s, how: \"by the clap\"}]",
                    "there is one clock");

    static final Key<Quantity> TIME =
            required("time", Amount.any(Measure.TIME), "On its clock.", "12.4 s");
    static final Key<String> CLOCK =
            open(
                    "clock",
                    new Text("the name of a clock"),
                    "Which.",
                    "\"film\"",
                    "that of the incident");
    static final Key<String> SEEN =
            required("seen", new Text("what was seen"), "What.", "\"smoke at left.3\"");
    static final Key<List<Stated<Fields>>> TIMELINE =
            open(
                    "timeline",
                    ListOf.any(
                            "events",
                            Section.of("event", "Something that was seen.", TIME, CLOCK, SEEN)),
                    "What was seen, when.",
                    "[{time: 12.4 s, seen: \"smoke\"}]",
                    "nobody saw");

    static final Key<String> CAUSE =
            required("cause", new Text("a cause"), "In words.", "\"the joint at left.3\"");
    static final Key<List<Stated<String>>> FOR =
            open(
                    "for",
                    ListOf.any("observations", new Text("an observation")),
                    "What it explains.",
                    "[\"soot at the joint\"]",
                    "nothing");
    static final Key<List<Stated<String>>> AGAINST =
            open(
                    "against",
                    ListOf.any("observations", new Text("an observation")),
                    "What it does not explain.",
                    "[\"the current fell first\"]",
                    "nothing");
    static final Key<List<Stated<Fields>>> CAUSES =
            open(
                    "causes",
                    ListOf.any("causes", Section.of("cause", "Thought of.", CAUSE, FOR, AGAINST)),
                    "What was thought of.",
                    "[]",
                    "none was thought of yet");

    static final Key<String> CARD =
            open(
                    "card",
                    new Text("the name of a card"),
                    "The card that should have caught it.",
                    "\"frame\"",
                    "none does");
    static final Key<String> WHY =
            open("why", new Text("a reason"), "Why that one.", "\"it pulls every joint\"", "");

    static final Section SECTION =
            Section.of(
                    "incident",
                    "Something that went wrong.",
                    HEAD,
                    DATE,
                    WHAT,
                    BY,
                    LOGS,
                    CLOCKS,
                    TIMELINE,
                    CAUSES,
                    CARD,
                    WHY);

    private IncidentKeys() {}
}
