package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.computed;
import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.List;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.rig.FanType;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Need;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Word;

/** The motor controller (ESC) of a fan type. */
public final class ControllerKeys {

    public static final Key<Quantity> ON_RESISTANCE =
            defaulted(
                    "on-resistance",
                    Amount.notNegative(Measure.RESISTANCE),
                    "2 mΩ ± 1 mΩ bound",
                    "from memory, measure yours",
                    "Of the conducting switches, at 25 °C.",
                    "2 mΩ ± 20 %");
    public static final Key<Quantity> CURRENT_LIMIT =
            open(
                    "current limit",
                    Amount.positive(Measure.CURRENT),
                    "Winding current at which it lowers the duty.",
                    "130 A",
                    "it never limits");
    public static final Key<Quantity> TOP_VOLTAGE =
            open(
                    "top voltage",
                    Amount.positive(Measure.VOLTAGE),
                    "Absolute maximum at its input.",
                    "75 V",
                    "its voltage is not judged");
    public static final Key<Quantity> TOP_ELECTRICAL =
            open(
                    "top electrical speed",
                    Amount.positive(Measure.ROTATION),
                    "Speed times pole pairs that it can follow.",
                    "240000 rpm",
                    "its electrical speed is not judged");
    public static final Key<Quantity> CAPACITANCE =
            open(
                    "capacitance",
                    Amount.positive(Measure.CAPACITANCE),
                    "Of the capacitors at its input.",
                    "940 µF",
                    "peaks at its input cannot be told");
    public static final Key<Quantity> CAPACITOR_VOLTAGE =
            open(
                    "capacitor voltage",
                    Amount.positive(Measure.VOLTAGE),
                    "Rating of that capacitor.",
                    "80 V",
                    "the capacitor is not judged");
    public static final Key<Quantity> CUT_OFF =
            open(
                    "cut-off",
                    Amount.positive(Measure.VOLTAGE),
                    "Voltage at which it stops the motor.",
                    "40 V",
                    "it never cuts off");
    public static final Key<Quantity> FIXED_POWER =
            defaulted(
                    "fixed power",
                    Amount.notNegative(Measure.POWER),
                    "5 W ± 3 W bound",
                    "from memory, measure yours",
                    "Drawn at any throttle.",
                    "5 W");
    public static final Key<Quantity> SWITCHING_LOSS =
            defaulted(
                    "switching loss",
                    Amount.of(Measure.RATIO, Range.between(0, 1)),
                    "0.05 ± 0.04 bound",
                    "from memory, measure yours",
                    "Share k of winding current that is lost in k·I·(1 − duty) on top.",
                    "0.04 ± 0.01");
    public static final Key<Quantity> MASS =
            required(
                    "mass",
                    Amount.notNegative(Measure.MASS),
                    "Of the controller with its leads; 0 g if it is in the fan's mass.",
                    "0.12 kg");

    public static final Key<FanType.Braking> BRAKING =
            open(
                    "braking",
                    Word.of(FanType.Braking.values(), ' '),
                    "What it does at a lower duty or after a stop: nothing, shorts the winding, or sends energy back.",
                    "coast",
                    "what braking does to its input cannot be told");
    public static final Key<Quantity> SWITCHING_FREQUENCY =
            open(
                            "switching frequency",
                            Amount.positive(Measure.FREQUENCY),
                            "Of its pulse width modulation.",
                            "24 kHz",
                            "ripple at its input is not judged")
                    .readBy(Key.Question.ENDURANCE);
    public static final Key<Quantity> CAPACITOR_RESISTANCE =
            open(
                            "capacitor resistance",
                            Amount.notNegative(Measure.RESISTANCE),
                            "Series resistance of that capacitor.",
                            "10 mΩ",
                            "it adds no ripple")
                    .readBy(Key.Question.ENDURANCE);
    public static final Key<Quantity> DELAY =
            defaulted(
                            "delay",
                            Amount.notNegative(Measure.TIME),
                            "4 ms",
                            "from memory, measure yours",
                            "From command to torque.",
                            "3 ms")
                    .readBy(Key.Question.FLIGHT);
    public static final Key<Quantity> SLEW =
            open(
                            "slew",
                            Amount.positive(Measure.PER_SECOND),
                            "Fastest change of duty that it allows.",
                            "300 %/s",
                            "it follows as fast as it is told")
                    .readBy(Key.Question.FLIGHT);
    public static final Key<Quantity> START_TIME =
            later(
                    "start time",
                    Amount.positive(Measure.TIME),
                    "From stand to turning in step.",
                    "0.6 s");
    public static final Key<Quantity> START_CURRENT =
            later(
                    "start current",
                    Amount.positive(Measure.CURRENT),
                    "Drawn from the bus while starting.",
                    "20 A");
    public static final Key<Quantity> IDLE =
            open(
                            "idle",
                            Amount.share(),
                            "Least duty at which it keeps turning.",
                            "6 %",
                            "a fan stuck at idle gives nothing")
                    .readBy(Key.Question.FAILURES);
    public static final Key<FanType.SignalLoss> SIGNAL_LOSS =
            defaulted(
                            "signal loss",
                            Word.of(FanType.SignalLoss.values(), ' '),
                            "stop",
                            "common practice, test yours",
                            "What it does when its signal is lost.",
                            "stop")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> SURGE =
            defaulted(
                            "start-up surge",
                            Amount.notNegative(Measure.TIME),
                            "0.5 s",
                            "from memory, test yours",
                            "How long its fan runs at full when it is made live wrongly.",
                            "0.5 s")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> HEAT =
            computed(
                            "heat capacity",
                            Amount.positive(Measure.HEAT_CAPACITY),
                            "500 J/K for each kg of its mass, ± 40 % bound; from memory",
                            "Of the controller with its sink.",
                            "60 J/K ± 30 %")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> JUNCTION_TO_SINK =
            computed(
                            "junction to sink",
                            Amount.positive(Measure.HEAT_CONDUCTANCE),
                            "125 W/K for each kg of its mass, ± 50 % bound; from memory",
                            "Heat from the switches to the sink.",
                            "15 W/K ± 30 %")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> JUNCTION_HEAT =
            computed(
                            "junction heat capacity",
                            Amount.positive(Measure.HEAT_CAPACITY),
                            "10 J/K for each kg of its mass, ± 50 % bound; from memory",
                            "The part of its heat capacity that warms with the switches.",
                            "1.2 J/K ± 40 %")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> TO_AIR =
            computed(
                            "to air",
                            Amount.positive(Measure.HEAT_CONDUCTANCE),
                            "15 W/K for each kg of its mass, ± 50 % bound; from memory",
                            "Heat to the fan's own stream at full speed.",
                            "2 W/K ± 30 %")
                    .readBy(Key.Question.HEAT);

