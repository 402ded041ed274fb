package liftwright.flight.pilot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.flight.pilot.HoverMotion.Axis;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.body.Inertia;
import liftwright.plant.body.Limb;
import liftwright.plant.body.MassItem;
import liftwright.rig.LimitName;
import liftwright.rig.Vec3;

/**
 * What a wearer can turn: legs at the hips, which shifts the centre of mass from under the thrust,
 * and arms that carry fans. The angular momentum of arms counts their masses as points.
 */
final class BodyMeans {

    /** How far legs are swung from the hips while flying, rad (from memory). */
    static final double LEAN_REACH_RAD = Math.toRadians(20);

    private static final double STEP_RAD = 1e-4;
    private static final int JOINTS = 8;
    private static final String LEG = "(left|right) (thigh|shank|foot)";

    private final Balancing balancing;
    private final double[] p;
    private final HoverPoint hover;
    private final Balancing.Worker worker;

    BodyMeans(Balancing balancing, Balancing.Worker worker, double[] p, HoverPoint hover) {
        this.balancing = balancing;
        this.worker = worker;
        this.p = p;
        this.hover = hover;
    }

    /** All that do something about an axis. */
    List<Means> about(Axis axis) {
        List<Means> means = new ArrayList<>();
        legs(axis).ifPresent(means::add);
        arms(axis).ifPresent(means::add);
        return means;
    }

    /** Both legs swung from the hips; to turn about the upright axis they do nothing. */
    Optional<Means> legs(Axis axis) {
        if (balancing.rig().wearer().isEmpty() || axis == Axis.YAW) {
            return Optional.empty();
        }
        Vec3 about = axis == Axis.ROLL ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
        List<Moved> moved = new ArrayList<>();
        for (MassItem item : hover.mass().items()) {
            if (item.kind() == MassItem.Kind.WEARER && item.name().matches(LEG)) {
                Vec3 hip = hip(item.name().startsWith("left") ? "left" : "right");
                moved.add(
                        new Moved(
                                item.massKg(),
                                item.at(),
                                about.cross(item.at().minus(hip)),
                                axis.of(item.own())));
            }
        }
        return means("the legs swung from the hips", axis, moved, LEAN_REACH_RAD);
    }

    private Vec3 hip(String side) {
        return balancing.limbs(p).stream()
                .filter(limb -> limb.name().equals(side + " thigh"))
                .map(Limb::from)
                .findFirst()
                .orElseThrow();
    }

    /**
     * A mass and what a radian of turning does to it.
     *
     * @param at where it is, m
     * @param move how its centre moves, m/rad
     * @param ownKgm2 inertia about its own centre and the axis, where it turns as well
     */
    record Moved(double massKg, Vec3 at, Vec3 move, double ownKgm2) {}

    private Optional<Means> means(String what, Axis axis, List<Moved> moved, double reachRad) {
        if (moved.isEmpty()) {
            return Optional.empty();
        }
        Vec3 force = Vec3.ZERO;
        for (FanAtWork fan : hover.ledger().fans()) {
            force = force.plus(fan.force());
        }
        return Optional.of(
                of(
                        what,
                        axis,
                        moved,
                        force,
                        hover.mass().massKg(),
                        hover.mass().centre(),
                        hover.mass().inertia(),
                        reachRad));
    }

    /** Masses that turn, and a force that stays where it was on the frame. */
    static Means of(
            String what,
            Axis axis,
            List<Moved> moved,
            Vec3 forceN,
            double massKg,
            Vec3 centre,
            Inertia inertia,
            double reachRad) {
        Vec3 shift = Vec3.ZERO;
        double reaction = 0;
        for (Moved one : moved) {
            shift = shift.plus(one.move().times(one.massKg() / massKg));
            reaction +=
                    axis.of(one.at().minus(centre).cross(one.move())) * one.massKg()
                            + one.ownKgm2();
        }
        double moment = -axis.of(shift.cross(forceN));
        return new Means(what, moment, reaction, reachRad, axis.of(inertia));
    }

    /** All joints of both arms together, each as far as it helps. */
    Optional<Means> arms(Axis axis) {
        if (!balancing.armsSteer()) {
            return Optional.empty();
        }
        double reachRad = balancing.rig().limits().si(LimitName.ARM_REACH);
        worker.liftOff(p);
        double at = axis.of(hover.ledger().moment());
        double moment = 0;
        double reaction = 0;
        for (int joint = 0; joint < JOINTS; joint++) {
            double[] more = new double[JOINTS];
            more[joint] = STEP_RAD;
            double slope = (axis.of(worker.nudged(p, more).moment()) - at) / STEP_RAD;
            // turned the way that helps, so that all of them add up
            moment += Math.abs(slope);
            reaction += Math.signum(slope) * armReaction(axis, more);
        }
        return moment < 1e-6
                ? Optional.empty()
                : Optional.of(
                        new Means(
                                "both arms",
                                moment,
                                reaction,
                                reachRad,
                                axis.of(hover.mass().inertia())));
    }

    /** Angular momentum of what moves with a joint, for each rad/s, masses as points. */
    private double armReaction(Axis axis, double[] more) {
        List<MassItem> before = hover.mass().items();
        List<MassItem> after = balancing.worker().liftOff(p, more).mass().items();
        double sum = 0;
        for (int k = 0; k < before.size(); k++) {
            Vec3 move = after.get(k).at().minus(before.get(k).at()).times(1 / STEP_RAD);
            sum +=
                    before.get(k).massKg()
                            * axis.of(before.get(k).at().minus(hover.mass().centre()).cross(move));
        }
        return sum;
    }
}
