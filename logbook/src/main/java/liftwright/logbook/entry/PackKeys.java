package liftwright.logbook.entry;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
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

/** The words of the life sheet of a pack, format 1. */
final class PackKeys {

    private static final String USUAL = "common practice";
    private static final int MANY_DAYS = 10_000;

    static final Key<Integer> HEAD =
            required("liftwright pack", new Whole("the format", 1, 1), "Format of the file.", "1");
    static final Key<String> PACK =
            required("pack", new Text("the id of a pack"), "Its id in the rig.", "\"p.1\"");
    static final Key<String> SERIAL =
            open("serial", new Text("a serial number"), "Of this pack.", "\"0412\"", "unknown");
    static final Key<Quantity> COEFFICIENT =
            required(
                    "temperature coefficient",
                    Amount.of(Measure.KELVIN, Range.ANY),
                    "B of R = R25 · exp(B (1/T − 1/298.15 K)).",
                    "2000 K");
    static final Key<Quantity> NEW_RESISTANCE =
            open(
                    "new resistance",
                    Amount.positive(Measure.RESISTANCE),
                    "Of the whole pack at 25 °C when it was new.",
                    "21 mΩ",
                    "the first row that has one");
    static final Key<Quantity> NEW_CAPACITY =
            open(
                    "new capacity",
                    Amount.positive(Measure.CHARGE),
                    "When it was new.",
                    "16 Ah",
                    "the first row that has one");

    static final Key<Quantity> RETIRE_RESISTANCE =
            defaulted(
                    "resistance",
                    Amount.of(Measure.SHARE, Range.between(1, 10)),
                    "150 %",
                    USUAL,
                    "Of that when new, at which it goes.",
                    "150 %");
    static final Key<Quantity> RETIRE_CAPACITY =
            defaulted(
                    "capacity",
                    Amount.of(Measure.SHARE, Range.SHARE),
                    "80 %",
                    USUAL,
                    "Of that when new, below which it goes.",
                    "80 %");
    static final Key<Quantity> RETIRE_SWELLING =
            defaulted(
                    "swelling",
                    Amount.of(Measure.SHARE, Range.SHARE),
                    "5 %",
                    USUAL,
                    "Growth of its thickness at which it goes.",
                    "5 %");
    static final Key<Integer> QUARANTINE =
            defaulted(
                    "days after a crash",
                    new Whole("days", 0, MANY_DAYS),
                    "1",
                    USUAL,
                    "Whole days after that of a crash on which it is not used.",
                    "1");
    static final Key<Fields> RETIRE =
            open(
                    "retire at",
                    Section.of(
                            "retire rule",
                            "When it has to go.",
                            RETIRE_RESISTANCE,
                            RETIRE_CAPACITY,
                            RETIRE_SWELLING,
                            QUARANTINE),
                    "When it has to go.",
                    "{resistance: 150 %, capacity: 80 %, swelling: 5 %, days after a crash: 1}",
                    "the usual limits");

    static final Key<String> DATE =
            required("date", new Text(Stating.DATE), "The day.", "2026-03-14");
    static final Key<Quantity> RESISTANCE =
            open(
                    "resistance",
                    Amount.positive(Measure.RESISTANCE),
                    "Of the whole pack.",
                    "23 mΩ ± 3 %",
                    "not measured");
    static final Key<Quantity> AT =
            open(
                    "at",
                    Amount.of(Measure.TEMPERATURE, Range.between(233.15, 343.15)),
                    "Temperature of its cells at that.",
                    "18 °C ± 2 K",
                    "no resistance was measured");
    static final Key<Quantity> CAPACITY =
            open(
                    "capacity",
                    Amount.positive(Measure.CHARGE),
                    "Charge that it gave from full to empty.",
                    "15.1 Ah",
                    "not measured");
    static final Key<Quantity> SWELLING =
            open(
                    "swelling",
                    Amount.of(Measure.SHARE, Range.SHARE),
                    "Growth of its thickness since new.",
                    "1 %",
                    "not measured");
    static final Key<Integer> STORED =
            open(
                    "stored days",
                    new Whole("days", 0, MANY_DAYS),
                    "It lay since the row before.",
                    "12",
                    "not told");
    static final Key<Quantity> CHARGE =
            open("charge", Amount.share(), "At which it lay.", "55 %", "it did not lie");
    static final Key<String> CRASH =
            open("crash", new Text("what hit it"), "What hit it.", "\"fell 1 m\"", "no crash");
    static final Key<String> BY =
            open("by", new Text("a name"), "Who wrote it down.", "\"A. Wader\"", "not told");
    static final Key<String> NOTE =
            open("note", new Text("a note"), "What else was seen.", "\"warm\"", "nothing");

    static final Section ROW =
            Section.of(
                    "row of a pack",
                    "What was found on a day.",
                    DATE,
                    RESISTANCE,
                    AT,
                    CAPACITY,
                    SWELLING,
                    STORED,
                    CHARGE,
                    CRASH,
                    BY,
                    NOTE);
    static final Key<List<Stated<Fields>>> ROWS =
            open("rows", ListOf.any("rows", ROW), "Its life, row by row.", "[]", "none yet");

    static final Section SECTION =
            Section.of(
                    "life sheet of a pack",
                    "The life of a pack.",
                    HEAD,
                    PACK,
                    SERIAL,
                    COEFFICIENT,
                    NEW_RESISTANCE,
                    NEW_CAPACITY,
                    RETIRE,
                    ROWS);

    private PackKeys() {}
}
