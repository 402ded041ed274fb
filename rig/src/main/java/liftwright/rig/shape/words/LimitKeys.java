package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;

import java.util.List;
import java.util.Map;
import java.util.Optional;
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
            keys.put(name, question(name).map(key::readBy).orElse(key));
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
            case LIFT_AFTER_LOSS -> "least usable lift over weight after one loss";
            case IMPACT_SPEED -> "fastest meeting with the ground that can be borne";
            case WATCHER_REACTION ->
                    "from a surprise to the press, of crew whose reaction is not measured";
            case WEARER_REACTION -> "the same of the wearer";
            case ANCHOR -> "least pull that the anchor of a tether must hold";
            case ARREST_FORCE -> "greatest pull of a tether on the wearer";
            case FREE_FALL -> "longest fall before the tether holds";
            case RESTRAINT_FACTOR -> "what holds over what it must hold, at least";
            case DWELL_SHARE -> "most thrust over weight while a wearer stands with thrust on";
            case NOISE -> "sound level that may last eight hours";
            case FRAGMENT_ENERGY -> "energy from which on a thrown piece is hazardous";
            case KEEP_OUT -> "least distance of everybody else";
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

    /** The question that first reads a limit; empty for lift. */
    private static Optional<Key.Question> question(LimitName name) {
        return switch (name) {
            case CELL_AT_START,
                    CELL_TEMPERATURE,
                    JOINT_TEMPERATURE,
                    TOUCH_TEMPERATURE,
                    CONTROLLER_TEMPERATURE,
                    WINDING_TEMPERATURE,
                    MAGNET_TEMPERATURE,
                    WIRE_BELOW_CLASS ->
                    Optional.of(Key.Question.HEAT);
            case LIFT_AFTER_LOSS, IMPACT_SPEED, WATCHER_REACTION, WEARER_REACTION ->
                    Optional.of(Key.Question.FAILURES);
            case ANCHOR,
                    ARREST_FORCE,
                    FREE_FALL,
                    RESTRAINT_FACTOR,
                    DWELL_SHARE,
                    NOISE,
                    FRAGMENT_ENERGY,
                    KEEP_OUT ->
                    Optional.of(Key.Question.RESTRAINT);
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
                    Optional.empty();
        };
    }

    /** A temperature, or a difference of two where a limit keeps its distance. */
    private static Amount amount(LimitName name) {
        return name == LimitName.WIRE_BELOW_CLASS
                ? Amount.of(Measure.KELVIN, Range.between(0, 200))
                : measure(name) == Measure.TEMPERATURE
                        ? Amount.of(Measure.TEMPERATURE, Range.between(223.15, 673.15))
                        : name == LimitName.FREE_FALL
                                ? Amount.notNegative(Measure.HEIGHT)
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
                        Measure.ANGLE,
                        Measure.SPEED,
                        Measure.FORCE,
                        Measure.HEIGHT,
                        Measure.ENERGY,
                        Measure.SOUND_LEVEL)) {
            if (name.dimension().equals(measure.dimension())) {
                return measure;
            }
        }
        return Measure.RATIO;
    }

    private static Section section() {
        var keys = new java.util.ArrayList<Key<?>>(OF.values());
        keys.addAll(List.of(PHASE_MARGIN, WIND, GUST));
        return Section.of(
                "limits", "Limits in place of the defaults.", keys.toArray(Key<?>[]::new));
    }

    private LimitKeys() {}
}
