package liftwright.flight.profile;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;
import static liftwright.rig.shape.kind.Rule.atLeastOne;
import static liftwright.rig.shape.kind.Rule.atMostOne;
import static liftwright.rig.shape.kind.Rule.needs;

import java.util.List;
import liftwright.plant.fault.Fault;
import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;
import liftwright.rig.shape.kind.YesNo;

/** The words of a profile file, format 1. */
public final class ProfileKeys {

    /** The only format there is. */
    public static final int FORMAT = 1;

    private static final String PRACTICE = "common practice";
    private static final String RECOVERED =
            "what this program calls recovered: it tells losses that are flown through from others";

    private static final Range SECONDS = Range.upTo(3600);
    private static final Range SPEEDS = Range.upTo(20);
    private static final Range HEIGHTS = Range.upTo(100);
    private static final Range ACROSS = Range.between(-500, 500);
    private static final double FULL_TURN = 2 * Math.PI;
    private static final Range TILTS = Range.upTo(Math.PI / 2);

    static final Key<Integer> HEAD =
            required(
                    "liftwright profile",
                    new Whole("the format", FORMAT, FORMAT),
                    "Format of the file.",
                    "1");
    static final Key<String> NAME =
            open("name", new Text("a name"), "What it is called.", "hover", "it has no name");

    static final Key<Profile.Stand> ON =
            defaulted(
                    "on",
                    Word.of(Profile.Stand.values(), ' '),
                    "ground",
                    "where a rig is made live",
                    "What it stands on; `held` is held in the air by a stand that lets go at once.",
                    "one foot");
    static final Key<Quantity> HELD_HEIGHT =
            open(
                    "height",
                    Amount.of(Measure.HEIGHT, HEIGHTS),
                    "Height of its lowest part where it is held.",
                    "1.5 m",
                    "it stands on the ground");
    static final Key<Quantity> CHARGE =
            open(
                    "charge",
                    Amount.of(Measure.SHARE, Range.upTo(1)),
                    "Charge of every pack at the start.",
                    "90 %",
                    "as the rig file declares");
    static final Key<Boolean> TETHERED =
            open(
                    "tethered",
                    new YesNo(),
                    "Whether the lines of `restraint/tether` in the rig file hang over the start.",
                    "yes",
                    "no line holds it");
    static final Section START_SECTION =
            Section.of("start", "Where and how it begins.", ON, HELD_HEIGHT, CHARGE, TETHERED);
    static final Key<Fields> START =
            open("start", START_SECTION, "Where and how it begins.", "{on: ground}", "the ground");

