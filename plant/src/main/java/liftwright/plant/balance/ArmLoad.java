package liftwright.plant.balance;

import java.util.ArrayList;
import java.util.List;
import liftwright.physics.Gravity;
import liftwright.physics.LimbAngles;
import liftwright.plant.body.ArmFrame;
import liftwright.plant.body.MassItem;
import liftwright.plant.body.MassProperties;
import liftwright.rig.Mount;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * What the wearer must hold with one arm so that it stays where it is: the sum, with the opposite
 * sign, of the moments of weight and thrust of all that hangs on it beyond a joint. Statics: the
 * rig stays where it is, held down where its lift is more than its weight.
 *
 * @param arm joints and axes
 * @param shoulderNm moment to be held at the shoulder, rig axes, N·m
 * @param elbowNm the same at the elbow
 * @param shoulderN force that the arm puts on the shoulder, rig axes, N
 */
public record ArmLoad(ArmFrame arm, Vec3 shoulderNm, Vec3 elbowNm, Vec3 shoulderN) {

    private enum Part {
        UPPER,
        FORE,
        ELSEWHERE
    }

    private static final class Sum {
        private Vec3 force = Vec3.ZERO;
        private Vec3 moment = Vec3.ZERO;

        void add(Vec3 from, Vec3 at, Vec3 newtons, Vec3 couple) {
            force = force.plus(newtons);
            moment = moment.plus(at.minus(from).cross(newtons)).plus(couple);
        }
    }

    /**
     * One arm.
     *
     * @param mass of the whole, whose items are wearer, fans, packs and other parts in the rig's
     *     order
     * @param fans every fan at work, arms from that mass's centre
     */
    public static ArmLoad of(Rig rig, ArmFrame arm, MassProperties mass, List<FanAtWork> fans) {
        Sum shoulder = new Sum();
        Sum elbow = new Sum();
        List<Part> parts = parts(rig, arm.side(), mass.items());
        int fan = 0;
        for (int k = 0; k < parts.size(); k++) {
            MassItem item = mass.items().get(k);
            Vec3 weight = new Vec3(0, 0, item.massKg() * Gravity.STANDARD_MPS2);
            add(arm, parts.get(k), item.at(), weight, Vec3.ZERO, shoulder, elbow);
            if (item.kind() == MassItem.Kind.FAN) {
                FanAtWork work = fans.get(fan++);
                add(
                        arm,
                        parts.get(k),
                        work.arm().plus(mass.centre()),
                        work.push(),
                        work.actual().times(work.swirlNm()),
                        shoulder,
                        elbow);
            }
        }
        return new ArmLoad(arm, shoulder.moment.times(-1), elbow.moment.times(-1), shoulder.force);
    }

    private static void add(
            ArmFrame arm, Part part, Vec3 at, Vec3 force, Vec3 couple, Sum shoulder, Sum elbow) {
        switch (part) {
            case ELSEWHERE -> {}
            case UPPER -> shoulder.add(arm.shoulder(), at, force, couple);
            case FORE -> {
                shoulder.add(arm.shoulder(), at, force, couple);
                elbow.add(arm.elbow(), at, force, couple);
            }
        }
    }

    /** Which part of the arm carries each item. */
    private static List<Part> parts(Rig rig, double side, List<MassItem> items) {
        List<Part> parts = new ArrayList<>();
        String which = side == LimbAngles.LEFT ? "left " : "right ";
        for (MassItem item : items) {
            if (item.kind() == MassItem.Kind.WEARER) {
                parts.add(
                        item.name().equals(which + "upper arm")
                                ? Part.UPPER
                                : item.name().equals(which + "forearm")
                                                || item.name().equals(which + "hand")
                                        ? Part.FORE
                                        : Part.ELSEWHERE);
            }
        }
        rig.fans().forEach(fan -> parts.add(part(fan.mount(), side)));
        rig.packs().forEach(pack -> parts.add(part(pack.mount(), side)));
        rig.otherParts().forEach(other -> parts.add(part(other.mount(), side)));
        return parts;
    }

    private static Part part(Mount mount, double side) {
        return switch (mount.on()) {
            case FRAME, TRUNK -> Part.ELSEWHERE;
            case LEFT_UPPER_ARM -> side == LimbAngles.LEFT ? Part.UPPER : Part.ELSEWHERE;
            case LEFT_FOREARM -> side == LimbAngles.LEFT ? Part.FORE : Part.ELSEWHERE;
            case RIGHT_UPPER_ARM -> side == LimbAngles.RIGHT ? Part.UPPER : Part.ELSEWHERE;
            case RIGHT_FOREARM -> side == LimbAngles.RIGHT ? Part.FORE : Part.ELSEWHERE;
        };
    }

    /** What must be held about one axis, N·m: positive towards flexion, abduction, outward. */
    public double heldNm(ArmJoint joint) {
        Vec3 moment = joint.isOfShoulder() ? shoulderNm : elbowNm;
        Vec3 axis = joint.of(arm);
        return moment.x() * axis.x() + moment.y() * axis.y() + moment.z() * axis.z();
    }
}
