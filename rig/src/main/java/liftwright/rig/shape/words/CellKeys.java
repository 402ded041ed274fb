package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.computed;
import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Either;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.FilePath;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Reference;
import liftwright.rig.shape.kind.Rule;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;
import liftwright.rig.shape.kind.YesNo;

/** The section {@code cells}: one kind of cell. */
public final class CellKeys {

    private static final String FOUND = "**required**, unless “measured” stands there";

    public static final Key<String> CHEMISTRY =
            required(
                    "chemistry",
                    new Text("the chemistry, such as LiPo"),
                    "For people; the values below decide.",
                    "LiPo");
    public static final Key<Quantity> CAPACITY =
            open(
                    "capacity",
                    Amount.positive(Measure.CHARGE),
                    "Charge of a full cell.",
                    "8 Ah ± 2 % each",
                    FOUND);
    public static final Key<Quantity> RESISTANCE =
            open(
                    "resistance",
                    Amount.positive(Measure.RESISTANCE),
                    "Of one cell at once after the load changes, at 25 °C.",
                    "0.9 mΩ ± 8 % each",
                    FOUND);
    public static final Key<Quantity> SETTLING_RESISTANCE =
            required(
                    "resistance",
                    Amount.positive(Measure.RESISTANCE),
                    "What builds up.",
                    "0.5 mΩ ± 10 %");
    public static final Key<Quantity> SETTLING_TIME =
            required("time", Amount.positive(Measure.TIME), "Time constant.", "25 s");
    public static final Section SETTLING_SECTION =
            Section.of(
                    "settling",
                    "A resistance that builds up during a discharge.",
                    SETTLING_RESISTANCE,
                    SETTLING_TIME);
    public static final Key<List<Stated<Fields>>> SETTLING =
            open(
                    "settling",
                    new ListOf<>("slow resistances", SETTLING_SECTION, 1, 2),
                    "One or two slower resistances; a pulse test does not show them.",
                    "[{resistance: 0.5 mΩ ± 10 %, time: 25 s}]",
                    "none: kind to a flight of minutes");
    public static final Key<Quantity> B =
            defaulted(
                    "temperature coefficient",
                    Amount.notNegative(Measure.KELVIN),
                    "2000 K ± 1200 K bound",
                    "from memory, measure yours",
                    "B of resistance = R(25 °C) · exp(B (1/T − 1/298.15 K)).",
                    "2000 K ± 30 %");
    public static final Key<Quantity> MASS =
            required("mass", Amount.positive(Measure.MASS), "Of one cell.", "165 g");

    public static final Key<Quantity> AT_CHARGE =
            required("charge", Amount.share(), "Share left.", "50 %");
    public static final Key<Quantity> AT_VOLTAGE =
            required(
                    "voltage",
                    Amount.of(Measure.VOLTAGE, Range.upTo(10)),
                    "Rest voltage there.",
                    "3.85 V");
    public static final Section CURVE_POINT =
            Section.of("open-circuit point", "Rest voltage at one charge.", AT_CHARGE, AT_VOLTAGE);
    public static final Key<Either.Of<String, List<Stated<Fields>>>> OPEN_CIRCUIT =
            open(
                    "open circuit",
                    new Either<>(
                            new Reference(Reference.To.OPEN_CIRCUIT),
                            new ListOf<>("points, charge rising", CURVE_POINT, 2, 500)),
                    "Rest voltage against charge: a curve of the parts book, or points.",
                    "LiPo",
                    FOUND);
    public static final Key<Quantity> OPEN_CIRCUIT_DOUBT =
            computed(
                    "open circuit doubt",
                    Amount.doubt(Measure.VOLTAGE, "0 V"),
                    "that of the parts book's curve; none for points of your own",
                    "Doubt of the whole curve.",
                    "± 20 mV");
    public static final Key<Quantity> CONTINUOUS =
            open(
                    "continuous current",
                    Amount.positive(Measure.CURRENT),
                    "Current of one cell that may last.",
                    "200 A",
                    "not judged");
    public static final Key<Quantity> PEAK =
            open(
                    "peak current",
                    Amount.positive(Measure.CURRENT),
                    "Current of one cell for seconds.",
                    "280 A",
                    "not judged");

    public static final Key<String> TEST_TABLE =
            required(
                    "table",
                    new FilePath("a [cell test](tables.md#cell-test)", ".csv"),
                    "Voltage under a known current over time.",
                    "p80-100a.csv");
    public static final Key<Quantity> TEST_CHARGE =
            defaulted(
                    "charge",
                    Amount.of(Measure.SHARE, Range.upTo(1)),
                    "100 %",
                    "common practice: a test begins with a full cell",
                    "Share of the capacity in the cell at the first row.",
                    "100 %");
    public static final Key<Integer> TEST_SERIES =
            defaulted(
                    "series",
                    new Whole("cells in series", 1, 200),
                    "1",
                    "a single cell was tested",
                    "Cells in series of what was tested.",
                    "12");
    public static final Key<Integer> TEST_PARALLEL =
            defaulted(
                    "parallel",
                    new Whole("cells in parallel", 1, 200),
                    "1",
                    "a single cell was tested",
                    "Cells in parallel of what was tested.",
                    "2");
    public static final Key<Boolean> TEST_HELD_OUT =
            defaulted(
                    "held out",
                    new YesNo(),
                    "no",
                    "every test counts",
                    "Whether the test only judges what was found from the others.",
                    "yes");
    public static final Section TEST_SECTION =
            Section.of(
                    "cell test",
                    "One measured discharge of a cell or of a pack of such cells.",
                    TEST_TABLE,
                    TEST_CHARGE,
                    TEST_SERIES,
                    TEST_PARALLEL,
                    TEST_HELD_OUT);
    public static final Key<List<Stated<Fields>>> MEASURED =
            open(
                    "measured",
                    new ListOf<>("tests", TEST_SECTION, 1, 50),
                    "Tests of such cells; what is not declared is found from them.",
                    "[{table: p80-100a.csv}, {table: pack-2.csv, series: 12, charge: 90 %}]",
                    "what is declared counts");

