package liftwright.plant;

import java.util.List;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.Rig;
import liftwright.rig.Wearer;

/** A rig as it is seen in a mirror that stands along its middle. */
final class MirroredRig {

    private MirroredRig() {}

    /** Every part on the other side, arms exchanged, spins reversed. */
    static Rig of(Rig rig) {
        RigSketch sketch = RigSketch.of(rig);
        sketch.wearer =
                rig.wearer()
                        .map(
                                w ->
                                        new Wearer(
                                                w.mass(),
                                                w.stature(),
                                                w.body(),
                                                w.right(),
                                                w.left(),
                                                w.armSteadiness(),
                                                w.measured(),
                                                new Wearer.Stance(
                                                        w.stance().right(),
                                                        w.stance().left(),
                                                        w.stance().leanForward(),
                                                        negative(w.stance().leanRight())),
                                                w.strength(),
                                                w.reaction()));
        sketch.fans.replaceAll(
                fan ->
                        Copies.of(fan)
                                .mount(mirrored(fan.mount()))
                                .at(fan.at().mirrored())
                                .blows(fan.blows().mirrored())
                                .leans(mirrored(fan.leans()))
                                .seat(mirrored(fan.seat()))
                                .spin(
                                        fan.spin() == Fan.Spin.LEFT_HAND
                                                ? Fan.Spin.RIGHT_HAND
                                                : Fan.Spin.LEFT_HAND)
                                .made());
        sketch.packs.replaceAll(
                pack ->
                        Copies.of(pack)
                                .mount(mirrored(pack.mount()))
                                .at(pack.at().mirrored())
                                .made());
        sketch.others.replaceAll(
                part ->
                        new OtherPart(
                                part.id(),
                                part.declaredAt(),
                                part.mass(),
                                mirrored(part.mount()),
                                part.at().mirrored(),
                                part.box()));
        return sketch.rig();
    }

    private static List<Fan.Lean> mirrored(List<Fan.Lean> leans) {
        return leans.stream()
                .map(
                        lean ->
                                new Fan.Lean(
                                        lean.declaredAt(), lean.angle(), lean.towards().mirrored()))
                .toList();
    }

    private static Quantity negative(Quantity angle) {
        return Quantity.exact(-angle.si(), angle.dimension());
    }

    private static Mount mirrored(Mount mount) {
        return new Mount(
                mount.name(),
                mount.on().twin(),
                mount.at().mirrored(),
                mount.along(),
                mount.turnForward(),
                Quantity.exact(-mount.turnRight().si(), Dimension.NONE));
    }
}
