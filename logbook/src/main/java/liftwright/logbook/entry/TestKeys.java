package liftwright.logbook.entry;

import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.plant.recording.Signal;
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

/** The words of {@code test.yaml}, format 1. */
final class TestKeys {

    private static final int MANY = 1_000_000_000;

    static final Key<Integer> HEAD =
            required("liftwright test", new Whole("the format", 1, 1), "Format of the file.", "1");
    static final Key<String> CARD =
            open(
                    "card",
                    new Text("the name of a card"),
                    "The card that was run.",
                    "\"hop\"",
                    "a test of its own");
    static final Key<String> DATE =
            required("date", new Text(Stating.DATE), "The day.", "2026-03-14");

    static final Key<String> NAME = required("name", new Text("a name"), "Who.", "\"A. Wader\"");
    static final Key<String> ROLE =
            open("role", new Text("a role"), "As what.", "\"watcher\"", "nothing is said");
    static final Key<List<Stated<Fields>>> PEOPLE =
            open(
                    "people",
                    ListOf.any("people", Section.of("person", "Who was there.", NAME, ROLE)),
                    "Who was there.",
                    "[{name: \"A. Wader\", role: \"watcher\"}]",
                    "nobody was named");

    static final Key<Quantity> AIR =
            open(
                    "air",
                    Amount.of(Measure.TEMPERATURE, Range.between(200, 340)),
                    "Temperature of the air.",
                    "9 °C ± 1 K",
                    "nobody looked");
    static final Key<Quantity> PRESSURE =
            open(
                    "pressure",
                    Amount.of(Measure.PRESSURE, Range.between(30_000, 110_000)),
                    "Of the air, at the place.",
                    "1009 hPa",
                    "nobody looked");
    static final Key<Quantity> HUMIDITY =
            open("humidity", Amount.share(), "Relative.", "60 %", "nobody looked");
    static final Key<Quantity> WIND =
            open(
                    "wind",
                    Amount.of(Measure.SPEED, Range.between(0, 100)),
                    "Mean.",
                    "2 m/s",
                    "nobody looked");
    static final Key<Quantity> GUST =
            open(
                    "gust",
                    Amount.of(Measure.SPEED, Range.between(0, 100)),
                    "Strongest.",
                    "3.5 m/s",
                    "nobody looked");
    static final Section WEATHER_SECTION =
            Section.of(
                    "weather", "Air and wind at the place.", AIR, PRESSURE, HUMIDITY, WIND, GUST);
    static final Key<Fields> WEATHER =
            open(
                    "weather",
                    WEATHER_SECTION,
                    "Air and wind at the place.",
                    "{air: 9 °C, wind: 2 m/s}",
                    "nobody looked");

    static final Key<String> NOTE =
            open("note", new Text("a note"), "What else was seen.", "\"gusty\"", "nothing");
    static final Key<String> COST =
            open("cost", new Text("a sum"), "What it cost.", "\"12.50 EUR\"", "nothing is said");
    static final Key<Quantity> HOURS =
            open("hours", Amount.notNegative(Measure.TIME), "Work.", "3 h", "nothing is said");

    static final Key<String> FILE = required("file", new Text("a file name"), "Name.", "\"a\"");
    static final Key<String> DIGEST =
            required("digest", new Text("a digest"), "SHA-256 of it.", "\"sha256:…\"");
    static final Key<String> WHAT =
            open("what", new Text("what it shows"), "What it shows.", "\"the joint\"", "nothing");
    static final Key<List<Stated<Fields>>> MEDIA =
            open(
                    "media",
                    ListOf.any(
                            "pictures and films",
                            Section.of("medium", "A picture or film.", FILE, DIGEST, WHAT)),
                    "Pictures and films, by reference.",
                    "[]",
                    "none");
    static final Key<List<Stated<String>>> INSTRUMENTS =
            open(
                    "instruments",
                    ListOf.any("instruments", new Text("an instrument")),
                    "What measured.",
                    "[\"scale 3\"]",
                    "nothing is said");

