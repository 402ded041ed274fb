package liftwright.review.cause;

import static liftwright.review.cause.Solid.cross;
import static liftwright.review.cause.Solid.dot;
import static liftwright.review.cause.Solid.minus;
import static liftwright.review.cause.Solid.plus;
import static liftwright.review.cause.Solid.times;
import static liftwright.review.cause.Solid.turn;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import liftwright.plant.Balancing;
import liftwright.plant.balance.JetStrike;
import liftwright.plant.body.MassProperties;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.rig.file.RigReading;
import liftwright.rig.table.TurningTable;
import liftwright.rig.table.TurningTable.Axis;
import liftwright.rig.table.TurningTable.Swap;

/**
 * A worn rig as it was declared, and as it truly is, with one thing at fault: a model of its own
 * with effects that the fit lacks. Every boom and pod twists a little in proportion to thrust, a
 * jet strikes a leg, arms wander, swirl, inertia and centre of mass are not quite those computed,
 * thrusts scatter, and instruments err.
 *
 * <p>Statics, arms, motors and pack are those of this class. Mass, centre and inertia at rest, and
 * what jets strike, are the product's, which its own tests hold, and are falsified here by some per
 * cent.
 */
final class RicherRig {

    /** What may be at fault. */
    enum Fault {
        WEAK_FAN,
        TURNED_SEAT,
        MOUNT_TWIST,
        ARM_ANGLE,
        CENTRE,
        SPIN
    }

    private static final double[] MEANT = meant();

    private static double[] meant() {
        double[] meant = new double[8];
        for (int side = 0; side < 2; side++) {
            meant[4 * side] = Math.toRadians(10);
            meant[4 * side + 1] = Math.toRadians(18);
            meant[4 * side + 3] = Math.toRadians(15);
        }
        return meant;
    }

    private static final double FELT_RADPS2 = 0.5;

    private static final double G = 9.80665;

    /** Mass of upper arm, and of forearm and hand, over that of the body (de Leva). */
    private static final double[] ARM_MASS = {0.0271, 0.0162 + 0.0061};

    private static final double SPEED_CONSTANT = 520 * Math.PI / 30;
    private static final double WINDING_OHM = 0.012;
    private static final double NO_LOAD_A = 2.5;
    private static final double SPEED = 26000 * Math.PI / 30;
    private static final double PACK_V = 14 * 4.17;
    private static final double PACK_OHM = 14 * 0.9e-3 / 8;

    /** A fan in truth; fields that a swap moves belong to the fan, the others to its seat. */
    private static final class Place {
        String id = "";
        int mount;
        double[] offset = {0, 0, 0};
        double sense = 1;
        double gives = 1;
        double lean;
        double leanRight;
        boolean reversed;
        double struck;
    }

    /** A mount: on the trunk (arm 0), the left (−1) or the right (+1) forearm. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Mount(String name, int arm, double[] at, double along) {}

    final Rig rig;
    private Fault fault = Fault.CENTRE;
    private final String told;
    private final List<Place> places = new ArrayList<>();
    private final List<Mount> mounts = new ArrayList<>();
    private final double[][] twist;
    private final double[] joints;
    private final double stature;
    private final RicherArms arms;
    private final double massKg;
    private final double coefficient;
    private final double torqueM;
    private double swirl;
    private double[] centre;
    private double[][] inertia;
    private double[] weigh;
    private final RandomGenerator random;
    private double weightN;
    private double[] nominal = new double[0];
    private Balancing.Worker worker;

    RicherRig(RandomGenerator random) {
        this.random = random;
        stature = random.nextDouble(1.58, 1.90);
        arms = new RicherArms(stature);
        massKg = random.nextDouble(52, 88);
        double thrustN = random.nextDouble(105, 150);
        double powerW = thrustN * random.nextDouble(48, 56);
        coefficient = thrustN / (SPEED * SPEED);
        torqueM = powerW / SPEED / thrustN;
        double declaredSwirl = random.nextDouble(0.25, 0.6);
        joints = new double[8];
        for (int side = 0; side < 2; side++) {
            joints[4 * side] = Math.toRadians(10);
            joints[4 * side + 1] = Math.toRadians(18);
            joints[4 * side + 3] = Math.toRadians(15);
        }
        lay();
        rig = read(text(thrustN, powerW, declaredSwirl));
        twist = new double[mounts.size()][3];
        falsify(declaredSwirl);
        double[] before = rates(OptionalDouble.empty(), new Swap.None(), joints);
        String spoilt;
        do {
            reset();
            fault = List.of(Fault.values()).get(random.nextInt(Fault.values().length));
            spoilt = spoil();
        } while (!isFelt(minus(rates(OptionalDouble.empty(), new Swap.None(), joints), before)));
        told = spoilt;
    }

    /** A fault is hunted for once it turns the rig by so much about some axis. */
    private static boolean isFelt(double[] change) {
        return Math.max(Math.abs(change[0]), Math.max(Math.abs(change[1]), Math.abs(change[2])))
                > FELT_RADPS2;
    }

