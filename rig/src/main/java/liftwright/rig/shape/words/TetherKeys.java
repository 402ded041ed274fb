package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

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

/** A line from an anchor overhead, and lines to the ground. */
public final class TetherKeys {

    public static final Key<Quantity> ANCHOR_HEIGHT =
            required(
                            "anchor height",
                            Amount.positive(Measure.HEIGHT),
                            "Of the anchor above the ground.",
                            "4 m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> ANCHOR_STRENGTH =
            open(
                            "anchor strength",
                            Amount.positive(Measure.FORCE),
                            "Pull that the anchor holds.",
                            "22.24 kN",
                            "nothing is assumed")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> LINE =
            required("length", Amount.positive(Measure.HEIGHT), "Of the line.", "2.5 m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> STIFFNESS =
            defaulted(
                            "stiffness",
                            Amount.positive(Measure.STIFFNESS),
                            "20 kN/m ± 10 kN/m bound",
                            "from memory, measure yours",
                            "Of the line.",
                            "20 kN/m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> DAMPING =
            defaulted(
                            "damping",
                            Amount.notNegative(Measure.DAMPING),
                            "0 N·s/m",
                            "the worst: the line takes nothing away",
                            "Of the line.",
                            "500 N·s/m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> LINE_STRENGTH =
            open(
                            "line strength",
                            Amount.positive(Measure.FORCE),
                            "Pull that the line holds.",
                            "15 kN",
                            "nothing is assumed")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> GANTRY_MASS =
            required(
                            "mass",
                            Amount.positive(Measure.MASS),
                            "Of the gantry and its ballast.",
                            "120 kg")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> GANTRY_FEET =
            required(
                            "feet apart",
                            Amount.positive(Measure.HEIGHT),
                            "Distance of its feet, sideways.",
                            "3 m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> GANTRY_DEEP =
            Key.<Quantity>computed(
                            "feet deep",
                            Amount.positive(Measure.HEIGHT),
                            "as far as they are apart",
                            "Distance of its feet, fore and aft.",
                            "2 m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> GANTRY_FRICTION =
            defaulted(
                            "friction",
                            Amount.of(Measure.RATIO, Range.between(0, 2)),
                            "0.4 ± 0.1 bound",
                            "from memory: dry feet on concrete",
                            "Friction of its feet on the ground.",
                            "0.5 ± 0.1 bound")
                    .readBy(Key.Question.RESTRAINT);
    public static final Section GANTRY_SECTION =
            Section.of(
                    "gantry",
                    "A frame on the ground that carries the anchor.",
                    GANTRY_MASS,
                    GANTRY_FEET,
                    GANTRY_DEEP,
                    GANTRY_FRICTION);
    public static final Key<Fields> GANTRY =
            open(
                            "gantry",
                            GANTRY_SECTION,
                            "What carries the anchor.",
                            "{mass: 120 kg, feet apart: 3 m}",
                            "the anchor is part of a building")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> SIDE_REACH =
            open(
                            "side reach",
                            Amount.positive(Measure.HEIGHT),
                            "How far the rig may swing sideways before it meets something.",
                            "1.5 m",
                            "nothing is assumed")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> HARNESS_POINT =
            open(
                            "harness point",
                            Amount.positive(Measure.HEIGHT),
                            "Height of the ring above the soles.",
                            "1.45 m",
                            "the shoulders; of a rig that nobody wears its top")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> HARNESS_LIMIT =
            open(
                            "harness limit",
                            Amount.positive(Measure.FORCE),
                            "Pull that the harness is made for.",
                            "6 kN",
                            "nothing is assumed")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Integer> DOWN_LINES =
            open(
                            "down-lines",
                            new Whole("lines to the ground", 0, 20),
                            "Lines from the ring to the ground that stop a climb, evenly around the rig.",
                            "3",
                            "none")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> DOWN_LENGTH =
            open(
                            "down-line length",
                            Amount.positive(Measure.HEIGHT),
                            "Of each, from the ring to the ground.",
                            "2.1 m",
                            "down-lines must have one")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> DOWN_SPREAD =
            defaulted(
                            "down-line spread",
                            Amount.notNegative(Measure.HEIGHT),
                            "0 m",
                            "straight down",
                            "How far from below the ring they are fastened to the ground.",
                            "0.6 m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> DOWN_STIFFNESS =
            defaulted(
                            "down-line stiffness",
                            Amount.positive(Measure.STIFFNESS),
                            "20 kN/m ± 10 kN/m bound",
                            "from memory, measure yours",
                            "Of each of them.",
                            "20 kN/m")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<Quantity> DOWN_STRENGTH =
            open(
                            "down-line strength",
                            Amount.positive(Measure.FORCE),
                            "Pull that each holds with its anchor.",
                            "5 kN",
                            "nothing is assumed")
                    .readBy(Key.Question.RESTRAINT);
    public static final Key<String> GETTING_DOWN =
            open(
                            "getting down",
                            new Text("how a hanging wearer gets down"),
                            "How a hanging wearer gets down.",
                            "the watcher lowers the winch",
                            "nothing is assumed")
                    .readBy(Key.Question.RESTRAINT);

    public static final Section SECTION =
            Section.of(
                            "tether",
                            "Lines that hold the rig.",
                            ANCHOR_HEIGHT,
                            ANCHOR_STRENGTH,
                            LINE,
                            STIFFNESS,
                            DAMPING,
                            LINE_STRENGTH,
                            GANTRY,
                            SIDE_REACH,
                            HARNESS_POINT,
                            HARNESS_LIMIT,
                            DOWN_LINES,
                            DOWN_LENGTH,
                            DOWN_SPREAD,
                            DOWN_STIFFNESS,
                            DOWN_STRENGTH,
                            GETTING_DOWN)
                    .with(
                            Rule.needs(DOWN_LINES, DOWN_LENGTH),
                            Rule.onlyWith(DOWN_LENGTH, DOWN_LINES),
                            Rule.onlyWith(DOWN_SPREAD, DOWN_LINES),
                            Rule.onlyWith(DOWN_STIFFNESS, DOWN_LINES),
                            Rule.onlyWith(DOWN_STRENGTH, DOWN_LINES));

    private TetherKeys() {}
}
