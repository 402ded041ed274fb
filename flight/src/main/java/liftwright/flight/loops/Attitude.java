package liftwright.flight.loops;

import liftwright.flight.motion.BodyState;

/**
 * How the body lies, and how far from how it should: tilt as the shortest turn that brings its
 * upright to the one wanted (a quaternion of half that angle), heading apart from it, so that weak
 * yaw never leads tilt astray.
 */
final class Attitude {

    /** Body to scene, row by row. */
    final double[] turn = new double[9];

    /** Error about roll, pitch, yaw, rad. */
    final double[] error = new double[3];

    void take(double[] felt) {
        double w = felt[BodyState.QW];
        double x = felt[BodyState.QX];
        double y = felt[BodyState.QY];
        double z = felt[BodyState.QZ];
        turn[0] = 1 - 2 * (y * y + z * z);
        turn[1] = 2 * (x * y - w * z);
        turn[2] = 2 * (x * z + w * y);
        turn[3] = 2 * (x * y + w * z);
        turn[4] = 1 - 2 * (x * x + z * z);
        turn[5] = 2 * (y * z - w * x);
        turn[6] = 2 * (x * z - w * y);
        turn[7] = 2 * (y * z + w * x);
        turn[8] = 1 - 2 * (x * x + y * y);
    }

    /** Cosine of the tilt. */
    double upright() {
        return turn[8];
    }

    /**
     * Error against an upright and a heading.
     *
     * @param x downward axis wanted, scene, of any length
     * @param headingRad of the nose
     */
    void against(double x, double y, double z, double headingRad) {
        double length = Math.sqrt(x * x + y * y + z * z);
        // The wanted axis as the body sees it; the body's own is (0, 0, 1).
        double bx = (turn[0] * x + turn[3] * y + turn[6] * z) / length;
        double by = (turn[1] * x + turn[4] * y + turn[7] * z) / length;
        double bz = (turn[2] * x + turn[5] * y + turn[8] * z) / length;
        double half = Math.sqrt(Math.max(0, 0.5 * (1 + bz)));
        double over = half > UPSIDE_DOWN ? 1 / half : 1 / UPSIDE_DOWN;
        error[0] = -by * over;
        error[1] = bx * over;
        double heading = Math.atan2(turn[3], turn[0]);
        double off = headingRad - heading;
        error[2] = off - 2 * Math.PI * Math.rint(off / (2 * Math.PI));
    }

    /** Cosine of half the turn below which the body lies nearly upside down. */
    private static final double UPSIDE_DOWN = 0.05;
}