    private double[][] keptTwist = new double[0][];
    private double[] keptJoints = new double[0];
    private double[] keptCentre = new double[0];
    private double[] keptGives = new double[0];

    private void keep() {
        keptTwist = java.util.Arrays.stream(twist).map(double[]::clone).toArray(double[][]::new);
        keptJoints = joints.clone();
        keptCentre = centre.clone();
        keptGives = places.stream().mapToDouble(place -> place.gives).toArray();
    }

    private void reset() {
        if (keptTwist.length == 0) {
            keep();
        }
        for (int k = 0; k < twist.length; k++) {
            twist[k] = keptTwist[k].clone();
        }
        System.arraycopy(keptJoints, 0, joints, 0, joints.length);
        centre = keptCentre.clone();
        for (int k = 0; k < places.size(); k++) {
            places.get(k).gives = keptGives[k];
            places.get(k).reversed = false;
        }
        seatOf = -1;
    }

    private void lay() {
        mounts.add(new Mount("back", 0, new double[] {-0.18, 0, -0.06}, 0));
        double out = random.nextDouble(0.34, 0.5);
        double ahead = random.nextDouble(0.02, 0.12);
        mounts.add(new Mount("left boom", 0, new double[] {ahead, -out, -0.05}, 0));
        mounts.add(new Mount("right boom", 0, new double[] {ahead, out, -0.05}, 0));
        mounts.add(new Mount("left pod", -1, new double[] {0, 0, 0}, 0.6));
        mounts.add(new Mount("right pod", 1, new double[] {0, 0, 0}, 0.6));
        int row = random.nextBoolean() ? 4 : 2;
        for (int k = 0; k < row; k++) {
            double y = row == 4 ? -0.24 + 0.16 * k : -0.12 + 0.24 * k;
            place("back." + (k + 1), 0, new double[] {0, y, -0.15}, k);
        }
        for (int side = 0; side < 2; side++) {
            String name = side == 0 ? "left" : "right";
            for (int k = 0; k < 2; k++) {
                double x = k == 0 ? 0.08 : -0.08;
                // A twin spins the other way; rows run from front to back.
                place(name + "-boom." + (k + 1), 1 + side, new double[] {x, 0, 0}, k + side);
            }
            for (int k = 0; k < 2; k++) {
                double x = k == 0 ? 0.075 : -0.075;
                place(name + "-pod." + (k + 1), 3 + side, new double[] {x, 0, 0}, k + side);
            }
        }
    }

    private void place(String id, int mount, double[] offset, int number) {
        Place place = new Place();
        place.id = id;
        place.mount = mount;
        place.offset = offset;
        place.sense = number % 2 == 0 ? 1 : -1;
        places.add(place);
    }

    private static Rig read(String text) {
        RigReading reading = RigReading.read("rig.yaml", text.getBytes(StandardCharsets.UTF_8));
        return reading.rig()
                .orElseThrow(() -> new IllegalStateException(reading.problems() + text));
    }

    private String text(double thrustN, double powerW, double declaredSwirl) {
        Mount boom = mounts.get(1);
        return new RicherText(
                        massKg,
                        stature,
                        boom.at[0],
                        -boom.at[1],
                        thrustN,
                        powerW,
                        declaredSwirl,
                        (int) places.stream().filter(p -> p.mount == 0).count(),
                        places.stream().map(p -> p.id).collect(Collectors.joining(", ")))
                .yaml();
    }

    private double normal(double sigma) {
        return sigma * random.nextGaussian();
    }

    /** The truth is never quite what was declared. */
    private void falsify(double declaredSwirl) {
        Balancing balancing = Balancing.of(rig);
        nominal = balancing.parameters().nominal();
        worker = balancing.worker();
        MassProperties mass = worker.liftOff(nominal).mass();
        weightN = mass.massKg() * G;
        centre =
                new double[] {
                    mass.centre().x() + normal(0.001),
                    mass.centre().y() + normal(0.001),
                    mass.centre().z() + normal(0.005)
                };
        var i = mass.inertia();
        double f = 1 + normal(0.03);
        inertia =
                new double[][] {
                    {f * i.xx(), f * i.xy(), f * i.xz()},
                    {f * i.xy(), f * i.yy(), f * i.yz()},
                    {f * i.xz(), f * i.yz(), f * i.zz() * (1 + normal(0.03))}
                };
        swirl = declaredSwirl + normal(0.04);
        weigh = new double[] {0, 0};
        for (int k = 0; k < 2; k++) {
            weigh[k] = ARM_MASS[k] * massKg;
        }
        for (Place place : places) {
            place.gives = 1 + normal(0.01);
            place.lean = Math.toRadians(normal(0.08));
            place.leanRight = Math.toRadians(normal(0.08));
        }
        for (double[] each : twist) {
            each[0] = Math.toRadians(normal(0.08));
            each[1] = Math.toRadians(normal(0.08));
        }
        places.get(random.nextInt(places.size())).struck = random.nextDouble(0, 0.02);
    }

