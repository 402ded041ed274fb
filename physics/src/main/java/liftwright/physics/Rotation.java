package liftwright.physics;

/**
 * Turns as unit quaternions (w, x, y, z), body into scene, and their 3 × 3 matrices. The sign of a
 * quaternion means nothing.
 *
 * <p>Source: Kuipers, Quaternions and Rotation Sequences, 1999 (standard theory; tested against
 * turns about an axis).
 */
public final class Rotation {

    private Rotation() {}

    /**
     * Matrix that takes body axes into scene axes, row by row.
     *
     * @param y in: four numbers of the quaternion from {@code at}; need not have length 1 to the
     *     last digit
     * @param out out: nine numbers
     */
    public static void matrix(double[] y, int at, double[] out) {
        double w = y[at];
        double x = y[at + 1];
        double yy = y[at + 2];
        double z = y[at + 3];
        double s = 2 / (w * w + x * x + yy * yy + z * z);
        out[0] = 1 - s * (yy * yy + z * z);
        out[1] = s * (x * yy - w * z);
        out[2] = s * (x * z + w * yy);
        out[3] = s * (x * yy + w * z);
        out[4] = 1 - s * (x * x + z * z);
        out[5] = s * (yy * z - w * x);
        out[6] = s * (x * z - w * yy);
        out[7] = s * (yy * z + w * x);
        out[8] = 1 - s * (x * x + yy * yy);
    }

    /**
     * How the quaternion changes, ½ q ⊗ (0, ω).
     *
     * @param x rate of turn about the body's x axis, rad/s
     * @param rate out: four numbers from {@code to}, 1/s
     */
    public static void rate(
            double[] q, int at, double x, double y, double z, double[] rate, int to) {
        double w0 = q[at];
        double x0 = q[at + 1];
        double y0 = q[at + 2];
        double z0 = q[at + 3];
        rate[to] = -(x0 * x + y0 * y + z0 * z) / 2;
        rate[to + 1] = (w0 * x + y0 * z - z0 * y) / 2;
        rate[to + 2] = (w0 * y + z0 * x - x0 * z) / 2;
        rate[to + 3] = (w0 * z + x0 * y - y0 * x) / 2;
    }

    /**
     * Leans a body further about a level axis, in place: what was upright then points so far away
     * from up, towards a way over the ground.
     *
     * @param q in, out: four numbers from {@code at}
     * @param leanRad how far
     * @param toRad which way: 0 along scene x, clockwise from above
     */
    public static void lean(double[] q, int at, double leanRad, double toRad) {
        double w = Math.cos(leanRad / 2);
        double x = Math.sin(leanRad / 2) * Math.sin(toRad);
        double y = -Math.sin(leanRad / 2) * Math.cos(toRad);
        double w0 = q[at];
        double x0 = q[at + 1];
        double y0 = q[at + 2];
        double z0 = q[at + 3];
        q[at] = w * w0 - x * x0 - y * y0;
        q[at + 1] = w * x0 + x * w0 + y * z0;
        q[at + 2] = w * y0 - x * z0 + y * w0;
        q[at + 3] = w * z0 + x * y0 - y * x0;
    }

    /** Gives the quaternion length 1, in place. */
    public static void normalise(double[] q, int at) {
        double length =
                Math.sqrt(
                        q[at] * q[at]
                                + q[at + 1] * q[at + 1]
                                + q[at + 2] * q[at + 2]
                                + q[at + 3] * q[at + 3]);
        for (int k = 0; k < 4; k++) {
            q[at + k] /= length;
        }
    }
}