    public static final Key<Quantity> LOW_END =
            later("low end", Amount.share(), "Command at which the motor starts.", "5 %");
    public static final Key<Quantity> HIGH_END =
            later("high end", Amount.share(), "Command at which duty is full.", "97 %");
    public static final Key<Quantity> SCATTER =
            later(
                    "scatter",
                    Amount.doubt(Measure.RATIO, "1"),
                    "Duty of single units over the map's.",
                    "± 1 % each");
    public static final Key<Quantity> MAP_COMMAND =
            later("command", Amount.share(), "Command.", "50 %");
    public static final Key<Quantity> MAP_DUTY =
            later("duty", Amount.share(), "Duty at that command.", "42 %");
    public static final Section MAP_POINT =
            Section.of("command point", "One point of the command map.", MAP_COMMAND, MAP_DUTY);
    public static final Key<List<Stated<Fields>>> MAP_POINTS =
            later(
                    "points",
                    new ListOf<>("points", MAP_POINT, 2, 50),
                    "Duty against command, linear between.",
                    "[{command: 0 %, duty: 0 %}, {command: 50 %, duty: 42 %}, {command: 100 %, duty: 100 %}]");
    public static final Section COMMAND_SECTION =
            Section.of(
                    "command map",
                    "Which duty a throttle command gives.",
                    LOW_END,
                    HIGH_END,
                    SCATTER,
                    MAP_POINTS);
    public static final Key<Fields> COMMAND =
            later(
                    "command",
                    COMMAND_SECTION,
                    "Throttle is not duty: the map between them.",
                    "{low end: 5 %, high end: 97 %}");

    public static final Section SECTION =
            Section.of(
                    "controller",
                    "The motor controller.",
                    ON_RESISTANCE,
                    CURRENT_LIMIT,
                    TOP_VOLTAGE,
                    TOP_ELECTRICAL,
                    CAPACITANCE,
                    CAPACITOR_VOLTAGE,
                    CUT_OFF,
                    FIXED_POWER,
                    SWITCHING_LOSS,
                    MASS,
                    BRAKING,
                    SWITCHING_FREQUENCY,
                    CAPACITOR_RESISTANCE,
                    DELAY,
                    SLEW,
                    START_TIME,
                    START_CURRENT,
                    IDLE,
                    SIGNAL_LOSS,
                    SURGE,
                    HEAT,
                    JUNCTION_TO_SINK,
                    JUNCTION_HEAT,
                    TO_AIR,
                    COMMAND);

    private ControllerKeys() {}

    /**
     * The default of a key, for whoever reads no rig file.
     *
     * @throws IllegalArgumentException if the key has none
     */
    public static Quantity usual(Key<Quantity> key) {
        if (key.need() instanceof Need.Default(var text, var _)
                && key.kind() instanceof Amount amount
                && QuantityParser.parse(text, amount.measure().dimension())
                        instanceof Reading.Parsed<Quantity>(var quantity)) {
            return quantity;
        }
        throw new IllegalArgumentException(key.name() + " has no default");
    }
}