    /** Puts one thing at fault, and says which. */
    private String spoil() {
        return switch (fault) {
            case WEAK_FAN -> {
                Place place = any();
                place.gives *= 1 - random.nextDouble(0.15, 0.40);
                yield place.id;
            }
            case TURNED_SEAT -> {
                Place place = any();
                seatOf = places.indexOf(place);
                double size = Math.toRadians(random.nextDouble(3, 9));
                double way = random.nextDouble(0, 2 * Math.PI);
                seat = new double[] {size * Math.cos(way), size * Math.sin(way)};
                yield place.id;
            }
            case MOUNT_TWIST -> {
                int mount = random.nextInt(mounts.size());
                double size = Math.toRadians(random.nextDouble(1.5, 5));
                double way = random.nextDouble(0, 2 * Math.PI);
                twist[mount][0] += size * Math.cos(way);
                twist[mount][1] += size * Math.sin(way);
                yield mounts.get(mount).name;
            }
            case ARM_ANGLE -> {
                int joint = random.nextInt(8);
                double size = Math.toRadians(random.nextDouble(6, 18));
                joints[joint] += random.nextBoolean() ? size : -size;
                yield "joint " + joint;
            }
            case CENTRE -> {
                double size = random.nextDouble(0.015, 0.06);
                double way = random.nextDouble(0, 2 * Math.PI);
                centre[0] += size * Math.cos(way);
                centre[1] += size * Math.sin(way);
                yield "";
            }
            case SPIN -> {
                if (random.nextBoolean()) {
                    Place place = any();
                    place.reversed = true;
                    yield place.id;
                }
                double alike = random.nextBoolean() ? 1 : -1;
                String group = List.of("back", "left-boom", "right-pod").get(random.nextInt(3));
                for (Place place : places) {
                    place.reversed = place.id.startsWith(group) && place.sense != alike;
                }
                yield group;
            }
        };
    }

    private int seatOf = -1;
    private double[] seat = {0, 0};

    private Place any() {
        return places.get(random.nextInt(places.size()));
    }

    Fault fault() {
        return fault;
    }

    /** What is at fault, for a failure's message. */
    String told() {
        return fault + " " + told;
    }

