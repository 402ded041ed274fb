package liftwright.flight.sense;

import static liftwright.flight.motion.BodyState.PX;
import static liftwright.flight.motion.BodyState.QW;
import static liftwright.flight.motion.BodyState.VX;
import static liftwright.flight.motion.BodyState.WX;

import java.util.random.RandomGenerator;
import liftwright.flight.motion.BodyState;
import liftwright.physics.Gravity;

/** A rig that sways about: lean, heading and place are sums of sines, so that all is known. */
final class RandomMotion {

    final BodyState state = new BodyState();

    /** Mean specific force of the last step, body axes. */
    final double[] felt = new double[3];

    private final double[] size = new double[12];
    private final double[] pace = new double[12];
    private final double[] phase = new double[12];
    private double t;

    RandomMotion(RandomGenerator random) {
        for (int k = 0; k < 12; k++) {
            size[k] = (k < 6 ? 0.12 : 0.8) * random.nextDouble();
            pace[k] = 0.5 + 3 * random.nextDouble();
            phase[k] = 6.3 * random.nextDouble();
        }
        place(0);
        turnAndFeel(1e-3);
    }

    void step(double dtS) {
        t += dtS;
        place(t);
        turnAndFeel(dtS);
    }

    private double sway(int k, double at) {
        return size[k] * Math.sin(pace[k] * at + phase[k])
                + size[k + 1] * Math.sin(pace[k + 1] * at + phase[k + 1]);
    }

    private double swayRate(int k, double at) {
        return size[k] * pace[k] * Math.cos(pace[k] * at + phase[k])
                + size[k + 1] * pace[k + 1] * Math.cos(pace[k + 1] * at + phase[k + 1]);
    }

    private void place(double at) {
        for (int k = 0; k < 3; k++) {
            state.y[PX + k] = sway(6 + 2 * k, at) - (k == 2 ? 3 : 0);
            state.y[VX + k] = swayRate(6 + 2 * k, at);
        }
        double[] q = quaternion(at);
        System.arraycopy(q, 0, state.y, QW, 4);
    }

    /** Yaw, pitch, roll of sines. */
    private double[] quaternion(double at) {
        double cr = Math.cos(sway(0, at) / 2);
        double sr = Math.sin(sway(0, at) / 2);
        double cp = Math.cos(sway(2, at) / 2);
        double sp = Math.sin(sway(2, at) / 2);
        double cy = Math.cos(3 * sway(4, at) / 2);
        double sy = Math.sin(3 * sway(4, at) / 2);
        return new double[] {
            cr * cp * cy + sr * sp * sy,
            sr * cp * cy - cr * sp * sy,
            cr * sp * cy + sr * cp * sy,
            cr * cp * sy - sr * sp * cy
        };
    }

    /** Turn rates from the angles' (textbook), and mean force over the step before. */
    private void turnAndFeel(double dtS) {
        double roll = sway(0, t);
        double pitch = sway(2, t);
        double rollRate = swayRate(0, t);
        double pitchRate = swayRate(2, t);
        double yawRate = 3 * swayRate(4, t);
        state.y[WX] = rollRate - Math.sin(pitch) * yawRate;
        state.y[WX + 1] = Math.cos(roll) * pitchRate + Math.sin(roll) * Math.cos(pitch) * yawRate;
        state.y[WX + 2] = -Math.sin(roll) * pitchRate + Math.cos(roll) * Math.cos(pitch) * yawRate;
        double[] a = new double[3];
        for (int k = 0; k < 3; k++) {
            a[k] = (swayRate(6 + 2 * k, t) - swayRate(6 + 2 * k, t - dtS)) / dtS;
        }
        a[2] -= Gravity.STANDARD_MPS2;
        double[] q = quaternion(t - dtS / 2);
        double[][] r = MatrixEstimator.matrix(q[0], q[1], q[2], q[3]);
        for (int k = 0; k < 3; k++) {
            felt[k] = r[0][k] * a[0] + r[1][k] * a[1] + r[2][k] * a[2];
        }
    }
}
