package liftwright.logbook.reading;

import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;

/** The words of the map of a log, format 1. */
final class MapKeys {

    static final int MAP_FORMAT = 1;

    static final Key<Integer> FORMAT =
            required(
                    "liftwright log map",
                    new Whole("the format", MAP_FORMAT, MAP_FORMAT),
                    "Format of the file.",
                    "1");
    static final Key<Character> SEPARATOR =
            open(
                    "separator",
                    new Word<>(separators()),
                    "What stands between the cells.",
                    "semicolon",
                    "the first of tab, semicolon, bar and comma in the line of the heads");
    static final Key<Character> DECIMAL =
            open(
                    "decimal",
                    new Word<>(Map.of("point", '.', "comma", ',')),
                    "The decimal sign.",
                    "comma",
                    "the one that the first rows show");
    static final Key<Integer> HEAD_LINE =
            open(
                    "head line",
                    new Whole("the number of a line", 1, 300),
                    "Line of the heads.",
                    "3",
                    "the first with a column of time");
    static final Key<String> TIME =
            open(
                    "time",
                    new Text("the head of a column"),
                    "Its column of time.",
                    "\"Zeit\"",
                    "time");
    static final Key<TimeForm> TIME_FORM =
            open(
                    "time form",
                    new Word<>(forms()),
                    "How times are written.",
                    "ms",
                    "by the unit of the head and the first row");
    static final Key<List<Stated<String>>> IGNORE =
            open(
                    "ignore",
                    ListOf.any("heads", new Text("the head of a column")),
                    "Columns that are not read and need not be told.",
                    "[\"Status\"]",
                    "other columns are told and not read");

    static final Key<String> HEAD =
            required("head", new Text("the head of a column"), "As in the file.", "\"ESC1 I\"");
    static final Key<String> IS =
            required(
                    "is",
                    new Text("a channel such as current p.1"),
                    "A channel as in a head of ours, without its unit.",
                    "\"current p.1\"");
    static final Key<String> UNIT =
            open("unit", new Text("a unit"), "Unit of the readings.", "A", "the one in the head");
    static final Key<String> FACTOR =
            open("factor", new Text("a plain number"), "On the readings.", "0.1", "1");
    static final Key<String> OFFSET =
            open(
                    "offset",
                    new Text("a plain number"),
                    "Added to the readings before, in their unit.",
                    "-0.3",
                    "0");
    static final Key<String> ERROR =
            open(
                    "error",
                    new Text("a plain number"),
                    "95 % of the instrument's errors are smaller, in the unit.",
                    "0.5",
                    "it is not told");
    static final Key<String> ERROR_SHARE =
            open(
                    "error share",
                    new Text("a share such as 2 %"),
                    "The same as a share of the reading, on top.",
                    "2 %",
                    "it is not told");

    static final Section COLUMN =
            Section.of(
                    "column of a log",
                    "What a column of an instrument is.",
                    HEAD,
                    IS,
                    UNIT,
                    FACTOR,
                    OFFSET,
                    ERROR,
                    ERROR_SHARE);

    static final Key<List<Stated<Fields>>> COLUMNS =
            open(
                    "columns",
                    ListOf.any("columns", COLUMN),
                    "What its columns are.",
                    "[…]",
                    "heads are read as ours");

    static final Section SECTION =
            Section.of(
                    "log map",
                    "How the logs of an instrument are to be read.",
                    FORMAT,
                    SEPARATOR,
                    DECIMAL,
                    HEAD_LINE,
                    TIME,
                    TIME_FORM,
                    COLUMNS,
                    IGNORE);

    private MapKeys() {}

    private static Map<String, Character> separators() {
        var words = new LinkedHashMap<String, Character>();
        words.put("comma", ',');
        words.put("semicolon", ';');
        words.put("tab", '\t');
        words.put("bar", '|');
        return words;
    }

    private static Map<String, TimeForm> forms() {
        var words = new LinkedHashMap<String, TimeForm>();
        for (TimeForm form : TimeForm.values()) {
            words.put(form.word(), form);
        }
        return words;
    }
}
