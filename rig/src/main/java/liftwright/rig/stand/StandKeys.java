package liftwright.rig.stand;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;
import static liftwright.rig.shape.kind.Rule.atLeastOne;
import static liftwright.rig.shape.kind.Rule.needs;

import java.util.List;
import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Rule;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;

/** The words of a stand file, format 1. */
public final class StandKeys {

    /** The only format there is. */
    public static final int FORMAT = 1;

    private static final String LEFT_OUT = "left out of the budget";
    private static final Range SMALL_SHARE = Range.upTo(0.2);

    static final Key<Integer> STAND =
            required("stand", new Whole("the format", FORMAT, FORMAT), "Format of the file.", "1");
    static final Key<String> NAME =
            open("name", new Text("a name"), "Name of the stand.", "Barn", "it has no name");
    static final Key<Quantity> THRUST =
            required(
                    "thrust",
                    Amount.positive(Measure.FORCE),
                    "Greatest thrust to be measured.",
                    "92 N");
    static final Key<Quantity> WANTED =
            defaulted(
                    "wanted",
                    Amount.of(Measure.SHARE, Range.upTo(1)),
                    "2 %",
                    "common practice: well below the ± 5 % from fan to fan",
                    "Uncertainty (95 %) that would do, as a share of the thrust.",
                    "1 %");

    static final Key<Quantity> RATING =
            required(
                    "rating",
                    Amount.positive(Measure.FORCE),
                    "Greatest load of the cell.",
                    "200 N");
    static final Key<Quantity> CLASS =
            required(
                    "class",
                    Amount.of(Measure.SHARE, SMALL_SHARE),
                    "Greatest error by nonlinearity, hysteresis and scatter, share of the rating.",
                    "0.05 %");
    static final Key<Quantity> CREEP =
            open(
                    "creep",
                    Amount.of(Measure.SHARE, SMALL_SHARE),
                    "Greatest creep within one run, share of the load.",
                    "0.02 %",
                    LEFT_OUT);
    static final Key<Quantity> TEMPERATURE =
            open(
                    "temperature",
                    Amount.positive(Measure.PER_KELVIN),
                    "Greatest drift of the zero over temperature, share of the rating.",
                    "0.02 %/10 K",
                    LEFT_OUT);
    static final Key<Quantity> WARMING =
            open(
                    "warming",
                    Amount.of(Measure.KELVIN, Range.upTo(100)),
                    "How much the cell may warm or cool between tare and reading.",
                    "3 K",
                    LEFT_OUT);
    static final Key<Quantity> ZERO_DRIFT =
            open(
                    "zero drift",
                    Amount.positive(Measure.FORCE),
                    "How far the zero may have moved between one tare and the next, at the cell.",
                    "0.2 N",
                    LEFT_OUT);
    static final Key<Quantity> STEP =
            open(
                    "step",
                    Amount.positive(Measure.FORCE),
                    "One step of the display, at the cell.",
                    "0.05 N",
                    LEFT_OUT);
    static final Key<Quantity> CALIBRATION =
            open(
                    "calibration",
                    Amount.doubt(Measure.SHARE, "1"),
                    "Doubt of the scale factor: the masses that the cell was checked with.",
                    "± 0.1 %",
                    LEFT_OUT);
    static final Section CELL_SECTION =
            Section.of(
                            "cell",
                            "The load cell or scale.",
                            RATING,
                            CLASS,
                            CREEP,
                            TEMPERATURE,
                            WARMING,
                            ZERO_DRIFT,
                            STEP,
                            CALIBRATION)
                    .with(needs(TEMPERATURE, WARMING), needs(WARMING, TEMPERATURE));
    static final Key<Fields> CELL =
            required("cell", CELL_SECTION, "What weighs.", "{rating: 200 N, class: 0.05 %}");

    static final Key<Quantity> FAN_ARM =
            required(
                    "fan arm",
                    Amount.positive(Measure.LENGTH),
                    "From the pivot to the fan's axis.",
                    "300 mm ± 0.5 mm");
    static final Key<Quantity> CELL_ARM =
            required(
                    "cell arm",
                    Amount.positive(Measure.LENGTH),
                    "From the pivot to the cell.",
                    "150 mm ± 0.5 mm");
    static final Section LEVER_SECTION =
            Section.of("lever", "The lever between fan and cell.", FAN_ARM, CELL_ARM);
    static final Key<Fields> LEVER =
            open(
                    "lever",
                    LEVER_SECTION,
                    "Arms of the lever.",
                    "{fan arm: 300 mm ± 0.5 mm, cell arm: 150 mm ± 0.5 mm}",
                    "none: the fan presses on the cell itself");

    static final Key<Quantity> ALIGNMENT =
            open(
                    "alignment",
                    Amount.of(Measure.ANGLE, Range.between(-0.35, 0.35)),
                    "Angle between the fan's axis and what the cell weighs.",
                    "1° ± 1°",
                    LEFT_OUT);

