package liftwright.plant.body;

import liftwright.physics.BodySegment;
import liftwright.physics.LimbAngles;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.rig.Wearer;

/** The wearer's arms: joint angles and lengths from the parameter vector. */
final class Arms {

    /** Angles of both arms: flexion, abduction, rotation and elbow flexion, left then right. */
    private static final int ANGLES = 8;

    private static final String[] NAMES = {
        "left shoulder flexion",
        "left shoulder abduction",
        "left shoulder rotation",
        "left elbow flexion",
        "right shoulder flexion",
        "right shoulder abduction",
        "right shoulder rotation",
        "right elbow flexion"
    };

    /**
     * Numbers of the vector that turn one arm.
     *
     * @param wander the first of the four by which it wanders from them
     */
    private record Joints(int flexion, int abduction, int rotation, int elbow, int wander) {}

    private final Joints left;
    private final Joints right;
    private final Sizes sizes;

    /** What the wandering of held arms counts: 0, or 1 after {@link #hold}. */
    private final int counts;

    private Arms(Joints left, Joints right, int counts, Sizes sizes) {
        this.counts = counts;
        this.left = left;
        this.right = right;
        this.sizes = sizes;
    }

    static Arms declare(Rig rig, Wearer wearer, Sizes sizes, ParameterRows table) {
        DeclaredKeys keys = new DeclaredKeys(rig.declaration());
        int left = wander(0, wearer, table);
        int right = wander(ANGLES / 2, wearer, table);
        int counts =
                table.row(
                        RigPath.of("wearer", "arm steadiness", "counts"),
                        "whether held arms wander",
                        Quantity.exact(0, Dimension.NONE),
                        Range.ANY);
        return new Arms(
                joints("left", wearer.left(), left, keys, table),
                joints("right", wearer.right(), right, keys, table),
                counts,
                sizes);
    }

    /** Rows of the wandering of one arm; each joint has its own. */
    private static int wander(int first, Wearer wearer, ParameterRows table) {
        double wide = wearer.armSteadiness().si();
        Quantity none =
                new Quantity(
                        0,
                        wearer.armSteadiness().dimension(),
                        new Tolerance(wide, wide, Tolerance.Form.NORMAL, Tolerance.Scope.EACH));
        int row = 0;
        for (int k = first; k < first + ANGLES / 2; k++) {
            int own =
                    table.row(
                            RigPath.of("wearer", "arm steadiness"),
                            "how far a held arm wanders",
                            new PartId(NAMES[k]),
                            none,
                            Range.ANY);
            row = k == first ? own : row;
        }
        return row;
    }

    /** Lets held arms wander in this vector, and turns them besides. */
    void hold(double[] p, double[] turnRad) {
        p[counts] = 1;
        for (int k = 0; k < ANGLES / 2; k++) {
            p[left.wander + k] += turnRad[k];
            p[right.wander + k] += turnRad[ANGLES / 2 + k];
        }
    }

    private static Joints joints(
            String side, Wearer.Arm arm, int wander, DeclaredKeys keys, ParameterRows table) {
        return new Joints(
                angle(side, "shoulder", "flexion", arm.shoulderFlexion(), keys, table),
                angle(side, "shoulder", "abduction", arm.shoulderAbduction(), keys, table),
                angle(side, "shoulder", "rotation", arm.shoulderRotation(), keys, table),
                angle(side, "elbow", "flexion", arm.elbowFlexion(), keys, table),
                wander);
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
        double wanders = p[counts];
        LimbAngles.upper(
                side,
                p[arm.flexion] + wanders * p[arm.wander],
                p[arm.abduction] + wanders * p[arm.wander + 1],
                p[arm.rotation] + wanders * p[arm.wander + 2],
                frame,
                0);
    }

    /** Turn of a forearm into {@code frame}. */
    void lower(double[] p, double side, double[] frame) {
        Joints arm = of(side);
        double wanders = p[counts];
        LimbAngles.lower(
                side,
                p[arm.flexion] + wanders * p[arm.wander],
                p[arm.abduction] + wanders * p[arm.wander + 1],
                p[arm.rotation] + wanders * p[arm.wander + 2],
                p[arm.elbow] + wanders * p[arm.wander + 3],
                frame,
                0);
    }

    /** Flexion of a shoulder, its wandering included, rad. */
    double flexionRad(double[] p, double side) {
        Joints arm = of(side);
        return p[arm.flexion] + p[counts] * p[arm.wander];
    }

    /** Shoulder joint of one side, in body axes, m. */
    Vec3 shoulder(double[] p, double side) {
        return new Vec3(0, side * sizes.shoulderHalfM(p), 0);
    }

    /** Direction of an upper arm from the shoulder to the elbow, in body axes. */
    Vec3 upperArm(double[] p, double side) {
        double[] frame = new double[Pose.FRAME];
        upper(p, side, frame);
        return Pose.turned(frame, 0, new Vec3(0, 0, 1));
    }

    /** Elbow of one side, in body axes, m. */
    Vec3 elbow(double[] p, double side) {
        double length = sizes.lengthM(p, BodySegment.UPPER_ARM);
        return shoulder(p, side).plus(upperArm(p, side).times(length));
    }
}
