package liftwright.plant.body;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.physics.BodySegment;
import liftwright.physics.LimbAngles;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.Pack;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;

/**
 * Where the mounts are and which way they look, given the wearer's posture.
 *
 * <p>Rig axes: x forward, y right, z down; z is plumb. Origin is the point midway between the
 * shoulder joints, taken at the height of the upper end of the breastbone, where the trunk segment
 * begins; on a rig without a wearer it is the frame's own origin. Frame and trunk share this
 * origin, and these axes where the wearer does not lean; where the body leans they lean with it. An
 * upper arm begins at its shoulder joint, a forearm at its elbow; their axes are those of {@link
 * LimbAngles}, third axis along the limb towards the hand.
 *
 * <p>A mount's tilt turns its "down" forward first, then right. A mount that is made as the twin of
 * another has the other's errors in the mirror.
 */
public final class Pose {

    /** Numbers that a frame takes: a 3 × 3 matrix, row by row, mount axes to rig axes. */
    public static final int FRAME = 9;

    /**
     * @param mirror −1 where the tilt to the right is that of a twin, else 1
     */
    private record Row(Mount mount, int along, int turnForward, int turnRight, double mirror) {}

    private final Row[] rows;

    /** By name: a mount is large, and loops ask for its number. */
    private final Map<String, Integer> number;

    private final Optional<Posture> posture;

    private Pose(Row[] rows, Map<String, Integer> number, Optional<Posture> posture) {
        this.rows = rows;
        this.number = number;
        this.posture = posture;
    }

    /**
     * Declares the parameters of all mounts that carry something, and of the wearer's posture.
     *
     * @throws IllegalArgumentException if a mount is on a limb and there is no wearer
     */
    public static Pose declare(Rig rig, ParameterRows table) {
        List<Row> rows = new ArrayList<>();
        Map<String, Integer> number = new HashMap<>();
        for (Mount mount : mounts(rig)) {
            if (!number.containsKey(mount.name())) {
                if (isOnLimb(mount) && rig.wearer().isEmpty()) {
                    throw new IllegalArgumentException(
                            "the mount " + mount.name() + " is on a limb, but there is no wearer");
                }
                number.put(mount.name(), rows.size());
                rows.add(row(rig, mount, table));
            }
        }
        Optional<Posture> posture = rig.wearer().map(wearer -> Posture.declare(rig, wearer, table));
        return new Pose(rows.toArray(new Row[0]), number, posture);
    }

    private static List<Mount> mounts(Rig rig) {
        List<Mount> mounts = new ArrayList<>();
        rig.fans().stream().map(Fan::mount).forEach(mounts::add);
        rig.packs().stream().map(Pack::mount).forEach(mounts::add);
        rig.otherParts().stream().map(OtherPart::mount).forEach(mounts::add);
        return mounts;
    }

    private static Row row(Rig rig, Mount mount, ParameterRows table) {
        DeclaredKeys keys = new DeclaredKeys(rig.declaration());
        Optional<Mount> original = original(rig, mount, keys);
        Mount declared = original.orElse(mount);
        RigPath at = RigPath.of("mounts", declared.name());
        RigPath turn = at.child("turn");
        String of = " of mount " + declared.name();
        PartId part = new PartId(mount.name());
        return new Row(
                mount,
                table.row(
                        at.child("at").child("along"),
                        "place" + of,
                        part,
                        declared.along(),
                        Range.ANY),
                table.row(
                        keys.firstOf(turn, "forward", "back"),
                        "forward tilt" + of,
                        part,
                        declared.turnForward(),
                        Range.ANY),
                table.row(
                        keys.firstOf(turn, "right", "left", "outboard", "inboard"),
                        "tilt to the side" + of,
                        part,
                        declared.turnRight(),
                        Range.ANY),
                original.isPresent() ? -1 : 1);
    }

    /** The mount that a generated twin is the mirror image of. */
    static Optional<Mount> original(Rig rig, Mount mount, DeclaredKeys keys) {
        if (keys.has(RigPath.of("mounts", mount.name()))) {
            return Optional.empty();
        }
        return rig.mounts().stream()
                .filter(
                        other ->
                                keys.text(RigPath.of("mounts", other.name(), "twin"))
                                        .equals(Optional.of(mount.name())))
                .findFirst();
    }

    private static boolean isOnLimb(Mount mount) {
        return switch (mount.on()) {
            case FRAME, TRUNK -> false;
            case LEFT_UPPER_ARM, RIGHT_UPPER_ARM, LEFT_FOREARM, RIGHT_FOREARM -> true;
        };
    }

    /**
     * Lets the wandering of held arms count in a vector, and turns the arms from where they are
     * held.
     *
     * @param p changed: not a vector to share
     * @param turnRad left flexion, abduction, rotation, elbow flexion, then right, rad
     */
    public void hold(double[] p, double[] turnRad) {
        posture.ifPresent(own -> own.arms().hold(p, turnRad));
    }

    /** How many mounts there are. */
    public int mounts() {
        return rows.length;
    }

    /** Number of a mount that carries something. */
    public int number(Mount mount) {
        Integer found = number.get(mount.name());
        if (found == null) {
            throw new IllegalArgumentException("the mount " + mount.name() + " carries nothing");
        }
        return found;
    }

    /** How the wearer is held; there is none without a wearer. */
    Posture posture() {
        return posture.orElseThrow(() -> new IllegalStateException("nobody wears this rig"));
    }

    private Arms arms() {
        return posture().arms();
    }