    static final Key<Quantity> AREA =
            open(
                    "area",
                    Amount.positive(Measure.AREA),
                    "Area of weighed parts in the jet, as the jet sees them.",
                    "6 cm²",
                    "the loss is measured");
    static final Key<Quantity> DISTANCE =
            open(
                    "distance",
                    Amount.positive(Measure.LENGTH),
                    "From the fan's exit to those parts.",
                    "250 mm",
                    "the loss is measured");
    static final Key<Quantity> EXIT_AREA =
            open(
                    "exit area",
                    Amount.positive(Measure.AREA),
                    "Exit area of the fan.",
                    "120 cm²",
                    "the loss is measured");
    static final Key<Quantity> LOSS =
            open(
                    "loss",
                    Amount.of(Measure.SHARE, SMALL_SHARE),
                    "Measured: share of the thrust that the reading misses.",
                    "2 % ± 0.5 %",
                    "it is guessed from the area");
    static final Section JET_SECTION =
            Section.of(
                            "jet on the stand",
                            "Parts that the jet blows on and that the cell weighs.",
                            AREA,
                            DISTANCE,
                            EXIT_AREA,
                            LOSS)
                    .with(
                            atLeastOne(AREA, LOSS),
                            needs(AREA, DISTANCE, EXIT_AREA),
                            needs(DISTANCE, AREA),
                            needs(EXIT_AREA, AREA),
                            new Rule.AtMostOne(List.of(AREA, LOSS)));
    static final Key<Fields> JET =
            open(
                    "jet on the stand",
                    JET_SECTION,
                    "What the jet blows on.",
                    "{area: 6 cm², distance: 250 mm, exit area: 120 cm²}",
                    "nothing that is weighed stands in the jet");

    static final Key<Quantity> BEHIND =
            open(
                    "behind",
                    Amount.of(Measure.RATIO, Range.between(1, 1000)),
                    "Free length where the fan blows, in rotor diameters.",
                    "8",
                    "the doubt is measured");
    static final Key<Quantity> IN_FRONT =
            open(
                    "in front",
                    Amount.of(Measure.RATIO, Range.between(0.5, 1000)),
                    "Free length where the fan breathes, in rotor diameters.",
                    "4",
                    "the doubt is measured");
    static final Key<Quantity> MEASURED =
            open(
                    "measured",
                    Amount.doubt(Measure.SHARE, "1"),
                    "Measured: doubt of the thrust by walls and by air that comes back.",
                    "± 0.3 %",
                    "it is guessed from the lengths");
    static final Section CLEARANCE_SECTION =
            Section.of("clearance", "Room around the fan.", BEHIND, IN_FRONT, MEASURED)
                    .with(
                            atLeastOne(BEHIND, IN_FRONT, MEASURED),
                            needs(BEHIND, IN_FRONT),
                            needs(IN_FRONT, BEHIND),
                            new Rule.AtMostOne(List.of(BEHIND, MEASURED)));
    static final Key<Fields> CLEARANCE =
            required("clearance", CLEARANCE_SECTION, "Walls.", "{behind: 8, in front: 4}");

    static final Key<Quantity> AIR_TEMPERATURE =
            required(
                    "temperature",
                    Amount.doubt(Measure.KELVIN, "0 K"),
                    "Doubt of the air's temperature.",
                    "± 1 K");
    static final Key<Quantity> AIR_PRESSURE =
            required(
                    "pressure",
                    Amount.doubt(Measure.PRESSURE, "0 hPa"),
                    "Doubt of the air's pressure at the stand.",
                    "± 2 hPa");
    static final Section AIR_SECTION =
            Section.of("air", "How well the air is known.", AIR_TEMPERATURE, AIR_PRESSURE);
    static final Key<Fields> AIR =
            open(
                    "air",
                    AIR_SECTION,
                    "Where the thrust shall be that of standard air.",
                    "{temperature: ± 1 K, pressure: ± 2 hPa}",
                    "left out of the budget: the thrust is that of the day's air");

    static final Key<Integer> RUNS =
            required("runs", new Whole("the runs", 2, 1000), "Runs whose mean is taken.", "5");
    static final Key<Quantity> SCATTER =
            required(
                    "scatter",
                    Amount.of(Measure.SHARE, SMALL_SHARE),
                    "Standard deviation of a single run, share of the thrust.",
                    "1 %");
    static final Section REPEATS_SECTION =
            Section.of("repeats", "Runs at one setting.", RUNS, SCATTER);
    static final Key<Fields> REPEATS =
            required("repeats", REPEATS_SECTION, "Repeated runs.", "{runs: 5, scatter: 1 %}");

    static final Section SECTION =
            Section.of(
                    "thrust stand",
                    "A thrust stand.",
                    STAND,
                    NAME,
                    THRUST,
                    WANTED,
                    CELL,
                    LEVER,
                    ALIGNMENT,
                    JET,
                    CLEARANCE,
                    AIR,
                    REPEATS);

    private StandKeys() {}
}
