package liftwright.plant.body;

import java.util.ArrayList;
import java.util.List;
import liftwright.physics.BodySegment;
import liftwright.physics.BodySegment.Axis;
import liftwright.physics.LimbAngles;
import liftwright.rig.Vec3;

/**
 * The wearer as rigid segments after de Leva 1996 [DELEVA96], posed as declared. Origin and axes
 * are those of {@link Pose}.
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

    private static final double[] SIDES = {LimbAngles.LEFT, LimbAngles.RIGHT};

    private static final double[] UPRIGHT = {1, 0, 0, 0, 1, 0, 0, 0, 1};

    /** Of an arm that points forward. */
    private static final double[] LEVEL = {0, 0, 1, 0, 1, 0, -1, 0, 0};

    /** The limbs that come in pairs. */
    static final List<BodySegment> PAIRED =
            List.of(
                    BodySegment.THIGH,
                    BodySegment.SHANK,
                    BodySegment.FOOT,
                    BodySegment.UPPER_ARM,
                    BodySegment.FOREARM,
                    BodySegment.HAND);

    private final double[] p;
    private final double massKg;
    private final Sizes sizes;
    private final List<MassItem> segments = new ArrayList<>();
    private final List<Limb> limbs = new ArrayList<>();

    private Person(double[] p, double massKg, Sizes sizes) {
        this.p = p;
        this.massKg = massKg;
        this.sizes = sizes;
    }

    /**
     * The segments at the values of {@code p}, what was measured laid into the trunk: its place so
     * that the level person balances where the scales say, its own inertia so that the standing
     * person has what the swings say. In rig axes, leant.
     *
     * @throws liftwright.plant.parameters.ImpossibleValueException if a reading gives no inertia
     *     that can be
     */
    static List<MassItem> posed(double[] p, double massKg, MeasuredBody measured, Posture posture) {
        return leant(p, posture.stance(), held(p, massKg, posture).measured(measured));
    }

    /** Where the segments of the person as posed begin and end. */
    static List<Limb> limbs(double[] p, double massKg, Posture posture) {
        List<Limb> upright = held(p, massKg, posture).limbs;
        if (!posture.stance().leans(p)) {
            return List.copyOf(upright);
        }
        double[] frame = UPRIGHT.clone();
        posture.stance().lean(p, frame);
        List<Limb> leant = new ArrayList<>();
        for (Limb limb : upright) {
            leant.add(
                    new Limb(
                            limb.name(),
                            Pose.turned(frame, 0, limb.from()),
                            Pose.turned(frame, 0, limb.to())));
        }
        return leant;
    }

    /** The person with arms and legs as declared, not leaning. */
    private static Person held(double[] p, double massKg, Posture posture) {
        Person person = new Person(p, massKg, posture.sizes());
        double[] upper = new double[Pose.FRAME];
        double[] lower = new double[Pose.FRAME];
        person.headAndTrunk();
        for (double side : SIDES) {
            posture.stance().thigh(p, side, upper);
            posture.stance().shank(p, side, lower);
            person.leg(side, upper, lower);
        }
        for (double side : SIDES) {
            posture.arms().upper(p, side, upper);
            posture.arms().lower(p, side, lower);
            person.arm(side, upper, lower);
        }
        return person;
    }

    private static List<MassItem> leant(double[] p, Stance stance, List<MassItem> upright) {
        if (!stance.leans(p)) {
            return upright;
        }
        double[] frame = UPRIGHT.clone();
        stance.lean(p, frame);
        List<MassItem> leant = new ArrayList<>();
        for (MassItem item : upright) {
            leant.add(
                    new MassItem(
                            item.kind(),
                            item.name(),
                            item.massKg(),
                            Pose.turned(frame, 0, item.at()),
                            item.own().turnedBy(frame)));
        }
        return leant;
    }

    /** The person who stands with hanging arms, as measured. */
    static List<MassItem> standing(
            double[] p, double massKg, MeasuredBody measured, Posture posture) {
        return straight(p, massKg, posture.sizes(), UPRIGHT).measured(measured);
    }

    /** The person on straight legs with both arms along one direction. */
    private static Person straight(double[] p, double massKg, Sizes sizes, double[] arm) {
        Person person = new Person(p, massKg, sizes);
        person.headAndTrunk();
        for (double side : SIDES) {
            person.leg(side, UPRIGHT, UPRIGHT);
        }
        for (double side : SIDES) {
            person.arm(side, arm, arm);
        }
        return person;
    }

    private Vec3 centre(double[] arm) {
        return MassProperties.of(straight(p, massKg, sizes, arm).segments).centre();
    }

    private List<MassItem> measured(MeasuredBody measured) {
        Vec3 shift =
                measured.centreBelowShouldersM(p)
                        .map(read -> new Vec3(0, 0, read - centre(LEVEL).z()))
                        .or(() -> measured.centre(p).map(read -> read.minus(centre(UPRIGHT))))
                        .orElse(Vec3.ZERO);
        MassProperties hanging =
                MassProperties.of(
                        moved(straight(p, massKg, sizes, UPRIGHT).segments, shift, Inertia.ZERO));
        Inertia computed = hanging.inertia();
        Inertia read = measured.standing(p, massKg, hanging.centre().z(), computed);
        return moved(segments, shift, read.plus(computed.times(-1)));
    }

    /** The trunk moved so that the whole moves by so much, m, and its inertia added to. */
    private List<MassItem> moved(List<MassItem> items, Vec3 whole, Inertia more) {
        List<MassItem> moved = new ArrayList<>();
        for (MassItem item : items) {
            moved.add(
                    item.name().equals(TRUNK)
                            ? new MassItem(
                                    item.kind(),
                                    item.name(),
                                    item.massKg(),
                                    item.at().plus(whole.times(massKg / item.massKg())),
                                    item.own().plus(more))
                            : item);
        }
        return moved;
    }

    private double lengthM(BodySegment segment) {
        return sizes.lengthM(p, segment);
    }

    private double ankleM() {
        return ANKLE_HEIGHT * sizes.statureM(p);
    }

    private void headAndTrunk() {
        double floor =
                lengthM(BodySegment.TRUNK)
                        + lengthM(BodySegment.THIGH)
                        + lengthM(BodySegment.SHANK)
                        + ankleM();
        add(BodySegment.HEAD, "head", new Vec3(0, 0, floor - sizes.statureM(p)), UPRIGHT);
        add(BodySegment.TRUNK, TRUNK, Vec3.ZERO, UPRIGHT);
    }

    /**
     * @param upper turn of the thigh
     * @param lower turn of the shank, to which the foot stands square
     */
    private void leg(double side, double[] upper, double[] lower) {
        String name = name(side);
        Vec3 hip = new Vec3(0, side * sizes.hipHalfM(p), lengthM(BodySegment.TRUNK));
        Vec3 knee = end(hip, upper, lengthM(BodySegment.THIGH));
        Vec3 ankle = end(knee, lower, lengthM(BodySegment.SHANK));
        add(BodySegment.THIGH, name + "thigh", hip, upper);
        add(BodySegment.SHANK, name + "shank", knee, lower);
        double heel = -HEEL_SHARE * lengthM(BodySegment.FOOT);
        double[] foot = {
            -lower[2], lower[1], lower[0],
            -lower[5], lower[4], lower[3],
            -lower[8], lower[7], lower[6]
        };
        add(
                BodySegment.FOOT,
                name + "foot",
                ankle.plus(Pose.turned(lower, 0, new Vec3(heel, 0, ankleM()))),
                foot);
    }

    private static Vec3 end(Vec3 from, double[] frame, double lengthM) {
        return from.plus(Pose.turned(frame, 0, new Vec3(0, 0, lengthM)));
    }

    /**
     * @param upper turn of the upper arm
     * @param lower turn of forearm and hand
     */
    private void arm(double side, double[] upper, double[] lower) {
        String name = name(side);
        Vec3 shoulder = new Vec3(0, side * sizes.shoulderHalfM(p), 0);
        Vec3 elbow = end(shoulder, upper, lengthM(BodySegment.UPPER_ARM));
        Vec3 wrist = end(elbow, lower, lengthM(BodySegment.FOREARM));
        add(BodySegment.UPPER_ARM, name + "upper arm", shoulder, upper);
        add(BodySegment.FOREARM, name + "forearm", elbow, lower);
        add(BodySegment.HAND, name + "hand", wrist, lower);
    }

    private static String name(double side) {
        return side == LimbAngles.LEFT ? "left " : "right ";
    }

    /**
     * @param from its proximal end, rig axes, m
     * @param frame its axes: sagittal, transverse, along
     */
    private void add(BodySegment segment, String name, Vec3 from, double[] frame) {
        double kg = sizes.massKg(p, segment, massKg);
        BodySegment.Reference body = sizes.body();
        double length = lengthM(segment);
        Vec3 along = Pose.turned(frame, 0, new Vec3(0, 0, segment.centreShare(body) * length));
        limbs.add(new Limb(name, from, from.plus(Pose.turned(frame, 0, new Vec3(0, 0, length)))));
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
