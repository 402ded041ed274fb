package liftwright.plant;

import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.Pack;
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
                        new Fan(
                                fan.id(),
                                fan.declaredAt(),
                                fan.type(),
                                mirrored(fan.mount()),
                                fan.at().mirrored(),
                                fan.blows().mirrored(),
                                fan.leans().stream()
                                        .map(
                                                lean ->
                                                        new Fan.Lean(
                                                                lean.declaredAt(),
                                                                lean.angle(),
                                                                lean.towards().mirrored()))
                                        .toList(),
                                fan.spin() == Fan.Spin.LEFT_HAND
                                        ? Fan.Spin.RIGHT_HAND
                                        : Fan.Spin.LEFT_HAND,
                                fan.intake(),
                                fan.installation(),
                                fan.serial()));
        sketch.packs.replaceAll(
                pack ->
                        new Pack(
                                pack.id(),
                                pack.declaredAt(),
                                pack.cell(),
                                pack.series(),
                                pack.parallel(),
                                pack.extraMass(),
                                pack.mass(),
                                pack.interconnect(),
                                mirrored(pack.mount()),
                                pack.at().mirrored(),
                                pack.charge(),
                                pack.temperature(),
                                pack.serial()));
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
