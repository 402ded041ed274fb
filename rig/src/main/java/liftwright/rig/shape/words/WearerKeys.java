package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.later;
import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import liftwright.quantity.Quantity;
import liftwright.rig.Wearer;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Section;
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

    public static final Key<Fields> CENTRE =
            later(
                    "centre of mass",
                    PlaceKeys.PLACE,
                    "Measured centre of mass, from the middle between the shoulders.",
                    "{down: 420 mm}");
    public static final Key<Quantity> ROLL =
            later(
                    "roll inertia",
                    Amount.positive(Measure.INERTIA),
                    "Measured, about the forward axis.",
                    "11 kg·m² ± 5 %");
    public static final Key<Quantity> PITCH =
            later(
                    "pitch inertia",
                    Amount.positive(Measure.INERTIA),
                    "Measured, about the sideways axis.",
                    "12 kg·m² ± 5 %");
    public static final Key<Quantity> YAW =
            later(
                    "yaw inertia",
                    Amount.positive(Measure.INERTIA),
                    "Measured, about the upright axis.",
                    "1.2 kg·m² ± 10 %");
    public static final Key<Quantity> SHOULDERS =
            later(
                    "between shoulders",
                    Amount.positive(Measure.LENGTH),
                    "Distance of the shoulder joints.",
                    "360 mm");
    public static final Key<Quantity> HIPS =
            later(
                    "between hips",
                    Amount.positive(Measure.LENGTH),
                    "Distance of the hip joints.",
                    "175 mm");
    public static final Key<Quantity> UPPER_ARM =
            later(
                    "upper arm",
                    Amount.positive(Measure.LENGTH),
                    "Length of the upper arm, joint to joint.",
                    "275 mm");
    public static final Key<Quantity> FOREARM =
            later(
                    "forearm",
                    Amount.positive(Measure.LENGTH),
                    "Length of the forearm, elbow to wrist.",
                    "240 mm");
    public static final Section MEASURED_SECTION =
            Section.of(
                    "measured body",
                    "What was measured on the wearer; it goes before what is computed.",
                    CENTRE,
                    ROLL,
                    PITCH,
                    YAW,
                    SHOULDERS,
                    HIPS,
                    UPPER_ARM,
                    FOREARM);
    public static final Key<Fields> MEASURED =
            later(
                    "measured",
                    MEASURED_SECTION,
                    "Measured values of the body.",
                    "{between shoulders: 360 mm}");

    public static final Key<Quantity> SHOULDER_STRENGTH =
            later(
                    "shoulder",
                    Amount.positive(Measure.TORQUE),
                    "Torque that a shoulder can hold briefly.",
                    "50 N·m ± 20 %");
    public static final Key<Quantity> ELBOW_STRENGTH =
            later(
                    "elbow",
                    Amount.positive(Measure.TORQUE),
                    "Torque that an elbow can hold briefly.",
                    "45 N·m ± 20 %");
    public static final Section STRENGTH_SECTION =
            Section.of(
                    "strength",
                    "Measured strength of the arms.",
                    SHOULDER_STRENGTH,
                    ELBOW_STRENGTH);
    public static final Key<Fields> STRENGTH =
            later("strength", STRENGTH_SECTION, "Strength of the arms.", "{shoulder: 50 N·m}");
    public static final Key<Quantity> REACTION =
            later(
                    "reaction",
                    Amount.positive(Measure.TIME),
                    "From a surprise to the press of a switch.",
                    "2 s");
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

    private WearerKeys() {}
}
