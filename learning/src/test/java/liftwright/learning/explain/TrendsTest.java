package liftwright.learning.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TrendsTest {

    private static List<Trends.Found> drawn(double slope, long seed, double scatter) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Trends.Found> tests = new ArrayList<>();
        for (int k = 0; k < 6; k++) {
            double own = 0.05 + 0.1 * random.nextDouble();
            tests.add(
                    new Trends.Found(
                            k,
                            1
                                    + slope * k
                                    + own * random.nextGaussian()
                                    + scatter * random.nextGaussian(),
                            own));
        }
        return tests;
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
            held += trend.lowPerTest() <= 0.1 && trend.highPerTest() >= 0.1 ? 1 : 0;
        }
        assertThat(held).isBetween(900, 990);
    }

    /** A joint that goes from 1 to 2 mΩ in ten tests reaches 3 mΩ after twenty. */
    @Test
    void tellsWhenALimitIsReached() {
        List<Trends.Found> tests = new ArrayList<>();
        for (int k = 0; k <= 10; k++) {
            tests.add(new Trends.Found(k, 1e-3 + 1e-4 * k, 2e-5));
        }
        Trend trend = Trends.of(tests, OptionalDouble.of(3e-3)).orElseThrow();
        assertThat(trend.perTest()).isCloseTo(1e-4, within(1e-12));
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
                                List.of(new Trends.Found(0, 1, 0.1), new Trends.Found(1, 2, 0.1)),
                                OptionalDouble.empty()))
                .isEmpty();
        assertThatThrownBy(() -> new Trends.Found(0, 1, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
