package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

/** Held against a decomposition of another kind (LU with pivots) of the numeric library. */
class CholeskyFactorTest {

    @Test
    void solvesAndTellsTheDeterminantOfRandomMatrices() {
        Seeded.check(
                200,
                random -> {
                    int n = random.nextInt(1, 12);
                    double[][] a = random(n, random.nextLong());
                    LUDecomposition lu = new LUDecomposition(new Array2DRowRealMatrix(a));
                    CholeskyFactor factor = CholeskyFactor.of(a);
                    assertThat(factor.logDeterminant())
                            .isCloseTo(Math.log(lu.getDeterminant()), within(1e-9));
                    double[] v = random.doubles(n, -1, 1).toArray();
                    double[] x = factor.solve(v);
                    double[][] inverse = factor.inverse();
                    double[] expected =
                            lu.getSolver()
                                    .solve(new org.hipparchus.linear.ArrayRealVector(v))
                                    .toArray();
                    double[] white = v.clone();
                    factor.whiten(white, 0);
                    double squares = 0;
                    double form = 0;
                    for (int i = 0; i < n; i++) {
                        assertThat(x[i]).isCloseTo(expected[i], within(1e-8));
                        double by = 0;
                        for (int k = 0; k < n; k++) {
                            by += inverse[i][k] * v[k];
                        }
                        assertThat(by).isCloseTo(expected[i], within(1e-8));
                        squares += white[i] * white[i];
                        form += v[i] * expected[i];
                    }
                    assertThat(squares).isCloseTo(form, within(1e-8 * Math.max(1, form)));
                    factor.colour(white, 0);
                    assertThat(white).containsExactly(v, within(1e-10));
                });
    }

    @Test
    void refusesWhatIsNotPositiveDefinite() {
        assertThatThrownBy(() -> CholeskyFactor.of(new double[][] {{1, 2}, {2, 1}}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("row 1");
    }

    static double[][] random(int n, long seed) {
        java.util.SplittableRandom random = new java.util.SplittableRandom(seed);
        double[][] b = new double[n][];
        for (int i = 0; i < n; i++) {
            b[i] = random.doubles(n, -1, 1).toArray();
        }
        double[][] a = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                for (int k = 0; k < n; k++) {
                    a[i][j] += b[i][k] * b[j][k];
                }
            }
            a[i][i] += 0.1;
        }
        return a;
    }
}
