package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Against every partition there is, tried one after the other. */
class BalancedSetsTest {

    private static final double[] NONE = new double[2];

    private static double[][] vectors(RandomGenerator random, int count) {
        double[][] vector = new double[count][2];
        boolean ring = random.nextBoolean();
        for (int k = 0; k < count; k++) {
            double angle = 2 * Math.PI * k / count;
            vector[k][0] = ring ? Math.cos(angle) : random.nextDouble(-1, 1);
            vector[k][1] = ring ? Math.sin(angle) : random.nextDouble(-1, 1);
        }
        return vector;
    }

    private static int[] sets(int count, int each) {
        int[] set = new int[count];
        for (int k = 0; k < count; k++) {
            set[k] = k / each;
        }
        return set;
    }

    /** Tries every fan in every set that has room. */
    private static double least(double[][] vector, int[] size, int[] set, int next, double[] rest) {
        if (next == vector.length) {
            return referee(vector, set, size.length, rest);
        }
        double least = Double.POSITIVE_INFINITY;
        for (int s = 0; s < size.length; s++) {
            if (size[s] > 0) {
                size[s]--;
                set[next] = s;
                least = Math.min(least, least(vector, size, set, next + 1, rest));
                size[s]++;
            }
        }
        return least;
    }

    private static double referee(double[][] vector, int[] set, int sets) {
        return referee(vector, set, sets, NONE);
    }

    private static double referee(double[][] vector, int[] set, int sets, double[] rest) {
        double worst = 0;
        for (int lost = 0; lost < sets; lost++) {
            double x = rest[0];
            double y = rest[1];
            for (int k = 0; k < set.length; k++) {
                x += set[k] == lost ? 0 : vector[k][0];
                y += set[k] == lost ? 0 : vector[k][1];
            }
            worst = Math.max(worst, Math.hypot(x, y));
        }
        return worst;
    }

    @Test
    void isTheBestOfAllThereAre() {
        int[] improved = new int[1];
        Seeded.check(
                200,
                random -> {
                    int count = random.nextInt(2, 9);
                    double[][] vector = vectors(random, count);
                    int[] given = sets(count, random.nextInt(1, 4));
                    int groups = given[count - 1] + 1;
                    int[] size = new int[groups];
                    for (int s : given) {
                        size[s]++;
                    }
                    double[] rest = {random.nextInt(2) * 0.3, random.nextInt(2) * -0.4};
                    double least = least(vector, size.clone(), new int[count], 0, rest);
                    var found = BalancedSets.of(vector, given, rest);
                    assertThat(found.worst()).isCloseTo(least, within(1e-9));
                    assertThat(found.proven()).isTrue();
                    assertThat(referee(vector, found.set(), groups, rest))
                            .isCloseTo(found.worst(), within(1e-9));
                    int[] after = new int[groups];
                    for (int s : found.set()) {
                        after[s]++;
                    }
                    assertThat(after).isEqualTo(size);
                    improved[0] +=
                            found.worst() < referee(vector, given, groups, rest) - 1e-6 ? 1 : 0;
                });
        assertThat(improved[0]).isGreaterThan(50);
    }

    /** A ring of 24 in neighbouring pairs: opposite ones leave nothing. */
    @Test
    void oppositeFansOfARingArePaired() {
        double[][] vector = new double[24][];
        for (int k = 0; k < 24; k++) {
            double angle = 2 * Math.PI * k / 24;
            vector[k] = new double[] {Math.cos(angle), Math.sin(angle)};
        }
        var found = BalancedSets.of(vector, sets(24, 2), NONE);
        assertThat(found.worst()).isLessThan(1e-9);
    }

    @Test
    void twentyFourInPairsAreProvenButForAFew() {
        int[] seen = new int[2];
        Seeded.check(
                20,
                random -> {
                    double[][] vector = vectors(random, 24);
                    var found = BalancedSets.of(vector, sets(24, 2), NONE);
                    seen[0]++;
                    seen[1] += found.proven() ? 1 : 0;
                    assertThat(found.bound()).isLessThanOrEqualTo(found.worst() + 1e-12);
                    assertThat(found.worst())
                            .isLessThanOrEqualTo(referee(vector, sets(24, 2), 12) + 1e-12);
                });
        assertThat(seen[1]).isGreaterThanOrEqualTo((int) Math.ceil(0.95 * seen[0]));
    }

    /** Too many sets to list: exchanges help, and the bound holds. */
    @Test
    void manyInLargeSetsSayWhatIsProven() {
        Seeded.check(
                5,
                random -> {
                    double[][] vector = vectors(random, 48);
                    var found = BalancedSets.of(vector, sets(48, 8), NONE);
                    assertThat(found.worst())
                            .isLessThanOrEqualTo(referee(vector, sets(48, 8), 6) + 1e-12);
                    assertThat(found.bound()).isLessThanOrEqualTo(found.worst() + 1e-12);
                    assertThat(referee(vector, found.set(), 6))
                            .isCloseTo(found.worst(), within(1e-9));
                });
    }

    @Test
    void anEmptySetIsRefused() {
        assertThatThrownBy(() -> BalancedSets.of(new double[2][2], new int[] {0, 2}, NONE))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
