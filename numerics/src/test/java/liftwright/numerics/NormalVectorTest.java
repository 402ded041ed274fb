package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Against the closed forms of one and two numbers, and against the chain rule of densities. */
class NormalVectorTest {

    /** The standard normal density at 0 is 1/√(2π); at one deviation 0.24197 (printed tables). */
    @Test
    void oneNumberHasThePrintedDensity() {
        NormalVector one = NormalVector.of(new double[] {0}, new double[][] {{1}});
        assertThat(Math.exp(one.logDensity(new double[] {0}))).isCloseTo(0.39894, within(0.000005));
        assertThat(Math.exp(one.logDensity(new double[] {1}))).isCloseTo(0.24197, within(0.000005));
    }

    /** Of two: mean ρ σ₂/σ₁ x, variance σ₂² (1 − ρ²). */
    @Test
    void theSecondOfTwoFollowsTheFirst() {
        double[][] covariance = {{4, 3}, {3, 9}}; // σ 2 and 3, ρ one half
        NormalVector left =
                NormalVector.of(new double[] {1, 10}, covariance).given(new double[] {3});
        assertThat(left.mean()[0]).isCloseTo(11.5, within(1e-12));
        assertThat(left.covariance()[0][0]).isCloseTo(6.75, within(1e-12));
    }

    /** p(a, b) = p(a) p(b | a). */
    @Test
    void densitiesFollowTheChainRule() {
        Seeded.check(
                200,
                random -> {
                    int n = random.nextInt(2, 8);
                    int known = random.nextInt(1, n);
                    double[][] factor = new double[n][n];
                    double[][] covariance = new double[n][n];
                    double[] mean = new double[n];
                    double[] x = new double[n];
                    for (int i = 0; i < n; i++) {
                        mean[i] = random.nextDouble(-1, 1);
                        x[i] = random.nextDouble(-2, 2);
                        for (int j = 0; j <= i; j++) {
                            factor[i][j] =
                                    i == j ? random.nextDouble(0.3, 1.5) : random.nextDouble(-1, 1);
                        }
                    }
                    double[][] first = new double[known][known];
                    for (int i = 0; i < n; i++) {
                        for (int j = 0; j < n; j++) {
                            for (int k = 0; k < n; k++) {
                                covariance[i][j] += factor[i][k] * factor[j][k];
                            }
                            if (i < known && j < known) {
                                first[i][j] = covariance[i][j];
                            }
                        }
                    }
                    double[] a = java.util.Arrays.copyOf(x, known);
                    double[] b = java.util.Arrays.copyOfRange(x, known, n);
                    NormalVector whole = NormalVector.of(mean, covariance);
                    double chain =
                            NormalVector.of(java.util.Arrays.copyOf(mean, known), first)
                                            .logDensity(a)
                                    + whole.given(a).logDensity(b);
                    assertThat(whole.logDensity(x)).isCloseTo(chain, within(1e-6));
                });
    }
}
