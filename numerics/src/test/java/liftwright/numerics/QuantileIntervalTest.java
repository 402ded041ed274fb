package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantileIntervalTest {

    /**
     * Ranks for the median at 95 %, as printed in textbooks of nonparametric statistics (from
     * memory; each recomputed from the binomial by hand: n 10: 2 · 11/1024 = 0.0215 outside).
     */
    @ParameterizedTest
    @CsvSource({"6, 1, 6", "10, 2, 9", "15, 4, 12", "20, 6, 15", "25, 8, 18", "100, 40, 61"})
    void givesTheRanksOfTheMedian(int n, int lower, int upper) {
        assertThat(QuantileInterval.of(n, 0.5, 0.95)).isEqualTo(new QuantileInterval(lower, upper));
    }

    /** 0.95⁵⁸ = 0.051, 0.95⁵⁹ = 0.0485: the usual 59 (two-sided at 90 %). */
    @Test
    void tooFewFlightsBoundNothing() {
        assertThat(QuantileInterval.of(58, 0.95, 0.9).upperRank()).isEqualTo(59);
        assertThat(QuantileInterval.of(59, 0.95, 0.9).upperRank()).isEqualTo(59);
        assertThat(QuantileInterval.of(5, 0.5, 0.95)).isEqualTo(new QuantileInterval(0, 6));
    }

    /** Against sums of binomial terms, added one by one. */
    @Test
    void leavesNoMoreOutsideThanItMay() {
        for (int n : new int[] {3, 17, 60, 211}) {
            for (double p : new double[] {0.05, 0.5, 0.9, 0.99}) {
                QuantileInterval found = QuantileInterval.of(n, p, 0.95);
                assertThat(atMost(found.lowerRank() - 1, n, p)).isLessThanOrEqualTo(0.025 + 1e-12);
                assertThat(atMost(found.lowerRank(), n, p)).isGreaterThan(0.025 - 1e-12);
                assertThat(1 - atMost(found.upperRank() - 1, n, p))
                        .isLessThanOrEqualTo(0.025 + 1e-12);
                assertThat(1 - atMost(found.upperRank() - 2, n, p)).isGreaterThan(0.025 - 1e-12);
            }
        }
    }

    @Test
    void holdsTheQuantileAsOftenAsItSays() {
        QuantileInterval ranks = QuantileInterval.of(200, 0.9, 0.95);
        int held = 0;
        for (int s = 0; s < 2000; s++) {
            double[] sample = new SplittableRandom(s).doubles(200).sorted().toArray();
            held +=
                    sample[ranks.lowerRank() - 1] <= 0.9 && sample[ranks.upperRank() - 1] >= 0.9
                            ? 1
                            : 0;
        }
        assertThat(held / 2000.0).isBetween(0.945, 0.985);
    }

    @Test
    void refusesWhatIsNoQuantile() {
        for (double p : new double[] {0, 1, Double.NaN}) {
            assertThatIllegalArgumentException().isThrownBy(() -> QuantileInterval.of(10, p, 0.95));
        }
        assertThatIllegalArgumentException().isThrownBy(() -> QuantileInterval.of(0, 0.5, 0.95));
    }

    private static double atMost(int k, int n, double p) {
        double[] terms = new double[n + 1];
        double logFactor = 0;
        for (int i = 0; i <= n; i++) {
            terms[i] = Math.exp(logFactor + i * Math.log(p) + (n - i) * Math.log1p(-p));
            logFactor += Math.log(n - i) - Math.log(i + 1.0);
        }
        return k < 0 ? 0 : Arrays.stream(terms, 0, Math.min(k, n) + 1).sum();
    }
}
