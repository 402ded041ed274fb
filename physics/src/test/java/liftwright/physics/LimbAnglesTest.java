package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class LimbAnglesTest {

    private static final double QUARTER = Math.PI / 2;

    private static double[] lower(
            double side, double flexion, double abduction, double rotation, double bend) {
        double[] frame = new double[11];
        LimbAngles.lower(side, flexion, abduction, rotation, bend, frame, 2);
        assertThat(frame[0]).isZero();
        assertThat(frame[1]).isZero();
        return java.util.Arrays.copyOfRange(frame, 2, 11);
    }

    private static void pointsAlong(double[] frame, double x, double y, double z) {
        assertThat(frame[2]).isCloseTo(x, within(1e-12));
        assertThat(frame[5]).isCloseTo(y, within(1e-12));
        assertThat(frame[8]).isCloseTo(z, within(1e-12));
    }

    @Test
    void aHangingArmPointsDownAndHasTheBodysAxes() {
        assertThat(lower(LimbAngles.RIGHT, 0, 0, 0, 0))
                .usingComparatorWithPrecision(1e-15)
                .containsExactly(1, 0, 0, 0, 1, 0, 0, 0, 1);
        assertThat(lower(LimbAngles.LEFT, 0, 0, 0, 0))
                .usingComparatorWithPrecision(1e-15)
                .containsExactly(1, 0, 0, 0, 1, 0, 0, 0, 1);
    }

    @Test
    void eachAngleMovesTheArmWhereItsNameSays() {
        double right = LimbAngles.RIGHT;
        pointsAlong(lower(right, QUARTER, 0, 0, 0), 1, 0, 0); // flexion: forward
        pointsAlong(lower(right, 0, QUARTER, 0, 0), 0, 1, 0); // abduction: outward
        pointsAlong(lower(LimbAngles.LEFT, 0, QUARTER, 0, 0), 0, -1, 0);
        pointsAlong(lower(right, 0, 0, 0, QUARTER), 1, 0, 0); // elbow: hand forward
        pointsAlong(lower(right, 0, 0, QUARTER, QUARTER), 0, 1, 0); // rotation: hand outward
        pointsAlong(lower(LimbAngles.LEFT, 0, 0, QUARTER, QUARTER), 0, -1, 0);
        pointsAlong(lower(right, 0, 0, 0, Math.PI), 0, 0, -1);
        // Flexion first: abduction then swings the forward arm outward in the horizontal plane.
        pointsAlong(lower(right, QUARTER, Math.PI / 4, 0, 0), Math.sqrt(0.5), Math.sqrt(0.5), 0);
    }

    @Test
    void aStraightArmIsOneLineWhateverItsRotation() {
        Seeded.check(
                300,
                random -> {
                    double[] angle = random.doubles(3, -3, 3).toArray();
                    double side = random.nextBoolean() ? 1 : -1;
                    double[] upper = new double[9];
                    LimbAngles.upper(side, angle[0], angle[1], angle[2], upper, 0);
                    double[] straight = lower(side, angle[0], angle[1], angle[2], 0);
                    assertThat(straight).containsExactly(upper);
                    double[] unturned = lower(side, angle[0], angle[1], 0, 0);
                    pointsAlong(straight, unturned[2], unturned[5], unturned[8]);
                });
    }

    /** Referee: the product of elementary turns, multiplied out as matrices. */
    @Test
    void equalsTheProductOfItsTurns() {
        Seeded.check(
                300,
                random -> {
                    double[] a = random.doubles(4, -3, 3).toArray();
                    double[][] product =
                            times(
                                    times(times(aboutY(a[0]), aboutX(-a[1])), aboutZ(a[2])),
                                    aboutY(a[3]));
                    double[] frame = lower(LimbAngles.RIGHT, a[0], a[1], a[2], a[3]);
                    for (int i = 0; i < 9; i++) {
                        assertThat(frame[i]).isCloseTo(product[i / 3][i % 3], within(1e-12));
                    }
                });
    }

    private static double[][] aboutX(double a) {
        return new double[][] {
            {1, 0, 0}, {0, Math.cos(a), -Math.sin(a)}, {0, Math.sin(a), Math.cos(a)}
        };
    }

    private static double[][] aboutY(double a) {
        return new double[][] {
            {Math.cos(a), 0, Math.sin(a)}, {0, 1, 0}, {-Math.sin(a), 0, Math.cos(a)}
        };
    }

    private static double[][] aboutZ(double a) {
        return new double[][] {
            {Math.cos(a), -Math.sin(a), 0}, {Math.sin(a), Math.cos(a), 0}, {0, 0, 1}
        };
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] c = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 3; k++) {
                    c[i][j] += a[i][k] * b[k][j];
                }
            }
        }
        return c;
    }

    @Test
    void theLeftArmMirrorsTheRight() {
        Seeded.check(
                300,
                random -> {
                    double[] a = random.doubles(4, -3, 3).toArray();
                    double[] right = lower(LimbAngles.RIGHT, a[0], a[1], a[2], a[3]);
                    double[] left = lower(LimbAngles.LEFT, a[0], a[1], a[2], a[3]);
                    // A mirrored pod strapped at mirrored offsets has a mirrored place.
                    double[] p = random.doubles(3, -1, 1).toArray();
                    double[] q = {p[0], -p[1], p[2]};
                    for (int row = 0; row < 3; row++) {
                        double sign = row == 1 ? -1 : 1;
                        double onLeft = 0;
                        double onRight = 0;
                        for (int k = 0; k < 3; k++) {
                            onLeft += left[3 * row + k] * q[k];
                            onRight += right[3 * row + k] * p[k];
                        }
                        assertThat(onLeft).isCloseTo(sign * onRight, within(1e-12));
                    }
                });
    }

    @Test
    void framesAreRightHandedAndOfUnitLength() {
        Seeded.check(
                300,
                random -> {
                    double[] a = random.doubles(4, -3, 3).toArray();
                    double[] f = lower(random.nextBoolean() ? 1 : -1, a[0], a[1], a[2], a[3]);
                    double determinant =
                            f[0] * (f[4] * f[8] - f[5] * f[7])
                                    - f[1] * (f[3] * f[8] - f[5] * f[6])
                                    + f[2] * (f[3] * f[7] - f[4] * f[6]);
                    assertThat(determinant).isCloseTo(1, within(1e-12));
                    for (int row = 0; row < 3; row++) {
                        double square = 0;
                        for (int k = 0; k < 3; k++) {
                            square += f[3 * row + k] * f[3 * row + k];
                        }
                        assertThat(square).isCloseTo(1, within(1e-12));
                    }
                });
    }
}
