package liftwright.review.cause.truth;

import static liftwright.review.cause.truth.Solid.cross;
import static liftwright.review.cause.truth.Solid.dot;
import static liftwright.review.cause.truth.Solid.minus;
import static liftwright.review.cause.truth.Solid.plus;
import static liftwright.review.cause.truth.Solid.times;
import static liftwright.review.cause.truth.Solid.turn;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import liftwright.review.cause.truth.Hidden.Part;
import liftwright.rig.table.TurningTable.Swap;

/** Statics of a planned rig as it truly is: I⁻¹ Σ (r − c) × F, fan by fan. One thread only. */
final class Mechanics {

    private static final double G = 9.80665;
    private static final double[] UP = {0, 0, -1};
    private static final double DIAMETER = Math.sqrt(4 * Plan.EXIT_AREA / Math.PI);
    private static final int MOST_KNOWN = 4000;

    /** A posture: its mass points and the things a jet may strike. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Posed(double[] centre, double[][] inertia, List<Thing.Round> limbs) {}

    private final Plan plan;
    private final Motors motors;
    private final double standingYaw;
    private final Thing frame =
            new Thing.Block(new double[] {-0.18, 0, -0.06}, Plan.FRAME_EDGES.clone());
    private final Map<List<Double>, Posed> postures = new HashMap<>();
    private final Map<List<Double>, Jet> jets = new HashMap<>();

    Mechanics(Plan plan) {
        this.plan = plan;
        motors = new Motors(plan);
        standingYaw = plan.body().standingYaw();
    }

    /** Angular acceleration from rest, rad/s², with the joints off by so much in this row. */
    double[] rates(Hidden hidden, OptionalDouble throttle, Swap swap, double[] offRad) {
        Posed posed = posed(held(hidden, offRad));
        return Solid.solve(inertia(hidden, posed), moment(hidden, throttle, swap, offRad));
    }

    private double[] held(Hidden hidden, double[] offRad) {
        double[] held = new double[Body.JOINTS];
        for (int k = 0; k < held.length; k++) {
            held[k] = plan.held()[k] + hidden.get(Part.ARM, k) + offRad[k];
        }
        return held;
    }

    /** Moment about the centre of mass, N·m. */
    double[] moment(Hidden hidden, OptionalDouble throttle, Swap swap, double[] offRad) {
        double[] held = held(hidden, offRad);
        Posed posed = posed(held);
        double[] middle = posed.centre.clone();
        for (int k = 0; k < 3; k++) {
            middle[k] += hidden.get(Part.CENTRE, k);
        }
        double weightN = plan.kg() * G;
        double each =
                throttle.isPresent()
                        ? motors.thrustN(throttle.getAsDouble())
                        : weightN / plan.fans();
        double[] caught = {hidden.get(Part.CATCH, 0), hidden.get(Part.CATCH, 1)};
        double scale = 1;
        double[] moment = {0, 0, 0};
        for (int pass = 0; pass < 3; pass++) {
            moment = new double[3];
            double up = 0;
            for (int k = 0; k < plan.fans(); k++) {
                int unit = unitAt(k, swap);
                double thrust = scale * each * hidden.get(Part.GIVES, unit);
                double load = thrust * plan.fans() / weightN;
                double[] push = push(hidden, k, unit, swap, held, load);
                double[] at = at(hidden, k, held, load);
                double[] along = times(-1, push);
                Jet jet = jet(k, at, along, held, posed);
                double[] turns =
                        plus(
                                cross(minus(at, middle), push),
                                times(-sense(hidden, k, unit, swap) * swirlM(hidden), push));
                turns = plus(turns, jet.moment(along, middle, caught));
                moment = plus(moment, times(thrust, turns));
                up -= thrust * (push[2] + jet.force(along, caught)[2]);
            }
            if (throttle.isEmpty()) {
                scale *= weightN / up;
            }
        }
        return moment;
    }

    private double swirlM(Hidden hidden) {
        return motors.torqueM() * hidden.get(Part.SWIRL, 0);
    }

    /** The whole rig at rest: kg, centre, inertia about it; for a check against others. */
    Cloud whole(double[] held) {
        Cloud cloud = new Cloud();
        plan.body().lay(cloud, held);
        Hidden exact = new Hidden(plan);
        for (int k = 0; k < plan.fans(); k++) {
            double[] axis = limb(k, held, Solid.DOWN);
            cloud.disk(Plan.FAN_KG, at(exact, k, held, 0), axis, Plan.TIP / 2);
        }
        double[] back = plan.mounts().getFirst().at();
        cloud.point(Plan.PACK_KG, plus(back, Plan.PACK_AT));
        cloud.box(Plan.FRAME_KG, back, Plan.FRAME_EDGES);
        return cloud;
    }

    /** How much of the yaw inertia of the rig is that of the standing person. */
    double personYawShare() {
        Posed posed = posed(plan.held());
        return standingYaw / posed.inertia[2][2];
    }

