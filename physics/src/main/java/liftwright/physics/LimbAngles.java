package liftwright.physics;

/**
 * Joint angles to directions. Axes: x forward, y right, z down [ISO1151]. The arm of angles zero
 * hangs straight down, so that its segment axes are the body's axes.
 *
 * <p>Angles are applied flexion, then abduction, then rotation, each about the axes the ones before
 * have turned: for the right arm {@code R_y(flexion) R_x(−abduction) R_z(rotation)}; the elbow adds
 * {@code R_y(elbow flexion)}. Flexion swings forward, abduction outward, rotation turns outward,
 * elbow flexion brings the hand forward. The left arm is the mirror image in the plane y = 0.
 *
 * <p>A frame is the 3 × 3 matrix, row by row, that turns a vector in segment axes into body axes;
 * its third column points along the segment from the proximal end. Hips and knees work alike, but a
 * knee bends with a negative elbow flexion.
 */
public final class LimbAngles {

    /** Side factor of a right limb. */
    public static final double RIGHT = 1;

    /** Side factor of a left limb. */
    public static final double LEFT = -1;

    private LimbAngles() {}

    /**
     * Frame of the upper arm (or thigh).
     *
     * @param side {@link #RIGHT} or {@link #LEFT}
     * @param flexionRad forward swing
     * @param abductionRad outward swing
     * @param rotationRad turn about the limb, outward positive
     * @param frame takes nine values from {@code at}, row by row
     */
    public static void upper(
            double side,
            double flexionRad,
            double abductionRad,
            double rotationRad,
            double[] frame,
            int at) {
        lower(side, flexionRad, abductionRad, rotationRad, 0, frame, at);
    }

    /**
     * Frame of the forearm (or shank): the upper frame bent by the middle joint.
     *
     * @param bendRad flexion of the elbow, hand towards the front; other parameters as {@link
     *     #upper}
     */
    public static void lower(
            double side,
            double flexionRad,
            double abductionRad,
            double rotationRad,
            double bendRad,
            double[] frame,
            int at) {
        double cf = Math.cos(flexionRad);
        double sf = Math.sin(flexionRad);
        double ca = Math.cos(abductionRad);
        double sa = Math.sin(abductionRad);
        double cr = Math.cos(rotationRad);
        double sr = Math.sin(rotationRad);
        double cb = Math.cos(bendRad);
        double sb = Math.sin(bendRad);
        // Columns of R_y(f) R_x(−a) R_z(r), before the bend.
        double xx = cf * cr - sf * sa * sr;
        double yx = ca * sr;
        double zx = -sf * cr - cf * sa * sr;
        double xy = -cf * sr - sf * sa * cr;
        double yy = ca * cr;
        double zy = sf * sr - cf * sa * cr;
        double xz = sf * ca;
        double yz = sa;
        double zz = cf * ca;
        frame[at] = xx * cb - xz * sb;
        frame[at + 1] = side * xy;
        frame[at + 2] = xx * sb + xz * cb;
        frame[at + 3] = side * (yx * cb - yz * sb);
        frame[at + 4] = yy;
        frame[at + 5] = side * (yx * sb + yz * cb);
        frame[at + 6] = zx * cb - zz * sb;
        frame[at + 7] = side * zy;
        frame[at + 8] = zx * sb + zz * cb;
    }
}
