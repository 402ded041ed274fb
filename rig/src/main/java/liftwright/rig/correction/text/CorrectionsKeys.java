package liftwright.rig.correction.text;

import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Corrections;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;

/** The words of the file of corrections, format 1. */
final class CorrectionsKeys {

    static final int FORMAT_NUMBER = 1;

    static final String LOGARITHMS = "in logarithms";
    static final String PLAIN = "as it is";

    static final Key<String> TEST_ID =
            required("test", new Text("the name of a test"), "Which test.", "\"2026-03-14-1\"");
    static final Key<String> TEST_DIGEST =
            required(
                    "digest",
                    new Text("the digest of a recording"),
                    "Digest of its recording.",
                    "\"sha256:…\"");
    static final Section TEST =
            Section.of("test", "A test that a correction rests on.", TEST_ID, TEST_DIGEST);

    static final Key<String> PARAMETER =
            required(
                    "parameter",
                    new Text("the name of a parameter"),
                    "Path of the value in the rig file, behind the id of the part where each part"
                            + " has its own.",
                    "\"left.3: fan types/F140/scatter\"");
    static final Key<String> LABEL =
            required("label", new Text("words"), "What it is.", "\"scatter of left.3\"");
    static final Key<String> DECLARED =
            required(
                    "declared",
                    new Text("a value with its unit"),
                    "What the rig file declared.",
                    "\"1.0 ± 0.04 each\"");
    static final Key<String> VALUE =
            required("value", new Text("a value with its unit"), "What was found.", "\"0.93\"");
    static final Key<Boolean> DRAWN =
            required("drawn", drawn(), "How its doubt is spread.", LOGARITHMS);
    static final Key<String> DEVIATION =
            required(
                    "deviation",
                    new Text("a number no less than 0"),
                    "Standard deviation: a share of the value where it is drawn in logarithms, else"
                            + " in its unit.",
                    "0.01");
    static final Key<List<Stated<String>>> CORRELATIONS =
            open(
                    "correlations",
                    new ListOf<>("numbers from −1 to 1", new Text("a number"), 0, Correction.MOST),
                    "Correlation with each value before it.",
                    "[0.31, -0.2]",
                    "it is the first");
    static final Section FOUND =
            Section.of(
                    "found",
                    "A value that tests found.",
                    PARAMETER,
                    LABEL,
                    DECLARED,
                    VALUE,
                    DRAWN,
                    DEVIATION,
                    CORRELATIONS);

    static final Key<String> NAME =
            required("name", new Text("a name"), "What the group is called.", "\"left.3\"");
    static final Key<List<Stated<Fields>>> TESTS =
            required(
                    "tests",
                    new ListOf<>("tests", TEST, 1, ListOf.LONGEST),
                    "What it rests on.",
                    "[{test: \"2026-03-14-1\", digest: \"sha256:…\"}]");
    static final Key<String> HELD_OUT =
            open(
                    "held-out residual",
                    new Text("a number no less than 0"),
                    "Root mean square of what a test that the fit had not seen missed, over what"
                            + " was expected.",
                    "1.1",
                    "no test was held out");
    static final Key<String> DISTANCE =
            required(
                    "distance",
                    new Text("a number no less than 0"),
                    "How far it is from what was declared, in standard deviations of that.",
                    "2.3");
    static final Key<Map<String, Stated<String>>> SERIALS =
            open(
                    "serials",
                    new MapOf<>(
                            "serial numbers by part",
                            new Text("a serial number"),
                            MapOf.Names.OF_PARTS),
                    "Serial number of each part that it is about; empty where the part had none.",
                    "{left.3: \"F-17\"}",
                    "it is about no single part");
    static final Key<List<Stated<Fields>>> VALUES =
            required(
                    "found",
                    new ListOf<>("values", FOUND, 1, Correction.MOST),
                    "What was found together.",
                    "[…]");
    static final Section GROUP =
            Section.of(
                    "correction",
                    "Values that were found together.",
                    NAME,
                    TESTS,
                    HELD_OUT,
                    DISTANCE,
                    SERIALS,
                    VALUES);

    static final Key<Integer> FORMAT =
            required(
                    "liftwright corrections",
                    new Whole("the format", FORMAT_NUMBER, FORMAT_NUMBER),
                    "Format of the file.",
                    "1");
    static final Key<String> RIG =
            required(
                    "rig",
                    new Text("the digest of a rig file"),
                    "Digest of the rig file and its tables that the fit started from.",
                    "\"sha256:…\"");
    static final Key<Integer> REVISION =
            required(
                    "revision",
                    new Whole("the number of the revision", 0, 1_000_000),
                    "Revision of that rig.",
                    "3");
    static final Key<List<Stated<Fields>>> GROUPS =
            required(
                    "corrections",
                    new ListOf<>("corrections", GROUP, 1, Corrections.MOST),
                    "What was found.",
                    "[…]");
    static final Key<String> SEAL =
            required(
                    "seal",
                    new Text("the digest of what is said above"),
                    "Tells whether somebody edited the file.",
                    "\"sha256:…\"");

    static final Section FILE =
            Section.of(
                    "corrections",
                    "What tests found in place of what a rig file declares.",
                    FORMAT,
                    RIG,
                    REVISION,
                    GROUPS,
                    SEAL);

    private CorrectionsKeys() {}

    private static Word<Boolean> drawn() {
        var words = new LinkedHashMap<String, Boolean>();
        words.put(LOGARITHMS, true);
        words.put(PLAIN, false);
        return new Word<>(words);
    }
}
