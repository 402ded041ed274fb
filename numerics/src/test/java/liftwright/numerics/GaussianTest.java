package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.assertj.core.data.Percentage;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GaussianTest {

    /** Check values printed with the algorithm, Wichura 1988 (from memory). */
    @ParameterizedTest
    @CsvSource({
        "0.25, -0.6744897501960817",
        "0.001, -3.090232306167814",
        "1e-20, -9.262340089798408",
    })
    void quantileGivesThePublishedCheckValues(double probability, double expected) {
        assertThat(Gaussian.quantile(probability))
                .isCloseTo(expected, Percentage.withPercentage(1e-13));
    }

    @Test
    void quantileInvertsAnIndependentDistributionFunction() {
        NormalDistribution referee = new NormalDistribution();
        Seeded.check(
                3000,
                random -> {
                    // Log-uniform tails and the middle, so that all three branches are hit.
                    double p =
                            random.nextBoolean()
                                    ? random.nextDouble(1e-6, 1 - 1e-6)
                                    : Math.exp(random.nextDouble(Math.log(1e-280), -1));
                    double x = Gaussian.quantile(p);
                    double slope = referee.density(x);
                    double error = (referee.cumulativeProbability(x) - p) / slope;
                    assertThat(error).isCloseTo(0, within(1e-11 * Math.max(1, Math.abs(x))));
                });
    }

    @Test
    void quantileIsOddAboutOneHalf() {
        assertThat(Gaussian.quantile(0.5)).isZero();
        for (double p = 1.0 / 64; p < 0.5; p += 1.0 / 64) {
            assertThat(Gaussian.quantile(1 - p)).isEqualTo(-Gaussian.quantile(p));
        }
    }

    @Test
    void distributionFunctionHasItsKnownValues() {
        // Abramowitz & Stegun, Table 26.1; the far tail from memory.
        assertThat(Gaussian.cdf(0)).isEqualTo(0.5);
        assertThat(Gaussian.cdf(1)).isCloseTo(0.841344746068543, within(1e-14));
        assertThat(Gaussian.cdf(-2)).isCloseTo(0.022750131948179, within(1e-14));
        assertThat(Gaussian.cdf(-10) / 7.619853024160527e-24).isCloseTo(1, within(1e-11));
        assertThat(Gaussian.cdf(2) - Gaussian.cdf(-2))
                .isCloseTo(Gaussian.COVERAGE_K2, within(1e-14));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, 1.1, Double.NaN})
    void refusesWhatIsNoProbability(double p) {
        assertThatIllegalArgumentException().isThrownBy(() -> Gaussian.quantile(p));
    }
}