    static final Key<Integer> REVISION =
            required("revision", new Whole("a revision", 0, 1_000_000), "Of the rig.", "3");
    static final Key<Fields> RIG =
            required(
                    "rig",
                    Section.of("snapshot", "The rig as it was.", FILE, DIGEST, REVISION),
                    "The rig as it was, in the folder “rig”.",
                    "{file: \"rig.yaml\", digest: \"sha256:…\", revision: 3}");

    static final Key<String> SOURCE =
            required("source", new Text("a file name"), "The file as it came.", "\"scale.csv\"");
    static final Key<String> REJECTED_FILE =
            open(
                    "rejected",
                    new Text("a file name"),
                    "Rows set aside.",
                    "\"rejected-1.csv\"",
                    "no row was set aside");
    static final Key<Integer> ROWS =
            required("rows", new Whole("how many rows", 0, MANY), "Rows taken.", "12000");
    static final Key<Integer> ROWS_REJECTED =
            required("rows rejected", new Whole("how many rows", 0, MANY), "Set aside.", "3");
    static final Key<Quantity> FROM =
            required("from", Amount.any(Measure.TIME), "Time of the first row.", "0 s");
    static final Key<Quantity> TO =
            required("to", Amount.any(Measure.TIME), "Time of the last row.", "120 s");
    static final Key<Quantity> SHIFT =
            required("shift", Amount.any(Measure.TIME), "Added to its time.", "1.25 s");
    static final Key<Quantity> CONFIDENCE =
            open(
                    "confidence",
                    Amount.share(),
                    "Of the alignment.",
                    "98 %",
                    "nothing had to be aligned");
    static final Key<String> HOW =
            required("how", new Text("how"), "By what it was aligned.", "\"by the throttle\"");
    static final Key<Fields> CLOCK =
            required(
                    "clock",
                    Section.of("clock", "How its clock stands.", SHIFT, CONFIDENCE, HOW),
                    "How its clock stands to that of the test.",
                    "{shift: 0 s, how: \"the clock of the test\"}");
    static final Key<Signal> SIGNAL =
            required("signal", new Word<>(signals()), "What is measured.", "thrust");
    static final Key<String> OF =
            required("of", new Text("a part, or all"), "Of what.", "\"left.3\"");
    static final Key<String> ERROR =
            required("error", new Text("an amount"), "95 % of errors are smaller.", "0.5 N");
    static final Key<Quantity> SHARE =
            open("share", Amount.share(), "Error as a share.", "1 %", "0 %");
    static final Key<List<Stated<Fields>>> CHANNELS =
            required(
                    "channels",
                    new ListOf<>(
                            "channels",
                            Section.of("channel", "One column.", SIGNAL, OF, ERROR, SHARE),
                            1,
                            ListOf.LONGEST),
                    "The columns, besides the time.",
                    "[{signal: thrust, of: all, error: 0.5 N}]");
    static final Key<List<Stated<String>>> NOTES =
            open(
                    "notes",
                    ListOf.any("notes", new Text("a note")),
                    "What was said on reading.",
                    "[]",
                    "nothing");
    static final Section TABLE =
            Section.of(
                    "table",
                    "What one file was read in as.",
                    FILE,
                    SOURCE,
                    REJECTED_FILE,
                    ROWS,
                    ROWS_REJECTED,
                    FROM,
                    TO,
                    CLOCK,
                    CHANNELS,
                    NOTES);
    static final Key<List<Stated<Fields>>> TABLES =
            required("tables", ListOf.any("tables", TABLE), "One for each file read in.", "[]");

    static final Section SECTION =
            Section.of(
                    "test",
                    "What is known of a test besides its samples.",
                    HEAD,
                    CARD,
                    DATE,
                    PEOPLE,
                    WEATHER,
                    NOTE,
                    COST,
                    HOURS,
                    MEDIA,
                    INSTRUMENTS,
                    RIG,
                    TABLES);

    private TestKeys() {}

    private static Map<String, Signal> signals() {
        var words = new LinkedHashMap<String, Signal>();
        for (Signal signal : Signal.values()) {
            words.put(signal.word(), signal);
        }
        return words;
    }
}
