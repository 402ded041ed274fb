package liftwright.flight.sense;

import static liftwright.flight.motion.BodyState.OWN;
import static liftwright.flight.motion.BodyState.PX;
import static liftwright.flight.motion.BodyState.PZ;
import static liftwright.flight.motion.BodyState.QW;
import static liftwright.flight.motion.BodyState.QZ;
import static liftwright.flight.motion.BodyState.VX;
import static liftwright.flight.motion.BodyState.VZ;
import static liftwright.flight.motion.BodyState.WX;

import liftwright.flight.motion.BodyState;
import liftwright.physics.Gravity;
import liftwright.physics.Rotation;
import liftwright.rig.Control.Measures;

/**
 * Gyro and accelerometer, integrated, and drawn back below a stated frequency to what the slower
 * sensors tell. A rig in hover feels thrust along its own axis however it leans, so that the
 * accelerometer alone tells no lean; where the velocity that it adds up to differs from the
 * measured one, the lean was wrong ({@link Blend}). A measurement that comes late is held against
 * what was estimated when it was made.
 *
 * <p>For one flight; {@link #update} allocates nothing.
 */
public final class Estimator {

    /** Height is followed so many times faster than lean: the accelerometer's offset is larger. */
    static final double HEIGHT_FASTER = 3;

    /** A sensor that has said nothing for so long is taken as lost, s (common practice). */
    static final double SILENT_S = 1;

    /** The same for the gyro, without which a rig turns over within less, s. */
    static final double GYRO_SILENT_S = 0.05;

    private final Suite suite;
    private final double dtS;
    private final double omega;
    private final Blend lean;
    private final Blend upright;
    private final Estimate estimate = new Estimate();
    private final double[] gyroOffset = new double[3];
    private final double[] turn = new double[9];
    private final Past past;
    private double upOffset;
    private double silentUpS;

    /**
     * @param suite numbers of sensors and the frequency
     * @param dtS time between two updates, s
     * @throws IllegalArgumentException where {@link Suite#refusal} says why there is none
     */
    public Estimator(Suite suite, double dtS) {
        suite.refusal()
                .ifPresent(
                        why -> {
                            throw new IllegalArgumentException(why);
                        });
        this.suite = suite;
        this.dtS = dtS;
        omega = 2 * Math.PI * suite.bandwidthHz();
        lean = Blend.at(omega);
        upright = Blend.at(HEIGHT_FASTER * omega);
        double longest = 0;
        for (SensorNumbers one : suite.sensors().values()) {
            longest = Math.max(longest, one.delayS());
        }
        past = new Past(OWN, (int) Math.ceil(longest / dtS) + 1);
    }

    /** What is estimated; always the same object. */
    public Estimate estimate() {
        return estimate;
    }

    /**
     * Starts from a rig at rest, as the sensors tell it: level by the accelerometer, heading and
     * place as read. What the gyro reads at rest is not taken off: its declared offset is what is
     * left after that.
     */
    public void begin(Sensors sensors) {
        double[] y = estimate.felt;
        java.util.Arrays.fill(y, 0);
        java.util.Arrays.fill(gyroOffset, 0);
        upOffset = 0;
        silentUpS = 0;
        level(sensors);
        y[PX] = sensors.value(Measures.POSITION, 0);
        y[PX + 1] = sensors.value(Measures.POSITION, 1);
        y[PZ] = -sensors.value(Measures.HEIGHT, 0);
        past.fill(y);
        estimate.tell(true, true, true);
    }

    /** Starts from what is known of a rig in motion. */
    public void begin(BodyState state) {
        System.arraycopy(state.y, 0, estimate.felt, 0, OWN);
        java.util.Arrays.fill(gyroOffset, 0);
        upOffset = 0;
        silentUpS = 0;
        past.fill(estimate.felt);
        estimate.tell(true, true, true);
    }