    public static final Key<Integer> CYCLES =
            later(
                    "cycles",
                    new Whole("full cycles so far", 0, 100_000),
                    "Full cycles so far.",
                    "40");
    public static final Key<Quantity> CAPACITY_LEFT =
            open(
                            "capacity left",
                            Amount.of(Measure.SHARE, Range.upTo(1.2)),
                            "Capacity over that of a new cell.",
                            "95 %",
                            "100 %: as new")
                    .readBy(Key.Question.ENDURANCE);
    public static final Key<Quantity> RESISTANCE_GROWTH =
            open(
                    "resistance growth",
                    Amount.of(Measure.RATIO, Range.between(0.5, 10)),
                    "Every resistance over that of a new cell; settling takes as much longer.",
                    "1.2",
                    "1: as new");
    public static final Section AGEING_SECTION =
            Section.of(
                    "ageing",
                    "How far the cells have aged.",
                    CYCLES,
                    CAPACITY_LEFT,
                    RESISTANCE_GROWTH);
    public static final Key<Fields> AGEING =
            open(
                    "ageing",
                    AGEING_SECTION,
                    "Age of the cells.",
                    "{capacity left: 95 %, resistance growth: 1.2}",
                    "the cells are as new");
    public static final Key<Quantity> HEAT =
            computed(
                            "heat capacity",
                            Amount.positive(Measure.HEAT_CAPACITY),
                            "1000 J/K for each kg of its mass, ± 15 % bound; from memory",
                            "Of one cell.",
                            "165 J/K ± 10 %")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> CORE =
            computed(
                            "core to surface",
                            Amount.positive(Measure.HEAT_CONDUCTANCE),
                            "12 W/K for each kg of its mass, ± 50 % bound; from memory",
                            "Heat from the core of a cell to its surface.",
                            "2 W/K ± 30 %")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> TO_AIR =
            computed(
                            "surface to air",
                            Amount.positive(Measure.HEAT_CONDUCTANCE),
                            "0.6 W/K for each kg of its mass, ± 50 % bound; from memory",
                            "Heat from one cell's share of the pack to the air.",
                            "0.1 W/K ± 30 %")
                    .readBy(Key.Question.HEAT);
    public static final Section THERMAL_SECTION =
            Section.of("cell heat", "How a cell warms.", HEAT, CORE, TO_AIR);
    public static final Key<Fields> THERMAL =
            open(
                            "thermal",
                            THERMAL_SECTION,
                            "How a cell warms.",
                            "{heat capacity: 165 J/K}",
                            "its values are found from the mass of the cell")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> SHAPE_FACTOR =
            required(
                    "factor",
                    Amount.positive(Measure.RATIO),
                    "Resistance over that at half charge.",
                    "1.4");
    public static final Key<Quantity> SHAPE_CHARGE =
            required("charge", Amount.share(), "Share left.", "10 %");
    public static final Section SHAPE_POINT =
            Section.of("resistance point", "Resistance at one charge.", SHAPE_CHARGE, SHAPE_FACTOR);
    public static final Key<List<Stated<Fields>>> SHAPE =
            open(
                    "resistance over charge",
                    new ListOf<>("points, charge rising", SHAPE_POINT, 2, 100),
                    "How every resistance of the cell grows towards empty: straight between the"
                            + " points, the last factor held beyond them, 1 at 50 %.",
                    "[{charge: 0 %, factor: 2}, {charge: 50 %, factor: 1}]",
                    "the same at every charge: kind below about 20 %");
    public static final Key<String> FORM =
            later("form", Word.of("pouch", "cylinder", "prism"), "Build of the cell.", "pouch");
    public static final Key<Quantity> FULL =
            later(
                    "full voltage",
                    Amount.positive(Measure.VOLTAGE),
                    "At the end of charging.",
                    "4.20 V");

    public static final Section SECTION =
            Section.of(
                            "cell type",
                            "One kind of cell.",
                            CHEMISTRY,
                            CAPACITY,
                            RESISTANCE,
                            SETTLING,
                            B,
                            MASS,
                            OPEN_CIRCUIT,
                            OPEN_CIRCUIT_DOUBT,
                            CONTINUOUS,
                            PEAK,
                            MEASURED,
                            AGEING,
                            THERMAL,
                            SHAPE,
                            FORM,
                            FULL)
                    .with(
                            Rule.atLeastOne(CAPACITY, MEASURED),
                            Rule.atLeastOne(RESISTANCE, MEASURED),
                            Rule.atLeastOne(OPEN_CIRCUIT, MEASURED));

    private CellKeys() {}
}
