package liftwright.flight.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The band of one more drawn flight. */
class NextFlightTest {

    /** On normal samples of the JDK's own, the next number lies inside as often as is said. */
    @Test
    void nineteenInTwentyOfTheNextLieInside() {
        var random = new SplittableRandom(99);
        for (int n : new int[] {2, 5, 12}) {
            int inside = 0;
            int samples = 100_000;
            for (int k = 0; k < samples; k++) {
                double[] x = new double[n];
                for (int i = 0; i < n; i++) {
                    x[i] = 3 + 2 * random.nextGaussian();
                }
                NextFlight next = NextFlight.of(x);
                double one = 3 + 2 * random.nextGaussian();
                inside += one >= next.low() && one <= next.high() ? 1 : 0;
            }
            assertThat(inside / (double) samples).as("of %d", n).isCloseTo(0.95, within(0.003));
        }
    }

    @Test
    void aDistanceIsNeverToldBelowNought() {
        assertThat(NextFlight.of(new double[] {0.01, 0.02, 0.2}).band().low()).isZero();
    }
}
