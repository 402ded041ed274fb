package liftwright.learning.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TrendsTest {

    private static Trends.Found drawn(double slope, long seed, double scatter) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] at = new double[6];
        double[] si = new double[6];
        double[] own = new double[6];
        for (int k = 0; k < 6; k++) {
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

    /** A number that stays is claimed to move in few logbooks, whatever scatters between tests. */
    @Test
    void whatStaysIsSeldomClaimedToMove() {
        for (double scatter : new double[] {0, 0.1, 0.4}) {
            int claimed = 0;
            for (int seed = 0; seed < 1000; seed++) {
                claimed +=
                        Trends.of(drawn(0, seed, scatter), OptionalDouble.empty())
                                        .orElseThrow()
                                        .isClaimed()
                                ? 1
                                : 0;
            }
            assertThat(claimed).as("scatter " + scatter).isLessThan(100);
        }
    }

    @Test
    void aSlopeLiesInItsInterval() {
        int held = 0;
        for (int seed = 0; seed < 1000; seed++) {
            Trend trend = Trends.of(drawn(0.1, seed, 0.05), OptionalDouble.empty()).orElseThrow();
            held += trend.low() <= 0.1 && trend.high() >= 0.1 ? 1 : 0;
        }
        assertThat(held).isBetween(900, 990);
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
