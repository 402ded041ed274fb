package liftwright.plant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import liftwright.physics.BodySegment;
import liftwright.physics.BodySegment.Axis;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.rig.Wearer;

/**
 * Referee: a rig as mass points. A body of second moments S (along its axes) is six points; an even
 * box is eight points at edge/√12 from its middle; a disk is four points at r/√2. Turns are
 * products of elementary matrices. Shares no code with the plant; takes only the segments' table.
 * Exact values only.
 */
final class PointBodies {

    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Point(double kg, double[] at, Mount.Carrier on) {}

    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Limb(double[][] turn, double[] start, double lengthM) {}

    private final List<Point> points = new ArrayList<>();

    /** What carries the points of the segment that is being made. */
    private Mount.Carrier on = Mount.Carrier.TRUNK;

    /** Body axes to rig axes. */
    private double[][] lean = identity();

    private final Map<Mount.Carrier, Limb> limbs = new HashMap<>();

    PointBodies(Rig rig) {
        rig.wearer()
                .map(Wearer::stance)
                .ifPresent(
                        stance ->
                                lean =
                                        times(
                                                about(1, -stance.leanForward().si()),
                                                about(0, stance.leanRight().si())));
        for (Mount.Carrier on : List.of(Mount.Carrier.FRAME, Mount.Carrier.TRUNK)) {
            limbs.put(on, new Limb(lean, new double[3], 0));
        }
        rig.wearer().ifPresent(this::person);
        for (Fan fan : rig.fans()) {
            double kg = fan.type().mass().si() + fan.type().controller().mass().si();
            double[] middle = place(fan.mount(), fan.at());
            double[] axis = normal(times(turn(fan.mount()), array(fan.blows())));
            double[] across =
                    normal(
                            cross(
                                    axis,
                                    Math.abs(axis[0]) < 0.5
                                            ? new double[] {1, 0, 0}
                                            : new double[] {0, 1, 0}));
            double[] third = cross(axis, across);
            double reach = fan.type().tip().si() / 2 / Math.sqrt(2);
            for (double[] direction : new double[][] {across, third}) {
                points.add(new Point(kg / 4, sum(middle, direction, reach), fan.mount().on()));
                points.add(new Point(kg / 4, sum(middle, direction, -reach), fan.mount().on()));
            }
        }
        for (Pack pack : rig.packs()) {
            int cells = pack.series() * pack.parallel();
            double kg =
                    pack.mass()
                            .map(q -> q.si())
                            .orElse(pack.extraMass().si() + cells * pack.cell().mass().si());
            points.add(new Point(kg, place(pack.mount(), pack.at()), pack.mount().on()));
        }
        for (OtherPart part : rig.otherParts()) {
            double[] middle = place(part.mount(), part.at());
            Vec3 edges = part.box().orElse(Vec3.ZERO);
            double[][] turn = turn(part.mount());
            for (int corner = 0; corner < 8; corner++) {
                double[] local = {
                    ((corner & 1) == 0 ? 1 : -1) * edges.x() / Math.sqrt(12),
                    ((corner & 2) == 0 ? 1 : -1) * edges.y() / Math.sqrt(12),
                    ((corner & 4) == 0 ? 1 : -1) * edges.z() / Math.sqrt(12)
                };
                points.add(
                        new Point(
                                part.mass().si() / 8,
                                sum(middle, times(turn, local), 1),
                                part.mount().on()));
            }
        }
    }

    double massKg() {
        return points.stream().mapToDouble(Point::kg).sum();
    }

    double[] centre() {
        double[] sum = new double[3];
        points.forEach(
                point -> {
                    for (int i = 0; i < 3; i++) {
                        sum[i] += point.kg * point.at[i] / massKg();
                    }
                });
        return sum;
    }

    /** xx, yy, zz, xy, xz, yz about a point. */
    double[] inertia(double[] about) {
        double[] t = new double[6];
        for (Point point : points) {
            double x = point.at[0] - about[0];
            double y = point.at[1] - about[1];
            double z = point.at[2] - about[2];
            t[0] += point.kg * (y * y + z * z);
            t[1] += point.kg * (x * x + z * z);
            t[2] += point.kg * (x * x + y * y);
            t[3] -= point.kg * x * y;
            t[4] -= point.kg * x * z;
            t[5] -= point.kg * y * z;
        }
        return t;
    }

