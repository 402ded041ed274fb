package liftwright.plant.body;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import liftwright.physics.BodySegment;
import liftwright.physics.LimbAngles;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Quantity;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.rig.Wearer;

/**
 * Where the mounts are and which way they look, given the wearer's posture.
 *
 * <p>Rig axes: x forward, y right, z down; the rig stands upright. Origin is the point midway
 * between the shoulder joints, taken at the height of the upper end of the breastbone, where the
 * trunk segment begins; on a rig without a wearer it is the frame's own origin. Frame and trunk
 * share these axes and this origin. An upper arm begins at its shoulder joint, a forearm at its
 * elbow; their axes are those of {@link LimbAngles}, third axis along the limb towards the hand.
 *
 * <p>A mount's tilt turns its "down" forward first, then right.
 */
public final class Pose {

    /** Numbers that a frame takes: a 3 × 3 matrix, row by row, mount axes to rig axes. */
    public static final int FRAME = 9;

    /** Numbers of the vector that turn one arm. */
    private record Arm(int flexion, int abduction, int rotation, int elbow) {}

    private record Row(Mount mount, int along, int turnForward, int turnRight) {}

    private final Row[] rows;
    private final Map<Mount, Integer> number;
    private final Arm[] arms;
    private final int stature;
    private final BodySegment.Reference body;

    private Pose(
            Row[] rows,
            Map<Mount, Integer> number,
            Arm[] arms,
            int stature,
            BodySegment.Reference body) {
        this.rows = rows;
        this.number = number;
        this.arms = arms;
        this.stature = stature;
        this.body = body;
    }

    /** Declares the parameters of all mounts that carry something, and of the wearer's posture. */
    public static Pose declare(Rig rig, ParameterRows table) {
        List<Row> rows = new ArrayList<>();
        Map<Mount, Integer> number = new LinkedHashMap<>();
        for (Mount mount : mounts(rig)) {
            if (!number.containsKey(mount)) {
                if (mount.on().onWearer() && rig.wearer().isEmpty() && limb(mount)) {
                    throw new IllegalArgumentException(
                            "the mount " + mount.name() + " is on a limb, but there is no wearer");
                }
                number.put(mount, rows.size());
                rows.add(row(mount, table));
            }
        }
        Arm[] arms = new Arm[0];
        int stature = -1;
        BodySegment.Reference body = BodySegment.Reference.MALE;
        if (rig.wearer().isPresent()) {
            Wearer wearer = rig.wearer().get();
            arms = new Arm[] {arm("left", wearer, table), arm("right", wearer, table)};
            stature =
                    table.row(
                            RigPath.of("wearer", "stature"),
                            "stature of the wearer",
                            wearer.stature(),
                            Range.POSITIVE);
            body = reference(wearer.body());
        }
        return new Pose(rows.toArray(new Row[0]), new HashMap<>(number), arms, stature, body);
    }

    static BodySegment.Reference reference(Wearer.Body body) {
        return switch (body) {
            case FEMALE -> BodySegment.Reference.FEMALE;
            case MALE -> BodySegment.Reference.MALE;
        };
    }

    private static List<Mount> mounts(Rig rig) {
        List<Mount> mounts = new ArrayList<>();
        rig.fans().stream().map(Fan::mount).forEach(mounts::add);
        rig.packs().stream().map(Pack::mount).forEach(mounts::add);
        rig.otherParts().stream().map(OtherPart::mount).forEach(mounts::add);
        return mounts;
    }

    private static Row row(Mount mount, ParameterRows table) {
        RigPath at = RigPath.of("mounts", mount.name());
        String of = " of mount " + mount.name();
        return new Row(
                mount,
                table.row(at.child("at").child("along"), "place" + of, mount.along(), Range.ANY),
                table.row(
                        at.child("turn").child("forward"),
                        "forward tilt" + of,
                        mount.turnForward(),
                        Range.ANY),
                table.row(
                        at.child("turn").child("right"),
                        "tilt to the right" + of,
                        mount.turnRight(),
                        Range.ANY));
    }

    private static Arm arm(String side, Wearer wearer, ParameterRows table) {
        Wearer.Arm own = side.equals("left") ? wearer.left() : wearer.right();
        Wearer.Arm other = side.equals("left") ? wearer.right() : wearer.left();
        return new Arm(
                joint(side, "shoulder", "flexion", own, other, table),
                joint(side, "shoulder", "abduction", own, other, table),
                joint(side, "shoulder", "rotation", own, other, table),
                joint(side, "elbow", "flexion", own, other, table));
    }

    /** Arms declared alike were declared together: one error serves both. */
    private static int joint(
            String side,
            String joint,
            String angle,
            Wearer.Arm own,
            Wearer.Arm other,
            ParameterRows table) {
        Quantity value = value(joint, angle, own);
        boolean alike = value.equals(value(joint, angle, other));
        String place = alike ? "both " + joint + "s" : side + " " + joint;
        return table.row(
                RigPath.of("wearer", "posture", place, angle),
                angle + " of " + place,
                value,
                Range.ANY);
    }

    private static Quantity value(String joint, String angle, Wearer.Arm arm) {
        if (joint.equals("elbow")) {
            return arm.elbowFlexion();
        }
        return switch (angle) {
            case "flexion" -> arm.shoulderFlexion();
            case "abduction" -> arm.shoulderAbduction();
            default -> arm.shoulderRotation();
        };
    }

    /** How many mounts there are. */
    public int mounts() {
        return rows.length;
    }

    /** Number of a mount that carries something. */
    public int number(Mount mount) {
        Integer found = number.get(mount);
        if (found == null) {
            throw new IllegalArgumentException("the mount " + mount.name() + " carries nothing");
        }
        return found;
    }