    static final Key<Quantity> MAKE_LIVE =
            open(
                    "make live",
                    Amount.of(Measure.TIME, SECONDS),
                    "Power on; the fans idle for so long.",
                    "2 s",
                    "");
    static final Key<Quantity> TO =
            required(
                    "to",
                    Amount.of(Measure.HEIGHT, HEIGHTS),
                    "Height of the lowest part above the ground.",
                    "1.5 m");
    static final Key<Quantity> CLIMB =
            defaulted(
                    "at",
                    Amount.of(Measure.SPEED, SPEEDS),
                    "0.5 m/s",
                    PRACTICE,
                    "How fast the set point rises or sinks.",
                    "0.5 m/s");
    static final Section LIFT_SECTION = Section.of("lift", "Straight up or down.", TO, CLIMB);
    static final Key<Fields> LIFT =
            open("lift", LIFT_SECTION, "Straight up or down to a height.", "{to: 1.5 m}", "");
    static final Key<Quantity> HOLD =
            open(
                    "hold",
                    Amount.of(Measure.TIME, SECONDS),
                    "Stays at the point for so long.",
                    "10 s",
                    "");
    static final Key<Quantity> FORWARD =
            defaulted(
                    "forward",
                    Amount.of(Measure.HEIGHT, ACROSS),
                    "0 m",
                    "the start",
                    "From the start, as it looked there; negative is backward.",
                    "3 m");
    static final Key<Quantity> RIGHT =
            defaulted(
                    "right",
                    Amount.of(Measure.HEIGHT, ACROSS),
                    "0 m",
                    "the start",
                    "From the start; negative is left.",
                    "12 m");
    static final Key<Quantity> HEIGHT =
            open(
                    "height",
                    Amount.of(Measure.HEIGHT, HEIGHTS),
                    "Height of the lowest part at the point.",
                    "1.5 m",
                    "the height stays");
    static final Key<Quantity> SPEED =
            defaulted(
                    "at",
                    Amount.of(Measure.SPEED, SPEEDS),
                    "1 m/s",
                    PRACTICE,
                    "How fast the set point goes.",
                    "1.5 m/s");
    static final Section MOVE_SECTION =
            Section.of("move to", "Straight to a point.", FORWARD, RIGHT, HEIGHT, SPEED);
    static final Key<Fields> MOVE =
            open("move to", MOVE_SECTION, "Straight to a point.", "{right: 12 m}", "");
    static final Key<Quantity> BY =
            required(
                    "by",
                    Amount.of(Measure.ANGLE, Range.between(-4 * FULL_TURN, 4 * FULL_TURN)),
                    "Clockwise as seen from above.",
                    "90°");
    static final Key<Quantity> RATE =
            defaulted(
                    "at",
                    Amount.of(Measure.TURN_RATE, Range.upTo(FULL_TURN)),
                    "30 deg/s",
                    PRACTICE,
                    "How fast.",
                    "30 deg/s");
    static final Section TURN_SECTION = Section.of("turn", "Turns on the spot.", BY, RATE);
    static final Key<Fields> TURN =
            open("turn", TURN_SECTION, "Turns on the spot.", "{by: 90°}", "");
    static final Key<Quantity> LAND =
            open(
                    "land",
                    Amount.of(Measure.SPEED, Range.upTo(3)),
                    "Down to the ground so fast.",
                    "0.3 m/s",
                    "");
    static final Key<Quantity> MAKE_DEAD =
            open(
                    "make dead",
                    Amount.of(Measure.TIME, SECONDS),
                    "Fans to zero, power off; then it stands for so long.",
                    "2 s",
                    "");
    static final Section STEP =
            Section.of(
                            "step",
                            "One thing that is done; a step has one key.",
                            MAKE_LIVE,
                            LIFT,
                            HOLD,
                            MOVE,
                            TURN,
                            LAND,
                            MAKE_DEAD)
                    .with(
                            atLeastOne(MAKE_LIVE, LIFT, HOLD, MOVE, TURN, LAND, MAKE_DEAD),
                            atMostOne(MAKE_LIVE, LIFT, HOLD, MOVE, TURN, LAND, MAKE_DEAD));
    static final Key<List<Stated<Fields>>> STEPS =
            required(
                    "steps",
                    new ListOf<>("steps", STEP, 1, 200),
                    "What is done, one after the other.",
                    "[{make live: 2 s}, {lift: {to: 1.5 m}}, {hold: 10 s}, {land: 0.3 m/s}]");

    static final Key<Quantity> TILT =
            limit("tilt", Measure.ANGLE, TILTS, "45°", RECOVERED, "Greatest tilt in the air.");
    static final Key<Quantity> DRIFT =
            limit(
                    "drift",
                    Measure.HEIGHT,
                    Range.upTo(100),
                    "3 m",
                    RECOVERED,
                    "Greatest level distance from the set point.");
    static final Key<Quantity> LOST =
            limit(
                    "height lost",
                    Measure.HEIGHT,
                    HEIGHTS,
                    "1 m",
                    RECOVERED,
                    "Greatest height below the set point.");
    static final Key<Quantity> MISS =
            limit(
                    "miss",
                    Measure.HEIGHT,
                    Range.upTo(100),
                    "0.5 m",
                    PRACTICE,
                    "Distance from the last held point at the end of its hold.");
    static final Key<Quantity> LANDING =
            limit("landing", Measure.SPEED, SPEEDS, "1 m/s", PRACTICE, "Sink at touch-down.");
    static final Section LIMITS_SECTION =
            Section.of(
                    "limits",
                    "Within which a flight counts as well flown.",
                    TILT,
                    DRIFT,
                    LOST,
                    MISS,
                    LANDING);
    static final Key<Fields> LIMITS =
            open(
                    "limits",
                    LIMITS_SECTION,
                    "Within which a flight counts as well flown.",
                    "{tilt: 30°, drift: 1 m}",
                    "each limit takes what stands in for it");

