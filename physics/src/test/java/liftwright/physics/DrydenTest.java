package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** MIL-F-8785C § 3.7.3.4 [MIL8785C], figures 9 to 11; feet and knots as printed there. */
class DrydenTest {

    private static final double FOOT_M = 0.3048;
    private static final double KNOT_MPS = 1852.0 / 3600;

    @Test
    void scalesAreThoseOfTheStandard() {
        // h, ft; L_u, ft; σ_u/σ_w
        double[][] table = {
            {10, 75.639, 1.96298},
            {20, 143.589, 1.92914},
            {50, 310.788, 1.83865},
            {100, 505.169, 1.71585},
            {500, 944.657, 1.23624},
            {1000, 1000.00, 1.00000}
        };
        for (double[] row : table) {
            double h = row[0] * FOOT_M;
            assertThat(Dryden.levelScaleM(h) / FOOT_M).isCloseTo(row[1], within(1e-5 * row[1]));
            assertThat(Dryden.uprightScaleM(h) / FOOT_M).isCloseTo(row[0], within(1e-9));
            assertThat(Dryden.levelMps(h, 10) / Dryden.uprightMps(10))
                    .isCloseTo(row[2], within(1e-5));
        }
        // A known trap: metres put into the formula give 75.6 "m" at 10 m, where 67.37 m is right.
        assertThat(Dryden.levelScaleM(10)).isCloseTo(67.37, within(0.005));
    }

    @Test
    void strengthsAreThoseOfTheStandard() {
        // W20, kt; σ_w; σ_u at 20 ft; σ_u at 50 m, m/s
        double[][] table = {
            {15, 0.77167, 1.48865, 1.22960},
            {30, 1.54333, 2.97730, 2.45920},
            {45, 2.31500, 4.46596, 3.68880}
        };
        for (double[] row : table) {
            double wind = row[0] * KNOT_MPS;
            assertThat(Dryden.uprightMps(wind)).isCloseTo(row[1], within(1e-4));
            assertThat(Dryden.levelMps(20 * FOOT_M, wind)).isCloseTo(row[2], within(1e-4));
            assertThat(Dryden.levelMps(50, wind)).isCloseTo(row[3], within(1e-4));
        }
    }

    @Test
    void meetsTheLawOfGreatHeightsAtAThousandFeet() {
        double h = 1000 * FOOT_M;
        assertThat(Dryden.levelScaleM(h)).isCloseTo(Dryden.uprightScaleM(h), within(1e-11));
        assertThat(Dryden.levelMps(h, 10)).isCloseTo(Dryden.uprightMps(10), within(1e-12));
    }

    @Test
    void countsHeightsBeyondItsRangeAsTheEndOfIt() {
        for (double low : new double[] {-1, 0, 1, 3.04}) {
            assertThat(Dryden.levelScaleM(low)).isCloseTo(75.639 * FOOT_M, within(1e-3));
            assertThat(Dryden.uprightScaleM(low)).isCloseTo(10 * FOOT_M, within(1e-12));
            assertThat(Dryden.levelMps(low, 10)).isCloseTo(1.96298, within(1e-5));
        }
        assertThat(Dryden.uprightScaleM(400)).isCloseTo(304.8, within(1e-9));
    }

    /** The covariances of two numbers, x₁ and x₂, after one step from a settled start. */
    @Test
    void aStepOfAnyLengthKeepsTheSettledSpread() {
        SplittableRandom random = new SplittableRandom(11);
        for (double steps : new double[] {1e-5, 0.01, 0.4, 3}) {
            int count = 200_000;
            double own = 0;
            double with = 0;
            double second = 0;
            double along = 0;
            double[] x = new double[2];
            for (int k = 0; k < count; k++) {
                Dryden.settled(x, 0, random.nextGaussian(), random.nextGaussian());
                Dryden.across(x, 0, steps, random.nextGaussian(), random.nextGaussian());
                own += x[0] * x[0] / count;
                with += x[0] * x[1] / count;
                second += x[1] * x[1] / count;
                double u = Dryden.along(random.nextGaussian(), steps, random.nextGaussian());
                along += u * u / count;
            }
            // ∫ e^(−2t), ∫ t e^(−2t), ∫ t² e^(−2t) over all t; five standard errors.
            assertThat(own).isCloseTo(0.5, within(5 * 0.5 * Math.sqrt(2.0 / count)));
            assertThat(with).isCloseTo(0.25, within(5 * 0.5 / Math.sqrt(count)));
            assertThat(second).isCloseTo(0.25, within(5 * 0.25 * Math.sqrt(2.0 / count)));
            assertThat(along).isCloseTo(1, within(5 * Math.sqrt(2.0 / count)));
        }
    }

