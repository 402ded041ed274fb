package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntToDoubleFunction;
import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** The least size of a remedy, against looking at every size. */
class LeastSizeTest {

    private static final int CASES = 2_000;

    @Test
    void itIsTheFirstThatClearsWhateverTheGuessAndTheBends() {
        Seeded.check(
                CASES,
                random -> {
                    int most = 1 + random.nextInt(200);
                    double[] rises = rising(most, random);
                    double demand = rises[0] + random.nextDouble() * (rises[most] - rises[0]) * 1.2;
                    int guess = 1 + random.nextInt(most);
                    int expected = 1;
                    while (expected <= most && rises[expected] < demand) {
                        expected++;
                    }
                    assertThat(found(most, guess, demand, size -> rises[size])).isEqualTo(expected);
                });
    }

    @Test
    void aGuessThatIsRightIsTriedWithItsNeighbourAndNothingElse() {
        int[] tries = {0};
        int size =
                found(
                        100,
                        37,
                        36.5,
                        tried -> {
                            tries[0]++;
                            return tried;
                        });
        assertThat(size).isEqualTo(37);
        assertThat(tries[0]).as("none of it, the guess, one less").isEqualTo(3);
    }

    /** One more than the greatest where none clears. */
    private static int found(int most, int guess, double demand, IntToDoubleFunction at) {
        var search = new LeastSize(most, guess, at.applyAsDouble(0), demand);
        int clears = most + 1;
        while (search.isOpen()) {
            int size = search.next();
            double value = at.applyAsDouble(size);
            if (value >= demand) {
                clears = size;
                search.clears(value);
            } else {
                search.fails(value);
            }
        }
        return clears;
    }

    /** Bent both ways, flat in places. */
    private static double[] rising(int most, RandomGenerator random) {
        double[] values = new double[most + 1];
        double bend = random.nextDouble() * 3;
        for (int size = 1; size <= most; size++) {
            double step = random.nextInt(4) == 0 ? 0 : Math.pow(size, bend - 1.5);
            values[size] = values[size - 1] + step * random.nextDouble();
        }
        return values;
    }
}
