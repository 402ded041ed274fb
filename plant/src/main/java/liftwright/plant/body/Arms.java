package liftwright.plant.body;

import liftwright.physics.BodySegment;
import liftwright.physics.LimbAngles;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Quantity;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.rig.Wearer;

/** The wearer's arms: joint angles and lengths from the parameter vector. */
final class Arms {

    /** Numbers of the vector that turn one arm. */
    private record Joints(int flexion, int abduction, int rotation, int elbow) {}

    private final Joints left;
    private final Joints right;
    private final int stature;
    private final BodySegment.Reference body;

    private Arms(Joints left, Joints right, int stature, BodySegment.Reference body) {
        this.left = left;
        this.right = right;
        this.stature = stature;
        this.body = body;
    }

    static Arms declare(Rig rig, Wearer wearer, ParameterRows table) {
        DeclaredKeys keys = new DeclaredKeys(rig.declaration());
        int stature =
                table.row(
                        RigPath.of("wearer", "stature"),
                        "stature of the wearer",
                        wearer.stature(),
                        Range.POSITIVE);
        return new Arms(
                joints("left", wearer.left(), keys, table),
                joints("right", wearer.right(), keys, table),
                stature,
                reference(wearer.body()));
    }

    static BodySegment.Reference reference(Wearer.Body body) {
        return switch (body) {
            case FEMALE -> BodySegment.Reference.FEMALE;
            case MALE -> BodySegment.Reference.MALE;
        };
    }

    private static Joints joints(
            String side, Wearer.Arm arm, DeclaredKeys keys, ParameterRows table) {
        return new Joints(
                angle(side, "shoulder", "flexion", arm.shoulderFlexion(), keys, table),
                angle(side, "shoulder", "abduction", arm.shoulderAbduction(), keys, table),
                angle(side, "shoulder", "rotation", arm.shoulderRotation(), keys, table),
                angle(side, "elbow", "flexion", arm.elbowFlexion(), keys, table));
    }

    /** An angle declared for both sides has one error for both. */
    private static int angle(
            String side,
            String joint,
            String angle,
            Quantity value,
            DeclaredKeys keys,
            ParameterRows table) {
        RigPath posture = RigPath.of("wearer", "posture");
        String own = side + " " + joint;
        String both = "both " + joint + "s";
        boolean shared =
                keys.has(posture.child(both).child(angle))
                        && !keys.has(posture.child(own).child(angle));
        String place = shared ? both : own;
        return table.row(
                posture.child(place).child(angle),
                angle + " of the " + place,
                new PartId(own),
                value,
                Range.ANY);
    }

    private Joints of(double side) {
        return side == LimbAngles.LEFT ? left : right;
    }

    /** Turn of an upper arm into {@code frame}. */
    void upper(double[] p, double side, double[] frame) {
        Joints arm = of(side);
        LimbAngles.upper(side, p[arm.flexion], p[arm.abduction], p[arm.rotation], frame, 0);
    }

    /** Turn of a forearm into {@code frame}. */
    void lower(double[] p, double side, double[] frame) {
        Joints arm = of(side);
        LimbAngles.lower(
                side, p[arm.flexion], p[arm.abduction], p[arm.rotation], p[arm.elbow], frame, 0);
    }

    /** Which table of proportions holds. */
    BodySegment.Reference body() {
        return body;
    }

    /** Standing height, m. */
    double statureM(double[] p) {
        return p[stature];
    }

    /** Length of a segment, m. */
    double lengthM(double[] p, BodySegment segment) {
        return segment.lengthM(body, p[stature]);
    }

    /** Shoulder joint of one side, in rig axes, m. */
    Vec3 shoulder(double[] p, double side) {
        return new Vec3(0, side * BodySegment.SHOULDER_HALF_SPACING * p[stature], 0);
    }

    /** Direction of an upper arm from the shoulder to the elbow, in rig axes. */
    Vec3 upperArm(double[] p, double side) {
        double[] frame = new double[Pose.FRAME];
        upper(p, side, frame);
        return Pose.turned(frame, 0, new Vec3(0, 0, 1));
    }

    /** Elbow of one side, in rig axes, m. */
    Vec3 elbow(double[] p, double side) {
        return shoulder(p, side).plus(upperArm(p, side).times(lengthM(p, BodySegment.UPPER_ARM)));
    }

    /** Direction of a forearm from the elbow to the hand, in rig axes. */
    Vec3 forearm(double[] p, double side) {
        double[] frame = new double[Pose.FRAME];
        lower(p, side, frame);
        return Pose.turned(frame, 0, new Vec3(0, 0, 1));
    }
}
