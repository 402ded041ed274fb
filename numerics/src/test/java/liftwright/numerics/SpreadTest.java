package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class SpreadTest {

    private static double side(RandomGenerator random) {
        return random.nextInt(4) == 0 ? 0 : random.nextDouble(0.01, 3);
    }

    @Test
    void twoSigmaEachSideHoldsTheCoverageOfKTwoWhateverTheSides() {
        Seeded.check(
                500,
                random -> {
                    double plus = random.nextDouble(0.01, 3);
                    double minus = side(random);
                    double within =
                            Spread.cdf(plus, minus, false, plus)
                                    - Spread.cdf(plus, minus, false, -minus - 1e-300);
                    double reached = Spread.sample(plus, minus, false, 0.9999);
                    assertThat(reached).isGreaterThan(plus);
                    // A side of zero has nothing below it, so only the upper tail is outside.
                    assertThat(within).isCloseTo(0.9544997361036416, within(1e-12));
                });
    }

    /** Referee: the density written out, integrated with Simpson's rule. */
    @Test
    void momentsAndProbabilitiesAgreeWithQuadratureOfTheDensity() {
        Seeded.check(
                200,
                random -> {
                    double plus = random.nextDouble(0.05, 3);
                    double minus = random.nextDouble(0.05, 3);
                    boolean bound = random.nextBoolean();
                    DoubleUnaryOperator density = density(plus, minus, bound);
                    double low = bound ? -minus : -7 * minus;
                    double high = bound ? plus : 7 * plus;
                    double mean =
                            simpson(x -> x * density.applyAsDouble(x), low, 0)
                                    + simpson(x -> x * density.applyAsDouble(x), 0, high);
                    double square =
                            simpson(x -> x * x * density.applyAsDouble(x), low, 0)
                                    + simpson(x -> x * x * density.applyAsDouble(x), 0, high);
                    assertThat(Spread.mean(plus, minus, bound)).isCloseTo(mean, within(1e-7));
                    assertThat(Spread.standardDeviation(plus, minus, bound))
                            .isCloseTo(Math.sqrt(square - mean * mean), within(1e-7));
                    double u = random.nextDouble(0.001, 0.999);
                    double x = Spread.sample(plus, minus, bound, u);
                    double below =
                            x < 0
                                    ? simpson(density, low, x)
                                    : simpson(density, low, 0) + simpson(density, 0, x);
                    assertThat(below).isCloseTo(u, within(1e-7));
                    assertThat(Spread.cdf(plus, minus, bound, x)).isCloseTo(u, within(1e-12));
                });
    }

    private static DoubleUnaryOperator density(double plus, double minus, boolean bound) {
        if (bound) {
            return _ -> 1 / (plus + minus);
        }
        double upper = plus / 2;
        double lower = minus / 2;
        double peak = Math.sqrt(2 / Math.PI) / (upper + lower);
        return x -> peak * Math.exp(-x * x / 2 / (x < 0 ? lower * lower : upper * upper));
    }

    private static double simpson(DoubleUnaryOperator f, double from, double to) {
        int n = 400;
        double h = (to - from) / n;
        double sum = f.applyAsDouble(from) + f.applyAsDouble(to);
        for (int i = 1; i < n; i++) {
            sum += (i % 2 == 0 ? 2 : 4) * f.applyAsDouble(from + i * h);
        }
        return sum * h / 3;
    }

    @Test
    void risesWithTheProbabilityAndStaysWithinItsSides() {
        Seeded.check(
                2000,
                random -> {
                    double plus = side(random);
                    double minus = side(random);
                    boolean bound = random.nextBoolean();
                    double one = random.nextDouble(1e-12, 1);
                    double other = Math.min(Math.nextDown(1.0), one + random.nextDouble(1e-9, 0.3));
                    double a = Spread.sample(plus, minus, bound, one);
                    double b = Spread.sample(plus, minus, bound, other);
                    if (plus + minus == 0) {
                        assertThat(a).isZero();
                    } else {
                        assertThat(a).isLessThan(b);
                    }
                    if (plus == 0) {
                        assertThat(b).isLessThanOrEqualTo(0);
                    }
                    if (minus == 0) {
                        assertThat(a).isGreaterThanOrEqualTo(0);
                    }
                    if (bound) {
                        assertThat(a).isBetween(-minus, plus);
                    }
                });
    }

    @Test
    void equalSidesAreAPlainNormal() {
        for (double u : new double[] {1e-9, 0.1, 0.5, 0.7, 0.975}) {
            assertThat(Spread.sample(4, 4, false, u))
                    .isCloseTo(2 * Gaussian.quantile(u), within(1e-14 * 20));
        }
    }

    @Test
    void noToleranceIsNoDeviation() {
        assertThat(Spread.sample(0, 0, false, 0.9)).isZero();
        assertThat(Spread.cdf(0, 0, false, -1e-9)).isZero();
        assertThat(Spread.cdf(0, 0, true, 0)).isEqualTo(1);
    }

    @Test
    void nothingLiesBeyondASideOfZero() {
        assertThat(Spread.cdf(2, 0, false, -1e-9)).isZero();
        assertThat(Spread.cdf(2, 0, false, 2)).isCloseTo(Gaussian.COVERAGE_K2, within(1e-12));
        assertThat(Spread.cdf(0, 2, false, 1e-9)).isEqualTo(1);
        assertThat(Spread.cdf(0, 2, false, -2)).isCloseTo(1 - Gaussian.COVERAGE_K2, within(1e-12));
    }
}