    private void person(Wearer w) {
        BodySegment.Reference body =
                w.body() == Wearer.Body.FEMALE
                        ? BodySegment.Reference.FEMALE
                        : BodySegment.Reference.MALE;
        double h = w.stature().si();
        double whole = 0;
        for (BodySegment each : BodySegment.values()) {
            whole +=
                    switch (each) {
                        case HEAD, TRUNK -> each.massShare(body);
                        case UPPER_TRUNK, MIDDLE_TRUNK, LOWER_TRUNK -> 0;
                        case UPPER_ARM, FOREARM, HAND, THIGH, SHANK, FOOT ->
                                2 * each.massShare(body);
                    };
        }
        double kg = w.mass().si() / whole;
        double trunk = lengthM(w, BodySegment.TRUNK, body);
        double thigh = lengthM(w, BodySegment.THIGH, body);
        double shank = lengthM(w, BodySegment.SHANK, body);
        double floor = trunk + thigh + shank + 0.039 * h;
        double trunkKg = kg * BodySegment.TRUNK.massShare(body);
        for (BodySegment each : BodySegment.values()) {
            trunkKg +=
                    switch (each) {
                        case HEAD -> lack(w, each, body, kg);
                        case UPPER_ARM, FOREARM, HAND, THIGH, SHANK, FOOT ->
                                2 * lack(w, each, body, kg);
                        case TRUNK, UPPER_TRUNK, MIDDLE_TRUNK, LOWER_TRUNK -> 0;
                    };
        }
        segment(w, BodySegment.HEAD, kg, new double[] {0, 0, floor - h}, identity());
        segment(w, BodySegment.TRUNK, body, trunkKg, new double[3], identity());
        double hipHalf = w.measured().sizes().betweenHips().map(q -> q.si() / 2).orElse(0.0525 * h);
        for (int side = -1; side <= 1; side += 2) {
            Wearer.Leg leg = side < 0 ? w.stance().left() : w.stance().right();
            double[][] upper =
                    times(
                            about(1, leg.hipFlexion().si()),
                            about(0, -side * leg.hipAbduction().si()));
            double[][] lower = times(upper, about(1, -leg.kneeFlexion().si()));
            double[] hip = {0, side * hipHalf, trunk};
            double[] knee = sum(hip, times(upper, new double[] {0, 0, 1}), thigh);
            double[] ankle = sum(knee, times(lower, new double[] {0, 0, 1}), shank);
            segment(w, BodySegment.THIGH, kg, hip, upper);
            segment(w, BodySegment.SHANK, kg, knee, lower);
            double heel = -0.25 * lengthM(w, BodySegment.FOOT, body);
            segment(
                    w,
                    BodySegment.FOOT,
                    kg,
                    sum(ankle, times(lower, new double[] {heel, 0, 0.039 * h}), 1),
                    times(lower, about(1, Math.PI / 2)));
            arm(w, body, h, kg, side);
        }
    }

    /** What a measured segment is lighter than the table's. */
    private static double lack(
            Wearer w, BodySegment each, BodySegment.Reference body, double kgOfAll) {
        return kgOfAll * each.massShare(body) - massKg(w, each, body, kgOfAll);
    }

    private static double massKg(
            Wearer w, BodySegment each, BodySegment.Reference body, double kgOfAll) {
        var read = w.measured().sizes().masses().get(Wearer.Segment.valueOf(each.name()));
        return read == null ? kgOfAll * each.massShare(body) : read.si();
    }

    private static double lengthM(Wearer w, BodySegment each, BodySegment.Reference body) {
        var read = w.measured().sizes().lengths().get(Wearer.Segment.valueOf(each.name()));
        return read == null ? each.lengthM(body, w.stature().si()) : read.si();
    }

    private void segment(
            Wearer w, BodySegment each, double kgOfAll, double[] from, double[][] turn) {
        BodySegment.Reference body =
                w.body() == Wearer.Body.FEMALE
                        ? BodySegment.Reference.FEMALE
                        : BodySegment.Reference.MALE;
        segment(w, each, body, massKg(w, each, body, kgOfAll), from, turn);
    }

