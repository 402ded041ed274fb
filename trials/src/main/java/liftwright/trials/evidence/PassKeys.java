package liftwright.trials.evidence;

import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;

/** The words of the file of a pass, format 1. */
final class PassKeys {

    private static final int MANY = 1_000_000;

    static final Key<Integer> FORMAT =
            required(
                    "liftwright pass",
                    new Whole("the format", PassText.FORMAT, PassText.FORMAT),
                    "Format of the file.",
                    "1");
    static final Key<Integer> NUMBER =
            required(
                    "number",
                    new Whole("the number of the pass", 1, Pass.MOST),
                    "Counts the passes of a folder.",
                    "17");
    static final Key<String> CARD =
            required("card", new Text("the name of a card"), "Which card.", "\"hop\"");
    static final Key<String> ON =
            required("on", new Text("a date as in 2026-03-14"), "The day.", "2026-03-14");
    static final Key<Pass.Outcome> OUTCOME =
            required("outcome", Word.of(Pass.Outcome.values(), ' '), "What came of it.", "passed");
    static final Key<List<Stated<String>>> BY =
            required(
                    "by",
                    new ListOf<>("names", new Text("a name"), 1, 20),
                    "Who signed.",
                    "[\"A. Wader\"]");
    static final Key<Integer> CLEAN_RUNS =
            required(
                    "clean runs",
                    new Whole("how many runs", 0, MANY),
                    "Runs in a row with nothing unexpected.",
                    "10");
    static final Key<String> RIG =
            required(
                    "rig",
                    new Text("the digest of a rig file"),
                    "Digest of the rig file and its tables.",
                    "\"sha256:…\"");
    static final Key<Integer> REVISION =
            required(
                    "revision",
                    new Whole("the number of the revision", 0, MANY),
                    "Revision of the rig.",
                    "3");
    static final Key<String> KILL_PROOF =
            open(
                    "kill proof",
                    new Text("what proved the kills"),
                    "What proved the kills that day.",
                    "\"sha256:…\"",
                    "none had to be proved");
    static final Key<String> NOTE =
            open("note", new Text("a note"), "What else was seen.", "\"gusty\"", "nothing");
    static final Key<Integer> COUNT =
            required(
                    "inputs counted",
                    new Whole("how many inputs", 0, Inputs.MOST),
                    "How many inputs stand below.",
                    "1707");

    /** Read by hand: there are more of them than entries of any list of a rig. */
    static final String INPUTS = "inputs";

    /** Texts that stand in quotes, so that nothing else can be made of them. */
    static final List<Key<?>> QUOTED = List.of(CARD, RIG, KILL_PROOF, NOTE);

    static final Section SECTION =
            Section.of(
                    "pass",
                    "What came of a test card.",
                    FORMAT,
                    NUMBER,
                    CARD,
                    ON,
                    OUTCOME,
                    BY,
                    CLEAN_RUNS,
                    RIG,
                    REVISION,
                    KILL_PROOF,
                    NOTE,
                    COUNT);

    private PassKeys() {}
}
