package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.computed;
import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;

import liftwright.quantity.Quantity;
import liftwright.rig.Demands;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;

/** The section {@code demands}: what is asked of the rig. */
public final class DemandKeys {

    public static final Key<Quantity> THRUST_TO_WEIGHT =
            computed(
                    "thrust to weight",
                    Amount.of(Measure.RATIO, Range.between(0.1, 10)),
                    "1.30 with a wearer (free hover), 1.6 without (a module that flies by itself);"
                            + " common practice",
                    "Least usable lift over weight.",
                    "1.15");
    public static final Key<Quantity> HOVER =
            defaulted(
                            "hover",
                            Amount.positive(Measure.TIME),
                            "60 s",
                            "from memory: a first hop and its way back",
                            "Time in the air.",
                            "60 s")
                    .readBy(Key.Question.ENDURANCE);
    public static final Key<Quantity> RESERVE =
            defaulted(
                    "reserve",
                    Amount.share(),
                    "20 %",
                    "common practice",
                    "Charge left at landing.",
                    "20 %");
    public static final Key<Quantity> JUDGED_AT_CHARGE =
            computed(
                    "judged at charge",
                    Amount.share(),
                    "the reserve: lift counts at the end of the flight; common practice",
                    "Charge left in every pack when lift is judged.",
                    "20 %");
    public static final Key<Demands.Yaw> YAW =
            defaulted(
                            "yaw",
                            Word.of(Demands.Yaw.values(), ' '),
                            "held",
                            "the stricter one",
                            "Whether turning about the upright must be held to zero.",
                            "held")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> REACH =
            later("reach", Amount.positive(Measure.HEIGHT), "How far the rig must go.", "40 m");
    public static final Key<Quantity> HEIGHT =
            defaulted(
                            "height",
                            Amount.positive(Measure.HEIGHT),
                            "0.5 m",
                            "common practice: a first hop",
                            "How high the soles, or the lowest part of a rig that nobody wears, may"
                                    + " be at most.",
                            "0.5 m")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> MISS =
            later(
                    "miss",
                    Amount.positive(Measure.HEIGHT),
                    "How far from its goal a flight may end.",
                    "0.5 m");
    public static final Key<Integer> RUNS =
            defaulted(
                            "runs",
                            new Whole("how many runs", 1, 1000),
                            "1",
                            "one hover is asked for",
                            "Runs in a row on the same packs or with packs exchanged.",
                            "3")
                    .readBy(Key.Question.HEAT);
    public static final Key<Quantity> PAUSE =
            defaulted(
                            "pause",
                            Amount.notNegative(Measure.TIME),
                            "5 min",
                            "from memory: time to land, look and change packs; counts between runs",
                            "Time between two runs.",
                            "5 min")
                    .readBy(Key.Question.HEAT);
    public static final Section SECTION =
            Section.of(
                    "demands",
                    "What is asked of the rig.",
                    THRUST_TO_WEIGHT,
                    HOVER,
                    RESERVE,
                    JUDGED_AT_CHARGE,
                    YAW,
                    REACH,
                    HEIGHT,
                    MISS,
                    RUNS,
                    PAUSE);

    private DemandKeys() {}
}