    private void arm(Wearer w, BodySegment.Reference body, double h, double kg, int side) {
        Wearer.Arm arm = side < 0 ? w.left() : w.right();
        double[][] upper =
                times(
                        times(
                                about(1, arm.shoulderFlexion().si()),
                                about(0, -side * arm.shoulderAbduction().si())),
                        about(2, side * arm.shoulderRotation().si()));
        double[][] lower = times(upper, about(1, arm.elbowFlexion().si()));
        double half =
                w.measured().sizes().betweenShoulders().map(q -> q.si() / 2).orElse(0.1085 * h);
        double[] shoulder = {0, side * half, 0};
        double upperM = lengthM(w, BodySegment.UPPER_ARM, body);
        double lowerM = lengthM(w, BodySegment.FOREARM, body);
        double[] elbow = sum(shoulder, times(upper, new double[] {0, 0, 1}), upperM);
        double[] wrist = sum(elbow, times(lower, new double[] {0, 0, 1}), lowerM);
        on = side < 0 ? Mount.Carrier.LEFT_UPPER_ARM : Mount.Carrier.RIGHT_UPPER_ARM;
        segment(w, BodySegment.UPPER_ARM, kg, shoulder, upper);
        on = side < 0 ? Mount.Carrier.LEFT_FOREARM : Mount.Carrier.RIGHT_FOREARM;
        segment(w, BodySegment.FOREARM, kg, elbow, lower);
        segment(w, BodySegment.HAND, kg, wrist, lower);
        on = Mount.Carrier.TRUNK;
        Mount.Carrier onUpper =
                side < 0 ? Mount.Carrier.LEFT_UPPER_ARM : Mount.Carrier.RIGHT_UPPER_ARM;
        Mount.Carrier onLower = side < 0 ? Mount.Carrier.LEFT_FOREARM : Mount.Carrier.RIGHT_FOREARM;
        limbs.put(onUpper, new Limb(times(lean, upper), times(lean, shoulder), upperM));
        limbs.put(onLower, new Limb(times(lean, lower), times(lean, elbow), lowerM));
    }

    private void segment(
            Wearer w,
            BodySegment segment,
            BodySegment.Reference body,
            double kg,
            double[] uprightFrom,
            double[][] uprightTurn) {
        Mount.Carrier on = this.on;
        double[] from = times(lean, uprightFrom);
        double[][] turn = times(lean, uprightTurn);
        double length = lengthM(w, segment, body);
        double[] centre =
                sum(from, times(turn, new double[] {0, 0, 1}), segment.centreShare(body) * length);
        double a = square(segment.gyrationShare(body, Axis.SAGITTAL));
        double b = square(segment.gyrationShare(body, Axis.TRANSVERSE));
        double c = square(segment.gyrationShare(body, Axis.LONGITUDINAL));
        double[] along = {(b + c - a) / 2, (a + c - b) / 2, (a + b - c) / 2};
        for (int k = 0; k < 3; k++) {
            double[] direction = {turn[0][k], turn[1][k], turn[2][k]};
            double reach = length * Math.sqrt(3 * along[k]);
            points.add(new Point(kg / 6, sum(centre, direction, reach), on));
            points.add(new Point(kg / 6, sum(centre, direction, -reach), on));
        }
    }

    private Limb limb(Mount mount) {
        return Objects.requireNonNull(limbs.get(mount.on()));
    }

    private double[][] turn(Mount mount) {
        return times(
                limb(mount).turn,
                times(about(1, mount.turnForward().si()), about(0, -mount.turnRight().si())));
    }

    /** Place of a point in a mount's axes. */
    double[] place(Mount mount, Vec3 at) {
        double[] origin = array(mount.at());
        Limb limb = limb(mount);
        origin[2] += mount.along().si() * limb.lengthM;
        double[] start = sum(limb.start, times(limb.turn, origin), 1);
        return sum(start, times(turn(mount), array(at)), 1);
    }

