package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class JointFactorTest {

    @Test
    void drawsHaveTheCovarianceTheyWereGiven() {
        Seeded.check(
                8,
                random -> {
                    int n = random.nextInt(2, 5);
                    double[] covariance = covariance(random, n, n);
                    double[] nominal = random.doubles(n, 1, 5).toArray();
                    boolean[] positive = new boolean[n];
                    for (int i = 0; i < n; i++) {
                        positive[i] = random.nextBoolean();
                    }
                    JointFactor factor = JointFactor.of(nominal, positive, covariance);
                    int draws = 40_000;
                    double[] mean = new double[n];
                    double[] product = new double[n * n];
                    double[] values = new double[n + 1];
                    for (int draw = 0; draw < draws; draw++) {
                        factor.draw(random.nextLong(), 5, draw, values, 1);
                        double[] x = new double[n];
                        for (int i = 0; i < n; i++) {
                            double v = values[i + 1];
                            x[i] = positive[i] ? Math.log(v / nominal[i]) : v - nominal[i];
                            mean[i] += x[i] / draws;
                        }
                        for (int i = 0; i < n * n; i++) {
                            product[i] += x[i / n] * x[i % n] / draws;
                        }
                    }
                    for (int i = 0; i < n; i++) {
                        double sigma = Math.sqrt(covariance[i * n + i]);
                        assertThat(mean[i]).isCloseTo(0, within(5 * sigma / Math.sqrt(draws)));
                        for (int j = 0; j < n; j++) {
                            double scale = sigma * Math.sqrt(covariance[j * n + j]);
                            assertThat(product[i * n + j])
                                    .isCloseTo(
                                            covariance[i * n + j],
                                            within(7 * scale / Math.sqrt(draws)));
                        }
                    }
                });
    }

    /** A random A Aᵀ of the given rank. */
    private static double[] covariance(java.util.random.RandomGenerator random, int n, int rank) {
        double[] a = random.doubles((long) n * rank, -0.3, 0.3).toArray();
        double[] covariance = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                for (int k = 0; k < rank; k++) {
                    covariance[i * n + j] += a[i * rank + k] * a[j * rank + k];
                }
            }
        }
        return covariance;
    }

    @Test
    void fullyDependentMembersMoveTogether() {
        // x and y = −2 x in logarithms: one degree of freedom.
        JointFactor factor =
                JointFactor.of(
                        new double[] {3, 5},
                        new boolean[] {true, true},
                        new double[] {0.01, -0.02, -0.02, 0.04});
        double[] values = new double[2];
        for (int draw = 0; draw < 50; draw++) {
            factor.draw(1, 2, draw, values, 0);
            assertThat(Math.log(values[1] / 5))
                    .isCloseTo(-2 * Math.log(values[0] / 3), within(1e-12));
            assertThat(values[0]).isNotEqualTo(3).isPositive();
        }
    }

    @Test
    void aMemberWithoutDoubtStaysNominal() {
        JointFactor factor =
                JointFactor.of(new double[] {3, -5}, new boolean[2], new double[] {0.01, 0, 0, 0});
        double[] values = new double[2];
        factor.draw(1, 2, 3, values, 0);
        assertThat(values[1]).isEqualTo(-5);
    }

    @Test
    void lowRankCovariancesAreAccepted() {
        Seeded.check(
                200,
                random -> {
                    int n = random.nextInt(2, 6);
                    double[] covariance = covariance(random, n, random.nextInt(1, n));
                    JointFactor factor = JointFactor.of(new double[n], new boolean[n], covariance);
                    assertThat(factor.size()).isEqualTo(n);
                });
    }

    @Test
    void refusesWhatIsNoCovariance() {
        double[] two = {1, 1};
        boolean[] signs = {true, false};
        assertThatIllegalArgumentException() // correlation above one
                .isThrownBy(() -> JointFactor.of(two, signs, new double[] {1, 1.1, 1.1, 1}));
        assertThatIllegalArgumentException() // not symmetric
                .isThrownBy(() -> JointFactor.of(two, signs, new double[] {1, 0.1, 0.2, 1}));
        assertThatIllegalArgumentException() // negative variance
                .isThrownBy(() -> JointFactor.of(two, signs, new double[] {-1, 0, 0, 1}));
        assertThatIllegalArgumentException() // dependence on a member without doubt
                .isThrownBy(() -> JointFactor.of(two, signs, new double[] {0, 0.5, 0.5, 1}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> JointFactor.of(two, signs, new double[] {1, 0, 0, Double.NaN}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> JointFactor.of(two, signs, new double[] {1}));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                JointFactor.of(
                                        new double[] {0, 1}, signs, new double[] {1, 0, 0, 1}));
    }
}
