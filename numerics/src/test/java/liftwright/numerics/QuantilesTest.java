package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import liftwright.testkit.Seeded;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuantilesTest {

    @Test
    void isDefinitionSixOfHyndmanAndFan() {
        Percentile referee = new Percentile().withEstimationType(Percentile.EstimationType.R_6);
        Seeded.check(
                500,
                random -> {
                    double[] sample = random.doubles(random.nextInt(1, 60)).sorted().toArray();
                    double least = 1.0 / (sample.length + 1);
                    double p = least + random.nextDouble() * (1 - 2 * least);
                    if ((sample.length + 1) * p < 1 || (sample.length + 1) * p > sample.length) {
                        p = 0.5;
                    }
                    assertThat(Quantiles.ofSorted(sample, p))
                            .isCloseTo(referee.evaluate(sample, 100 * p), within(1e-12));
                });
    }

    /** Referee: the library's sort; values repeat, and what lies outside stays. */
    @Test
    void anOrderStatisticIsThatOfTheSortedPart() {
        Seeded.check(
                500,
                random -> {
                    double[] values =
                            random.ints(random.nextInt(1, 200), 0, random.nextInt(1, 300))
                                    .asDoubleStream()
                                    .toArray();
                    int from = random.nextInt(values.length);
                    int to = random.nextInt(from, values.length) + 1;
                    int rank = random.nextInt(to - from);
                    double[] sorted = values.clone();
                    Arrays.sort(sorted, from, to);
                    double[] before = values.clone();
                    assertThat(Quantiles.ofPart(values, from, to, rank))
                            .isEqualTo(sorted[from + rank]);
                    Arrays.sort(values, from, to);
                    assertThat(values).isEqualTo(sorted);
                    assertThat(Arrays.copyOf(values, from)).isEqualTo(Arrays.copyOf(before, from));
                });
    }

    @Test
    void quantileOfFourHasItsHandValues() {
        double[] sample = {1, 2, 4, 8};
        assertThat(Quantiles.ofSorted(sample, 0.2)).isEqualTo(1);
        assertThat(Quantiles.ofSorted(sample, 0.5)).isEqualTo(3);
        assertThat(Quantiles.ofSorted(sample, 0.7)).isCloseTo(6, within(1e-12));
        assertThat(Quantiles.ofSorted(sample, 0.8)).isEqualTo(8);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.19, 0.81, Double.NaN})
    void refusesToReachBeyondTheSample(double p) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Quantiles.ofSorted(new double[] {1, 2, 4, 8}, p));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Quantiles.standardError(new double[] {1, 2, 4, 8}, p));
    }

    /** Referee: many samples with another generator; the scatter of the quantile itself. */
    @ParameterizedTest
    @ValueSource(doubles = {0.025, 0.5, 0.975})
    void errorAgreesWithTheScatterOverManySamples(double p) {
        SplittableRandom random = new SplittableRandom(20260101);
        int repeats = 2000;
        double sum = 0;
        double square = 0;
        double error = 0;
        for (int i = 0; i < repeats; i++) {
            double[] sample = new double[256];
            Arrays.setAll(sample, _ -> Math.exp(0.3 * random.nextGaussian()));
            Arrays.sort(sample);
            double q = Quantiles.ofSorted(sample, p);
            sum += q;
            square += q * q;
            error += Quantiles.standardError(sample, p);
        }
        double mean = sum / repeats;
        double scatter = Math.sqrt(square / repeats - mean * mean);
        assertThat(error / repeats / scatter).isBetween(0.93, 1.15);
    }
}
