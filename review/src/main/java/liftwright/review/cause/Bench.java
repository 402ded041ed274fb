package liftwright.review.cause;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.rig.table.TurningTable.Swap;

/**
 * A rig let go at one throttle: which angular acceleration a fault and a swap would give there.
 * Thrusts are those of the rig as declared; a fault changes what is built on them.
 */
final class Bench {

    private static final int JOINTS = 8;

    /** Arms are turned so far either way to see what a joint does. */
    private static final double STEP_RAD = Math.toRadians(10);

    private final Rig rig;
    private final HoverPoint point;
    private final boolean hop;
    private final List<FanAtWork> fans;
    private final double[] liftOffN;
    private final List<Vec3> armSlopes;
    private final List<Vec3> armCurves;

    private Bench(
            Rig rig,
            HoverPoint point,
            boolean hop,
            double[] liftOffN,
            Vec3[] armSlopes,
            Vec3[] armCurves) {
        this.rig = rig;
        this.point = point;
        this.hop = hop;
        this.fans = point.ledger().fans();
        this.liftOffN = liftOffN;
        this.armSlopes = List.of(armSlopes);
        this.armCurves = List.of(armCurves);
    }

    /**
     * @param throttle empty for a hop
     * @param liftOffN thrusts of all fans at lift-off as declared
     * @param withArms whether joints are turned too
     */
    static Bench of(
            Balancing.Worker worker,
            Rig rig,
            double[] p,
            OptionalDouble throttle,
            double[] liftOffN,
            boolean withArms) {
        HoverPoint point =
                throttle.isPresent()
                        ? worker.atThrottle(p, throttle.getAsDouble())
                        : worker.liftOff(p);
        Vec3[] slopes = new Vec3[withArms && rig.wearer().isPresent() ? JOINTS : 0];
        Vec3[] curves = new Vec3[slopes.length];
        Vec3 still = point.ledger().acceleration();
        for (int joint = 0; joint < slopes.length; joint++) {
            double[] turn = new double[JOINTS];
            turn[joint] = STEP_RAD;
            Vec3 more = worker.turned(p, turn).acceleration();
            turn[joint] = -STEP_RAD;
            Vec3 less = worker.turned(p, turn).acceleration();
            slopes[joint] = more.minus(less).times(0.5 / STEP_RAD);
            curves[joint] =
                    more.plus(less).minus(still.times(2)).times(0.5 / (STEP_RAD * STEP_RAD));
        }
        return new Bench(rig, point, throttle.isEmpty(), liftOffN.clone(), slopes, curves);
    }

    HoverPoint point() {
        return point;
    }

    /** Thrust of all fans over the weight. */
    double load() {
        return fans.stream().mapToDouble(FanAtWork::thrustN).sum() / point.mass().weightN();
    }

    /** Change of the angular acceleration with each joint of the arms; none without a wearer. */
    List<Vec3> armSlopes() {
        return armSlopes;
    }

    /** Angular acceleration from rest, rad/s². */
    Vec3 acceleration(Swap swap, Fault fault) {
        Vec3 moment = Vec3.ZERO;
        double liftN = 0;
        double wholeN = 0;
        for (int k = 0; k < fans.size(); k++) {
            FanAtWork fan = fans.get(k);
            int unit = unitAt(k, swap);
            double factor =
                    fault instanceof Fault.Weak(int weak, double share) && weak == unit
                            ? 1 - share
                            : 1;
            double thrustN = fan.thrustN() * factor;
            Vec3 push = direction(k, unit, swap, fault);
            Vec3 arm = arm(k, fault);
            moment = moment.plus(arm.cross(push.times(thrustN)));
            moment = moment.plus(fan.strike().turn().times(thrustN));
            moment = moment.plus(push.times(fan.swirlNm() * factor * spin(k, unit, swap, fault)));
            liftN -= thrustN * (push.z() + fan.strike().force().z());
            wholeN += thrustN;
        }
        if (fault instanceof Fault.Moments(double roll, double pitch, double yaw)) {
            moment = moment.plus(new Vec3(roll, pitch, yaw).times(wholeN));
        }
        double scale = hop && liftN > 0 ? point.mass().weightN() / liftN : 1;
        Vec3 rate = point.mass().inertia().acceleration(moment.times(scale));
        return fault instanceof Fault.Arm(int joint, double rad)
                ? rate.plus(armSlopes.get(joint).times(rad))
                        .plus(armCurves.get(joint).times(rad * rad))
                : rate;
    }

