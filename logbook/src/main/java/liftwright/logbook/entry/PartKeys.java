package liftwright.logbook.entry;

import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.YesNo;

/** The words of the sheet of a part, format 1. */
final class PartKeys {

    static final Key<Integer> HEAD =
            required("liftwright part", new Whole("the format", 1, 1), "Format of the file.", "1");
    static final Key<String> PART =
            required("part", new Text("the id of a part"), "Its id in the rig.", "\"left.3\"");

    static final Key<String> DATE =
            required("date", new Text(Stating.DATE), "The day.", "2026-03-14");
    static final Key<String> SERIAL =
            open("serial", new Text("a serial number"), "Of the part.", "\"0412\"", "it has none");
    static final Key<Boolean> ACCEPTED =
            required("accepted", new YesNo(), "Whether it may be built in.", "yes");
    static final Key<String> BY =
            required("by", new Text("a name"), "Who decided.", "\"A. Wader\"");
    static final Key<String> NOTE =
            open("note", new Text("a note"), "What else was seen.", "\"a scratch\"", "nothing");

    static final Key<String> WHAT =
            required("what", new Text("what was measured"), "What.", "\"mass\"");
    static final Key<String> FOUND =
            required("found", new Text("an amount"), "What was found.", "\"0.418 kg ± 1 g\"");
    static final Key<String> DECLARED =
            open(
                    "declared",
                    new Text("an amount"),
                    "What it should be.",
                    "\"0.412 kg ± 2 %\"",
                    "nothing is declared");
    static final Key<List<Stated<Fields>>> MEASURED =
            open(
                    "measured",
                    ListOf.any(
                            "measurements",
                            Section.of("measurement", "What was measured.", WHAT, FOUND, DECLARED)),
                    "What was measured, against what is declared.",
                    "[]",
                    "nothing was measured");

    static final Key<List<Stated<Fields>>> INSPECTIONS =
            open(
                    "inspections",
                    ListOf.any(
                            "inspections",
                            Section.of(
                                    "inspection",
                                    "What was found on a day.",
                                    DATE,
                                    SERIAL,
                                    ACCEPTED,
                                    BY,
                                    MEASURED,
                                    NOTE)),
                    "Every time that it was looked at.",
                    "[]",
                    "none yet");
    static final Section SECTION =
            Section.of("sheet of a part", "How a part was found.", HEAD, PART, INSPECTIONS);

    private PartKeys() {}
}