    @Test
    void oneLongStepIsTheSameAsManyShortOnes() {
        // What is random is the same in law: hold its covariance against that of halves.
        double[][] one = noise(0.2, 1);
        double[][] many = noise(0.2, 64);
        for (int i = 0; i < 2; i++) {
            for (int j = 0; j < 2; j++) {
                assertThat(many[i][j]).isCloseTo(one[i][j], within(1e-12));
            }
        }
        double[] far = {0.3, -0.7};
        double[] near = {0.3, -0.7};
        Dryden.across(far, 0, 0.2, 0, 0);
        for (int k = 0; k < 64; k++) {
            Dryden.across(near, 0, 0.2 / 64, 0, 0);
        }
        assertThat(near).containsExactly(far, within(1e-14));
    }

    /** Covariance from rest: every deviate in turn set to 1, its squares summed. */
    private static double[][] noise(double steps, int parts) {
        double[][] sum = new double[2][2];
        for (int at = 0; at < parts; at++) {
            for (int which = 0; which < 2; which++) {
                double[] x = new double[2];
                for (int k = 0; k < parts; k++) {
                    Dryden.across(
                            x,
                            0,
                            steps / parts,
                            k == at && which == 0 ? 1 : 0,
                            k == at && which == 1 ? 1 : 0);
                }
                for (int i = 0; i < 2; i++) {
                    for (int j = 0; j < 2; j++) {
                        sum[i][j] += x[i] * x[j];
                    }
                }
            }
        }
        return sum;
    }

    @Test
    void nothingMovesWithoutAirspeed() {
        double[] x = {0.3, -0.7};
        Dryden.across(x, 0, 0, 1, 1);
        assertThat(x).containsExactly(0.3, -0.7);
        assertThat(Dryden.along(0.4, 0, 1)).isEqualTo(0.4);
    }

    @Test
    void aGustGrowsAsAHalfCosineAndStays() {
        assertThat(Gust.windMps(-1, 20, 6)).isZero();
        assertThat(Gust.windMps(10, 20, 6)).isCloseTo(3, within(1e-12));
        assertThat(Gust.windMps(5, 20, 6)).isCloseTo(3 * (1 - Math.sqrt(0.5)), within(1e-12));
        assertThat(Gust.windMps(20, 20, 6)).isEqualTo(6);
        assertThat(Gust.windMps(500, 20, 6)).isEqualTo(6);
    }

    /** ∫ Φ(ω) cos(ω r/V) dω over σ² by Simpson's rule: the spectra as the standard prints them. */
    @Test
    void correlationsAreTheTransformsOfTheSpectra() {
        double scale = 23;
        for (double apart : new double[] {0, 0.5, 3, 20, 46, 80}) {
            double along = 0;
            double across = 0;
            int n = 400_000;
            double most = 4000;
            for (int k = 0; k <= n; k++) {
                double t = most * k / n;
                double weight = (k == 0 || k == n ? 1 : k % 2 == 1 ? 4 : 2) * most / n / 3;
                double turn = Math.cos(t * apart / scale);
                along += weight * 2 / Math.PI / (1 + t * t) * turn;
                double square = (1 + t * t) * (1 + t * t);
                across += weight / Math.PI * (1 + 3 * t * t) / square * turn;
            }
            assertThat(Dryden.alongCorrelation(apart, scale)).isCloseTo(along, within(3e-4));
            assertThat(Dryden.acrossCorrelation(apart, scale)).isCloseTo(across, within(3e-4));
        }
    }
}