    /**
     * Turns of all mounts.
     *
     * @param frames takes {@link #FRAME} numbers per mount
     * @param limb scratch, {@link #FRAME} numbers
     */
    public void frames(double[] p, double[] frames, double[] limb) {
        for (int k = 0; k < rows.length; k++) {
            Row row = rows[k];
            limbFrame(p, row.mount.on(), limb);
            tilt(limb, p[row.turnForward], p[row.turnRight], frames, k * FRAME);
        }
    }

    /** Whether a mount sits on an arm. */
    private static boolean limb(Mount mount) {
        return switch (mount.on()) {
            case FRAME, TRUNK -> false;
            case LEFT_UPPER_ARM, RIGHT_UPPER_ARM, LEFT_FOREARM, RIGHT_FOREARM -> true;
        };
    }

    private void limbFrame(double[] p, Mount.Carrier on, double[] frame) {
        switch (on) {
            case FRAME, TRUNK -> {
                Arrays.fill(frame, 0);
                frame[0] = 1;
                frame[4] = 1;
                frame[8] = 1;
            }
            case LEFT_UPPER_ARM -> upper(p, arms[0], LimbAngles.LEFT, frame);
            case RIGHT_UPPER_ARM -> upper(p, arms[1], LimbAngles.RIGHT, frame);
            case LEFT_FOREARM -> lower(p, arms[0], LimbAngles.LEFT, frame);
            case RIGHT_FOREARM -> lower(p, arms[1], LimbAngles.RIGHT, frame);
        }
    }

    private static void upper(double[] p, Arm arm, double side, double[] frame) {
        LimbAngles.upper(side, p[arm.flexion], p[arm.abduction], p[arm.rotation], frame, 0);
    }

    private static void lower(double[] p, Arm arm, double side, double[] frame) {
        LimbAngles.lower(
                side, p[arm.flexion], p[arm.abduction], p[arm.rotation], p[arm.elbow], frame, 0);
    }

    /** frame = limb · R_y(forward) · R_x(−right). */
    private static void tilt(
            double[] limb, double forwardRad, double rightRad, double[] frame, int at) {
        double cf = Math.cos(forwardRad);
        double sf = Math.sin(forwardRad);
        double cr = Math.cos(rightRad);
        double sr = Math.sin(rightRad);
        for (int row = 0; row < 3; row++) {
            double x = limb[3 * row];
            double y = limb[3 * row + 1];
            double z = limb[3 * row + 2];
            double down = x * sf + z * cf;
            frame[at + 3 * row] = x * cf - z * sf;
            frame[at + 3 * row + 1] = y * cr - down * sr;
            frame[at + 3 * row + 2] = y * sr + down * cr;
        }
    }

    /** Place of a point given in a mount's axes, in rig axes, m. For reports, not for loops. */
    public Vec3 place(double[] p, Mount mount, Vec3 at) {
        double[] frames = new double[rows.length * FRAME];
        double[] limb = new double[FRAME];
        frames(p, frames, limb);
        Row row = rows[number(mount)];
        limbFrame(p, mount.on(), limb);
        Vec3 offset = mount.at();
        Vec3 origin =
                switch (mount.on()) {
                    case FRAME, TRUNK -> Vec3.ZERO;
                    case LEFT_UPPER_ARM, RIGHT_UPPER_ARM -> {
                        offset = offset.plus(alongLimb(p, row, BodySegment.UPPER_ARM));
                        yield shoulder(p, side(mount.on()));
                    }
                    case LEFT_FOREARM, RIGHT_FOREARM -> {
                        offset = offset.plus(alongLimb(p, row, BodySegment.FOREARM));
                        yield elbow(p, side(mount.on()));
                    }
                };
        return origin.plus(turned(limb, 0, offset)).plus(turned(frames, FRAME * number(mount), at));
    }

    private Vec3 alongLimb(double[] p, Row row, BodySegment segment) {
        return new Vec3(0, 0, p[row.along] * segment.lengthM(body, p[stature]));
    }

    private static double side(Mount.Carrier on) {
        return switch (on) {
            case LEFT_UPPER_ARM, LEFT_FOREARM -> LimbAngles.LEFT;
            case FRAME, TRUNK, RIGHT_UPPER_ARM, RIGHT_FOREARM -> LimbAngles.RIGHT;
        };
    }

    private Arm armOf(double side) {
        return side == LimbAngles.LEFT ? arms[0] : arms[1];
    }

    /** Shoulder joint of one side, in rig axes, m. */
    Vec3 shoulder(double[] p, double side) {
        return new Vec3(0, side * BodySegment.SHOULDER_HALF_SPACING * p[stature], 0);
    }

    /** Elbow of one side, in rig axes, m. */
    Vec3 elbow(double[] p, double side) {
        double[] frame = new double[FRAME];
        upper(p, armOf(side), side, frame);
        double length = BodySegment.UPPER_ARM.lengthM(body, p[stature]);
        return shoulder(p, side).plus(turned(frame, 0, new Vec3(0, 0, length)));
    }

    /** Direction of a forearm from the elbow to the hand, in rig axes. */
    Vec3 forearm(double[] p, double side) {
        double[] frame = new double[FRAME];
        lower(p, armOf(side), side, frame);
        return turned(frame, 0, new Vec3(0, 0, 1));
    }

    static Vec3 turned(double[] frame, int at, Vec3 v) {
        return new Vec3(
                frame[at] * v.x() + frame[at + 1] * v.y() + frame[at + 2] * v.z(),
                frame[at + 3] * v.x() + frame[at + 4] * v.y() + frame[at + 5] * v.z(),
                frame[at + 6] * v.x() + frame[at + 7] * v.y() + frame[at + 8] * v.z());
    }
}