    private Posed posed(double[] held) {
        if (postures.size() > MOST_KNOWN) {
            postures.clear();
        }
        return postures.computeIfAbsent(
                Arrays.stream(held).boxed().toList(),
                _ -> {
                    Cloud cloud = whole(held);
                    double[] centre = cloud.centre();
                    List<Thing.Round> limbs =
                            plan.body().limbs(held).stream().map(Thing::of).toList();
                    return new Posed(centre, cloud.inertia(centre), limbs);
                });
    }

    private double[][] inertia(Hidden hidden, Posed posed) {
        double[][] inertia = new double[3][];
        for (int row = 0; row < 3; row++) {
            inertia[row] = posed.inertia[row].clone();
        }
        inertia[2][2] += (hidden.get(Part.PERSON_YAW, 0) - 1) * standingYaw;
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                inertia[i][j] *=
                        Math.sqrt(hidden.get(Part.INERTIA, i) * hidden.get(Part.INERTIA, j));
            }
        }
        return inertia;
    }

    private Jet jet(int seat, double[] at, double[] along, double[] held, Posed posed) {
        if (jets.size() > 5 * MOST_KNOWN) {
            jets.clear();
        }
        List<Double> key =
                Stream.of(new double[] {seat}, at, along, held)
                        .flatMapToDouble(Arrays::stream)
                        .boxed()
                        .toList();
        return jets.computeIfAbsent(
                key,
                _ -> {
                    int mount = plan.seats().get(seat).mount();
                    String carrier =
                            switch (plan.mounts().get(mount).arm()) {
                                case -1 -> "left forearm";
                                case 1 -> "right forearm";
                                default -> "trunk";
                            };
                    List<Thing> things =
                            Stream.concat(
                                            posed.limbs.stream()
                                                    .filter(limb -> !limb.name().equals(carrier)),
                                            mount == 0 ? Stream.empty() : Stream.of(frame))
                                    .toList();
                    return Jet.strike(at, along, DIAMETER, things);
                });
    }

    private int unitAt(int seat, Swap swap) {
        if (swap instanceof Swap.Exchange(String one, String other)) {
            String own = plan.seats().get(seat).id();
            if (own.equals(one)) {
                return number(other);
            }
            return own.equals(other) ? number(one) : seat;
        }
        return seat;
    }

    private int number(String id) {
        List<String> ids = plan.seats().stream().map(Plan.Seat::id).toList();
        return ids.indexOf(id);
    }

    private int sense(Hidden hidden, int seat, int unit, Swap swap) {
        int sense = plan.seats().get(unit).sense() * (hidden.reversed(unit) ? -1 : 1);
        boolean turned =
                swap instanceof Swap.Reversal(String fan)
                        && fan.equals(plan.seats().get(seat).id());
        return turned ? -sense : sense;
    }

    /** Direction of thrust: along the limb, leaning with fan, seat and mount. */
    private double[] push(
            Hidden hidden, int seat, int unit, Swap swap, double[] held, double load) {
        boolean half =
                swap instanceof Swap.HalfTurn(String fan)
                        && fan.equals(plan.seats().get(seat).id());
        int way = half ? -1 : 1;
        double forward = way * hidden.get(Part.LEAN, 2 * unit) + hidden.get(Part.SEAT, 2 * seat);
        double right =
                way * hidden.get(Part.LEAN, 2 * unit + 1) + hidden.get(Part.SEAT, 2 * seat + 1);
        // A thrust that points up leans forward when it turns about right, and right about back.
        double[] push = turn(Solid.RIGHT, -forward, UP);
        push = turn(Solid.FORWARD, right, push);
        return limb(seat, held, given(hidden, seat, push, load));
    }

    /** A vector in the axes of what carries a mount, as the mount stands and gives. */
    private double[] given(Hidden hidden, int seat, double[] v, double load) {
        int mount = plan.seats().get(seat).mount();
        double[] by = {
            hidden.get(Part.TILT, 2 * mount) + load * hidden.get(Part.TWIST, 2 * mount),
            hidden.get(Part.TILT, 2 * mount + 1) + load * hidden.get(Part.TWIST, 2 * mount + 1),
            0
        };
        return turn(by, Math.sqrt(dot(by, by)), v);
    }

    private double[] limb(int seat, double[] held, double[] v) {
        int side = plan.mounts().get(plan.seats().get(seat).mount()).arm();
        return side == 0 ? v.clone() : Body.fore(side, held, v);
    }

    private double[] at(Hidden hidden, int seat, double[] held, double load) {
        Plan.Mount mount = plan.mounts().get(plan.seats().get(seat).mount());
        double[] fromRoot = minus(plan.seats().get(seat).offset(), mount.root());
        double[] offset = plus(mount.root(), given(hidden, seat, fromRoot, load));
        offset = limb(seat, held, offset);
        if (mount.arm() == 0) {
            return plus(mount.at(), offset);
        }
        double[] along = plan.body().alongFore(mount.arm(), held, mount.along());
        return plus(plus(plan.body().elbow(mount.arm(), held), along), offset);
    }
}
