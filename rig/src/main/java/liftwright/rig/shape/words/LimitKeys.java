package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;

import java.util.List;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.LimitName;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Section;

/** The section {@code limits}: limits that the builder sets in place of the defaults. */
public final class LimitKeys {

    /** One key for each limit that a question compares with. */
    public static final Map<LimitName, Key<Quantity>> OF = named();

    public static final Key<Quantity> CELL_START =
            temperature("cell at start", "Least cell temperature at the start.", "25 °C");
    public static final Key<Quantity> CELL_HOTTEST =
            temperature("cell temperature", "Hottest core of a cell.", "60 °C");
    public static final Key<Quantity> JOINT_HOTTEST =
            temperature("joint temperature", "Hottest joint.", "90 °C");
    public static final Key<Quantity> TOUCH =
            temperature("touch temperature", "Hottest surface that skin can touch.", "60 °C");
    public static final Key<Quantity> JUNCTION =
            temperature("controller junction", "Hottest switch of a controller.", "100 °C");
    public static final Key<Quantity> WINDING =
            temperature("motor winding", "Hottest winding.", "120 °C");
    public static final Key<Quantity> MAGNET = temperature("magnets", "Hottest magnet.", "80 °C");
    public static final Key<Quantity> WIRE_BELOW_CLASS =
            later(
                    "wire below class",
                    Amount.notNegative(Measure.KELVIN),
                    "How far wires stay below the class of their insulation.",
                    "20 K");
    public static final Key<Quantity> LIFT_ONE_LOST =
            later(
                    "thrust to weight with one fan lost",
                    Amount.positive(Measure.RATIO),
                    "Least usable lift over weight with the worst fan lost.",
                    "1.05");
    public static final Key<Quantity> PHASE_MARGIN =
            later(
                    "phase margin",
                    Amount.positive(Measure.ANGLE),
                    "Least phase margin of each loop.",
                    "45°");
    public static final Key<Quantity> WIND =
            later(
                    "wind",
                    Amount.notNegative(Measure.SPEED),
                    "Strongest mean wind for a test.",
                    "3 m/s");
    public static final Key<Quantity> GUST =
            later("gust", Amount.notNegative(Measure.SPEED), "Strongest gust for a test.", "5 m/s");
    public static final Key<Quantity> ARREST_FORCE =
            later(
                    "arrest force",
                    Amount.positive(Measure.FORCE),
                    "Greatest pull of a tether on the wearer.",
                    "6 kN");
    public static final Key<Quantity> FREE_FALL =
            later(
                    "free fall",
                    Amount.notNegative(Measure.HEIGHT),
                    "Longest fall before the tether holds.",
                    "0.6 m");
    public static final Key<Quantity> BYSTANDERS =
            later(
                    "bystanders",
                    Amount.notNegative(Measure.HEIGHT),
                    "Least distance of everybody else.",
                    "20 m");

    public static final Section SECTION = section();

    private static Key<Quantity> temperature(String name, String meaning, String example) {
        return later(
                name,
                Amount.of(Measure.TEMPERATURE, Range.between(223.15, 673.15)),
                meaning,
                example);
    }

    private static Map<LimitName, Key<Quantity>> named() {
        var keys = new java.util.EnumMap<LimitName, Key<Quantity>>(LimitName.class);
        for (LimitName name : LimitName.values()) {
            String value = show(name);
            keys.put(
                    name,
                    defaulted(
                            name.key(),
                            Amount.positive(measure(name)),
                            value,
                            name.origin(),
                            "Limit: " + meaning(name) + ".",
                            value));
        }
        return java.util.Collections.unmodifiableMap(keys);
    }

    /** The default as a file would say it. */
    public static String show(LimitName name) {
        return measure(name).show(name.defaultSi());
    }

    /** What a limit bounds, where its key does not say it by itself. */
    public static String meaning(LimitName name) {
        return switch (name) {
            case ROLL_RESERVE -> "least control left about the forward axis";
            case PITCH_RESERVE -> "least control left about the sideways axis";
            case YAW_RESERVE -> "least control left about the upright axis";
            case DRIFT -> "turning that grows no faster than this is drift";
            case ARM_REACH -> "how far every joint of an arm is taken to steer";
            case ARM_REACH_LEFT -> "least share of that reach to be left for steering";
            case ROTOR_SPEED_SHARE,
                    TIP_MACH,
                    ELECTRICAL_SPEED_SHARE,
                    CONTROLLER_VOLTAGE_SHARE,
                    CAPACITOR_VOLTAGE_SHARE,
                    CONTROLLER_CURRENT_SHARE,
                    JOINT_CURRENT_SHARE,
                    FUSE_OVER_CURRENT,
                    FUSE_BREAKING_SHARE,
                    RIPPLE_SHARE,
                    ARM_LOAD_SHARE,
                    KILL_TIME,
                    CELL_UNDER_LOAD,
                    HAZARDOUS_VOLTAGE ->
                    name.key();
        };
    }

    private static Measure measure(LimitName name) {
        for (Measure measure :
                List.of(Measure.VOLTAGE, Measure.TIME, Measure.TURN_ACCELERATION, Measure.ANGLE)) {
            if (name.dimension().equals(measure.dimension())) {
                return measure;
            }
        }
        return Measure.RATIO;
    }

    private static Section section() {
        var keys = new java.util.ArrayList<Key<?>>(OF.values());
        keys.addAll(
                List.of(
                        CELL_START,
                        CELL_HOTTEST,
                        JOINT_HOTTEST,
                        TOUCH,
                        JUNCTION,
                        WINDING,
                        MAGNET,
                        WIRE_BELOW_CLASS,
                        LIFT_ONE_LOST,
                        PHASE_MARGIN,
                        WIND,
                        GUST,
                        ARREST_FORCE,
                        FREE_FALL,
                        BYSTANDERS));
        return Section.of(
                "limits", "Limits in place of the defaults.", keys.toArray(Key<?>[]::new));
    }

    private LimitKeys() {}
}
