package liftwright.rig.shape.words;

import static liftwright.rig.shape.kind.Key.defaulted;
import static liftwright.rig.shape.kind.Key.open;

import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Amount;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.shape.kind.Section;

/** Joint angles of the wearer. */
public final class PostureKeys {

    public static final Key<Quantity> FLEXION =
            angle("flexion", "Forward swing, or bend, from hanging straight down.", "20°");
    public static final Key<Quantity> ABDUCTION =
            angle("abduction", "Outward swing, after flexion.", "15°");
    public static final Key<Quantity> ROTATION =
            angle("rotation", "Turn about the upper arm, outward positive, after abduction.", "0°");
    public static final Section SHOULDER =
            Section.of(
                    "shoulder",
                    "Angles of a shoulder, applied in the order flexion, abduction, rotation.",
                    FLEXION,
                    ABDUCTION,
                    ROTATION);

    public static final Key<Quantity> BEND = angle("flexion", "Bend of the elbow.", "15°");
    public static final Section ELBOW = Section.of("elbow", "Angle of an elbow.", BEND);

    public static final Key<Quantity> HIP_FLEXION =
            legAngle("flexion", "Forward swing of the thigh.", "10°");
    public static final Key<Quantity> HIP_ABDUCTION =
            legAngle("abduction", "Outward swing of the thigh, after flexion.", "5°");
    public static final Section HIP =
            Section.of("hip", "Angles of a hip.", HIP_FLEXION, HIP_ABDUCTION);

    public static final Key<Quantity> KNEE_FLEXION =
            legAngle("flexion", "Bend of the knee, foot to the back.", "10°");
    public static final Section KNEE = Section.of("knee", "Angle of a knee.", KNEE_FLEXION);

    public static final Key<Quantity> LEAN_FORWARD =
            legAngle("forward", "Lean to the front: the head goes forward.", "5°");
    public static final Key<Quantity> LEAN_RIGHT =
            legAngle("right", "Lean to the right, after forward.", "0°");
    public static final Section LEAN_SECTION =
            Section.of(
                    "lean",
                    "How far the body leans, with all that it wears.",
                    LEAN_FORWARD,
                    LEAN_RIGHT);

    public static final Key<Fields> BOTH_SHOULDERS =
            joint("both shoulders", SHOULDER, "Angles of both shoulders.");
    public static final Key<Fields> LEFT_SHOULDER =
            joint("left shoulder", SHOULDER, "Angles of the left shoulder, where they differ.");
    public static final Key<Fields> RIGHT_SHOULDER =
            joint("right shoulder", SHOULDER, "Angles of the right shoulder, where they differ.");
    public static final Key<Fields> BOTH_ELBOWS =
            joint("both elbows", ELBOW, "Angle of both elbows.");
    public static final Key<Fields> LEFT_ELBOW =
            joint("left elbow", ELBOW, "Angle of the left elbow, where it differs.");
    public static final Key<Fields> RIGHT_ELBOW =
            joint("right elbow", ELBOW, "Angle of the right elbow, where it differs.");
    public static final Key<Fields> BOTH_HIPS = leg("both hips", HIP);
    public static final Key<Fields> LEFT_HIP = leg("left hip", HIP);
    public static final Key<Fields> RIGHT_HIP = leg("right hip", HIP);
    public static final Key<Fields> BOTH_KNEES = leg("both knees", KNEE);
    public static final Key<Fields> LEFT_KNEE = leg("left knee", KNEE);
    public static final Key<Fields> RIGHT_KNEE = leg("right knee", KNEE);
    public static final Key<Fields> LEAN =
            open(
                    "lean",
                    LEAN_SECTION,
                    "Lean of the whole body with all that it wears, frame included; hips bend the legs against it.",
                    "{forward: 5°}",
                    "the body is upright");

    public static final Section SECTION =
            Section.of(
                    "posture",
                    "How the wearer stands or hangs; a side's own angles go before those of both.",
                    BOTH_SHOULDERS,
                    LEFT_SHOULDER,
                    RIGHT_SHOULDER,
                    BOTH_ELBOWS,
                    LEFT_ELBOW,
                    RIGHT_ELBOW,
                    BOTH_HIPS,
                    LEFT_HIP,
                    RIGHT_HIP,
                    BOTH_KNEES,
                    LEFT_KNEE,
                    RIGHT_KNEE,
                    LEAN);

    private static Key<Quantity> angle(String name, String meaning, String example) {
        return defaulted(name, angle(), "0°", "hanging straight down", meaning, example);
    }

    private static Key<Quantity> legAngle(String name, String meaning, String example) {
        return open(name, angle(), meaning, example, "0°, standing straight");
    }

    private static Amount angle() {
        return Amount.of(Measure.ANGLE, Range.between(-Math.PI, Math.PI));
    }

    private static Key<Fields> joint(String name, Section section, String meaning) {
        return open(name, section, meaning, "{flexion: 15°}", "the arm hangs straight down");
    }

    private static Key<Fields> leg(String name, Section section) {
        return open(
                        name,
                        section,
                        "Angles of " + name + ".",
                        "{flexion: 10°}",
                        "the leg is straight")
                .readBy(Key.Question.BALANCE);
    }

    private PostureKeys() {}
}
