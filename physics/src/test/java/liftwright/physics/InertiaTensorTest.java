package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** The tensor against the double sum over points, and against what its axes must be. */
class InertiaTensorTest {

    /** Tensor of random points, which no line holds. */
    private static double[] drawn(RandomGenerator random) {
        double[] tensor = new double[InertiaTensor.SIZE];
        for (int k = random.nextInt(4, 9); k > 0; k--) {
            InertiaTensor.addPoint(
                    random.nextDouble(0.1, 40),
                    random.nextDouble(-1, 1),
                    random.nextDouble(-1, 1),
                    random.nextDouble(-1, 1),
                    tensor,
                    0);
        }
        return tensor;
    }

    private static double[] times(double[] t, double x, double y, double z) {
        return new double[] {
            t[InertiaTensor.XX] * x + t[InertiaTensor.XY] * y + t[InertiaTensor.XZ] * z,
            t[InertiaTensor.XY] * x + t[InertiaTensor.YY] * y + t[InertiaTensor.YZ] * z,
            t[InertiaTensor.XZ] * x + t[InertiaTensor.YZ] * y + t[InertiaTensor.ZZ] * z
        };
    }

    /** n·I·n is the sum of m times the squared distance from the axis n. */
    @Test
    void aPointCountsByItsDistanceFromTheAxis() {
        Seeded.check(
                500,
                random -> {
                    double[] tensor = new double[InertiaTensor.SIZE];
                    double[] axis = new double[3];
                    double length = 0;
                    for (int i = 0; i < 3; i++) {
                        axis[i] = random.nextGaussian();
                        length += axis[i] * axis[i];
                    }
                    length = Math.sqrt(length);
                    double byDistance = 0;
                    for (int k = 0; k < 5; k++) {
                        double m = random.nextDouble(0.1, 9);
                        double x = random.nextDouble(-1, 1);
                        double y = random.nextDouble(-1, 1);
                        double z = random.nextDouble(-1, 1);
                        InertiaTensor.addPoint(m, x, y, z, tensor, 0);
                        double cx = (y * axis[2] - z * axis[1]) / length;
                        double cy = (z * axis[0] - x * axis[2]) / length;
                        double cz = (x * axis[1] - y * axis[0]) / length;
                        byDistance += m * (cx * cx + cy * cy + cz * cz);
                    }
                    double[] row = times(tensor, axis[0], axis[1], axis[2]);
                    double about =
                            (row[0] * axis[0] + row[1] * axis[1] + row[2] * axis[2])
                                    / (length * length);
                    assertThat(about).isCloseTo(byDistance, within(1e-12 * byDistance));
                });
    }

    @Test
    void accelerationTimesInertiaIsTheMoment() {
        Seeded.check(
                500,
                random -> {
                    double[] tensor = drawn(random);
                    double[] moment = {
                        random.nextGaussian(), random.nextGaussian(), random.nextGaussian()
                    };
                    double[] rate = new double[3];
                    InertiaTensor.acceleration(tensor, 0, moment[0], moment[1], moment[2], rate, 0);
                    double[] back = times(tensor, rate[0], rate[1], rate[2]);
                    for (int i = 0; i < 3; i++) {
                        assertThat(back[i]).isCloseTo(moment[i], within(1e-9));
                    }
                });
    }

    @Test
    void aTurnedBodyIsItsSixPointsTurned() {
        Seeded.check(
                300,
                random -> {
                    double[] frame = new double[9];
                    LimbAngles.lower(
                            LimbAngles.RIGHT,
                            random.nextDouble(-3, 3),
                            random.nextDouble(-3, 3),
                            random.nextDouble(-3, 3),
                            random.nextDouble(-3, 3),
                            frame,
                            0);
                    // Extents along the own axes; moments are sums of two of them.
                    double[] extent = {
                        random.nextDouble(), random.nextDouble(), random.nextDouble()
                    };
                    double[] turned = new double[InertiaTensor.SIZE];
                    InertiaTensor.addTurned(
                            extent[1] + extent[2],
                            extent[0] + extent[2],
                            extent[0] + extent[1],
                            frame,
                            0,
                            turned,
                            0);
                    double[] points = new double[InertiaTensor.SIZE];
                    for (int k = 0; k < 3; k++) {
                        double reach = Math.sqrt(extent[k] / 2);
                        for (int sign = -1; sign <= 1; sign += 2) {
                            InertiaTensor.addPoint(
                                    1,
                                    sign * reach * frame[k],
                                    sign * reach * frame[3 + k],
                                    sign * reach * frame[6 + k],
                                    points,
                                    0);
                        }
                    }
                    assertThat(turned).containsExactly(points, within(1e-12));
                });
    }

    /** A body is no line for being small: a disc of 1e-7 kg·m². */
    @Test
    void smallBodiesAccelerateToo() {
        double[] rate = new double[3];
        double[] tensor = {1e-7, 1e-7, 1e-7, 0, 0, 0};
        InertiaTensor.acceleration(tensor, 0, 1e-7, 2e-7, -3e-7, rate, 0);
        assertThat(rate).containsExactly(new double[] {1, 2, -3}, within(1e-12));
        double[] thin = {1e-3, 1e-3, 1e-9, 0, 0, 0};
        InertiaTensor.acceleration(thin, 0, 0, 0, 1e-9, rate, 0);
        assertThat(rate[2]).isCloseTo(1, within(1e-12));
    }

    @Test
    void pointsOnOneLineHaveNoAcceleration() {
        double[] tensor = new double[InertiaTensor.SIZE];
        InertiaTensor.addPoint(2, 0, 0, 1, tensor, 0);
        assertThatThrownBy(() -> InertiaTensor.acceleration(tensor, 0, 0, 0, 1, new double[3], 0))
                .isInstanceOf(ArithmeticException.class);
    }
}