    /** Unit direction of a fan's thrust: against its jet. */
    double[] thrust(Fan fan) {
        double[] jet = array(fan.blows());
        for (Fan.Lean lean : fan.leans()) {
            jet = sum(jet, array(lean.towards()), Math.tan(lean.angle().si()));
        }
        double[] turned = normal(times(turn(fan.mount()), jet));
        return new double[] {-turned[0], -turned[1], -turned[2]};
    }

    /**
     * What one arm holds about the axes of its joints: cut free at shoulder and elbow, under the
     * weight of its points and the thrusts of its fans.
     *
     * @return shoulder flexion, abduction, outward rotation; elbow flexion, across, along
     */
    double[] armHeld(Rig rig, int side, double[] thrustN, double[] swirlNm) {
        Mount.Carrier onUpper =
                side < 0 ? Mount.Carrier.LEFT_UPPER_ARM : Mount.Carrier.RIGHT_UPPER_ARM;
        Mount.Carrier onLower = side < 0 ? Mount.Carrier.LEFT_FOREARM : Mount.Carrier.RIGHT_FOREARM;
        Limb upper = Objects.requireNonNull(limbs.get(onUpper));
        Limb lower = Objects.requireNonNull(limbs.get(onLower));
        double[][] about = {new double[3], new double[3]};
        double[][] joints = {upper.start, lower.start};
        for (int joint = 0; joint < 2; joint++) {
            for (Point point : points) {
                if (point.on == onLower || (joint == 0 && point.on == onUpper)) {
                    double[] lever = sum(point.at, joints[joint], -1);
                    double[] turn = cross(lever, new double[] {0, 0, 9.80665 * point.kg});
                    about[joint] = sum(about[joint], turn, -1);
                }
            }
            for (int k = 0; k < rig.fans().size(); k++) {
                Fan fan = rig.fans().get(k);
                Mount.Carrier carrier = fan.mount().on();
                if (carrier == onLower || (joint == 0 && carrier == onUpper)) {
                    double[] push = thrust(fan);
                    double[] lever = sum(place(fan.mount(), fan.at()), joints[joint], -1);
                    about[joint] = sum(about[joint], cross(lever, push), -thrustN[k]);
                    about[joint] = sum(about[joint], push, -swirlNm[k]);
                }
            }
        }
        Wearer w = rig.wearer().orElseThrow();
        double flexion = (side < 0 ? w.left() : w.right()).shoulderFlexion().si();
        double[][] axes = {
            times(lean, new double[] {0, 1, 0}),
            times(times(lean, about(1, flexion)), new double[] {-side, 0, 0}),
            times(upper.turn, new double[] {0, 0, side}),
            times(upper.turn, new double[] {0, 1, 0}),
            times(lower.turn, new double[] {-side, 0, 0}),
            times(lower.turn, new double[] {0, 0, side})
        };
        double[] held = new double[6];
        for (int k = 0; k < 6; k++) {
            for (int i = 0; i < 3; i++) {
                held[k] += axes[k][i] * about[k / 3][i];
            }
        }
        return held;
    }

    private static double square(double x) {
        return x * x;
    }

    private static double[] array(Vec3 v) {
        return new double[] {v.x(), v.y(), v.z()};
    }

    private static double[][] identity() {
        return new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    }

    /** Right-handed turn about axis 0, 1 or 2. */
    private static double[][] about(int axis, double rad) {
        double[][] m = identity();
        int i = (axis + 1) % 3;
        int j = (axis + 2) % 3;
        m[i][i] = Math.cos(rad);
        m[i][j] = -Math.sin(rad);
        m[j][i] = Math.sin(rad);
        m[j][j] = Math.cos(rad);
        return m;
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] c = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 3; k++) {
                    c[i][j] += a[i][k] * b[k][j];
                }
            }
        }
        return c;
    }

    private static double[] times(double[][] a, double[] v) {
        double[] c = new double[3];
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) {
                c[i] += a[i][k] * v[k];
            }
        }
        return c;
    }

    static double[] cross(double[] a, double[] b) {
        return new double[] {
            a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
        };
    }

    private static double[] normal(double[] v) {
        double length = Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
        return new double[] {v[0] / length, v[1] / length, v[2] / length};
    }

    private static double[] sum(double[] a, double[] b, double factor) {
        return new double[] {a[0] + factor * b[0], a[1] + factor * b[1], a[2] + factor * b[2]};
    }
}
