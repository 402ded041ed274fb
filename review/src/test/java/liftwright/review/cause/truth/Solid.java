package liftwright.review.cause.truth;

import java.util.Arrays;

/** Vectors and turns of three numbers, for a truth that shares no code with what it judges. */
final class Solid {

    static final double[] FORWARD = {1, 0, 0};
    static final double[] RIGHT = {0, 1, 0};
    static final double[] DOWN = {0, 0, 1};

    private Solid() {}

    static double[] plus(double[] a, double[] b) {
        return new double[] {a[0] + b[0], a[1] + b[1], a[2] + b[2]};
    }

    static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    static double[] times(double f, double[] a) {
        return new double[] {f * a[0], f * a[1], f * a[2]};
    }

    static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    static double[] cross(double[] a, double[] b) {
        return new double[] {
            a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
        };
    }

    /** Turns about an axis by an angle, right-hand, with a quaternion. */
    static double[] turn(double[] axis, double rad, double[] v) {
        double length = Math.sqrt(dot(axis, axis));
        if (length == 0 || rad == 0) {
            return v.clone();
        }
        double[] q = times(Math.sin(rad / 2) / length, axis);
        double w = Math.cos(rad / 2);
        double[] t = times(2, cross(q, v));
        return plus(plus(v, times(w, t)), cross(q, t));
    }

    /** Solves a symmetric 3 × 3 system by Cramer's rule. */
    static double[] solve(double[][] m, double[] b) {
        double whole = determinant(m);
        double[] x = new double[3];
        for (int k = 0; k < 3; k++) {
            double[][] with = new double[3][];
            for (int row = 0; row < 3; row++) {
                with[row] = Arrays.copyOf(m[row], 3);
                with[row][k] = b[row];
            }
            x[k] = determinant(with) / whole;
        }
        return x;
    }

    private static double determinant(double[][] m) {
        return dot(m[0], cross(m[1], m[2]));
    }
}