    static final Key<Quantity> ABORT_TILT = abort("tilt", Measure.ANGLE, TILTS, "30°");
    static final Key<Quantity> ABORT_DRIFT = abort("drift", Measure.HEIGHT, Range.upTo(500), "2 m");
    static final Key<Quantity> ABORT_HEIGHT = abort("height", Measure.HEIGHT, HEIGHTS, "3 m");
    static final Key<Quantity> ABORT_SINK = abort("sink", Measure.SPEED, SPEEDS, "2 m/s");
    static final Key<Quantity> ABORT_CHARGE =
            abort("charge left", Measure.SHARE, Range.upTo(1), "20 %");
    static final Key<Quantity> ABORT_CELL =
            abort("cell", Measure.VOLTAGE, Range.between(2, 4.5), "3.2 V");
    static final Key<Profile.Then> THEN =
            required(
                    "then",
                    Word.of(Profile.Then.values(), ' '),
                    "What is done: `land` where it is, or `make dead` at once.",
                    "land");
    static final Section ABORT =
            Section.of(
                            "abort",
                            "What ends a flight early: above a value, for charge and cell below.",
                            ABORT_TILT,
                            ABORT_DRIFT,
                            ABORT_HEIGHT,
                            ABORT_SINK,
                            ABORT_CHARGE,
                            ABORT_CELL,
                            THEN)
                    .with(
                            atLeastOne(
                                    ABORT_TILT,
                                    ABORT_DRIFT,
                                    ABORT_HEIGHT,
                                    ABORT_SINK,
                                    ABORT_CHARGE,
                                    ABORT_CELL),
                            atMostOne(
                                    ABORT_TILT,
                                    ABORT_DRIFT,
                                    ABORT_HEIGHT,
                                    ABORT_SINK,
                                    ABORT_CHARGE,
                                    ABORT_CELL));
    static final Key<List<Stated<Fields>>> ABORTS =
            open(
                    "aborts",
                    new ListOf<>("aborts", ABORT, 0, 20),
                    "What ends the flight early.",
                    "[{tilt: 30°, then: land}]",
                    "only the end of the supply ends it early");

    static final Key<String> MODULE_NAME =
            required("name", new Text("a name"), "By which the answer calls it.", "left");
    static final Key<Quantity> MODULE_FORWARD =
            defaulted(
                    "forward",
                    Amount.of(Measure.HEIGHT, ACROSS),
                    "0 m",
                    "beside the first",
                    "Of its start from that of the first; negative is behind.",
                    "2 m");
    static final Key<Quantity> MODULE_RIGHT =
            defaulted(
                    "right",
                    Amount.of(Measure.HEIGHT, ACROSS),
                    "0 m",
                    "in line with the first",
                    "Of its start from that of the first; negative is to the left.",
                    "-2 m");
    static final Key<Quantity> MODULE_AFTER =
            defaulted(
                    "after",
                    Amount.of(Measure.TIME, Range.between(0, 600)),
                    "0 s",
                    "together with the first",
                    "How long after the first it begins.",
                    "4 s");
    static final Key<List<Stated<Fields>>> MODULE_STEPS =
            open(
                    "steps",
                    new ListOf<>("steps", STEP, 1, 200),
                    "What it does, in metres from its own start.",
                    "[{make live: 2 s}, {lift: {to: 1.5 m}}, {hold: 10 s}, {land: 0.3 m/s}]",
                    "what the first does, from its own start");
    static final Section MODULE =
            Section.of(
                    "module",
                    "Another module of the same rig, flying by itself in the same scene.",
                    MODULE_NAME,
                    MODULE_FORWARD,
                    MODULE_RIGHT,
                    MODULE_AFTER,
                    MODULE_STEPS);
    static final Key<Quantity> APART =
            defaulted(
                    "apart",
                    Amount.of(Measure.HEIGHT, Range.upTo(100)),
                    "1 m",
                    PRACTICE,
                    "Least distance that shall be between any two of them.",
                    "1.5 m");
    static final Key<List<Stated<Fields>>> MODULES =
            required(
                    "modules",
                    new ListOf<>("modules", MODULE, 1, 11),
                    "The other modules.",
                    "[{name: left, right: -2.5 m}, {name: right, right: 2.5 m}]");
    static final Section TOGETHER_SECTION =
            Section.of("together", "Several modules in one scene.", APART, MODULES);
    static final Key<Fields> TOGETHER =
            open(
                    "together",
                    TOGETHER_SECTION,
                    "Several modules in one scene, kept apart from each other and from each other's"
                            + " jets.",
                    "{apart: 1 m, modules: [{name: left, right: -2.5 m}]}",
                    "it flies alone");

