package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import liftwright.quantity.Quantity;
import liftwright.rig.Exertion;
import liftwright.rig.Wearer;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Rule;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.shape.kind.Word;

/** The section {@code wearer}: the person in the rig. */
public final class WearerKeys {

    public static final Key<Quantity> MASS =
            required(
                    "mass",
                    Amount.of(Measure.MASS, Range.between(20, 250)),
                    "Body mass, clothed, without the rig.",
                    "62 kg ± 0.4 kg");
    public static final Key<Quantity> STATURE =
            required(
                    "stature",
                    Amount.of(Measure.HEIGHT, Range.between(1.0, 2.5)),
                    "Standing height.",
                    "1.68 m");
    public static final Key<Wearer.Body> BODY =
            required(
                    "body",
                    Word.of(Wearer.Body.values(), ' '),
                    "Which table of segment proportions applies (de Leva 1996).",
                    "female");
    public static final Key<Fields> POSTURE =
            open(
                    "posture",
                    PostureKeys.SECTION,
                    "Joint angles in the rig.",
                    "{both elbows: {flexion: 5°}}",
                    "the arms hang straight down");

    public static final Key<Quantity> CENTRE_FORWARD = centre("forward", "To the front.");
    public static final Key<Quantity> CENTRE_RIGHT = centre("right", "To the wearer's right.");
    public static final Key<Quantity> CENTRE_DOWN =
            required(
                            "down",
                            Amount.of(Measure.LENGTH, Range.between(-1, 2)),
                            "Below the middle between the shoulders.",
                            "420 mm ± 10 mm")
                    .readBy(Key.Question.BALANCE);
    public static final Section CENTRE_SECTION =
            Section.of(
                    "centre of the body",
                    "Where the standing wearer's centre of mass is, from the middle between the"
                            + " shoulders.",
                    CENTRE_DOWN,
                    CENTRE_FORWARD,
                    CENTRE_RIGHT);
    public static final Key<Fields> CENTRE =
            open(
                            "centre of mass",
                            CENTRE_SECTION,
                            "Measured centre of mass of the standing wearer, arms at the sides,"
                                    + " from the middle between the shoulders.",
                            "{down: 420 mm ± 10 mm}",
                            "that of the stacked segments")
                    .readBy(Key.Question.BALANCE);
    public static final Key<Quantity> ROLL =
            open(
                            "roll inertia",
                            Amount.positive(Measure.INERTIA),
                            "Measured, about the forward axis.",
                            "11 kg·m² ± 5 %",
                            "that of the stacked segments")
                    .readBy(Key.Question.BALANCE);
    public static final Key<Quantity> PITCH =
            open(
                            "pitch inertia",
                            Amount.positive(Measure.INERTIA),
                            "Measured, about the sideways axis.",
                            "12 kg·m² ± 5 %",
                            "that of the stacked segments")
                    .readBy(Key.Question.BALANCE);
    public static final Key<Quantity> YAW =
            open(
                            "yaw inertia",
                            Amount.positive(Measure.INERTIA),
                            "Measured, about the upright axis.",
                            "1.2 kg·m² ± 10 %",
                            "that of the stacked segments")
                    .readBy(Key.Question.BALANCE);
    public static final Key<Quantity> SHOULDERS =
            size(
                    "between shoulders",
                    Amount.positive(Measure.LENGTH),
                    "Distance of the shoulder joints.",
                    "360 mm");
    public static final Key<Quantity> HIPS =
            size(
                    "between hips",
                    Amount.positive(Measure.LENGTH),
                    "Distance of the hip joints.",
                    "175 mm");

    /** Lengths of segments that a tape can tell. */
    public static final Map<Wearer.Segment, Key<Quantity>> LENGTHS = lengths();

    /** Masses of segments; the trunk has what they leave. */
    public static final Map<Wearer.Segment, Key<Quantity>> MASSES = masses();

