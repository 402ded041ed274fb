package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import liftwright.answer.Sentence;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.Change;
import liftwright.rig.RigPath;
import liftwright.rig.Wearer;

/** Holding the arms otherwise, in tenths of the way to given angles. */
public final class ArmAngles {

    private static final int STEPS = 10;

    private ArmAngles() {}

    /**
     * @param turnRad what cancels the moments: left flexion, abduction, rotation, elbow flexion,
     *     then right, rad
     */
    public static Candidate of(Wearer wearer, List<Double> turnRad) {
        return new Candidate(
                STEPS,
                steps ->
                        Sentence.words("hold the arms ")
                                .then(Measure.PERCENT, (double) steps / STEPS)
                                .then(" of the way to the angles that cancel it"),
                Sentence.start().then(Measure.PERCENT, 1.0 / STEPS),
                steps -> {
                    List<Change> changes = new ArrayList<>();
                    arm("left", wearer.left(), turnRad.subList(0, 4), steps, changes);
                    arm("right", wearer.right(), turnRad.subList(4, 8), steps, changes);
                    return changes;
                });
    }

    private static void arm(
            String side, Wearer.Arm arm, List<Double> turnRad, int steps, List<Change> changes) {
        RigPath posture = RigPath.of("wearer", "posture");
        RigPath shoulder = posture.child(side + " shoulder");
        RigPath elbow = posture.child(side + " elbow");
        double share = (double) steps / STEPS;
        set(shoulder.child("flexion"), arm.shoulderFlexion(), share * turnRad.get(0), changes);
        set(shoulder.child("abduction"), arm.shoulderAbduction(), share * turnRad.get(1), changes);
        set(shoulder.child("rotation"), arm.shoulderRotation(), share * turnRad.get(2), changes);
        set(elbow.child("flexion"), arm.elbowFlexion(), share * turnRad.get(3), changes);
    }

    /** To a tenth of a degree; what does not change is left alone. */
    private static void set(RigPath at, Quantity now, double turnRad, List<Change> changes) {
        double before = Math.rint(10 * Math.toDegrees(now.si()));
        double after = Math.rint(10 * Math.toDegrees(now.si() + turnRad));
        if (before != after) {
            changes.add(new Change.Set(at, String.format(Locale.ROOT, "%.1f°", after / 10)));
        }
    }
}
