package liftwright.trials.measure;

import java.util.Arrays;
import liftwright.plant.body.Beams;
import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;

/**
 * Lowest modes of a stiff body at the tip of a massless cantilever that bends both ways and twists
 * [TIMOSHENKO]. The tip moves across in two ways and turns in three; with flexibility F = L Lᵀ and
 * mass matrix M about the tip, the eigenvalues of Lᵀ M L are 1/ω². Along itself the beam is stiff.
 */
final class TipModes {

    private static final int N = 5;
    private static final int SWEEPS = 60;

    private TipModes() {}

    /**
     * Natural frequencies, lowest first, rad/s; as many as the body has extent for.
     *
     * @param massKg of what the tip carries, &gt; 0
     * @param centre its centre of mass, rig axes, m
     * @param inertia about that centre, rig axes
     */
    static double[] radps(Beams.Standing beam, double massKg, Vec3 centre, Inertia inertia) {
        Vec3[] axes = axes(beam.along());
        double[][] mass = mass(axes, massKg, centre.minus(beam.tip()), inertia);
        double[][] root = root(beam);
        double[] square = eigenvalues(between(root, mass));
        Arrays.sort(square);
        double largest = square[N - 1];
        int count = 0;
        double[] modes = new double[N];
        for (int k = N - 1; k >= 0 && square[k] > 1e-12 * largest; k--) {
            modes[count++] = 1 / Math.sqrt(square[k]);
        }
        return Arrays.copyOf(modes, count);
    }

    /** The beam, and two ways across it. */
    private static Vec3[] axes(Vec3 along) {
        Vec3 other = Math.abs(along.x()) < 0.6 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
        Vec3 second = along.cross(other);
        second = second.times(1 / second.length());
        return new Vec3[] {along, second, along.cross(second)};
    }

    /** Of the way across 2 and 3 and the turns about 1, 2 and 3, at the tip. */
    private static double[][] mass(Vec3[] axes, double kg, Vec3 offset, Inertia inertia) {
        double r1 = dot(offset, axes[0]);
        double r2 = dot(offset, axes[1]);
        double r3 = dot(offset, axes[2]);
        // Velocity of the centre: v + θ × r, one row a direction.
        double[][] of = {
            {0, 0, 0, r3, -r2},
            {1, 0, -r3, 0, r1},
            {0, 1, r2, -r1, 0}
        };
        double[][] mass = new double[N][N];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                for (double[] row : of) {
                    mass[i][j] += kg * row[i] * row[j];
                }
            }
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                mass[2 + i][2 + j] += dot(axes[i], times(inertia, axes[j]));
            }
        }
        return mass;
    }

    /** L of the flexibility: way l³/3EI, slope l/EI, l²/2EI between them; twist l/GJ. */
    private static double[][] root(Beams.Standing beam) {
        double l = beam.lengthM();
        double way = l * l * l / (3 * beam.bendingNm2());
        double between = l * l / (2 * beam.bendingNm2());
        double slope = l / beam.bendingNm2();
        double lower = between / Math.sqrt(way);
        double rest = Math.sqrt(slope - lower * lower);
        double[][] root = new double[N][N];
        root[0][0] = Math.sqrt(way);
        root[4][0] = lower; // up across 2 turns about 3
        root[4][4] = rest;
        root[1][1] = Math.sqrt(way);
        root[3][1] = -lower; // and across 3 about −2
        root[3][3] = rest;
        root[2][2] = Math.sqrt(l / beam.torsionNm2());
        return root;
    }

    /** Lᵀ M L. */
    private static double[][] between(double[][] root, double[][] mass) {
        double[][] out = new double[N][N];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                for (int k = 0; k < N; k++) {
                    for (int l = 0; l < N; l++) {
                        out[i][j] += root[k][i] * mass[k][l] * root[l][j];
                    }
                }
            }
        }
        return out;
    }

    /** Of a symmetric matrix, by rotations (Jacobi). The matrix is used up. */
    private static double[] eigenvalues(double[][] a) {
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            double off = 0;
            for (int p = 0; p < N; p++) {
                for (int q = p + 1; q < N; q++) {
                    off += Math.abs(a[p][q]);
                    rotate(a, p, q);
                }
            }
            if (off == 0) {
                break;
            }
        }
        double[] values = new double[N];
        for (int k = 0; k < N; k++) {
            values[k] = a[k][k];
        }
        return values;
    }

    private static void rotate(double[][] a, int p, int q) {
        if (a[p][q] == 0) {
            return;
        }
        double theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
        double t = Math.copySign(1, theta) / (Math.abs(theta) + Math.hypot(theta, 1));
        double c = 1 / Math.hypot(t, 1);
        double s = t * c;
        for (int k = 0; k < N; k++) {
            double kp = a[k][p];
            double kq = a[k][q];
            a[k][p] = c * kp - s * kq;
            a[k][q] = s * kp + c * kq;
        }
        for (int k = 0; k < N; k++) {
            double pk = a[p][k];
            double qk = a[q][k];
            a[p][k] = c * pk - s * qk;
            a[q][k] = s * pk + c * qk;
        }
        a[p][q] = 0;
        a[q][p] = 0;
    }

    private static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    private static Vec3 times(Inertia i, Vec3 v) {
        return new Vec3(
                i.xx() * v.x() + i.xy() * v.y() + i.xz() * v.z(),
                i.xy() * v.x() + i.yy() * v.y() + i.yz() * v.z(),
                i.xz() * v.x() + i.yz() * v.y() + i.zz() * v.z());
    }
}