    public static final Key<Quantity> FEET =
            balance(
                    "feet",
                    Amount.positive(Measure.MASS),
                    "What the scale under the feet reads.",
                    "31.2 kg ± 0.1 kg");
    public static final Key<Quantity> HANDS =
            balance(
                    "hands",
                    Amount.positive(Measure.MASS),
                    "What the scale under the hands reads.",
                    "36.8 kg ± 0.1 kg");
    public static final Key<Quantity> SUPPORTS_APART =
            balance(
                    "apart",
                    Amount.positive(Measure.HEIGHT),
                    "Distance of the two supports along the body.",
                    "1.36 m ± 5 mm");
    public static final Key<Quantity> HANDS_BELOW =
            defaulted(
                            "hands below shoulders",
                            Amount.of(Measure.LENGTH, Range.between(-1, 1)),
                            "0 mm ± 20 mm",
                            "the arms go straight down from the shoulders",
                            "How far towards the feet from the shoulders the hands rest.",
                            "0 mm ± 10 mm")
                    .readBy(Key.Question.BALANCE);
    public static final Section SCALES_SECTION =
            Section.of(
                    "scales",
                    "A person who holds the body level over two scales, arms straight down.",
                    FEET,
                    HANDS,
                    SUPPORTS_APART,
                    HANDS_BELOW);
    public static final Key<Fields> SCALES =
            record(
                    "scales",
                    SCALES_SECTION,
                    "Scales under feet and hands: where the centre of mass is.",
                    "{feet: 31.2 kg ± 0.1 kg, hands: 36.8 kg ± 0.1 kg, apart: 1.36 m ± 5 mm}");

    public static final Key<Quantity> SWING_TIME =
            balance(
                    "time",
                    Amount.positive(Measure.TIME),
                    "Time of all swings together.",
                    "84.2 s ± 0.3 s");
    public static final Key<Integer> SWINGS =
            required(
                            "swings",
                            new Whole("how many swings", 1, 1000),
                            "Whole swings, there and back.",
                            "30")
                    .readBy(Key.Question.BALANCE);
    public static final Key<Quantity> BAR_ABOVE =
            balance(
                    "bar above shoulders",
                    Amount.of(Measure.LENGTH, Range.between(-1, 3)),
                    "How far the bar is above the middle between the shoulders.",
                    "450 mm ± 5 mm");
    public static final Section PIVOT_SECTION =
            Section.of(
                    "swing about a bar",
                    "A person who swings stiffly about a bar, arms at the sides.",
                    BAR_ABOVE,
                    SWING_TIME,
                    SWINGS);
    public static final Key<Fields> ROLL_SWING =
            record(
                    "roll swing",
                    PIVOT_SECTION,
                    "Swing to the sides.",
                    "{bar above shoulders: 450 mm ± 5 mm, time: 66.1 s ± 0.3 s, swings: 30}");
    public static final Key<Fields> PITCH_SWING =
            record(
                    "pitch swing",
                    PIVOT_SECTION,
                    "Swing to front and back.",
                    "{bar above shoulders: 450 mm ± 5 mm, time: 65.4 s ± 0.3 s, swings: 30}");
    public static final Key<Quantity> CORDS =
            balance(
                    "cords",
                    Amount.positive(Measure.HEIGHT),
                    "Length of each cord.",
                    "2.4 m ± 5 mm");
    public static final Key<Quantity> CORDS_APART =
            balance(
                    "apart",
                    Amount.positive(Measure.HEIGHT),
                    "Distance of the cords.",
                    "0.60 m ± 3 mm");
    public static final Key<Quantity> HUNG_MASS =
            defaulted(
                            "platform mass",
                            Amount.notNegative(Measure.MASS),
                            "0 kg",
                            "the cords carry the person alone",
                            "Mass of the platform.",
                            "3.1 kg ± 0.1 kg")
                    .readBy(Key.Question.BALANCE);
    public static final Key<Quantity> HUNG_INERTIA =
            defaulted(
                            "platform inertia",
                            Amount.notNegative(Measure.INERTIA),
                            "0 kg·m²",
                            "the cords carry the person alone",
                            "Yaw inertia of the platform.",
                            "0.12 kg·m² ± 10 %")
                    .readBy(Key.Question.BALANCE);
    public static final Section CORDS_SECTION =
            Section.of(
                    "swing on two cords",
                    "A person who stands on a platform that twists between two cords, arms at the"
                            + " sides.",
                    CORDS,
                    CORDS_APART,
                    SWING_TIME,
                    SWINGS,
                    HUNG_MASS,
                    HUNG_INERTIA);
    public static final Key<Fields> YAW_SWING =
            record(
                    "yaw swing",
                    CORDS_SECTION,
                    "Twist on two cords.",
                    "{cords: 2.4 m ± 5 mm, apart: 0.60 m ± 3 mm, time: 84.2 s ± 0.3 s, swings:"
                            + " 30}");

