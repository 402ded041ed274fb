package liftwright.trials.day;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.YesNo;
import liftwright.trials.proof.WrittenDate;

/** The words of a day file, format 1. */
final class DayKeys {

    static final int FORMAT = 1;

    static final String CLOCK = "a time of the day such as 09:00";

    private static final Range WINDS = Range.between(0, 60);
    private static final Range WARMTH = Range.between(223.15, 343.15);

    static final Key<Integer> HEAD =
            required(
                    "liftwright day",
                    new Whole("the format", FORMAT, FORMAT),
                    "Format of the file.",
                    "1");
    static final Key<String> DATE =
            required("date", new Text(WrittenDate.EXPECTED), "The day.", "2026-05-02");
    static final Key<String> START =
            required("start", new Text(CLOCK), "When the crew begins.", "09:00");
    static final Key<Quantity> HOURS =
            defaulted(
                    "crew hours",
                    Amount.of(Measure.TIME, Range.between(600, 57_600)),
                    "6 h",
                    "common practice: people who set up, wait and watch are tired by then",
                    "How long the crew works at most.",
                    "6 h");
    static final Key<String> LIGHT =
            required("light until", new Text(CLOCK), "When it gets dark.", "20:40");
    static final Key<Quantity> AIR =
            required(
                    "air",
                    Amount.of(Measure.TEMPERATURE, WARMTH),
                    "Temperature of the air, in the shade.",
                    "18 °C");
    static final Key<Quantity> WIND =
            required(
                    "wind",
                    Amount.of(Measure.SPEED, WINDS),
                    "Mean wind over ten minutes where it is tested.",
                    "2 m/s");
    static final Key<Quantity> GUST =
            required("gust", Amount.of(Measure.SPEED, WINDS), "Strongest gust in them.", "4 m/s");

    static final Key<Quantity> CHARGE =
            required("charge", Amount.share(), "Charge, share of full.", "98 %");
    static final Key<Quantity> TEMPERATURE =
            required(
                    "temperature",
                    Amount.of(Measure.TEMPERATURE, WARMTH),
                    "Temperature of the cells.",
                    "24 °C");
    static final Key<Quantity> SPREAD =
            open(
                    "spread",
                    Amount.of(Measure.VOLTAGE, Range.between(0, 4.5)),
                    "Between fullest and emptiest cell at rest.",
                    "8 mV",
                    "the pack is not ready for a run: nobody looked at its cells");
    static final Section PACK =
            Section.of("pack", "A pack that is ready.", CHARGE, TEMPERATURE, SPREAD);
    static final Key<Map<String, Stated<Fields>>> PACKS =
            required(
                    "packs",
                    new MapOf<>("ready packs", PACK, MapOf.Names.OF_PARTS),
                    "Packs that are ready, by the ids of the rig file.",
                    "{p.1: {charge: 98 %, temperature: 24 °C, spread: 8 mV}}");
    static final Key<Map<String, Stated<List<Stated<String>>>>> PEOPLE =
            required(
                    "people",
                    new MapOf<>(
                            "people",
                            ListOf.any("roles", new Text("a role")),
                            MapOf.Names.OF_PARTS),
                    "Who is there, with the roles that each can take.",
                    "{Ann: [wearer], Ben: [watcher, fire]}");
    static final Key<String> PROOF =
            open(
                    "kill proof",
                    new Text("a file name"),
                    "File of today's proof of the kills.",
                    "kills-2026-05-02.yaml",
                    "the kills are not proved yet");
    static final Key<Integer> ABORTS =
            open(
                    "aborts",
                    new Whole("the aborts", 0, 99),
                    "Runs that were aborted today so far.",
                    "1",
                    "none so far");
    static final Key<Boolean> UNEXPLAINED =
            open(
                    "unexplained",
                    new YesNo(),
                    "Whether something happened today that nobody can explain.",
                    "no",
                    "nothing so far");

    static final Section SECTION =
            Section.of(
                    "day",
                    "A day as it is found.",
                    HEAD,
                    DATE,
                    START,
                    HOURS,
                    LIGHT,
                    AIR,
                    WIND,
                    GUST,
                    PACKS,
                    PEOPLE,
                    PROOF,
                    ABORTS,
                    UNEXPLAINED);

    private DayKeys() {}
}
