package liftwright.testkit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

class SeededTest {

    private static List<Long> drawn(int cases, String seed, boolean deep) {
        var draws = new ArrayList<Long>();
        Seeded.check(cases, seed, deep, random -> draws.add(random.nextLong()));
        return draws;
    }

    @Test
    void everyCaseDrawsOtherNumbersAndTheSameOnesAgain() {
        var once = drawn(1000, "5", false);
        assertThat(once).hasSize(1000).doesNotHaveDuplicates();
        assertThat(drawn(1000, "5", false)).isEqualTo(once);
        assertThat(drawn(1000, "6", false)).doesNotContainAnyElementsOf(once);
    }

    @Test
    void noCaseWalksInTheStepsOfAnother() {
        var draws = new ArrayList<Long>();
        Seeded.check(1000, "5", false, random -> random.longs(100).forEach(draws::add));
        assertThat(draws).hasSize(100_000).doesNotHaveDuplicates();
    }

    @Test
    void aDeepRunGoesOnWhereThePlainOneStops() {
        var plain = drawn(10, "5", false);
        assertThat(drawn(10, "5", true))
                .hasSize(10 * Seeded.DEEP_FACTOR)
                .startsWith(plain.toArray(Long[]::new));
    }

    @Test
    void aFailureSaysHowToReplayItsCaseAlone() {
        var fourth = drawn(4, "5", false).getLast();
        assertThatThrownBy(() -> Seeded.check(100, "5", false, r -> refuse(r, fourth)))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("-Dseed=5/3")
                .hasMessageContaining("drew it")
                .hasCauseInstanceOf(IllegalStateException.class);
        assertThat(drawn(100, "5/3", false)).containsExactly(fourth);
    }

    @Test
    void aFailedAssertionCountsAsFailure() {
        assertThatThrownBy(() -> Seeded.check(1, "5", false, r -> assertThat(r.nextInt()).isNull()))
                .hasMessageContaining("-Dseed=5/0");
    }

    @Test
    void noCasesAtAllIsRefused() {
        assertThatThrownBy(() -> Seeded.check(0, r -> {}))
                .isInstanceOf(IndexOutOfBoundsException.class);
    }

    private static void refuse(RandomGenerator random, long number) {
        if (random.nextLong() == number) {
            throw new IllegalStateException("drew it");
        }
    }
}