    /** Which fan sits in a seat now. */
    private int unitAt(int seat, Swap swap) {
        return switch (swap) {
            case Swap.Exchange(var one, var other) -> {
                if (id(seat).equals(one)) {
                    yield number(other);
                }
                yield id(seat).equals(other) ? number(one) : seat;
            }
            case Swap.None _, Swap.HalfTurn _, Swap.Reversal _ -> seat;
        };
    }

    private String id(int fan) {
        return rig.fans().get(fan).id().text();
    }

    private int number(String id) {
        for (int k = 0; k < rig.fans().size(); k++) {
            if (id(k).equals(id)) {
                return k;
            }
        }
        throw new IllegalArgumentException("no fan " + id);
    }

    private Vec3 direction(int seat, int unit, Swap swap, Fault fault) {
        Vec3 push = fans.get(seat).actual();
        return switch (fault) {
            case Fault.Seat(int at, double forward, double right) ->
                    at == seat ? leaned(push, forward, right) : push;
            case Fault.Crooked(int at, double forward, double right) -> {
                double way =
                        swap instanceof Swap.HalfTurn(var fan) && fan.equals(id(seat)) ? -1 : 1;
                yield at == unit ? leaned(push, way * forward, way * right) : push;
            }
            case Fault.Twist twist ->
                    twist.fans().contains(seat) ? turned(push, twist, seat) : push;
            case Fault.None _,
                    Fault.Weak _,
                    Fault.Arm _,
                    Fault.Centre _,
                    Fault.Spins _,
                    Fault.Moments _ ->
                    push;
        };
    }

    private Vec3 arm(int seat, Fault fault) {
        Vec3 arm = fans.get(seat).arm();
        return switch (fault) {
            case Fault.Centre(double forward, double right) ->
                    arm.minus(new Vec3(forward, right, 0));
            case Fault.Twist twist -> {
                if (!twist.fans().contains(seat)) {
                    yield arm;
                }
                Vec3 middle = middle(twist.fans());
                yield middle.plus(turned(arm.minus(middle), twist, seat));
            }
            case Fault.None _,
                    Fault.Weak _,
                    Fault.Seat _,
                    Fault.Crooked _,
                    Fault.Arm _,
                    Fault.Spins _,
                    Fault.Moments _ ->
                    arm;
        };
    }

    private Vec3 middle(Set<Integer> of) {
        Vec3 sum = Vec3.ZERO;
        for (int k : of) {
            sum = sum.plus(fans.get(k).arm());
        }
        return sum.times(1.0 / of.size());
    }

    /** A vector turned with a mount that gives under the thrust there is. */
    private Vec3 turned(Vec3 v, Fault.Twist twist, int seat) {
        double load = liftOffN[seat] > 0 ? fans.get(seat).thrustN() / liftOffN[seat] : 0;
        Vec3 by = new Vec3(twist.rollRad(), twist.pitchRad(), 0).times(load);
        return v.plus(by.cross(v));
    }

    /** A thrust that leans besides, its length kept. */
    private static Vec3 leaned(Vec3 push, double forwardRad, double rightRad) {
        Vec3 forward = across(new Vec3(1, 0, 0), push);
        Vec3 right = across(new Vec3(0, 1, 0), push);
        Vec3 leaned =
                push.plus(forward.times(Math.tan(forwardRad)))
                        .plus(right.times(Math.tan(rightRad)));
        return leaned.times(1 / leaned.length());
    }

    private static Vec3 across(Vec3 axis, Vec3 push) {
        double along = axis.x() * push.x() + axis.y() * push.y() + axis.z() * push.z();
        return axis.minus(push.times(along));
    }

    /** Swirl over that declared for the seat. */
    private double spin(int seat, int unit, Swap swap, Fault fault) {
        double spin = sense(unit) * sense(seat);
        if (swap instanceof Swap.Reversal(var fan) && fan.equals(id(seat))) {
            spin = -spin;
        }
        return fault instanceof Fault.Spins(Set<Integer> reversed, double factor)
                        && reversed.contains(unit)
                ? -factor * spin
                : spin;
    }

    private double sense(int fan) {
        Fan.Spin spin = rig.fans().get(fan).spin();
        return switch (spin) {
            case LEFT_HAND -> -1;
            case RIGHT_HAND -> 1;
        };
    }
}
