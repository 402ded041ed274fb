package liftwright.flight.motion;

import java.util.Arrays;

/**
 * Where a rig is and how it moves. Scene axes: origin on the ground under the start, x forward at
 * the start, y to the right, z down. Body axes: the same of the rig, at the centre of mass that it
 * has in a hover; where wearer and legs have swung, the centre itself lies a little beside it.
 *
 * <p>Behind the numbers below follow place and speed of each {@link Airframe.Loose} mass against
 * where it rests, body axes.
 */
public final class BodyState {

    /** Place, scene axes, m. */
    public static final int PX = 0;

    public static final int PY = 1;
    public static final int PZ = 2;

    /** Speed, scene axes, m/s. */
    public static final int VX = 3;

    public static final int VY = 4;
    public static final int VZ = 5;

    /** Turn from body into scene axes as a unit quaternion, QW its scalar. */
    public static final int QW = 6;

    public static final int QX = 7;
    public static final int QY = 8;
    public static final int QZ = 9;

    /** Rate of turn, body axes, rad/s. */
    public static final int WX = 10;

    public static final int WY = 11;
    public static final int WZ = 12;

    /** Numbers of the rig itself. */
    public static final int OWN = 13;

    /** Most loose masses of a rig: a wearer and two legs. */
    public static final int MOST_LOOSE = 3;

    /** All numbers; those of loose masses that a rig lacks stay 0. */
    public static final int SIZE = OWN + 6 * MOST_LOOSE;

    /** The numbers. */
    public final double[] y = new double[SIZE];

    /** At rest at the origin, upright, facing forward. */
    public BodyState() {
        y[QW] = 1;
    }

    /** At rest at a place, upright, facing {@code headingRad} to the right of forward. */
    public void rest(double xM, double yM, double heightM, double headingRad) {
        Arrays.fill(y, 0);
        y[PX] = xM;
        y[PY] = yM;
        y[PZ] = -heightM;
        y[QW] = Math.cos(headingRad / 2);
        y[QZ] = Math.sin(headingRad / 2);
    }

    /** Takes over another state. */
    public void set(BodyState other) {
        System.arraycopy(other.y, 0, y, 0, SIZE);
    }

    /** Height of the centre of mass above the ground, m. */
    public double heightM() {
        return -y[PZ];
    }

    /** Speed upwards, m/s. */
    public double upMps() {
        return -y[VZ];
    }

    /** Angle between the body's upright axis and the vertical, rad, 0 to π. */
    public double tiltRad() {
        double forward = y[QX] * y[QZ] + y[QW] * y[QY];
        double right = y[QY] * y[QZ] - y[QW] * y[QX];
        double sine = 2 * Math.sqrt(forward * forward + right * right);
        double cosine = 1 - 2 * (y[QX] * y[QX] + y[QY] * y[QY]);
        return Math.atan2(sine, cosine);
    }

    /** Heading to the right of forward, rad, −π to π: turn about the vertical, tilt taken off. */
    public double headingRad() {
        return Math.atan2(
                2 * (y[QW] * y[QZ] + y[QX] * y[QY]), 1 - 2 * (y[QY] * y[QY] + y[QZ] * y[QZ]));
    }
}
