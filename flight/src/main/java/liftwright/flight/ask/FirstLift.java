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
 * How long feet hold a rig while lift grows. Fans in the shares of a hover balance about the centre
 * of mass, but where they do not push straight up they push over the ground as well, at the height
 * of the centre: upright on its feet nothing but friction and the width of the stance holds that,
 * and both go as the ground carries less. Statics of a rigid body on hard ground; soft soles give
 * in sooner, and a person who balances later.
 *
 * @param pushN level push of all fans with lift at weight, N
 * @param heightM of the centre of mass over the ground, m
 * @param share lift over weight at which feet hold it no more, 0 to 1
 * @param slides whether it slides before it tips
 * @param bearableN push with which they would hold it up to {@link #ENOUGH} of its weight, N
 */
record FirstLift(double pushN, double heightM, double share, boolean slides, double bearableN) {

    /** With so much of its weight carried what is left of the lift-off is quick: own measure. */
    static final double ENOUGH = 0.9;

    /** Empty for what has no feet. */
    static Optional<FirstLift> of(Airframe frame, Craft craft) {
        if (frame.soleDepthM().isEmpty()) {
            return Optional.empty();
        }
        Vec3 force = craft.hoverForceN();
        double push = Math.hypot(force.x(), force.y());
        double weight = craft.weightN();
        double height = frame.soleDepthM().get();
        double up = -force.z();
        double friction = frame.ground().friction();
        double reach = push > 0 ? Stance.reachM(frame, force.x() / push, force.y() / push) : 0;
        // t F h = (W − t F_up) d at the edge, t F = μ (W − t F_up) where it slides.
        double tips = weight * reach / (push * height + up * reach);
        double slides = weight * friction / (push + up * friction);
        double share = push > 0 ? Math.min(1, Math.min(tips, slides)) : 1;
        double left = (1 - ENOUGH) / ENOUGH * weight;
        return Optional.of(
                new FirstLift(
                        push,
                        height,
                        share,
                        slides < tips,
                        left * Math.min(friction, reach / height)));
    }

    /** Told where feet let go early. */
    Optional<Finding> finding() {
        if (share >= ENOUGH) {
            return Optional.empty();
        }
        return Optional.of(
                Finding.of(
                        Severity.WARNS,
                        "feet-let-go",
                        Sentence.words("upright on its feet its fans push it over the ground with ")
                                .then(Measure.THRUST, pushN)
                                .then(
                                        String.format(
                                                Locale.ROOT,
                                                " at full lift: from %.0f %% of its weight on it %s"
                                                        + " unless the loops hold it; ",
                                                100 * share,
                                                slides ? "slides" : "tips"))
                                .then(Measure.THRUST, bearableN)
                                .then(" would do"),
                        "statics on its feet; what would do is another posture or other cants"));
    }
}
