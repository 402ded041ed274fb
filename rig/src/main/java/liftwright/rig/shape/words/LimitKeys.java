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

    private static Map<LimitName, Key<Quantity>> named() {
        var keys = new java.util.EnumMap<LimitName, Key<Quantity>>(LimitName.class);
        for (LimitName name : LimitName.values()) {
            String value = show(name);
            Key<Quantity> key =
                    defaulted(
                            name.key(),
                            amount(name),
                            value,
                            name.origin(),
                            "Limit: " + meaning(name) + ".",
                            value);
            keys.put(name, isHeat(name) ? key.readBy(Key.Question.HEAT) : key);
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
            case CELL_AT_START -> "coldest cell at the start";
            case CELL_TEMPERATURE -> "hottest core of a cell";
            case JOINT_TEMPERATURE -> "hottest joint";
            case TOUCH_TEMPERATURE -> "hottest surface that skin can touch";
            case CONTROLLER_TEMPERATURE -> "hottest switch of a controller";
            case WINDING_TEMPERATURE -> "hottest winding; declared here, it counts for every class";
            case MAGNET_TEMPERATURE -> "hottest magnet; declared here, it counts for every grade";
            case WIRE_BELOW_CLASS ->
                    "how far wires and windings stay below the class of their insulation";
        };
    }

    private static boolean isHeat(LimitName name) {
        return switch (name) {
            case CELL_AT_START,
                    CELL_TEMPERATURE,
                    JOINT_TEMPERATURE,
                    TOUCH_TEMPERATURE,
                    CONTROLLER_TEMPERATURE,
                    WINDING_TEMPERATURE,
                    MAGNET_TEMPERATURE,
                    WIRE_BELOW_CLASS ->
                    true;
            case ROLL_RESERVE,
                    PITCH_RESERVE,
                    YAW_RESERVE,
                    DRIFT,
                    ARM_REACH,
                    ARM_REACH_LEFT,
                    ROTOR_SPEED_SHARE,
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
                    false;
        };
    }

    /** A temperature, or a difference of two where a limit keeps its distance. */
    private static Amount amount(LimitName name) {
        return name == LimitName.WIRE_BELOW_CLASS
                ? Amount.of(Measure.KELVIN, Range.between(0, 200))
                : measure(name) == Measure.TEMPERATURE
                        ? Amount.of(Measure.TEMPERATURE, Range.between(223.15, 673.15))
                        : Amount.positive(measure(name));
    }

    private static Measure measure(LimitName name) {
        if (name == LimitName.WIRE_BELOW_CLASS) {
            return Measure.KELVIN;
        }
        for (Measure measure :
                List.of(
                        Measure.TEMPERATURE,
                        Measure.VOLTAGE,
                        Measure.TIME,
                        Measure.TURN_ACCELERATION,
                        Measure.ANGLE)) {
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