    /** Lean that a resting accelerometer tells, and the heading read. */
    private void level(Sensors sensors) {
        double fx = sensors.value(Measures.ACCELERATION, 0);
        double fy = sensors.value(Measures.ACCELERATION, 1);
        double fz = sensors.value(Measures.ACCELERATION, 2);
        double roll = Math.atan2(-fy, -fz);
        double pitch = Math.atan2(fx, Math.hypot(fy, fz));
        double yaw = sensors.value(Measures.HEADING, 0);
        double cr = Math.cos(roll / 2);
        double sr = Math.sin(roll / 2);
        double cp = Math.cos(pitch / 2);
        double sp = Math.sin(pitch / 2);
        double cy = Math.cos(yaw / 2);
        double sy = Math.sin(yaw / 2);
        double[] q = estimate.felt;
        q[QW] = cr * cp * cy + sr * sp * sy;
        q[QW + 1] = sr * cp * cy - cr * sp * sy;
        q[QW + 2] = cr * sp * cy + sr * cp * sy;
        q[QZ] = cr * cp * sy - sr * sp * cy;
    }

    /** Goes on by one step with what has arrived. */
    public void update(Sensors sensors) {
        double[] y = estimate.felt;
        for (int k = 0; k < 3; k++) {
            y[WX + k] = sensors.value(Measures.TURN_RATE, k) - gyroOffset[k];
        }
        turnOn(y);
        Rotation.matrix(y, QW, turn);
        moveOn(sensors, y);
        boolean known = correctLean(sensors, y);
        correctPlace(sensors, y);
        boolean upKnown = correctHeight(sensors, y);
        correctHeading(sensors, y);
        Rotation.normalise(y, QW);
        past.push(y);
        estimate.tell(sensors.ageS(Measures.TURN_RATE) < GYRO_SILENT_S, known, upKnown);
    }

    /** Turns by the rate over a step, exactly where it is even. */
    private void turnOn(double[] y) {
        double x = y[WX] * dtS / 2;
        double yy = y[WX + 1] * dtS / 2;
        double z = y[WX + 2] * dtS / 2;
        double half = Math.sqrt(x * x + yy * yy + z * z);
        // sin h / h to 1e-12 for turns of up to 0.1 rad a step
        double s = 1 - half * half / 6 * (1 - half * half / 20);
        double c = 1 - half * half / 2 * (1 - half * half / 12 * (1 - half * half / 30));
        timesQ(y, c, s * x, s * yy, s * z);
    }

    private static void timesQ(double[] y, double w, double x, double yy, double z) {
        double w0 = y[QW];
        double x0 = y[QW + 1];
        double y0 = y[QW + 2];
        double z0 = y[QZ];
        y[QW] = w0 * w - x0 * x - y0 * yy - z0 * z;
        y[QW + 1] = w0 * x + x0 * w + y0 * z - z0 * yy;
        y[QW + 2] = w0 * yy - x0 * z + y0 * w + z0 * x;
        y[QZ] = w0 * z + x0 * yy - y0 * x + z0 * w;
    }

    private void moveOn(Sensors sensors, double[] y) {
        double fx = sensors.value(Measures.ACCELERATION, 0);
        double fy = sensors.value(Measures.ACCELERATION, 1);
        double fz = sensors.value(Measures.ACCELERATION, 2);
        for (int k = 0; k < 3; k++) {
            double a = turn[3 * k] * fx + turn[3 * k + 1] * fy + turn[3 * k + 2] * fz;
            if (k == 2) {
                a += Gravity.STANDARD_MPS2 + upOffset;
            }
            y[PX + k] += dtS * (y[VX + k] + dtS / 2 * a);
            y[VX + k] += dtS * a;
        }
    }

    private int stepsAgo(Measures measures) {
        return (int) Math.rint(suite.of(measures).delayS() / dtS);
    }

    /** Time for which one reading stands, s. */
    private double heldS(Measures measures) {
        return Math.max(dtS, 1 / suite.of(measures).rateHz());
    }

