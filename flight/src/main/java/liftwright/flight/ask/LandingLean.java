package liftwright.flight.ask;

import java.util.Locale;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.flight.loops.Craft;
import liftwright.flight.motion.Airframe;
import liftwright.quantity.Measure;
import liftwright.rig.Vec3;

/**
 * How far a still hover leans, and how far a rig can lean that stands with its fans at idle. Fans
 * that push over the ground hover against that push, so that a rig comes down on the edge of its
 * feet; where its centre is farther out than that edge it tips as soon as its lift is gone. Statics
 * of a rigid body; a person takes a step.
 *
 * @param leanRad of a still hover, rad
 * @param heldRad to which feet hold it without lift, rad
 */
record LandingLean(double leanRad, double heldRad) {

    /** Empty for what has no feet. */
    static Optional<LandingLean> of(Airframe frame, Craft craft) {
        if (frame.soleDepthM().isEmpty()) {
            return Optional.empty();
        }
        Vec3 force = craft.hoverForceN();
        double push = Math.hypot(force.x(), force.y());
        if (!(push > 0)) {
            return Optional.empty();
        }
        // It leans against the push, over the edge on the other side.
        double reach = Stance.reachM(frame, -force.x() / push, -force.y() / push);
        return Optional.of(
                new LandingLean(
                        Math.atan2(push, -force.z()), Math.atan2(reach, frame.soleDepthM().get())));
    }

    /** Told where it comes down leaning farther than its feet hold. */
    Optional<Finding> finding() {
        if (leanRad <= heldRad) {
            return Optional.empty();
        }
        return Optional.of(
                Finding.of(
                        Severity.WARNS,
                        "lands-leaning",
                        Sentence.words(
                                        String.format(
                                                Locale.ROOT,
                                                "it comes down leaning by %.1f° as it hovers; its"
                                                        + " feet hold ",
                                                Math.toDegrees(leanRad)))
                                .then(Measure.ANGLE, heldRad)
                                .then(
                                        " without lift, so that it tips once the fans idle unless"
                                                + " somebody catches it or the wearer steps out"),
                        "statics on its feet; another posture or other cants would do, or coming"
                                + " down into a line"));
    }
}
