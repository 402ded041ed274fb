package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.computed;
import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import liftwright.quantity.Quantity;
import liftwright.rig.FanType;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.FilePath;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Rule;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Word;
import liftwright.rig.shape.kind.YesNo;

/** The section {@code fan types}: one kind of fan unit. */
public final class FanTypeKeys {

    /** Thrust when installed over thrust on the stand, until it is measured. */
    public static final String INSTALLATION_DEFAULT = "0.90 +0.05/−0.15";

    public static final Key<Boolean> DUCTED =
            defaulted(
                    "ducted",
                    new YesNo(),
                    "yes",
                    "a fan with a hub and an exit area",
                    "Whether a duct surrounds the rotor.",
                    "no");
    public static final Key<Quantity> TIP =
            required(
                    "tip",
                    Amount.of(Measure.LENGTH, Range.upTo(5)),
                    "Diameter over the blade tips.",
                    "140 mm");
    public static final Key<Quantity> HUB =
            required(
                    "hub",
                    Amount.of(Measure.LENGTH, new Range(0, true, 5)),
                    "Diameter of the hub.",
                    "52 mm");
    public static final Key<Quantity> EXIT_AREA =
            computed(
                    "exit area",
                    Amount.positive(Measure.AREA),
                    "the ring between hub and tip, ± 5 %; half of it for an open rotor, whose jet contracts"
                            + " so far in theory",
                    "Area of the jet where it leaves.",
                    "128 cm² ± 2 %");
    public static final Key<Quantity> MASS =
            required(
                    "mass",
                    Amount.positive(Measure.MASS),
                    "Of rotor, duct and motor.",
                    "0.74 kg ± 2 %");
    public static final Key<FanType.Data> DATA =
            computed(
                    "data",
                    Word.of(FanType.Data.values(), ' '),
                    "`measured` with a bench table, else `seller`: what is not said to be measured is worth"
                            + " 0.90 (+0.05/−0.15) of itself; common practice",
                    "Who found the values.",
                    "measured");

    public static final Key<Quantity> SPEED =
            required(
                    "speed", Amount.positive(Measure.ROTATION), "Speed of the rotor.", "26000 rpm");
    public static final Key<Quantity> THRUST =
            required(
                    "thrust",
                    Amount.positive(Measure.FORCE),
                    "Thrust at that speed in still air of 1.225 kg/m³.",
                    "92 N ± 3 %");
    public static final Key<Quantity> SHAFT_POWER =
            required(
                    "shaft power",
                    Amount.positive(Measure.POWER),
                    "Power in the shaft at that speed, in the same air.",
                    "4.6 kW ± 4 %");
    public static final Section AT_SPEED_SECTION =
            Section.of(
                    "at speed",
                    "One known point of the rotor in still air of 1.225 kg/m³.",
                    SPEED,
                    THRUST,
                    SHAFT_POWER);
    public static final Key<Fields> AT_SPEED =
            open(
                    "at speed",
                    AT_SPEED_SECTION,
                    "One known point.",
                    "{speed: 26000 rpm, thrust: 92 N ± 3 %, shaft power: 4.6 kW ± 4 %}",
                    "coefficients or a bench table must stand there");

    public static final Key<Quantity> K_THRUST =
            required(
                    "thrust",
                    Amount.positive(Measure.THRUST_COEFFICIENT),
                    "Thrust over speed squared.",
                    "1.24e-5 N·s²/rad² ± 3 %");
    public static final Key<Quantity> K_TORQUE =
            required(
                    "torque",
                    Amount.positive(Measure.TORQUE_COEFFICIENT),
                    "Torque over speed squared.",
                    "2.28e-7 N·m·s²/rad² ± 4 %");
    public static final Section COEFFICIENTS_SECTION =
            Section.of(
                    "coefficients",
                    "Coefficients of the rotor in still air of 1.225 kg/m³.",
                    K_THRUST,
                    K_TORQUE);
    public static final Key<Fields> COEFFICIENTS =
            open(
                    "coefficients",
                    COEFFICIENTS_SECTION,
                    "Coefficients in place of a point.",
                    "{thrust: 1.24e-5 N·s²/rad² ± 3 %, torque: 2.28e-7 N·m·s²/rad² ± 4 %}",
                    "“at speed” or a bench table must stand there");
    public static final Key<String> BENCH =
            open(
                    "bench",
                    new FilePath("a [bench table](tables.md#bench-table)", ".csv"),
                    "Measured rows of fans of this type on a stand; they count in place of what is"
                            + " claimed.",
                    "f140-bench.csv",
                    "the claim counts");

