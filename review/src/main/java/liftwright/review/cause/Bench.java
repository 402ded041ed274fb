package liftwright.review.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.balance.JetStrike;
import liftwright.plant.balance.MomentLedger;
import liftwright.plant.balance.Obstacle;
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

    /** Joints are turned so far to see what they do: jets come and go on the way. */
    private static final double[] TURNS_RAD = {
        Math.toRadians(-16),
        Math.toRadians(-8),
        Math.toRadians(-4),
        0,
        Math.toRadians(4),
        Math.toRadians(8),
        Math.toRadians(16)
    };

    private static final int MIDDLE = 3;

    private final Rig rig;
    private final HoverPoint point;
    private final boolean hop;
    private final List<FanAtWork> fans;
    private final double[] liftOffN;

    /** For each joint: change over its angle, at the turns above. */
    private final List<List<Vec3>> armRatios;

    private Bench(
            Rig rig, HoverPoint point, boolean hop, double[] liftOffN, List<List<Vec3>> armRatios) {
        this.rig = rig;
        this.point = point;
        this.hop = hop;
        this.fans = point.ledger().fans();
        this.liftOffN = liftOffN;
        this.armRatios = List.copyOf(armRatios);
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
        int joints = withArms && rig.wearer().isPresent() ? JOINTS : 0;
        List<List<Vec3>> ratios = new ArrayList<>();
        boolean hop = throttle.isEmpty();
        Vec3 still = turned(worker, p, new double[JOINTS], point, hop);
        for (int joint = 0; joint < joints; joint++) {
            List<Vec3> own = new ArrayList<>();
            for (double rad : TURNS_RAD) {
                double[] turn = new double[JOINTS];
                turn[joint] = rad;
                own.add(
                        rad == 0
                                ? Vec3.ZERO
                                : turned(worker, p, turn, point, hop).minus(still).times(1 / rad));
            }
            own.set(MIDDLE, own.get(MIDDLE - 1).plus(own.get(MIDDLE + 1)).times(0.5));
            ratios.add(List.copyOf(own));
        }
        return new Bench(rig, point, hop, liftOffN, ratios);
    }

    /** With the arms turned; in a hop thrust follows, so that lift stays weight. */
    private static Vec3 turned(
            Balancing.Worker worker, double[] p, double[] turn, HoverPoint point, boolean hop) {
        MomentLedger ledger = worker.turned(p, turn);
        double up = -ledger.force().z();
        return ledger.acceleration().times(hop && up > 0 ? point.mass().weightN() / up : 1);
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
        return armRatios.stream().map(ratios -> ratios.get(MIDDLE)).toList();
    }

    /** Between the turns the change over the angle runs straight, and on beyond the last. */
    private Vec3 arm(int joint, double rad) {
        int after = 1;
        while (after < TURNS_RAD.length - 1 && TURNS_RAD[after] < rad) {
            after++;
        }
        double from = TURNS_RAD[after - 1];
        double share = (rad - from) / (TURNS_RAD[after] - from);
        List<Vec3> ratios = armRatios.get(joint);
        Vec3 ratio = ratios.get(after - 1).times(1 - share).plus(ratios.get(after).times(share));
        return ratio.times(rad);
    }

    /**
     * What jets do where they strike, rad/s².
     *
     * @param boxes parts with a box, or else the wearer's limbs
     */
    Vec3 struck(boolean boxes) {
        Vec3 moment = Vec3.ZERO;
        for (FanAtWork fan : fans) {
            double own = 0;
            for (JetStrike.Hit hit : fan.strike().hits()) {
                boolean isBox =
                        switch (hit.obstacle()) {
                            case Obstacle.Box _ -> true;
                            case Obstacle.Limb _ -> false;
                        };
                own += isBox == boxes ? hit.share() : 0;
            }
            if (own > 0) {
                double share = own / fan.strike().share();
                moment = moment.plus(fan.strike().turn().times(share * fan.thrustN()));
            }
        }
        return point.mass().inertia().acceleration(moment);
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
                ? rate.plus(arm(joint, rad))
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