    /**
     * One of the wearer's arms at the values of {@code p}. Allocates.
     *
     * @param side {@link LimbAngles#LEFT} or {@link LimbAngles#RIGHT}
     * @throws IllegalStateException if nobody wears the rig
     */
    public ArmFrame arm(double[] p, double side) {
        return ArmFrame.of(p, side, posture());
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
            double right = row.mirror * p[row.turnRight];
            tilt(limb, p[row.turnForward], right, frames, k * FRAME);
        }
    }

    /**
     * Turn of frame and trunk by the wearer's lean.
     *
     * @param frame takes {@link #FRAME} numbers: trunk axes to rig axes
     */
    public void trunk(double[] p, double[] frame) {
        limbFrame(p, Mount.Carrier.TRUNK, frame);
    }

    void limbFrame(double[] p, Mount.Carrier on, double[] frame) {
        switch (on) {
            case FRAME, TRUNK -> {
                Arrays.fill(frame, 0);
                frame[0] = 1;
                frame[4] = 1;
                frame[8] = 1;
            }
            case LEFT_UPPER_ARM, RIGHT_UPPER_ARM -> arms().upper(p, side(on), frame);
            case LEFT_FOREARM, RIGHT_FOREARM -> arms().lower(p, side(on), frame);
        }
        if (posture.isPresent()) {
            posture.get().stance().lean(p, frame);
        }
    }

    /** frame = limb · R_y(forward) · R_x(−right). */
    static void tilt(double[] limb, double forwardRad, double rightRad, double[] frame, int at) {
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
        return placed(p).at(mount, at);
    }

    /** Where all mounts are and how they are turned at the values of {@code p}. Allocates. */
    Placed placed(double[] p) {
        double[] frames = new double[rows.length * FRAME];
        double[] limbs = new double[rows.length * FRAME];
        double[] limb = new double[FRAME];
        frames(p, frames, limb);
        Vec3[] origins = new Vec3[rows.length];
        for (int k = 0; k < rows.length; k++) {
            Mount mount = rows[k].mount;
            limbFrame(p, mount.on(), limb);
            System.arraycopy(limb, 0, limbs, k * FRAME, FRAME);
            double along = p[rows[k].along] * limbLengthM(p, mount.on());
            origins[k] =
                    start(p, mount.on())
                            .plus(turned(limb, 0, mount.at().plus(new Vec3(0, 0, along))));
        }
        return new Placed(frames, limbs, origins);
    }

    /** Mounts in place. */
    final class Placed {
        private final double[] frames;
        private final double[] limbs;
        private final Vec3[] origins;

        private Placed(double[] frames, double[] limbs, Vec3[] origins) {
            this.frames = frames;
            this.limbs = limbs;
            this.origins = origins;
        }

        /** A point given in a mount's axes, in rig axes, m. */
        Vec3 at(Mount mount, Vec3 point) {
            return origins[number(mount)].plus(turned(mount, point));
        }

        /** A direction given in a mount's axes, in rig axes. */
        Vec3 turned(Mount mount, Vec3 direction) {
            return Pose.turned(frames, FRAME * number(mount), direction);
        }

        /** A direction given in the axes of what a mount is on, in rig axes. */
        Vec3 onLimb(Mount mount, Vec3 direction) {
            return Pose.turned(limbs, FRAME * number(mount), direction);
        }

        /** Own inertia of an even box with its edges along a mount's axes: m (b² + c²)/12. */
        Inertia box(Mount mount, double massKg, Vec3 edgesM) {
            double x = edgesM.x() * edgesM.x();
            double y = edgesM.y() * edgesM.y();
            double z = edgesM.z() * edgesM.z();
            double per = massKg / 12;
            return Inertia.turned(
                    per * (y + z), per * (x + z), per * (x + y), frames, FRAME * number(mount));
        }
    }

    /** Upper end of what carries a mount. */
    Vec3 start(double[] p, Mount.Carrier on) {
        return switch (on) {
            case FRAME, TRUNK -> Vec3.ZERO;
            case LEFT_UPPER_ARM, RIGHT_UPPER_ARM ->
                    posture().stance().leant(p, arms().shoulder(p, side(on)));
            case LEFT_FOREARM, RIGHT_FOREARM ->
                    posture().stance().leant(p, arms().elbow(p, side(on)));
        };
    }

    double limbLengthM(double[] p, Mount.Carrier on) {
        return switch (on) {
            case FRAME, TRUNK -> 0;
            case LEFT_UPPER_ARM, RIGHT_UPPER_ARM ->
                    posture().sizes().lengthM(p, BodySegment.UPPER_ARM);
            case LEFT_FOREARM, RIGHT_FOREARM -> posture().sizes().lengthM(p, BodySegment.FOREARM);
        };
    }

    private static double side(Mount.Carrier on) {
        return switch (on) {
            case LEFT_UPPER_ARM, LEFT_FOREARM -> LimbAngles.LEFT;
            case FRAME, TRUNK, RIGHT_UPPER_ARM, RIGHT_FOREARM -> LimbAngles.RIGHT;
        };
    }

    static Vec3 turned(double[] frame, int at, Vec3 v) {
        return new Vec3(
                frame[at] * v.x() + frame[at + 1] * v.y() + frame[at + 2] * v.z(),
                frame[at + 3] * v.x() + frame[at + 4] * v.y() + frame[at + 5] * v.z(),
                frame[at + 6] * v.x() + frame[at + 7] * v.y() + frame[at + 8] * v.z());
    }
}