    public static final Key<Fields> MOTOR =
            open(
                    "motor",
                    MotorKeys.SECTION,
                    "The motor.",
                    "{speed constant: 520 rpm/V, winding resistance: 12 mΩ, no-load current: 2.5 A}",
                    "**required**, unless a bench table with speeds tells its values");
    public static final Key<Fields> ROTOR =
            open(
                    "rotor",
                    RotorKeys.SECTION,
                    "The rotor.",
                    "{top speed: 30000 rpm}",
                    "its own maximum is not judged");
    public static final Key<Fields> CONTROLLER =
            required(
                    "controller",
                    ControllerKeys.SECTION,
                    "The motor controller.",
                    "{current limit: 130 A, mass: 0.12 kg}");
    public static final Key<Fields> INTAKE =
            open(
                    "intake",
                    IntakeKeys.SECTION,
                    "What stands before the intake.",
                    "{free area: 88 %, face: 210 cm²}",
                    "nothing stands before it");
    public static final Key<Quantity> SWIRL =
            computed(
                            "swirl",
                            Amount.of(Measure.RATIO, Range.between(-1, 1.2)),
                            "0.15 ± 0.25 bound with a duct and stators, 1 without; common practice",
                            "Share of the shaft's torque that the jet carries away as swirl.",
                            "0.10 +0.15/−0.20")
                    .readBy(Key.Question.BALANCE);
    public static final Key<Quantity> SCATTER =
            defaulted(
                    "scatter",
                    Amount.doubt(Measure.RATIO, "1"),
                    "± 5 % each",
                    "common practice: scatter of a lot",
                    "Thrust of single units over the type's.",
                    "± 2 % each");
    public static final Key<Fields> LOT =
            open(
                    "lot",
                    LotKeys.SECTION,
                    "What a few measured fans of the lot are worth of their label.",
                    "{measured: {f17: 0.86, f18: 0.84, f23: 0.87}, stand: ± 1.5 %}",
                    "what `data` says: a seller's figure is worth 0.90 (+0.05/−0.15) of itself");
    public static final Key<Quantity> INSTALLATION =
            defaulted(
                    "installation",
                    Amount.of(Measure.RATIO, Range.upTo(1.5)),
                    INSTALLATION_DEFAULT,
                    "common practice, until measured",
                    "Thrust when installed over thrust on the stand: neighbours, walls, a back close by.",
                    "0.94 ± 0.03");
    public static final Key<Quantity> DRAG_AREA =
            later(
                    "drag area",
                    Amount.positive(Measure.AREA),
                    "Drag area of the fan when it stands still.",
                    "40 cm²");
    public static final Key<Quantity> NOISE =
            defaulted(
                            "noise",
                            Amount.of(Measure.SOUND_LEVEL, Range.between(0, 180)),
                            "110 dBA ± 6 dBA",
                            "from memory, measure yours",
                            "Sound level of one fan at full throttle in 1 m.",
                            "104 dBA ± 3 dBA")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> REVERSED =
            defaulted(
                            "reversed thrust",
                            Amount.share(),
                            "35 % ± 15 % bound",
                            "from memory, measure yours",
                            "Thrust with two motor leads swapped over that at the same throttle; it"
                                    + " points the other way.",
                            "40 %")
                    .readBy(Key.Question.FAILURES);

    public static final Section SECTION =
            Section.of(
                            "fan type",
                            "One kind of fan unit: rotor, duct, motor and controller.",
                            DUCTED,
                            TIP,
                            HUB,
                            EXIT_AREA,
                            MASS,
                            DATA,
                            AT_SPEED,
                            COEFFICIENTS,
                            BENCH,
                            MOTOR,
                            ROTOR,
                            CONTROLLER,
                            INTAKE,
                            SWIRL,
                            SCATTER,
                            INSTALLATION,
                            LOT,
                            DRAG_AREA,
                            NOISE,
                            REVERSED)
                    .with(
                            Rule.atLeastOne(AT_SPEED, COEFFICIENTS, BENCH),
                            Rule.atLeastOne(MOTOR, BENCH),
                            Rule.atMostOne(AT_SPEED, COEFFICIENTS),
                            Rule.atMostOne(BENCH, LOT));

    private FanTypeKeys() {}
}
