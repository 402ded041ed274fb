package liftwright.trials.proof;

import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.answer.Outcome;
import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;
import liftwright.rig.table.KillLog.Signal;

/** The words of a file that holds the proof of the kills, format 1. */
final class ProofKeys {

    static final int FORMAT = 1;

    private static final Range TIMES = Range.between(0, 1000);

    static final Key<Integer> HEAD =
            required(
                    "liftwright kill proof",
                    new Whole("the format", FORMAT, FORMAT),
                    "Format of the file.",
                    "1");
    static final Key<String> DATE =
            required(
                    "date",
                    new Text(WrittenDate.EXPECTED),
                    "Day on which the kills were pressed.",
                    "2026-05-02");
    static final Key<String> RIG =
            required("rig", new Text("a digest"), "SHA-256 of the rig.", "00ff…");
    static final Key<String> LOG =
            required("log", new Text("a file name"), "The log.", "kills.csv");
    static final Key<String> LOG_DIGEST =
            required("log digest", new Text("a digest"), "SHA-256 of the log.", "00ff…");
    static final Key<Signal> SIGNAL =
            required("read from", Word.of(Signal.values(), ' '), "What was logged.", "thrust");
    static final Key<Quantity> LIMIT =
            required(
                    "limit",
                    Amount.positive(Measure.TIME),
                    "From the press to a tenth of the thrust.",
                    "0.5 s");

    static final Key<Quantity> FROM =
            required("from", Amount.of(Measure.TIME, TIMES), "No sooner.", "0.21 s");
    static final Key<Quantity> TO =
            required("to", Amount.of(Measure.TIME, TIMES), "No later.", "0.24 s");
    static final Section SPAN = Section.of("span", "Between two times.", FROM, TO);

    static final Key<String> PATH =
            required("path", new Text("a way to stop"), "Name of the way to stop.", "remote");
    static final Key<Integer> PRESSES =
            required("presses", new Whole("the presses", 0, 20_000), "How many were timed.", "3");
    static final Key<Fields> HALF =
            open(
                    "half",
                    SPAN,
                    "Until half of the thrust was left, the worst press.",
                    "{from: 0.21 s, to: 0.24 s}",
                    "no press was timed");
    static final Key<Fields> TENTH =
            open(
                    "tenth",
                    SPAN,
                    "Until a tenth was left, the worst press.",
                    "{from: 0.31 s, to: 0.36 s}",
                    "no press was timed");
    static final Key<Outcome> OUTCOME =
            required("outcome", new Word<>(outcomes()), "Against the limit.", "met");
    static final Key<List<Stated<String>>> REASONS =
            open(
                    "reasons",
                    ListOf.any("reasons", new Text("a reason")),
                    "What is to be known of it.",
                    "[not pressed in this log]",
                    "nothing more is to be known");
    static final Section PATH_SECTION =
            Section.of("path", "One way to stop.", PATH, PRESSES, HALF, TENTH, OUTCOME, REASONS);
    static final Key<List<Stated<Fields>>> PATHS =
            required(
                    "paths",
                    ListOf.any("ways to stop", PATH_SECTION),
                    "Every way to stop that the rig declares.",
                    "[]");

    static final Section SECTION =
            Section.of(
                    "kill proof",
                    "What a log of pressed kills shows.",
                    HEAD,
                    DATE,
                    RIG,
                    LOG,
                    LOG_DIGEST,
                    SIGNAL,
                    LIMIT,
                    PATHS);

    private ProofKeys() {}

    private static Map<String, Outcome> outcomes() {
        var words = new LinkedHashMap<String, Outcome>();
        for (Outcome outcome :
                List.of(Outcome.HOLDS, Outcome.DOES_NOT_HOLD, Outcome.CANNOT_BE_TOLD)) {
            words.put(outcome.label(), outcome);
        }
        return words;
    }
}
