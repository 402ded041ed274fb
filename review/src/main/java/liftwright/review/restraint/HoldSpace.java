package liftwright.review.restraint;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.hold.FanAlone;
import liftwright.plant.hold.Footprint;
import liftwright.plant.hold.Held;
import liftwright.plant.hold.Push;
import liftwright.plant.hold.TetherHold;
import liftwright.plant.hold.TetherNumbers;
import liftwright.rig.HoldingStand;
import liftwright.rig.LimitName;
import liftwright.rig.Restraint;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * Stand or tether in space, as numbers: lines by their ends, boxes by two corners, what reaches
 * around by one radius, and how the rig stands in it, by three points. Forward, right and up from
 * the ground below the anchor, or under the middle of the stand.
 */
final class HoldSpace {

    private static final double BASE_M = 0.08;
    private static final double SCALE_M = 0.05;

    private static final List<String> COLUMNS =
            List.of(
                    "hold-shape",
                    "hold-label",
                    "hold-forward",
                    "hold-right",
                    "hold-up",
                    "hold-end-forward",
                    "hold-end-right",
                    "hold-end-up");
    private final Rig rig;
    private final List<List<Value>> rows = new ArrayList<>();

    private HoldSpace(Rig rig) {
        this.rig = rig;
    }

    /** Forward, right, up; m. */
    private record Spot(double forwardM, double rightM, double upM) {}

    static Section.Table tether(Rig rig, Held held, Held.OnTether on) {
        var space = new HoldSpace(rig);
        space.tether(on, held);
        return space.table("tether-space", "On the tether, in space");
    }

    static Section.Table stand(Rig rig, Held held, HoldingStand stand, Held.OnStand on) {
        var space = new HoldSpace(rig);
        space.stand(stand, on, held);
        return space.table("stand-space", "On the stand, in space");
    }

    private Section.Table table(String id, String title) {
        double keepOutM = rig.limits().si(LimitName.KEEP_OUT);
        row("keep out", "nobody within", new Spot(0, 0, 0), new Spot(keepOutM, 0, 0));
        return new Section.Table(id, title, COLUMNS, rows);
    }

    private void tether(Held.OnTether on, Held held) {
        TetherNumbers line = on.line();
        double soleM = on.ran().startM();
        posed(Vec3.ZERO, new Vec3(0, 0, -1), soleM + held.extent().bottomM());
        Spot anchor = new Spot(0, 0, line.anchorM());
        Spot ring = new Spot(0, 0, soleM + line.ringM());
        row("anchor", "anchor", anchor, anchor);
        row("line", "line", anchor, ring);
        line.down()
                .ifPresent(
                        down -> {
                            Spot low = new Spot(0, 0, soleM + down.ringM());
                            for (int k = 0; k < down.count(); k++) {
                                double angle = 2 * Math.PI * k / down.count();
                                double forward = down.spreadM() * Math.cos(angle);
                                double right = down.spreadM() * Math.sin(angle);
                                row("down line", "down-line", low, new Spot(forward, right, 0));
                            }
                        });
        line.gantry()
                .ifPresent(
                        gantry ->
                                corners(gantry.feet())
                                        .forEach(foot -> row("gantry", "gantry", anchor, foot)));
        double reachM = TetherHold.reachM(line, on.rig());
        double sideM = Math.max(1, reachM + held.extent().sideM());
        if (reachM > 0) {
            double upM =
                    line.anchorM()
                            - Math.sqrt(
                                    Math.max(0, line.lengthM() * line.lengthM() - reachM * reachM));
            row("reach", "reach of the ring", new Spot(0, 0, upM), new Spot(reachM, 0, upM));
        }
        row(
                "beam",
                "overhead",
                new Spot(0, -sideM, line.overheadM()),
                new Spot(0, sideM, line.overheadM()));
        if (line.matsM() > 0) {
            box("mat", "mats", sideM, sideM, line.matsM());
        }
        scale(Restraint.Under.WEARER);
    }

    private void stand(HoldingStand stand, Held.OnStand on, Held held) {
        List<FanAlone> fans = on.held().stream().map(held.fans()::get).toList();
        posed(Push.middle(fans), stand.thrustPoints(), on.heightM());
        Footprint feet = on.floor().feet();
        box("stand", "stand", feet.deepM() / 2, feet.apartM() / 2, BASE_M);
        row("stand", "post", new Spot(0, 0, BASE_M), new Spot(0, 0, on.heightM()));
        scale(Restraint.Under.STAND);
    }

    /** The rig so that a place of it is so high above the middle, its up turned. */
    private void posed(Vec3 place, Vec3 up, double heightM) {
        Spot at = spot(Push.turned(place.times(-1), up), heightM);
        Spot ahead = spot(Push.turned(new Vec3(1, 0, 0).minus(place), up), heightM);
        Spot above = spot(Push.turned(new Vec3(0, 0, -1).minus(place), up), heightM);
        row("rig", "its forward", at, ahead);
        row("rig", "its up", at, above);
    }

    private static Spot spot(Vec3 v, double heightM) {
        return new Spot(v.x(), v.y(), heightM - v.z());
    }

    private static List<Spot> corners(Footprint feet) {
        List<Spot> corners = new ArrayList<>();
        for (int side : new int[] {-1, 1}) {
            for (int end : new int[] {-1, 1}) {
                corners.add(new Spot(end * feet.deepM() / 2, side * feet.apartM() / 2, 0));
            }
        }
        return corners;
    }

    private void scale(Restraint.Under under) {
        rig.restraint()
                .platform()
                .filter(scale -> scale.under() == under)
                .ifPresent(
                        scale ->
                                box(
                                        "platform",
                                        "scale",
                                        scale.length().si() / 2,
                                        scale.width().si() / 2,
                                        SCALE_M));
    }

    /** On the ground, about the middle. */
    private void box(String kind, String label, double halfM, double wideM, double highM) {
        row(kind, label, new Spot(-halfM, -wideM, 0), new Spot(halfM, wideM, highM));
    }

    private void row(String kind, String label, Spot from, Spot to) {
        rows.add(
                List.of(
                        Value.words("hold-shape", kind),
                        Value.words("hold-label", label),
                        Value.of("hold-forward", from.forwardM),
                        Value.of("hold-right", from.rightM),
                        Value.of("hold-up", from.upM),
                        Value.of("hold-end-forward", to.forwardM),
                        Value.of("hold-end-right", to.rightM),
                        Value.of("hold-end-up", to.upM)));
    }
}