    static final Key<Quantity> KILL_AT =
            required("at", Amount.of(Measure.TIME, SECONDS), "When it is pressed.", "12 s");
    static final Key<String> KILL_WITH =
            required("with", new Text("the id of a kill"), "Which kill of the rig.", "remote");
    static final Section KILL_SECTION =
            Section.of("kill", "Somebody presses a kill.", KILL_AT, KILL_WITH);
    static final Key<Fields> KILL =
            open(
                    "kill",
                    KILL_SECTION,
                    "Somebody presses a kill.",
                    "{at: 12 s, with: remote}",
                    "nobody does");

    static final Key<Quantity> FAULT_AT =
            required(
                    "at",
                    Amount.of(Measure.TIME, Range.between(0, 3600)),
                    "When it happens.",
                    "5 s");
    static final Key<String> FAULT_PART =
            required(
                    "part",
                    new Text("the id of a part"),
                    "Which part, by its id as `review failures` prints it.",
                    "fan.3");
    static final Key<Fault.Kind> FAULT_KIND =
            open(
                    "fault",
                    Word.of(Fault.Kind.values(), ' '),
                    "What goes wrong with it.",
                    "stuck full",
                    "the part is lost");
    static final Section FAULT =
            Section.of("fault", "What goes wrong on the way.", FAULT_AT, FAULT_PART, FAULT_KIND);
    static final Key<List<Stated<Fields>>> FAULTS =
            open(
                    "faults",
                    new ListOf<>("faults", FAULT, 0, 50),
                    "What goes wrong on the way.",
                    "[{at: 5 s, part: fan.3}]",
                    "nothing goes wrong");

    static final Key<Quantity> MEAN =
            required(
                    "mean",
                    Amount.of(Measure.SPEED, Range.between(0, 40)),
                    "Mean wind, 6 m up.",
                    "3 m/s");
    static final Key<Quantity> FROM =
            defaulted(
                    "from",
                    Amount.of(Measure.ANGLE, Range.between(-FULL_TURN, FULL_TURN)),
                    "0°",
                    "from ahead",
                    "Where it comes from: 0° ahead of the start, 90° from the right.",
                    "90°");
    static final Key<Quantity> GUST =
            open(
                    "gust",
                    Amount.of(Measure.SPEED, Range.between(0, 40)),
                    "What one gust adds at its greatest.",
                    "2 m/s",
                    "no single gust");
    static final Key<Quantity> GUST_AT =
            open(
                    "gust at",
                    Amount.of(Measure.TIME, SECONDS),
                    "When the gust begins.",
                    "10 s",
                    "no single gust");
    static final Key<Quantity> GUST_LENGTH =
            defaulted(
                    "gust length",
                    Amount.of(Measure.HEIGHT, Range.upTo(500)),
                    "30 m",
                    "from memory",
                    "Length of air over which it builds up.",
                    "30 m");
    static final Key<Boolean> ROUGH =
            defaulted(
                    "rough",
                    new YesNo(),
                    "yes",
                    "wind near the ground is",
                    "Whether turbulence comes with it.",
                    "no");
    static final Section WIND_SECTION =
            Section.of("wind", "What blows.", MEAN, FROM, GUST, GUST_AT, GUST_LENGTH, ROUGH)
                    .with(needs(GUST, GUST_AT), needs(GUST_AT, GUST));
    static final Key<Fields> WIND =
            open(
                    "wind",
                    WIND_SECTION,
                    "What blows.",
                    "{mean: 3 m/s, from: 90°}",
                    "that of the rig's site; else still air");

    static final Section SECTION =
            Section.of(
                    "profile",
                    "A flight as it is wanted.",
                    HEAD,
                    NAME,
                    START,
                    STEPS,
                    LIMITS,
                    ABORTS,
                    KILL,
                    FAULTS,
                    WIND,
                    TOGETHER);

    private ProfileKeys() {}

    /** A time as problems say it. */
    static String seconds(double timeS) {
        return Measure.TIME.show(timeS);
    }

    private static Key<Quantity> limit(
            String name, Measure measure, Range range, String text, String origin, String meaning) {
        return defaulted(name, Amount.of(measure, range), text, origin, meaning, text);
    }

    private static Key<Quantity> abort(String name, Measure measure, Range range, String example) {
        return open(
                name,
                Amount.of(measure, range),
                "Ends the flight at this value.",
                example,
                "not looked at");
    }
}
