package liftwright.flight.ask;

import java.util.Locale;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.flight.motion.Airframe;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.Site;

/**
 * Whether a rig stays where it stands on the slope of its site, fans at idle. It slides where tan s
 * = μ; what nobody wears tips where its centre is over its edge, tan s = reach down the slope over
 * height of the centre. A wearer stands upright and does not tip. Statics of a rigid body.
 *
 * @param slopeRad s as declared
 * @param steepestRad with its tolerance
 * @param tipsRad slope at which it tips
 * @param slidesRad at which it slides with the least friction of what is declared
 */
record SlopeStand(double slopeRad, double steepestRad, double tipsRad, double slidesRad) {

    /** Empty on level ground. */
    static Optional<SlopeStand> of(Airframe frame, Site.Ground ground) {
        double slope = ground.slope().si();
        double steepest = slope + ground.slope().tolerance().plus();
        if (steepest <= 0 || frame.feet().isEmpty()) {
            return Optional.empty();
        }
        double to = ground.slopeTo().si();
        boolean worn = frame.feet().getFirst().on() != Airframe.FRAME;
        double tips =
                worn
                        ? Math.PI / 2
                        : Math.atan2(
                                Stance.reachM(frame, Math.cos(to), Math.sin(to)),
                                frame.soleDepthM().orElseThrow());
        Quantity friction = ground.friction();
        double least = Math.max(0, friction.si() - friction.tolerance().minus());
        return Optional.of(new SlopeStand(slope, steepest, tips, Math.atan(least)));
    }

    /** Told where it does not stay. */
    Optional<Finding> finding() {
        double limit = Math.min(tipsRad, slidesRad);
        if (steepestRad < limit) {
            return Optional.empty();
        }
        return Optional.of(
                Finding.of(
                        Severity.WARNS,
                        "slope-not-held",
                        Sentence.words("the ground slopes by ")
                                .then(Measure.ANGLE, slopeRad)
                                .then(
                                        String.format(
                                                Locale.ROOT,
                                                ", with its tolerance by %.1f°: it %s from ",
                                                Math.toDegrees(steepestRad),
                                                slidesRad < tipsRad ? "slides" : "tips"))
                                .then(Measure.ANGLE, limit)
                                .then(" on before anything lifts it"),
                        "statics on its feet with the least friction that is declared"));
    }
}