    public static final Section MEASURED_SECTION =
            Section.of(
                            "measured body",
                            "What was measured on the wearer; it goes before what is computed.",
                            measuredKeys())
                    .with(
                            Rule.atMostOne(CENTRE, SCALES),
                            Rule.atMostOne(ROLL, ROLL_SWING),
                            Rule.atMostOne(PITCH, PITCH_SWING),
                            Rule.atMostOne(YAW, YAW_SWING));
    public static final Key<Fields> MEASURED =
            open(
                            "measured",
                            MEASURED_SECTION,
                            "Measured values of the body.",
                            "{between shoulders: 360 mm}",
                            "the body is that of the table of segments")
                    .readBy(Key.Question.BALANCE);

    public static final Key<Quantity> SHOULDER_STRENGTH =
            strength(
                    "shoulder",
                    "Moment that a shoulder can hold briefly, any way.",
                    "50 N·m ± 20 %");
    public static final Key<Quantity> ELBOW_STRENGTH =
            strength(
                    "elbow", "Moment that an elbow can hold briefly, either way.", "45 N·m ± 20 %");

    /** One key for each way to push. */
    public static final Map<Exertion, Key<Quantity>> STRENGTHS = strengths();

    public static final Section STRENGTH_SECTION =
            Section.of(
                    "strength",
                    "Measured strength of the arms; a way's own goes before that of its joint.",
                    strengthKeys());
    public static final Key<Fields> STRENGTH =
            open(
                            "strength",
                            STRENGTH_SECTION,
                            "Strength of the arms.",
                            "{shoulder: 50 N·m}",
                            "published means of men and women, from half to one and a half of them")
                    .readBy(Key.Question.BALANCE);
    public static final Key<Quantity> REACTION =
            open(
                            "reaction",
                            Amount.positive(Measure.TIME),
                            "From a surprise to the press of a switch.",
                            "2 s",
                            "the limit `wearer reaction`")
                    .readBy(Key.Question.FAILURES);
    public static final Key<Quantity> STEADINESS =
            defaulted(
                            "arm steadiness",
                            Amount.notNegative(Measure.ANGLE),
                            "4°",
                            "common practice: a held arm wanders by 3° to 5°",
                            "How far each joint of a held arm wanders, 19 times in 20.",
                            "4°")
                    .readBy(Key.Question.BALANCE);
    public static final Key<Quantity> HARNESS_RATE =
            later(
                    "harness rate",
                    Amount.positive(Measure.FREQUENCY),
                    "Frequency at which the wearer swings in the harness.",
                    "5 Hz");
    public static final Key<Quantity> HARNESS_DAMPING =
            later(
                    "harness damping",
                    Amount.of(Measure.RATIO, Range.between(0, 2)),
                    "Damping ratio of that swing.",
                    "0.2");

    public static final Section SECTION =
            Section.of(
                    "wearer",
                    "The person in the rig; a module that flies by itself has none.",
                    MASS,
                    STATURE,
                    BODY,
                    POSTURE,
                    MEASURED,
                    STRENGTH,
                    REACTION,
                    STEADINESS,
                    HARNESS_RATE,
                    HARNESS_DAMPING);

