package liftwright.learning.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TrendsTest {

    private static Trends.Found drawn(int count, double slope, long seed, double scatter) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] at = new double[count];
        double[] si = new double[count];
        double[] own = new double[count];
        for (int k = 0; k < count; k++) {
            own[k] = 0.05 + 0.1 * random.nextDouble();
            at[k] = k;
            si[k] =
                    1
                            + slope * k
                            + own[k] * random.nextGaussian()
                            + scatter * random.nextGaussian();
        }
        return Trends.Found.apart(at, si, own);
    }

    /** What all tests have in common moves the line and does not tilt it. */
    @Test
    void whatIsSharedByAllTestsMakesNoSlopeDoubtful() {
        double[] at = {0, 1, 2, 3};
        double[] si = {1, 1.1, 1.2, 1.3};
        double[] own = {0.02, 0.02, 0.02, 0.02};
        Trends.Found apart = Trends.Found.apart(at, si, own);
        double[][] shared = new double[4][4];
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                shared[i][j] = 9 + (i == j ? 4e-4 : 0);
            }
        }
        Trend one = Trends.of(apart, OptionalDouble.empty()).orElseThrow();
        Trend other =
                Trends.of(new Trends.Found(at, si, shared), OptionalDouble.empty()).orElseThrow();
        assertThat(other.per()).isCloseTo(one.per(), within(1e-6));
        assertThat(other.high() - other.low()).isCloseTo(one.high() - one.low(), within(1e-5));
    }

    /**
     * A number that stays is claimed to move in one logbook of twenty, whatever scatters between
     * tests and however few they are; where nothing scatters but what each test knows of itself, in
     * fewer.
     */
    @Test
    void whatStaysIsSeldomClaimedToMove() {
        for (int count : new int[] {3, 4, 6, 10}) {
            for (double scatter : new double[] {0, 0.1, 0.4, 2}) {
                assertThat(claimed(count, 0, scatter))
                        .as(count + " tests, scatter " + scatter)
                        .isLessThan(130);
            }
            // As sure as it says: of 2000 one in twenty is 100, give or take 10.
            assertThat(claimed(count, 0, 2)).as(count + " tests").isBetween(60, 140);
        }
    }

    /** Of 2000 drawn logbooks. */
    private static int claimed(int count, double slope, double scatter) {
        int claimed = 0;
        for (int seed = 0; seed < 2000; seed++) {
            Trend trend =
                    Trends.of(drawn(count, slope, seed, scatter), OptionalDouble.empty())
                            .orElseThrow();
            claimed += trend.isClaimed() ? 1 : 0;
        }
        return claimed;
    }

    @Test
    void aSlopeLiesInItsIntervalAndIsSeenWhereItIsSteep() {
        int held = 0;
        for (int seed = 0; seed < 1000; seed++) {
            Trend trend =
                    Trends.of(drawn(6, 0.1, seed, 0.05), OptionalDouble.empty()).orElseThrow();
            held += trend.low() <= 0.1 && trend.high() >= 0.1 ? 1 : 0;
        }
        assertThat(held).isBetween(930, 999);
        assertThat(claimed(6, 0.2, 0.05)).isGreaterThan(1900);
    }

    /**
     * Where tests know themselves well and scatter all the same, the interval is that of the
     * straight line of the textbooks: b ± t s/√Sxx with n − 2 degrees of freedom. Quantiles of t
     * are those of tables (NIST/SEMATECH handbook 1.3.6.7.2).
     */
    @Test
    void withoutDoubtOfTheTestsItIsTheLineOfTheTextbooks() {
        int[] counts = {3, 5, 10, 32};
        double[] quantiles = {12.706, 3.182, 2.306, 2.042};
        for (int i = 0; i < counts.length; i++) {
            int n = counts[i];
            SplittableRandom random = new SplittableRandom(n);
            double[] x = new double[n];
            double[] y = new double[n];
            double[] own = new double[n];
            double meanX = 0;
            double meanY = 0;
            for (int k = 0; k < n; k++) {
                x[k] = k + random.nextDouble();
                y[k] = 3 + 0.5 * x[k] + random.nextGaussian();
                own[k] = 1e-5;
                meanX += x[k] / n;
                meanY += y[k] / n;
            }
            double xx = 0;
            double xy = 0;
            double yy = 0;
            for (int k = 0; k < n; k++) {
                xx += (x[k] - meanX) * (x[k] - meanX);
                xy += (x[k] - meanX) * (y[k] - meanY);
                yy += (y[k] - meanY) * (y[k] - meanY);
            }
            double slope = xy / xx;
            double wide = quantiles[i] * Math.sqrt((yy - slope * xy) / (n - 2) / xx);
            Trend trend =
                    Trends.of(Trends.Found.apart(x, y, own), OptionalDouble.empty()).orElseThrow();
            assertThat(trend.per()).isCloseTo(slope, within(1e-6));
            assertThat(trend.high() - trend.per()).isCloseTo(wide, within(3e-4 * wide));
            assertThat(trend.per() - trend.low()).isCloseTo(wide, within(3e-4 * wide));
        }
    }

    /** A joint that goes from 1 to 2 mΩ in ten tests reaches 3 mΩ after twenty. */
    @Test
    void tellsWhenALimitIsReached() {
        double[] at = new double[11];
        double[] si = new double[11];
        double[] own = new double[11];
        for (int k = 0; k <= 10; k++) {
            at[k] = k;
            si[k] = 1e-3 + 1e-4 * k;
            own[k] = 2e-5;
        }
        Trends.Found tests = Trends.Found.apart(at, si, own);
        Trend trend = Trends.of(tests, OptionalDouble.of(3e-3)).orElseThrow();
        assertThat(trend.per()).isCloseTo(1e-4, within(1e-12));
        Trend.Reached reached = trend.reaches().orElseThrow();
        assertThat(reached.likely()).isCloseTo(20, within(1e-6));
        assertThat(reached.soonest()).isLessThan(20);
        assertThat(reached.latest().getAsDouble()).isGreaterThan(20);
        // A limit that lies the other way is never reached.
        assertThat(Trends.of(tests, OptionalDouble.of(0.5e-3)).orElseThrow().reaches()).isEmpty();
    }

    @Test
    void twoTestsMakeNoTrend() {
        assertThat(
                        Trends.of(
                                Trends.Found.apart(
                                        new double[] {0, 1},
                                        new double[] {1, 2},
                                        new double[] {0.1, 0.1}),
                                OptionalDouble.empty()))
                .isEmpty();
        assertThatThrownBy(
                        () ->
                                Trends.Found.apart(
                                        new double[] {0}, new double[] {1}, new double[] {0}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