    private boolean correctLean(Sensors sensors, double[] y) {
        if (sensors.ageS(Measures.VELOCITY) >= SILENT_S) {
            levelOff(sensors, y);
            return false;
        }
        if (!sensors.isFresh(Measures.VELOCITY) || sensors.isCut(Measures.VELOCITY)) {
            return true;
        }
        int ago = stepsAgo(Measures.VELOCITY);
        double held = heldS(Measures.VELOCITY);
        double dx = held * (sensors.value(Measures.VELOCITY, 0) - past.get(VX, ago));
        double dy = held * (sensors.value(Measures.VELOCITY, 1) - past.get(VX + 1, ago));
        y[VX] += lean.first() * dx;
        y[VX + 1] += lean.first() * dy;
        double g = Gravity.STANDARD_MPS2;
        turnScene(y, lean.second() / g * dy, -lean.second() / g * dx, 0);
        offset(lean.third() / g * dy, -lean.third() / g * dx, 0);
        return true;
    }

    /** Without a velocity: what is felt over long is taken for the vertical. */
    private void levelOff(Sensors sensors, double[] y) {
        double fx = sensors.value(Measures.ACCELERATION, 0);
        double fy = sensors.value(Measures.ACCELERATION, 1);
        double fz = sensors.value(Measures.ACCELERATION, 2);
        double sx = turn[0] * fx + turn[1] * fy + turn[2] * fz;
        double sy = turn[3] * fx + turn[4] * fy + turn[5] * fz;
        double by = omega * dtS / Gravity.STANDARD_MPS2;
        turnScene(y, -by * sy, by * sx, 0);
    }

    private void correctPlace(Sensors sensors, double[] y) {
        if (!sensors.isFresh(Measures.POSITION) || sensors.isCut(Measures.POSITION)) {
            return;
        }
        int ago = stepsAgo(Measures.POSITION);
        double by = omega * heldS(Measures.POSITION);
        for (int k = 0; k < 2; k++) {
            y[PX + k] += by * (sensors.value(Measures.POSITION, k) - past.get(PX + k, ago));
        }
    }

    private boolean correctHeight(Sensors sensors, double[] y) {
        silentUpS += dtS;
        if (sensors.isFresh(Measures.HEIGHT) && !sensors.isCut(Measures.HEIGHT)) {
            silentUpS = 0;
            double off =
                    heldS(Measures.HEIGHT)
                            * (-sensors.value(Measures.HEIGHT, 0)
                                    - past.get(PZ, stepsAgo(Measures.HEIGHT)));
            y[PZ] += upright.first() * off;
            y[VZ] += upright.second() * off;
            upOffset += upright.third() * off;
        }
        return silentUpS < SILENT_S;
    }

    private void correctHeading(Sensors sensors, double[] y) {
        if (!sensors.isFresh(Measures.HEADING)) {
            return;
        }
        int row = past.row(stepsAgo(Measures.HEADING)) + QW;
        double[] p = past.rows();
        double was =
                Math.atan2(
                        2 * (p[row] * p[row + 3] + p[row + 1] * p[row + 2]),
                        1 - 2 * (p[row + 2] * p[row + 2] + p[row + 3] * p[row + 3]));
        double off = Math.IEEEremainder(sensors.value(Measures.HEADING, 0) - was, 2 * Math.PI);
        double held = heldS(Measures.HEADING);
        turnScene(y, 0, 0, 2 * omega * held * off);
        offset(0, 0, omega * omega * held * off);
    }

    /** Turns the estimate by a small angle about scene axes. */
    private void turnScene(double[] y, double x, double yy, double z) {
        // the same turn about body axes
        timesQ(
                y,
                1,
                (turn[0] * x + turn[3] * yy + turn[6] * z) / 2,
                (turn[1] * x + turn[4] * yy + turn[7] * z) / 2,
                (turn[2] * x + turn[5] * yy + turn[8] * z) / 2);
    }

    /** Takes what would have turned it so off the gyro's offset. */
    private void offset(double x, double yy, double z) {
        for (int k = 0; k < 3; k++) {
            gyroOffset[k] -= turn[k] * x + turn[3 + k] * yy + turn[6 + k] * z;
        }
    }

    /** What it takes for the offset of the gyro about an axis, rad/s. */
    public double gyroOffsetRadps(int axis) {
        return gyroOffset[axis];
    }
}