    private static Key<Quantity> size(String name, Amount amount, String meaning, String example) {
        return open(name, amount, meaning, example, "that of the table of segments")
                .readBy(Key.Question.BALANCE);
    }

    private static Key<Quantity> centre(String name, String meaning) {
        return open(
                        name,
                        Amount.of(Measure.LENGTH, Range.between(-1, 1)),
                        meaning,
                        "10 mm ± 5 mm",
                        "0 mm")
                .readBy(Key.Question.BALANCE);
    }

    private static Map<Wearer.Segment, Key<Quantity>> lengths() {
        var keys = new EnumMap<Wearer.Segment, Key<Quantity>>(Wearer.Segment.class);
        Amount length = Amount.positive(Measure.LENGTH);
        keys.put(
                Wearer.Segment.UPPER_ARM,
                size("upper arm", length, "Length of the upper arm, joint to joint.", "275 mm"));
        keys.put(
                Wearer.Segment.FOREARM,
                size("forearm", length, "Length of the forearm, elbow to wrist.", "240 mm"));
        keys.put(
                Wearer.Segment.HAND,
                size("hand", length, "Length of the hand, wrist to middle knuckle.", "80 mm"));
        keys.put(
                Wearer.Segment.TRUNK,
                size(
                        "trunk",
                        length,
                        "Length of the trunk, upper end of the breastbone to between the hips.",
                        "520 mm"));
        keys.put(
                Wearer.Segment.THIGH,
                size("thigh", length, "Length of the thigh, hip to knee.", "390 mm"));
        keys.put(
                Wearer.Segment.SHANK,
                size("shank", length, "Length of the shank, knee to ankle.", "420 mm"));
        return keys;
    }

    private static Map<Wearer.Segment, Key<Quantity>> masses() {
        var keys = new EnumMap<Wearer.Segment, Key<Quantity>>(Wearer.Segment.class);
        for (Wearer.Segment segment : Wearer.Segment.values()) {
            if (segment != Wearer.Segment.TRUNK) {
                keys.put(
                        segment,
                        size(
                                segment.key() + " mass",
                                Amount.positive(Measure.MASS),
                                "Mass of one " + segment.key() + "; the trunk has what is left.",
                                "1.2 kg ± 10 %"));
            }
        }
        return keys;
    }

    private static Key<?>[] measuredKeys() {
        var keys = new ArrayList<Key<?>>(List.of(CENTRE, ROLL, PITCH, YAW, SHOULDERS, HIPS));
        keys.addAll(LENGTHS.values());
        keys.addAll(MASSES.values());
        keys.addAll(List.of(SCALES, ROLL_SWING, PITCH_SWING, YAW_SWING));
        return keys.toArray(Key<?>[]::new);
    }

    private static Key<Quantity> strength(String name, String meaning, String example) {
        return open(name, Amount.positive(Measure.TORQUE), meaning, example, "a published mean")
                .readBy(Key.Question.BALANCE);
    }

    private static Map<Exertion, Key<Quantity>> strengths() {
        var keys = new EnumMap<Exertion, Key<Quantity>>(Exertion.class);
        for (Exertion exertion : Exertion.values()) {
            keys.put(
                    exertion,
                    strength(
                            exertion.key(),
                            "Moment that can be held briefly in " + exertion.key() + ".",
                            "40 N·m ± 15 %"));
        }
        return keys;
    }

    private static Key<?>[] strengthKeys() {
        var keys = new ArrayList<Key<?>>(List.of(SHOULDER_STRENGTH, ELBOW_STRENGTH));
        keys.addAll(STRENGTHS.values());
        return keys.toArray(Key<?>[]::new);
    }

    private static Key<Quantity> balance(
            String name, Amount amount, String meaning, String example) {
        return required(name, amount, meaning, example).readBy(Key.Question.BALANCE);
    }

    private static Key<Fields> record(
            String name, Section section, String meaning, String example) {
        return open(name, section, meaning, example, "it was not measured so")
                .readBy(Key.Question.BALANCE);
    }

    private WearerKeys() {}
}