    /** A row as it would be measured, with noise. */
    TurningTable.Row measure(int line, OptionalDouble throttle, Swap swap) {
        double[] held = joints.clone();
        for (int k = 0; k < held.length; k++) {
            held[k] += Math.toRadians(normal(0.2));
        }
        double[] rate = rates(throttle, swap, held);
        List<TurningTable.Rate> rates = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            double doubt = 0.03 + 0.03 * Math.abs(rate[k]);
            rates.add(
                    new TurningTable.Rate(
                            List.of(Axis.values()).get(k), rate[k] + normal(doubt / 2), doubt));
        }
        return new TurningTable.Row(
                line, throttle, OptionalDouble.of(Math.toRadians(0.4)), swap, rates);
    }

    /** I⁻¹ Σ (r − c) × F, place by place. */
    private double[] rates(OptionalDouble throttle, Swap swap, double[] held) {
        double[] each = new double[places.size()];
        if (throttle.isPresent()) {
            double[] speeds = speeds(throttle.getAsDouble());
            for (int k = 0; k < each.length; k++) {
                each[k] = coefficient * speeds[k] * speeds[k];
            }
        } else {
            java.util.Arrays.fill(each, weightN / places.size());
        }
        double[] turned = new double[8];
        for (int k = 0; k < turned.length; k++) {
            turned[k] = held[k] - MEANT[k];
        }
        Map<String, JetStrike> strikes = new HashMap<>();
        worker.turned(nominal, turned)
                .fans()
                .forEach(fan -> strikes.put(fan.id().text(), fan.strike()));
        double scale = 1;
        double[] moment = {0, 0, 0};
        for (int pass = 0; pass < 3; pass++) {
            moment = new double[3];
            double up = 0;
            double[] mass = centre(held);
            for (int k = 0; k < each.length; k++) {
                Place unit = unitAt(k, swap);
                double thrust = scale * each[k] * unit.gives;
                double load = thrust * places.size() / weightN;
                double[] push = push(k, unit, swap, held, load);
                double[] arm = minus(at(k, held, load), mass);
                double[] force = times(thrust * (1 - unit.struck), push);
                // What strikes a leg pushes it back and down besides.
                force = plus(force, times(thrust * unit.struck, new double[] {-0.3, 0, 0.2}));
                double[] turns = times(thrust * torqueM * swirl * -sense(k, unit, swap), push);
                moment = plus(moment, plus(cross(arm, force), turns));
                JetStrike strike = Objects.requireNonNull(strikes.get(places.get(k).id));
                moment = plus(moment, times(0.9 * thrust, array(strike.turn())));
                up -= force[2] + 0.9 * thrust * strike.force().z();
            }
            if (throttle.isEmpty()) {
                scale *= weightN / up;
            }
        }
        return Solid.solve(inertia, moment);
    }

    private static double[] array(Vec3 v) {
        return new double[] {v.x(), v.y(), v.z()};
    }

    /** Rotor speeds at one throttle on one pack: back voltage, winding and pack in series. */
    private double[] speeds(double duty) {
        double[] speed = new double[places.size()];
        double busV = PACK_V;
        for (int round = 0; round < 200; round++) {
            double drawn = 0;
            for (int k = 0; k < speed.length; k++) {
                double low = 0;
                double high = duty * busV * SPEED_CONSTANT;
                for (int half = 0; half < 40; half++) {
                    double w = (low + high) / 2;
                    double amps = (duty * busV - w / SPEED_CONSTANT) / WINDING_OHM;
                    boolean faster =
                            (amps - NO_LOAD_A) / SPEED_CONSTANT > torqueM * coefficient * w * w;
                    low = faster ? w : low;
                    high = faster ? high : w;
                }
                speed[k] = low;
                drawn += duty * (duty * busV - low / SPEED_CONSTANT) / WINDING_OHM;
            }
            busV += 0.3 * (PACK_V - PACK_OHM * drawn - busV);
        }
        return speed;
    }

    private Place unitAt(int seatNumber, Swap swap) {
        Place own = places.get(seatNumber);
        if (swap instanceof Swap.Exchange(String one, String other)) {
            if (own.id.equals(one)) {
                return byId(other);
            }
            if (own.id.equals(other)) {
                return byId(one);
            }
        }
        return own;
    }

    private Place byId(String id) {
        return places.stream().filter(p -> p.id.equals(id)).findFirst().orElseThrow();
    }

    private double sense(int seatNumber, Place unit, Swap swap) {
        double sense = unit.reversed ? -unit.sense : unit.sense;
        boolean turned =
                swap instanceof Swap.Reversal(String fan) && fan.equals(places.get(seatNumber).id);
        return turned ? -sense : sense;
    }

    /** Direction of thrust: along the limb, leaning with seat, fan and mount. */
    private double[] push(int k, Place unit, Swap swap, double[] held, double load) {
        boolean half = swap instanceof Swap.HalfTurn(String fan) && fan.equals(places.get(k).id);
        double forward = unit.lean * (half ? -1 : 1);
        double right = unit.leanRight * (half ? -1 : 1);
        if (k == seatOf) {
            forward += seat[0];
            right += seat[1];
        }
        double[] push = limb(k, held, times(-1, Solid.DOWN));
        // A thrust that points up leans forward when it turns about right, and right about back.
        push = turn(Solid.RIGHT, -forward, push);
        push = turn(Solid.FORWARD, right, push);
        return given(k, push, load);
    }

    private double[] given(int k, double[] v, double load) {
        double[] by = twist[places.get(k).mount];
        return turn(by, load * Math.sqrt(dot(by, by)), v);
    }

    private double[] limb(int k, double[] held, double[] v) {
        int side = mounts.get(places.get(k).mount).arm;
        return side == 0 ? v.clone() : RicherArms.fore(side, held, v);
    }

    private double[] at(int k, double[] held, double load) {
        Place place = places.get(k);
        Mount mount = mounts.get(place.mount);
        double[] offset = given(k, limb(k, held, place.offset), load);
        if (mount.arm == 0) {
            return plus(mount.at, offset);
        }
        double[] along = arms.alongFore(mount.arm, held, mount.along);
        return plus(plus(arms.elbow(mount.arm, held), along), offset);
    }

    /** Centre of mass with the arms where they are: arms and pods move it. */
    private double[] centre(double[] held) {
        double[] moved = centre.clone();
        for (int side = -1; side <= 1; side += 2) {
            double[] upperBy =
                    minus(arms.alongUpper(side, held, 0.58), arms.alongUpper(side, MEANT, 0.58));
            double[] foreBy =
                    plus(
                            minus(arms.elbow(side, held), arms.elbow(side, MEANT)),
                            minus(
                                    arms.alongFore(side, held, 0.6),
                                    arms.alongFore(side, MEANT, 0.6)));
            double podKg = 2 * 0.92;
            moved = plus(moved, times(weigh[0] * G / weightN, upperBy));
            moved = plus(moved, times((weigh[1] + podKg) * G / weightN, foreBy));
        }
        return moved;
    }
}
