package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;

import java.util.List;
import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Measure;
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
    public static final Key<String> MAGNET =
            later(
                    "magnets",
                    Word.of("N", "M", "H", "SH", "UH", "EH", "unknown"),
                    "Heat grade of the magnets.",
                    "SH");
    public static final Key<Quantity> MAGNET_FADE =
            later(
                    "magnet fade",
                    Amount.notNegative(Measure.PER_KELVIN),
                    "Loss of magnetism with heat.",
                    "0.11 %/K");
    public static final Key<Quantity> HEAT_WINDING =
            later(
                    "winding heat capacity",
                    Amount.positive(Measure.HEAT_CAPACITY),
                    "Of the winding.",
                    "45 J/K ± 20 %");
    public static final Key<Quantity> HEAT_CASE =
            later(
                    "case heat capacity",
                    Amount.positive(Measure.HEAT_CAPACITY),
                    "Of the rest of the motor.",
                    "160 J/K ± 20 %");
    public static final Key<Quantity> TO_CASE =
            later(
                    "winding to case",
                    Amount.positive(Measure.HEAT_CONDUCTANCE),
                    "Heat from winding to case.",
                    "1.5 W/K ± 30 %");
    public static final Key<Quantity> TO_AIR =
            later(
                    "case to air",
                    Amount.positive(Measure.HEAT_CONDUCTANCE),
                    "Heat from case to the fan's own stream at full speed.",
                    "4 W/K ± 30 %");
    public static final Key<Quantity> HOTTEST =
            later(
                    "winding class",
                    Amount.positive(Measure.TEMPERATURE),
                    "Temperature class of the winding.",
                    "180 °C");
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
}
