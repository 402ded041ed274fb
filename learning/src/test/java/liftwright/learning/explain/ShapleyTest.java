package liftwright.learning.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Held against the mean over every order of the players, walked one by one. */
class ShapleyTest {

    private static double[] worths(int players, long seed) {
        return new Random(seed).doubles(1L << players, -100, 100).toArray();
    }

    private static double[] byOrders(int players, double[] worth) {
        List<List<Integer>> orders = new ArrayList<>();
        permute(players, new ArrayList<>(), orders);
        double[] sum = new double[players];
        for (List<Integer> order : orders) {
            int set = 0;
            for (int k : order) {
                sum[k] += worth[set | 1 << k] - worth[set];
                set |= 1 << k;
            }
        }
        return Arrays.stream(sum).map(all -> all / orders.size()).toArray();
    }

    private static void permute(int players, List<Integer> begun, List<List<Integer>> into) {
        if (begun.size() == players) {
            into.add(List.copyOf(begun));
            return;
        }
        for (int k = 0; k < players; k++) {
            if (!begun.contains(k)) {
                begun.add(k);
                permute(players, begun, into);
                begun.removeLast();
            }
        }
    }

    @Test
    void equalsTheMeanOverAllOrders() {
        Seeded.check(
                60,
                random -> {
                    int players = random.nextInt(1, 7);
                    double[] worth = worths(players, random.nextLong());
                    assertThat(Shapley.of(players, set -> worth[set]))
                            .containsExactly(byOrders(players, worth), within(1e-9));
                });
    }

    @Test
    void addsUpAndIsFair() {
        Seeded.check(
                200,
                random -> {
                    int players = random.nextInt(2, 9);
                    double[] worth = worths(players, random.nextLong());
                    double[] shares = Shapley.of(players, set -> worth[set]);
                    double all = worth[worth.length - 1] - worth[0];
                    assertThat(Arrays.stream(shares).sum()).isCloseTo(all, within(1e-9));
                    // One that adds nothing gets nothing.
                    double[] idle = Shapley.of(players, set -> worth[set & ~1]);
                    assertThat(idle[0]).isCloseTo(0, within(1e-12));
                    // Two that always add the same get the same.
                    double[] alike = Shapley.of(players, set -> worth[sorted(set)]);
                    assertThat(alike[0]).isCloseTo(alike[1], within(1e-9));
                });
    }

    /** Players 0 and 1 told apart no more: one of them alone is always player 0. */
    private static int sorted(int set) {
        return (set & 3) == 2 ? set ^ 3 : set;
    }

    @Test
    void tooManyPlayersAreRefused() {
        assertThatThrownBy(() -> Shapley.of(9, set -> 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(Collections.max(List.of(Shapley.MOST))).isEqualTo(8);
    }
}
