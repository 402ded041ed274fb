package liftwright.review.restraint;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.Footing;
import liftwright.physics.Gravity;
import liftwright.plant.hold.Held;
import liftwright.quantity.Measure;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * A wearer who stands on the ground with thrust on: what is left to lean on, when the feet slide,
 * what a jump becomes.
 *
 * @param weightN of wearer and rig
 * @param thrustN of all fans at full throttle together, whatever way they point
 * @param centreM height of the centre of mass above the ankles, m
 */
public record StandingWearer(double weightN, double thrustN, double centreM) {

    /**
     * From under the centre of mass of a person who stands at ease to the nearer edge of what the
     * feet bear on, the heels; from memory.
     */
    static final double TO_EDGE_M = 0.08;

    /** Dry soles on concrete, the low end; Serway and Beichner give 0.8 to 1 for rubber. */
    static final double FRICTION = 0.4;

    /** How far legs push in a jump, m; from memory. */
    static final double PUSH_M = 0.35;

    /** How high a person jumps without help, m; from memory. */
    static final double JUMP_M = 0.3;

    private static final double ANKLE_M = 0.08;

    private static final double[] SHARES = {0, 0.2, 0.4, 0.6, 0.8, 0.9, 0.95};

    /** Of a rig with a wearer, in which the centre of mass is at a place in rig axes. */
    public static StandingWearer of(Held held, Vec3 centre) {
        Vec3 sum = Vec3.ZERO;
        for (var fan : held.fans()) {
            sum = sum.plus(fan.direction().times(fan.thrustN()));
        }
        return new StandingWearer(
                held.massKg() * Gravity.STANDARD_MPS2,
                sum.length(),
                held.extent().aboveSolesM(centre) - ANKLE_M);
    }

    /** The table, for shares of the weight up to what the fans give. */
    public Section section() {
        List<List<Value>> rows = new ArrayList<>();
        for (double share : SHARES) {
            if (share * weightN > thrustN) {
                break;
            }
            double jumpM = jumpM(share);
            rows.add(
                    List.of(
                            Value.of("thrust-share", share),
                            Value.of("recoverable-lean", leanRad(share)),
                            Value.of(
                                    "recoverable-sway",
                                    Footing.greatestSwayMps(share, TO_EDGE_M, centreM)),
                            Value.of(
                                    "feet-slide-at",
                                    Footing.slidesAtN((1 - share) * weightN, FRICTION)),
                            slides(share),
                            Value.of("jump-height", jumpM),
                            Value.of(
                                    "jump-landing", Math.sqrt(2 * Gravity.STANDARD_MPS2 * jumpM))));
        }
        return new Section.Table(
                "standing-wearer",
                "A wearer on the ground with thrust on: the nearer to weight, the less is left to stand on",
                List.of(
                        "thrust-share",
                        "recoverable-lean",
                        "recoverable-sway",
                        "feet-slide-at",
                        "lean-slides",
                        "jump-height",
                        "jump-landing"),
                rows);
    }

    /** Greatest lean that a standing person comes back from, rad. */
    double leanRad(double share) {
        return Footing.greatestLeanRad(share, TO_EDGE_M, centreM);
    }

    private static Value slides(double share) {
        OptionalDouble lean = slidingLeanRad(share);
        return lean.isPresent()
                ? Value.of("lean-slides", lean.getAsDouble())
                : Value.words("lean-slides", "none");
    }

    /**
     * Lean at which thrust along the body slides the feet: T sin θ + μ T cos θ = μ W, so that sin(θ
     * + atan μ) = sin(atan μ) W/T; empty where the thrust is too small at any lean.
     */
    static OptionalDouble slidingLeanRad(double share) {
        double grip = Math.atan(FRICTION);
        return share > Math.sin(grip)
                ? OptionalDouble.of(Math.asin(Math.sin(grip) / share) - grip)
                : OptionalDouble.empty();
    }

    /**
     * How high a jump goes: legs give the work that lifts the jumper without help, thrust helps
     * over the push and after it.
     */
    double jumpM(double share) {
        double legsPerKg = Gravity.STANDARD_MPS2 * (JUMP_M + PUSH_M);
        double heavy = Gravity.STANDARD_MPS2 * (1 - share);
        return (legsPerKg - heavy * PUSH_M) / heavy;
    }

    /** Where thrust passes the share at which nobody should dwell, in words. */
    public List<Finding> findings(Rig rig) {
        double share = rig.limits().si(LimitName.DWELL_SHARE);
        List<Finding> findings = new ArrayList<>();
        if (thrustN > share * weightN) {
            findings.add(
                    Finding.of(
                                    Finding.Severity.WARNS,
                                    "dwell",
                                    Sentence.words("between ")
                                            .then(Measure.THRUST, share * weightN)
                                            .then(
                                                    " and lift-off nobody should dwell on the ground: at ")
                                            .then(Measure.PERCENT, 0.9)
                                            .then(" of the weight a lean of ")
                                            .then(Measure.ANGLE, leanRad(0.9))
                                            .then(" is not caught any more, where ")
                                            .then(Measure.ANGLE, leanRad(0))
                                            .then(" is without thrust"),
                                    "the ground holds a standing person up with weight less thrust alone;"
                                            + " pass this band quickly, or hang before you weigh")
                            .at("limits/dwell share")
                            .against(
                                    Value.of("thrust-share", thrustN / weightN),
                                    new Finding.Limit(
                                            Value.of("thrust-share", share),
                                            rig.limits().origin(LimitName.DWELL_SHARE))));
        }
        return findings;
    }
}
