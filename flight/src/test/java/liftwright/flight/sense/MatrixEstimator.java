package liftwright.flight.sense;

import static liftwright.flight.motion.BodyState.PX;
import static liftwright.flight.motion.BodyState.QW;
import static liftwright.flight.motion.BodyState.VX;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import liftwright.flight.motion.BodyState;
import liftwright.rig.Control.Measures;

/**
 * The estimate in another form: a rotation matrix that turns by the series of the matrix
 * exponential, corrections as turns about scene axes before it, vectors and a list of what was. It
 * has no quaternion and calls nothing of what it judges.
 */
final class MatrixEstimator {

    private static final double G = 9.80665;

    private final Suite suite;
    private final double dt;
    private final double omega;
    private double[][] r;
    private double[] v = new double[3];
    private double[] p = new double[3];
    private final double[] offset = new double[3];
    private double upOffset;
    private final Deque<double[]> past = new ArrayDeque<>();

    MatrixEstimator(Suite suite, BodyState state, double dt) {
        this.suite = suite;
        this.dt = dt;
        omega = 2 * Math.PI * suite.bandwidthHz();
        double[] y = state.y;
        r = matrix(y[QW], y[QW + 1], y[QW + 2], y[QW + 3]);
        for (int k = 0; k < 3; k++) {
            v[k] = y[VX + k];
            p[k] = y[PX + k];
        }
        for (int k = 0; k < 200; k++) {
            remember();
        }
    }

    static double[][] matrix(double w, double x, double y, double z) {
        return new double[][] {
            {w * w + x * x - y * y - z * z, 2 * (x * y - w * z), 2 * (x * z + w * y)},
            {2 * (x * y + w * z), w * w - x * x + y * y - z * z, 2 * (y * z - w * x)},
            {2 * (x * z - w * y), 2 * (y * z + w * x), w * w - x * x - y * y + z * z}
        };
    }

    private void remember() {
        past.addFirst(new double[] {p[0], p[1], p[2], v[0], v[1], Math.atan2(r[1][0], r[0][0])});
        if (past.size() > 200) {
            past.removeLast();
        }
    }

    private double[] was(Measures measures) {
        int ago = (int) Math.rint(suite.of(measures).delayS() / dt);
        Iterator<double[]> one = past.iterator();
        double[] row = one.next();
        for (int k = 0; k < ago; k++) {
            row = one.next();
        }
        return row;
    }

    void update(Sensors s) {
        double[] w = new double[3];
        double[] f = new double[3];
        for (int k = 0; k < 3; k++) {
            w[k] = (s.value(Measures.TURN_RATE, k) - offset[k]) * dt;
            f[k] = s.value(Measures.ACCELERATION, k);
        }
        r = times(r, exponential(w));
        double[] a = times(r, f);
        a[2] += G + upOffset;
        for (int k = 0; k < 3; k++) {
            p[k] += dt * v[k] + dt * dt / 2 * a[k];
            v[k] += dt * a[k];
        }
        double[] turned = new double[3];
        double[] wander = new double[3];
        double w3 = omega * omega * omega;
        if (s.isFresh(Measures.VELOCITY)) {
            double held = 1 / suite.of(Measures.VELOCITY).rateHz();
            double[] was = was(Measures.VELOCITY);
            double ex = held * (s.value(Measures.VELOCITY, 0) - was[3]);
            double ey = held * (s.value(Measures.VELOCITY, 1) - was[4]);
            v[0] += 3 * omega * ex;
            v[1] += 3 * omega * ey;
            turned[0] = 3 * omega * omega / G * ey;
            turned[1] = -3 * omega * omega / G * ex;
            wander[0] = w3 / G * ey;
            wander[1] = -w3 / G * ex;
        }
        if (s.isFresh(Measures.POSITION)) {
            double held = 1 / suite.of(Measures.POSITION).rateHz();
            double[] was = was(Measures.POSITION);
            for (int k = 0; k < 2; k++) {
                p[k] += omega * held * (s.value(Measures.POSITION, k) - was[k]);
            }
        }
        if (s.isFresh(Measures.HEIGHT)) {
            double held = 1 / suite.of(Measures.HEIGHT).rateHz();
            double n = 3 * omega;
            double e = held * (-s.value(Measures.HEIGHT, 0) - was(Measures.HEIGHT)[2]);
            p[2] += 3 * n * e;
            v[2] += 3 * n * n * e;
            upOffset += n * n * n * e;
        }
        double[][] before = r;
        r = times(exponential(turned), r);
        if (s.isFresh(Measures.HEADING)) {
            double held = 1 / suite.of(Measures.HEADING).rateHz();
            double e = s.value(Measures.HEADING, 0) - was(Measures.HEADING)[5];
            e = held * Math.atan2(Math.sin(e), Math.cos(e));
            r = times(exponential(new double[] {0, 0, 2 * omega * e}), r);
            wander[2] = omega * omega * e;
        }
        for (int k = 0; k < 3; k++) {
            offset[k] -=
                    before[0][k] * wander[0] + before[1][k] * wander[1] + before[2][k] * wander[2];
        }
        remember();
    }

    /** The series of the exponential of the cross-product matrix. */
    private static double[][] exponential(double[] w) {
        double[][] k = {{0, -w[2], w[1]}, {w[2], 0, -w[0]}, {-w[1], w[0], 0}};
        double[][] sum = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        double[][] term = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        for (int n = 1; n < 12; n++) {
            term = times(term, k);
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    term[i][j] /= n;
                    sum[i][j] += term[i][j];
                }
            }
        }
        return sum;
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] c = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                c[i][j] = a[i][0] * b[0][j] + a[i][1] * b[1][j] + a[i][2] * b[2][j];
            }
        }
        return c;
    }

    private static double[] times(double[][] a, double[] x) {
        double[] y = new double[3];
        for (int i = 0; i < 3; i++) {
            y[i] = a[i][0] * x[0] + a[i][1] * x[1] + a[i][2] * x[2];
        }
        return y;
    }

    void isAgreedBy(double[] felt, double by) {
        double[][] other = matrix(felt[QW], felt[QW + 1], felt[QW + 2], felt[QW + 3]);
        for (int i = 0; i < 3; i++) {
            assertThat(felt[PX + i]).isCloseTo(p[i], within(by));
            assertThat(felt[VX + i]).isCloseTo(v[i], within(by));
            for (int j = 0; j < 3; j++) {
                assertThat(other[i][j]).isCloseTo(r[i][j], within(by));
            }
        }
    }
}
