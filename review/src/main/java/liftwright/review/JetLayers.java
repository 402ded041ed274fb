package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.physics.FreeJet;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.balance.JetStrike;
import liftwright.plant.body.Limb;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * The jets as a picture shows them: how wide each is and how far it is drawn, and all that it
 * strikes. As wide as the part of it that is faster than half of its axis, in which three quarters
 * of its momentum flow.
 */
final class JetLayers {

    /** Share of the momentum within half of the speed on the axis: 1 − exp(−2 ln 2). */
    private static final double DRAWN_SHARE = 0.75;

    /** In lengths of the core, where the speed on the axis is half of that at the exit. */
    private static final double HALF_SPEED_CORES = 2;

    private JetLayers() {}

    static List<Section.Table> of(Rig rig, HoverPoint point, List<Limb> limbs) {
        double soleM = Double.POSITIVE_INFINITY;
        if (!limbs.isEmpty()) {
            soleM = limbs.stream().mapToDouble(JetLayers::lowest).max().orElseThrow();
        }
        List<List<Value>> jets = new ArrayList<>();
        List<List<Value>> strikes = new ArrayList<>();
        List<FanAtWork> work = point.ledger().fans();
        for (int k = 0; k < work.size(); k++) {
            FanAtWork fan = work.get(k);
            if (fan.thrustN() > 0) {
                Vec3 at = fan.arm().plus(point.mass().centre());
                jets.add(jet(fan, at, rig.fans().get(k).type().exitArea().si(), soleM));
                for (JetStrike.Hit hit : fan.strike().hits()) {
                    strikes.add(strike(fan, at, hit));
                }
            }
        }
        List<Section.Table> layers = new ArrayList<>();
        if (!jets.isEmpty()) {
            layers.add(
                    new Section.Table(
                            "drawn-jets",
                            "Jets as they are drawn",
                            List.of(
                                    "part",
                                    "jet-exit-diameter",
                                    "jet-core-length",
                                    "jet-core-diameter",
                                    "jet-drawn-length",
                                    "jet-drawn-diameter"),
                            jets));
        }
        if (!strikes.isEmpty()) {
            layers.add(
                    new Section.Table(
                            "drawn-strikes",
                            "What each jet strikes",
                            List.of(
                                    "part",
                                    "jet-struck",
                                    "place-forward",
                                    "place-right",
                                    "place-up",
                                    "jet-distance",
                                    "jet-momentum-share"),
                            strikes));
        }
        return layers;
    }

    private static double lowest(Limb limb) {
        return Math.max(limb.from().z(), limb.to().z());
    }

    private static List<Value> jet(FanAtWork fan, Vec3 at, double exitM2, double soleM) {
        double coreM = FreeJet.coreM(exitM2);
        double longM = Math.min(HALF_SPEED_CORES * coreM, JetStrike.REACH_M);
        double down = -fan.actual().z();
        if (down * longM > soleM - at.z() && soleM > at.z()) {
            longM = (soleM - at.z()) / down; // the ground under the wearer ends it
        }
        return List.of(
                Value.words("part", fan.id().text()),
                Value.of("jet-exit-diameter", 2 * Math.sqrt(exitM2 / Math.PI)),
                Value.of("jet-core-length", coreM),
                Value.of("jet-core-diameter", 2 * FreeJet.radiusM(DRAWN_SHARE, coreM, exitM2)),
                Value.of("jet-drawn-length", longM),
                Value.of("jet-drawn-diameter", 2 * FreeJet.radiusM(DRAWN_SHARE, longM, exitM2)));
    }

    private static List<Value> strike(FanAtWork fan, Vec3 at, JetStrike.Hit hit) {
        Vec3 where = at.plus(fan.actual().times(-hit.distanceM()));
        return List.of(
                Value.words("part", fan.id().text()),
                Value.words("jet-struck", hit.obstacle().name()),
                Value.of("place-forward", where.x()),
                Value.of("place-right", where.y()),
                Value.of("place-up", 0.0 - where.z()),
                Value.of("jet-distance", hit.distanceM()),
                Value.of("jet-momentum-share", hit.share()));
    }
}
