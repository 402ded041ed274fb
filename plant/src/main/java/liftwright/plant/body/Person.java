package liftwright.plant.body;

import java.util.ArrayList;
import java.util.List;
import liftwright.physics.BodySegment;
import liftwright.physics.BodySegment.Axis;
import liftwright.physics.LimbAngles;
import liftwright.rig.Vec3;

/**
 * The wearer as rigid segments after de Leva 1996 [DELEVA96], who stands straight on hanging legs
 * with the arms as declared. Origin and axes are those of {@link Pose}.
 *
 * <p>Yaw inertia stacked from segments reads 20 % to 28 % below that of measured people; see {@link
 * BodySegment}.
 */
final class Person {

    /** Height of the ankle over stature (from memory). */
    private static final double ANKLE_HEIGHT = 0.039;

    /** Share of the foot's length that lies behind the ankle (from memory). */
    private static final double HEEL_SHARE = 0.25;

    private static final String TRUNK = "trunk";

    private static final double[] UPRIGHT = {1, 0, 0, 0, 1, 0, 0, 0, 1};

    /** Of a foot, whose long axis points forward. */
    private static final double[] LEVEL = {0, 0, 1, 0, 1, 0, -1, 0, 0};

    /** The limbs that come in pairs. */
    private static final List<BodySegment> PAIRED =
            List.of(
                    BodySegment.THIGH,
                    BodySegment.SHANK,
                    BodySegment.FOOT,
                    BodySegment.UPPER_ARM,
                    BodySegment.FOREARM,
                    BodySegment.HAND);

    private final BodySegment.Reference body;
    private final double statureM;
    private final double massKg;
    private final List<MassItem> segments = new ArrayList<>();

    private Person(BodySegment.Reference body, double statureM, double massKg) {
        this.body = body;
        this.statureM = statureM;
        this.massKg = massKg;
    }

    /**
     * The segments at the values of {@code p}, what was measured laid into the trunk: its place so
     * that the level person balances where the scales say, its own inertia so that the standing
     * person has what the swings say.
     *
     * @throws liftwright.plant.parameters.ImpossibleValueException if a reading gives no inertia
     *     that can be
     */
    static List<MassItem> posed(double[] p, double massKg, MeasuredBody measured, Arms arms) {
        Person person = new Person(arms.body(), arms.statureM(p), massKg);
        person.trunkAndLegs();
        for (double side : new double[] {LimbAngles.LEFT, LimbAngles.RIGHT}) {
            double[] upper = new double[Pose.FRAME];
            double[] lower = new double[Pose.FRAME];
            arms.upper(p, side, upper);
            arms.lower(p, side, lower);
            person.arm(p, arms, side, upper, lower);
        }
        return person.measured(p, arms, measured);
    }

    /** The person who stands with hanging arms, as measured. */
    static List<MassItem> standing(double[] p, double massKg, MeasuredBody measured, Arms arms) {
        return straight(p, massKg, arms, UPRIGHT).measured(p, arms, measured);
    }

    /** The person with both arms along one direction. */
    private static Person straight(double[] p, double massKg, Arms arms, double[] arm) {
        Person person = new Person(arms.body(), arms.statureM(p), massKg);
        person.trunkAndLegs();
        for (double side : new double[] {LimbAngles.LEFT, LimbAngles.RIGHT}) {
            person.arm(p, arms, side, arm, arm);
        }
        return person;
    }

    private List<MassItem> measured(double[] p, Arms arms, MeasuredBody measured) {
        double downM =
                measured.centreBelowShouldersM(p)
                        .map(
                                read ->
                                        read
                                                - MassProperties.of(
                                                                straight(p, massKg, arms, LEVEL)
                                                                        .segments)
                                                        .centre()
                                                        .z())
                        .orElse(0.0);
        MassProperties hanging =
                MassProperties.of(
                        moved(straight(p, massKg, arms, UPRIGHT).segments, downM, Inertia.ZERO));
        Inertia computed = hanging.inertia();
        Inertia read = measured.standing(p, massKg, hanging.centre().z(), computed);
        return moved(segments, downM, read.plus(computed.times(-1)));
    }

