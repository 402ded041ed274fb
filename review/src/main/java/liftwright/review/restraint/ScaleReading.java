package liftwright.review.restraint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.Gravity;
import liftwright.physics.ScalePressure;
import liftwright.plant.hold.FanAlone;
import liftwright.plant.hold.Held;
import liftwright.plant.hold.Push;
import liftwright.quantity.Measure;
import liftwright.rig.HoldingStand;
import liftwright.rig.Restraint;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * What a scale under wearer or stand reads while fans run: weight less lift, plus what jets on its
 * platform push. Each jet by itself; what they do together is not known, which is told as doubt.
 *
 * @param weightN on the scale without thrust
 * @param liftN of all fans at full throttle together, upward
 * @param jetN what their jets push on the platform then
 * @param stepKg the least the scale shows
 */
public record ScaleReading(double weightN, double liftN, double jetN, double stepKg) {

    /** Doubt of what jets push, over itself: merging, the floor, the legs; from memory. */
    public static final double JET_DOUBT = 0.3;

    /** A measurement of lift that is worse than this tells no installation; common practice. */
    static final double WANTED = 0.05;

    private static final double[] THROTTLES = {0.25, 0.5, 0.75, 1};

    /** A ray of thrust in axes of the ground, z down from the platform. */
    private record Ray(Vec3 at, Vec3 direction, double thrustN, double exitAreaM2) {}

    /** Empty where no scale is declared. */
    public static Optional<ScaleReading> of(Rig rig, Held held) {
        return rig.restraint().platform().map(platform -> of(rig, held, platform));
    }

    private static ScaleReading of(Rig rig, Held held, Restraint.Platform platform) {
        List<Ray> rays = new ArrayList<>();
        double weightN = held.massKg() * Gravity.STANDARD_MPS2;
        Optional<HoldingStand> stand = rig.restraint().stand();
        if (platform.under() == Restraint.Under.STAND
                && stand.isPresent()
                && held.stand().isPresent()) {
            Held.OnStand on = held.stand().get();
            List<FanAlone> fans = on.held().stream().map(held.fans()::get).toList();
            Vec3 middle = Push.middle(fans);
            Vec3 up = stand.get().thrustPoints();
            for (int number : on.held()) {
                FanAlone fan = held.fans().get(number);
                rays.add(
                        ray(
                                rig,
                                number,
                                Push.turned(fan.at().minus(middle), up)
                                        .plus(new Vec3(0, 0, -on.heightM())),
                                Push.turned(fan.direction(), up),
                                fan.thrustN()));
            }
            weightN = on.floor().steady().force().z();
        } else {
            for (int k = 0; k < held.fans().size(); k++) {
                FanAlone fan = held.fans().get(k);
                rays.add(
                        ray(
                                rig,
                                k,
                                fan.at().minus(new Vec3(0, 0, held.extent().bottomM())),
                                fan.direction(),
                                fan.thrustN()));
            }
        }
        double lift = 0;
        double jet = 0;
        for (Ray ray : rays) {
            lift -= ray.direction.z() * ray.thrustN;
            jet += pushN(ray, platform);
        }
        return new ScaleReading(weightN, lift, jet, platform.resolution().si());
    }

    private static Ray ray(Rig rig, int fan, Vec3 at, Vec3 direction, double thrustN) {
        return new Ray(at, direction, thrustN, rig.fans().get(fan).type().exitArea().si());
    }

    /** Downward momentum of one jet that meets the platform, N. */
    private static double pushN(Ray ray, Restraint.Platform platform) {
        double down = -ray.direction.z();
        if (down <= 0 || ray.at.z() >= 0) {
            return 0;
        }
        // The jet goes against the thrust, down to the platform at z = 0.
        double distanceM = -ray.at.z() / down;
        Vec3 hit = ray.at.minus(ray.direction.times(distanceM));
        return ray.thrustN
                * down
                * ScalePressure.share(
                        hit.y(),
                        hit.x(),
                        platform.width().si(),
                        platform.length().si(),
                        distanceM,
                        ray.exitAreaM2);
    }

    /** Share of the lift that jets on the platform hide. */
    public double hidden() {
        return liftN > 0 ? jetN / liftN : 0;
    }

    /** Doubt of the lift that the scale tells, over that lift, at some of the full lift. */
    public double doubt(double share) {
        double seen = 1 - hidden();
        if (seen <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double step = stepKg * Gravity.STANDARD_MPS2 / (seen * share * liftN);
        return Math.hypot(JET_DOUBT * hidden() / seen, step);
    }

    /** The table; none where nothing lifts. */
    public List<Section> sections() {
        if (!(liftN > 0)) {
            return List.of();
        }
        List<List<Value>> rows = new ArrayList<>();
        for (double throttle : THROTTLES) {
            double lift = throttle * liftN;
            if (lift > weightN) {
                break;
            }
            double readKg = (weightN - lift + throttle * jetN) / Gravity.STANDARD_MPS2;
            double doubt = doubt(throttle);
            rows.add(
                    List.of(
                            Value.of("thrust-share", lift / weightN),
                            Value.of("scale-reads", readKg),
                            Value.of("scale-hides", throttle * jetN / Gravity.STANDARD_MPS2),
                            Value.of("scale-tells", throttle * (liftN - jetN)),
                            Double.isFinite(doubt)
                                    ? Value.of("scale-finest", doubt * lift)
                                    : Value.words("scale-finest", "cannot resolve it")));
        }
        return List.of(
                new Section.Table(
                        "scale",
                        "What the scale reads: weight less lift plus jets on its platform",
                        List.of(
                                "thrust-share",
                                "scale-reads",
                                "scale-hides",
                                "scale-tells",
                                "scale-finest"),
                        rows));
    }

    /** Where the scale cannot tell what is sought. */
    public List<Finding> findings() {
        double share = Math.min(1, weightN / Math.max(liftN, 1e-9));
        if (!(liftN > 0) || doubt(share) <= WANTED) {
            return List.of();
        }
        return List.of(
                Finding.of(
                                Finding.Severity.WARNS,
                                "scale-cannot-resolve",
                                Sentence.words("the scale cannot resolve the lift to ")
                                        .then(Measure.PERCENT, WANTED)
                                        .then(": jets push ")
                                        .then(Measure.PERCENT, hidden())
                                        .then(" of it back onto the platform"),
                                "what a jet pushes on a platform beneath it is known to "
                                        + Math.round(100 * JET_DOUBT)
                                        + " % from memory; a narrower platform, or one out of the jets, tells more")
                        .at("restraint/platform")
                        .judging(Value.of("scale-hides", jetN / Gravity.STANDARD_MPS2)));
    }
}
