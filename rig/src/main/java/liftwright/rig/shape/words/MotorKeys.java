package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.computed;
import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.Magnets;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;

/** The motor of a fan type. */
public final class MotorKeys {

    private static final String FOUND = "**required**, unless a bench table with speeds tells it";

    public static final Key<Quantity> SPEED_CONSTANT =
            open(
                    "speed constant",
                    Amount.positive(Measure.SPEED_CONSTANT),
                    "Speed over voltage without load, at 20 °C.",
                    "520 rpm/V ± 2 %",
                    FOUND);
    public static final Key<Quantity> WINDING =
            open(
                    "winding resistance",
                    Amount.positive(Measure.RESISTANCE),
                    "Between two leads, at 20 °C.",
                    "12 mΩ ± 10 %",
                    FOUND);
    public static final Key<Quantity> NO_LOAD =
            open(
                    "no-load current",
                    Amount.notNegative(Measure.CURRENT),
                    "Current without rotor.",
                    "2.5 A ± 20 %",
                    FOUND);

    /** What a bench table with speeds tells, so that it need not be declared. */
    public static final List<Key<Quantity>> FOUND_ON_A_BENCH =
            List.of(SPEED_CONSTANT, WINDING, NO_LOAD);

    public static final Key<Integer> POLE_PAIRS =
            open(
                    "pole pairs",
                    new Whole("pole pairs", 1, 60),
                    "Half the number of magnets.",
                    "5",
                    "the electrical speed is not judged");

    public static final Key<Quantity> AT_VOLTAGE =
            later("voltage", Amount.positive(Measure.VOLTAGE), "Voltage at the motor.", "40 V");
    public static final Key<Quantity> AT_CURRENT =
            later(
                    "current",
                    Amount.notNegative(Measure.CURRENT),
                    "Current without rotor at that voltage.",
                    "2.8 A ± 10 %");
    public static final Section POINT =
            Section.of(
                    "no-load point", "One measured point without rotor.", AT_VOLTAGE, AT_CURRENT);
    public static final Key<List<Stated<Fields>>> NO_LOAD_POINTS =
            later(
                    "no-load points",
                    new ListOf<>("points", POINT, 2, 50),
                    "Two or more points without rotor: the loss then grows with speed.",
                    "[{voltage: 20 V, current: 1.9 A}, {voltage: 40 V, current: 2.8 A}]");
    public static final Key<Quantity> INDUCTANCE =
            later("inductance", Amount.positive(Measure.INDUCTANCE), "Between two leads.", "12 µH");
    public static final Key<Magnets> MAGNET =
            defaulted(
                            "magnets",
                            new Word<>(grades()),
                            "unknown",
                            "no grade is declared: the limit of the lowest one holds",
                            "Heat grade of the magnets.",
                            "SH")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> MAGNET_FADE =
            defaulted(
                            "magnet fade",
                            Amount.of(Measure.PER_KELVIN, Range.between(0, 0.01)),
                            "0.11 %/K",
                            "neodymium, common practice",
                            "Loss of magnetism with heat.",
                            "0.11 %/K")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> HEAT_WINDING =
            computed(
                            "winding heat capacity",
                            Amount.positive(Measure.HEAT_CAPACITY),
                            "60 J/K for each kg of the fan's mass, ± 40 % bound; from memory",
                            "Of the winding.",
                            "45 J/K ± 20 %")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> HEAT_CASE =
            computed(
                            "case heat capacity",
                            Amount.positive(Measure.HEAT_CAPACITY),
                            "215 J/K for each kg of the fan's mass, ± 40 % bound; from memory",
                            "Of the rest of the motor.",
                            "160 J/K ± 20 %")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> TO_CASE =
            computed(
                            "winding to case",
                            Amount.positive(Measure.HEAT_CONDUCTANCE),
                            "2 W/K for each kg of the fan's mass, ± 50 % bound; from memory",
                            "Heat from winding to case.",
                            "1.5 W/K ± 30 %")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> TO_AIR =
            computed(
                            "case to air",
                            Amount.positive(Measure.HEAT_CONDUCTANCE),
                            "5.4 W/K for each kg of the fan's mass, ± 50 % bound; from memory",
                            "Heat from case to the fan's own stream at full speed.",
                            "4 W/K ± 30 %")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> HOTTEST =
            open(
                            "winding class",
                            Amount.of(Measure.TEMPERATURE, Range.between(313.15, 673.15)),
                            "Temperature class of the winding.",
                            "180 °C",
                            "the limit “motor winding” holds")
                    .readBy(Key.Question.HEAT);
    public static final Section SECTION =
            Section.of(
                    "motor",
                    "The motor.",
                    SPEED_CONSTANT,
                    WINDING,
                    NO_LOAD,
                    POLE_PAIRS,
                    NO_LOAD_POINTS,
                    INDUCTANCE,
                    MAGNET,
                    MAGNET_FADE,
                    HEAT_WINDING,
                    HEAT_CASE,
                    TO_CASE,
                    TO_AIR,
                    HOTTEST);

    private MotorKeys() {}

    private static Map<String, Magnets> grades() {
        var words = new LinkedHashMap<String, Magnets>();
        for (Magnets grade : Magnets.values()) {
            words.put(grade == Magnets.UNKNOWN ? "unknown" : grade.name(), grade);
        }
        return words;
    }
}