    /** The trunk moved so that the whole moves down by so much, and its inertia added to. */
    private List<MassItem> moved(List<MassItem> items, double wholeDownM, Inertia more) {
        List<MassItem> moved = new ArrayList<>();
        for (MassItem item : items) {
            moved.add(
                    item.name().equals(TRUNK)
                            ? new MassItem(
                                    item.kind(),
                                    item.name(),
                                    item.massKg(),
                                    item.at()
                                            .plus(
                                                    new Vec3(
                                                            0,
                                                            0,
                                                            wholeDownM * massKg / item.massKg())),
                                    item.own().plus(more))
                            : item);
        }
        return moved;
    }

    private void trunkAndLegs() {
        double hip = lengthM(BodySegment.TRUNK);
        double knee = hip + lengthM(BodySegment.THIGH);
        double ankle = knee + lengthM(BodySegment.SHANK);
        double floor = ankle + ANKLE_HEIGHT * statureM;
        add(BodySegment.HEAD, "head", new Vec3(0, 0, floor - statureM), UPRIGHT);
        add(BodySegment.TRUNK, TRUNK, Vec3.ZERO, UPRIGHT);
        for (double side : new double[] {LimbAngles.LEFT, LimbAngles.RIGHT}) {
            String name = name(side);
            double y = side * BodySegment.HIP_HALF_SPACING * statureM;
            add(BodySegment.THIGH, name + "thigh", new Vec3(0, y, hip), UPRIGHT);
            add(BodySegment.SHANK, name + "shank", new Vec3(0, y, knee), UPRIGHT);
            double heel = -HEEL_SHARE * lengthM(BodySegment.FOOT);
            add(BodySegment.FOOT, name + "foot", new Vec3(heel, y, floor), LEVEL);
        }
    }

    /**
     * @param upper turn of the upper arm
     * @param lower turn of forearm and hand
     */
    private void arm(double[] p, Arms arms, double side, double[] upper, double[] lower) {
        String name = name(side);
        Vec3 shoulder = arms.shoulder(p, side);
        Vec3 elbow =
                shoulder.plus(
                        Pose.turned(upper, 0, new Vec3(0, 0, lengthM(BodySegment.UPPER_ARM))));
        Vec3 wrist =
                elbow.plus(Pose.turned(lower, 0, new Vec3(0, 0, lengthM(BodySegment.FOREARM))));
        add(BodySegment.UPPER_ARM, name + "upper arm", shoulder, upper);
        add(BodySegment.FOREARM, name + "forearm", elbow, lower);
        add(BodySegment.HAND, name + "hand", wrist, lower);
    }

    private static String name(double side) {
        return side == LimbAngles.LEFT ? "left " : "right ";
    }

    private double lengthM(BodySegment segment) {
        return segment.lengthM(body, statureM);
    }

    /** The table's percentages, rounded one by one, add up to 99.99 or 100. */
    private double wholeShare() {
        double pairs = 0;
        for (BodySegment each : PAIRED) {
            pairs += each.massShare(body);
        }
        return BodySegment.HEAD.massShare(body) + BodySegment.TRUNK.massShare(body) + 2 * pairs;
    }

    /**
     * @param from its proximal end, rig axes, m
     * @param frame its axes: sagittal, transverse, along
     */
    private void add(BodySegment segment, String name, Vec3 from, double[] frame) {
        double kg = segment.massShare(body) / wholeShare() * massKg;
        double length = lengthM(segment);
        Vec3 along = Pose.turned(frame, 0, new Vec3(0, 0, segment.centreShare(body) * length));
        double whole = kg * length * length;
        segments.add(
                new MassItem(
                        MassItem.Kind.WEARER,
                        name,
                        kg,
                        from.plus(along),
                        Inertia.turned(
                                whole * square(segment.gyrationShare(body, Axis.SAGITTAL)),
                                whole * square(segment.gyrationShare(body, Axis.TRANSVERSE)),
                                whole * square(segment.gyrationShare(body, Axis.LONGITUDINAL)),
                                frame,
                                0)));
    }

    private static double square(double x) {
        return x * x;
    }
}
