package liftwright.flight.pilot;

import java.util.ArrayList;
import java.util.List;
import liftwright.numerics.Eigenvalues;
import liftwright.physics.Gravity;
import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;

/**
 * Small motions of a rig in hover with nobody steering: weight, and the air that each fan has to
 * bring to its own speed, −ṁ (v + ω × r) at its intake. To first order; the body's own drag is of
 * second order, and how thrust changes with the air that comes along the axis is in the same term,
 * since a fan of even exit speed gives ṁ (V_e − V_a).
 *
 * @param massKg of the whole
 * @param inertia about its centre of mass
 * @param spin angular momentum of all rotors, N·m·s
 * @param intakes of the fans
 */
public record HoverMotion(double massKg, Inertia inertia, Vec3 spin, List<Intake> intakes) {

    /**
     * @param at middle of the intake, from the centre of mass, m
     * @param flowKgps ṁ, kg/s
     */
    public record Intake(Vec3 at, double flowKgps) {}

    /** Order of the states: speed forward, right, down; turn rates; roll and pitch. */
    static final int U = 0;

    static final int V = 1;
    static final int W = 2;
    static final int P = 3;
    static final int Q = 4;
    static final int R = 5;
    static final int ROLL = 6;
    static final int PITCH = 7;
    static final int ALL = 8;

    public HoverMotion {
        intakes = List.copyOf(intakes);
    }

    /** dx/dt = A x, row by row. */
    double[] matrix() {
        double[] a = new double[ALL * ALL];
        double[][] push = new double[6][6];
        for (Intake intake : intakes) {
            drag(intake, push);
        }
        double[][] turning = turning(push);
        for (int j = 0; j < 6; j++) {
            for (int i = 0; i < 3; i++) {
                a[i * ALL + j] = push[i][j] / massKg;
                a[(3 + i) * ALL + j] = turning[i][j];
            }
        }
        a[U * ALL + PITCH] = -Gravity.STANDARD_MPS2;
        a[V * ALL + ROLL] = Gravity.STANDARD_MPS2;
        a[ROLL * ALL + P] = 1;
        a[PITCH * ALL + Q] = 1;
        return a;
    }

    /** Force and moment of one intake for each of the six speeds. */
    private static void drag(Intake intake, double[][] push) {
        double x = intake.at().x();
        double y = intake.at().y();
        double z = intake.at().z();
        double[][] moves = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0, -z, y}, {z, 0, -x}, {-y, x, 0}};
        for (int j = 0; j < 6; j++) {
            double fx = -intake.flowKgps() * moves[j][0];
            double fy = -intake.flowKgps() * moves[j][1];
            double fz = -intake.flowKgps() * moves[j][2];
            push[0][j] += fx;
            push[1][j] += fy;
            push[2][j] += fz;
            push[3][j] += y * fz - z * fy;
            push[4][j] += z * fx - x * fz;
            push[5][j] += x * fy - y * fx;
        }
    }

    /** I⁻¹ (N − ω × H) for each of the six speeds. */
    private double[][] turning(double[][] push) {
        double[] m = {
            inertia.xx(), inertia.xy(), inertia.xz(),
            inertia.xy(), inertia.yy(), inertia.yz(),
            inertia.xz(), inertia.yz(), inertia.zz()
        };
        double[][] out = new double[3][6];
        for (int j = 0; j < 6; j++) {
            double[] n = {push[3][j], push[4][j], push[5][j]};
            if (j >= 3) {
                Vec3 axis = new Vec3(j == 3 ? 1 : 0, j == 4 ? 1 : 0, j == 5 ? 1 : 0);
                Vec3 gyro = axis.cross(spin);
                n[0] -= gyro.x();
                n[1] -= gyro.y();
                n[2] -= gyro.z();
            }
            double[] w = solve(m, n);
            for (int i = 0; i < 3; i++) {
                out[i][j] = w[i];
            }
        }
        return out;
    }

    /** Three equations by Cramer's rule. */
    private static double[] solve(double[] m, double[] n) {
        double whole = determinant(m);
        double[] out = new double[3];
        for (int k = 0; k < 3; k++) {
            double[] with = m.clone();
            for (int i = 0; i < 3; i++) {
                with[3 * i + k] = n[i];
            }
            out[k] = determinant(with) / whole;
        }
        return out;
    }

    private static double determinant(double[] m) {
        return m[0] * (m[4] * m[8] - m[5] * m[7])
                - m[1] * (m[3] * m[8] - m[5] * m[6])
                + m[2] * (m[3] * m[7] - m[4] * m[6]);
    }

    /** All natural motions; a swing is one of them. */
    public List<Mode> modes() {
        return modes(matrix(), ALL);
    }

    /** Those about one axis, what the others do left out. */
    public List<Mode> modes(Axis axis) {
        int[] states = axis.states();
        double[] whole = matrix();
        double[] part = new double[states.length * states.length];
        for (int i = 0; i < states.length; i++) {
            for (int j = 0; j < states.length; j++) {
                part[i * states.length + j] = whole[states[i] * ALL + states[j]];
            }
        }
        return modes(part, states.length);
    }

    private static List<Mode> modes(double[] matrix, int n) {
        double[] re = new double[n];
        double[] im = new double[n];
        Eigenvalues.of(matrix, n, re, im);
        List<Mode> modes = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            if (im[k] >= -Mode.NEUTRAL_PER_S) {
                modes.add(new Mode(re[k], im[k] > Mode.NEUTRAL_PER_S ? im[k] : 0));
            }
        }
        modes.sort(
                java.util.Comparator.comparingDouble(Mode::growthPerS)
                        .reversed()
                        .thenComparingDouble(Mode::turningRadps));
        return List.copyOf(modes);
    }

    /** An axis about which a person steers. */
    public enum Axis {
        ROLL("roll"),
        PITCH("pitch"),
        YAW("yaw");

        private final String word;

        Axis(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        private int[] states() {
            return switch (this) {
                case ROLL -> new int[] {V, P, HoverMotion.ROLL};
                case PITCH -> new int[] {U, Q, HoverMotion.PITCH};
                case YAW -> new int[] {R};
            };
        }

        /** Its part of a vector. */
        double of(Vec3 v) {
            return switch (this) {
                case ROLL -> v.x();
                case PITCH -> v.y();
                case YAW -> v.z();
            };
        }

        double of(Inertia inertia) {
            return switch (this) {
                case ROLL -> inertia.xx();
                case PITCH -> inertia.yy();
                case YAW -> inertia.zz();
            };
        }
    }
}
