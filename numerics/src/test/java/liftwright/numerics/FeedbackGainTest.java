package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.testkit.Seeded;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;
import org.ojalgo.matrix.decomposition.Eigenvalue;
import org.ojalgo.matrix.store.RawStore;

/** Least real parts against a library's eigenvalues, and plain cases by hand. */
class FeedbackGainTest {

    private static double[][] drawn(RandomGenerator random, int rows, int columns) {
        double[][] matrix = new double[rows][columns];
        for (double[] row : matrix) {
            for (int j = 0; j < columns; j++) {
                row[j] = random.nextDouble(-1, 1);
            }
        }
        return matrix;
    }

    private static double byLibrary(double[][] believed, double[][] real) {
        SimpleMatrix loop = new SimpleMatrix(real).mult(new SimpleMatrix(believed).pseudoInverse());
        var values = Eigenvalue.R064.make(4, false);
        values.decompose(RawStore.wrap(loop.toArray2()));
        double[] real4 = new double[4];
        values.getEigenvalues(real4, Optional.empty());
        return Arrays.stream(real4).min().orElseThrow();
    }

    @Test
    void leastRealPartsAreThoseOfTheLibrary() {
        int[] seen = new int[2];
        Seeded.check(
                2000,
                random -> {
                    int columns = random.nextInt(6, 13);
                    double[][] believed = drawn(random, 4, columns);
                    double[][] real = new double[4][];
                    int one = random.nextInt(columns);
                    int other = (one + random.nextInt(1, columns)) % columns;
                    int[] turned = random.ints(columns, -1, 2).map(n -> n < 0 ? -1 : 1).toArray();
                    for (int i = 0; i < 4; i++) {
                        real[i] = believed[i].clone();
                        real[i][one] = believed[i][other];
                        real[i][other] = believed[i][one];
                        for (int j = 0; j < columns; j++) {
                            real[i][j] *= turned[j];
                        }
                    }
                    double least = FeedbackGain.least(believed, real);
                    assertThat(least).isCloseTo(byLibrary(believed, real), within(1e-5));
                    seen[least > 0 ? 0 : 1]++;
                });
        assertThat(seen[0]).isGreaterThan(200);
        assertThat(seen[1]).isGreaterThan(200);
    }

    /** Roll reversed on a rig of two axes: gains 1 and −1. */
    @Test
    void oneAxisTheWrongWayRoundRunsAway() {
        double[][] believed = {{1, 1, 1, 1}, {1, -1, 1, -1}};
        double[][] real = {{1, 1, 1, 1}, {-1, 1, -1, 1}};
        assertThat(FeedbackGain.least(believed, real)).isCloseTo(-1, within(1e-12));
    }

    /** A triangle's eigenvalues stand on its diagonal. */
    @Test
    void ofATriangleItIsTheLeastOnTheDiagonal() {
        double[][] triangle = {{3, 5, -7, 1}, {0, 0.25, 4, 2}, {0, 0, 1, 9}, {0, 0, 0, 2}};
        assertThat(FeedbackGain.leastRealPart(triangle)).isCloseTo(0.25, within(1e-9));
    }

    /** A turn by a right angle about an axis, twice as large: 1 ± 2i and 3. */
    @Test
    void turnsCountByTheirRealPart() {
        double[][] turn = {{1, -2, 0}, {2, 1, 0}, {0, 0, 3}};
        assertThat(FeedbackGain.leastRealPart(turn)).isCloseTo(1, within(1e-9));
    }

    /** Channels that nothing answers leave no gain, and no exception. */
    @Test
    void deadChannelsLeaveNoGain() {
        double[][] believed = {{1, 1, 1, 1}, {1, -1, 1, -1}, {1, 1, -1, -1}, {1, -1, -1, 1}};
        assertThat(FeedbackGain.least(believed, new double[4][4])).isCloseTo(0, within(1e-12));
        assertThat(FeedbackGain.least(new double[4][4], believed)).isEqualTo(1);
    }
}
