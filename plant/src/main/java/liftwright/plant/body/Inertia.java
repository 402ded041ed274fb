package liftwright.plant.body;

import liftwright.physics.InertiaTensor;
import liftwright.rig.Vec3;

/**
 * Inertia tensor about some point, in rig axes, kg·m²: elements of the symmetric matrix, so that
 * {@code xy} is −∫ x y dm.
 *
 * @param xx about the forward axis
 * @param yy about the sideways axis
 * @param zz about the upright axis
 */
public record Inertia(double xx, double yy, double zz, double xy, double xz, double yz) {

    public static final Inertia ZERO = new Inertia(0, 0, 0, 0, 0, 0);

    static Inertia of(double[] tensor) {
        return new Inertia(
                tensor[InertiaTensor.XX],
                tensor[InertiaTensor.YY],
                tensor[InertiaTensor.ZZ],
                tensor[InertiaTensor.XY],
                tensor[InertiaTensor.XZ],
                tensor[InertiaTensor.YZ]);
    }

    /** A body with these moments about its own axes, which a frame turns into rig axes. */
    static Inertia turned(double first, double second, double third, double[] frame, int at) {
        double[] tensor = new double[InertiaTensor.SIZE];
        InertiaTensor.addTurned(first, second, third, frame, at, tensor, 0);
        return of(tensor);
    }

    /** A thin, even disk: m r²/4 across, twice that about its axis. */
    static Inertia disk(double massKg, double radiusM, Vec3 axis) {
        double across = massKg * radiusM * radiusM / 4;
        double x = axis.x();
        double y = axis.y();
        double z = axis.z();
        return new Inertia(
                across * (1 + x * x),
                across * (1 + y * y),
                across * (1 + z * z),
                across * x * y,
                across * x * z,
                across * y * z);
    }

    /** The same body turned: frame · I · frameᵀ. */
    Inertia turnedBy(double[] frame) {
        double[][] own = {{xx, xy, xz}, {xy, yy, yz}, {xz, yz, zz}};
        double[][] turned = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 3; k++) {
                    for (int l = 0; l < 3; l++) {
                        turned[i][j] += frame[3 * i + k] * own[k][l] * frame[3 * j + l];
                    }
                }
            }
        }
        return new Inertia(
                turned[0][0], turned[1][1], turned[2][2], turned[0][1], turned[0][2], turned[1][2]);
    }

    private double[] tensor() {
        return new double[] {xx, yy, zz, xy, xz, yz};
    }

    public Inertia plus(Inertia other) {
        return new Inertia(
                xx + other.xx,
                yy + other.yy,
                zz + other.zz,
                xy + other.xy,
                xz + other.xz,
                yz + other.yz);
    }

    Inertia times(double factor) {
        return new Inertia(
                factor * xx, factor * yy, factor * zz, factor * xy, factor * xz, factor * yz);
    }

    /** The same with a point mass added, kg, at a place from the point it is about, m. */
    Inertia plusPoint(double massKg, Vec3 place) {
        double[] tensor = tensor();
        InertiaTensor.addPoint(massKg, place.x(), place.y(), place.z(), tensor, 0);
        return of(tensor);
    }

    /**
     * Angular acceleration from rest that a moment about the same point gives, rad/s².
     *
     * @throws ArithmeticException if the body has no extent about some axis
     */
    public Vec3 acceleration(Vec3 momentNm) {
        double[] rate = new double[3];
        InertiaTensor.acceleration(tensor(), 0, momentNm.x(), momentNm.y(), momentNm.z(), rate, 0);
        return new Vec3(rate[0], rate[1], rate[2]);
    }
}
