package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import liftwright.testkit.Seeded;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;

class SymmetricFactorTest {

    private static final class Matrix {
        final int size;
        final int[] rows;
        final int[] columns;
        final double[] diagonal;
        final double[] coupling;

        Matrix(int size, int[] rows, int[] columns, double[] diagonal, double[] coupling) {
            this.size = size;
            this.rows = rows;
            this.columns = columns;
            this.diagonal = diagonal;
            this.coupling = coupling;
        }

        SimpleMatrix dense() {
            SimpleMatrix dense = new SimpleMatrix(size, size);
            for (int i = 0; i < size; i++) {
                dense.set(i, i, diagonal[i]);
            }
            for (int k = 0; k < rows.length; k++) {
                double sum = dense.get(rows[k], columns[k]) + coupling[k];
                dense.set(rows[k], columns[k], sum);
                dense.set(columns[k], rows[k], sum);
            }
            return dense;
        }
    }

    /** Random couplings (some twice), any connectivity; rows dominant by their diagonal. */
    private static Matrix dominant(RandomGenerator random, boolean mixedSigns) {
        int size = random.nextInt(1, 60);
        int count = size == 1 ? 0 : random.nextInt(0, 3 * size);
        int[] rows = new int[count];
        int[] columns = new int[count];
        double[] coupling = new double[count];
        double[] diagonal = new double[size];
        for (int k = 0; k < count; k++) {
            rows[k] = random.nextInt(size);
            columns[k] = (rows[k] + random.nextInt(1, size)) % size;
            coupling[k] = -Math.exp(random.nextDouble(-4, 4));
            diagonal[rows[k]] -= coupling[k];
            diagonal[columns[k]] -= coupling[k];
        }
        for (int i = 0; i < size; i++) {
            diagonal[i] += random.nextDouble(0.01, 1);
            if (mixedSigns && random.nextBoolean()) {
                diagonal[i] = -diagonal[i];
            }
        }
        return new Matrix(size, rows, columns, diagonal, coupling);
    }

    @Test
    void solvesWhatADenseSolverSolves() {
        Seeded.check(300, random -> agrees(random, dominant(random, false)));
    }

    @Test
    void solvesIndefiniteDiagonalsToo() {
        Seeded.check(300, random -> agrees(random, dominant(random, true)));
    }

    /**
     * Several trees, single rows among them, numbered anyhow: they are solved in a way of their
     * own.
     */
    @Test
    void solvesForestsToo() {
        Seeded.check(
                300,
                random -> {
                    int size = random.nextInt(1, 60);
                    int[] label = random.ints(0, size).distinct().limit(size).toArray();
                    int[] joined =
                            IntStream.range(1, size).filter(k -> random.nextInt(4) > 0).toArray();
                    int[] rows = IntStream.of(joined).map(k -> label[k]).toArray();
                    int[] columns =
                            IntStream.of(joined).map(k -> label[random.nextInt(k)]).toArray();
                    double[] coupling = random.doubles(joined.length, -9, -0.1).toArray();
                    double[] diagonal = random.doubles(size, 0.01, 1).toArray();
                    for (int k = 0; k < rows.length; k++) {
                        diagonal[rows[k]] -= coupling[k];
                        diagonal[columns[k]] -= coupling[k];
                    }
                    Matrix forest = new Matrix(size, rows, columns, diagonal, coupling);
                    assertThat(SymmetricPattern.analyse(size, rows, columns).forest).isTrue();
                    agrees(random, forest);
                });
    }

    private static void agrees(RandomGenerator random, Matrix matrix) {
        SymmetricFactor factor =
                SymmetricPattern.analyse(matrix.size, matrix.rows, matrix.columns).newFactor();
        // Factorised twice, with other numbers first: nothing may stay behind.
        factor.factor(
                random.doubles(matrix.size, 100, 200).toArray(),
                random.doubles(matrix.coupling.length, -1, 1).toArray());
        assertThat(factor.factor(matrix.diagonal, matrix.coupling)).isEqualTo(-1);
        SimpleMatrix right = new SimpleMatrix(matrix.size, 1);
        for (int i = 0; i < matrix.size; i++) {
            right.set(i, 0, random.nextDouble(-10, 10));
        }
        double[] x = new double[matrix.size];
        factor.solve(right.getDDRM().getData().clone(), x);
        SimpleMatrix referee = matrix.dense().solve(right);
        double scale = referee.elementMaxAbs();
        for (int i = 0; i < matrix.size; i++) {
            assertThat(x[i]).isCloseTo(referee.get(i, 0), within(1e-10 * scale));
        }
    }

    @Test
    void aTreeHasNoFillWhateverItsNumbering() {
        Seeded.check(
                200,
                random -> {
                    int size = random.nextInt(2, 150);
                    int[] label = random.ints(0, size).distinct().limit(size).toArray();
                    int[] rows = new int[size - 1];
                    int[] columns = new int[size - 1];
                    for (int k = 1; k < size; k++) {
                        rows[k - 1] = label[k];
                        columns[k - 1] = label[random.nextInt(k)];
                    }
                    SymmetricPattern pattern = SymmetricPattern.analyse(size, rows, columns);
                    assertThat(pattern.entries()).isEqualTo(size - 1);
                    assertThat(pattern.couplings()).isEqualTo(size - 1);
                    assertThat(pattern.size()).isEqualTo(size);
                });
    }

    /** All eigenvalues above 0, by a dense solver. */
    @Test
    void tellsWhetherAMatrixIsPositive() {
        int[] told = new int[2];
        Seeded.check(
                400,
                random -> {
                    Matrix matrix = dominant(random, false);
                    for (int i = 0; i < matrix.size; i++) {
                        matrix.diagonal[i] -= random.nextDouble() < 0.1 ? 5 : 0;
                    }
                    var eigen = matrix.dense().eig();
                    double least = Double.POSITIVE_INFINITY;
                    for (int i = 0; i < matrix.size; i++) {
                        least = Math.min(least, eigen.getEigenvalue(i).getReal());
                    }
                    SymmetricFactor factor =
                            SymmetricPattern.analyse(matrix.size, matrix.rows, matrix.columns)
                                    .newFactor();
                    if (factor.factor(matrix.diagonal, matrix.coupling) < 0
                            && Math.abs(least) > 1e-9) {
                        assertThat(factor.isPositive()).isEqualTo(least > 0);
                        told[least > 0 ? 1 : 0]++;
                    }
                });
        if (told[0] + told[1] > 1) {
            assertThat(told).doesNotContain(0);
        }
    }

    @Test
    void solvesInPlace() {
        SymmetricFactor factor =
                SymmetricPattern.analyse(2, new int[] {1}, new int[] {0}).newFactor();
        assertThat(factor.factor(new double[] {2, 3}, new double[] {-1})).isEqualTo(-1);
        double[] x = {5, 0};
        factor.solve(x, x);
        assertThat(x[0]).isCloseTo(3, within(1e-15));
        assertThat(x[1]).isCloseTo(1, within(1e-15));
    }

    @Test
    void reportsTheRowOfAnIslandWithoutReference() {
        // Two separate pairs; the second has no conductance to anywhere: its matrix is singular.
        SymmetricFactor factor =
                SymmetricPattern.analyse(4, new int[] {0, 2}, new int[] {1, 3}).newFactor();
        assertThat(factor.factor(new double[] {2, 2, 0.3, 0.3}, new double[] {-1, -0.3}))
                .isIn(2, 3);
        assertThatIllegalStateException()
                .isThrownBy(() -> factor.solve(new double[4], new double[4]));
        assertThatIllegalStateException().isThrownBy(factor::leastPivotShare);
        // With a reference it is solvable again, on the same workspace.
        assertThat(factor.factor(new double[] {2, 2, 0.3, 0.4}, new double[] {-1, -0.3}))
                .isEqualTo(-1);
    }

    @Test
    void reportsEmptyRowsAndWhatIsNoNumber() {
        SymmetricFactor factor = SymmetricPattern.analyse(2, new int[0], new int[0]).newFactor();
        assertThat(factor.factor(new double[] {1, 0}, new double[0])).isEqualTo(1);
        assertThat(factor.factor(new double[] {Double.NaN, 1}, new double[0])).isEqualTo(0);
        assertThat(factor.factor(new double[] {Double.POSITIVE_INFINITY, 1}, new double[0]))
                .isEqualTo(0);
    }

    @Test
    void tellsHowManyDigitsAPivotLost() {
        SymmetricFactor factor =
                SymmetricPattern.analyse(2, new int[] {0}, new int[] {1}).newFactor();
        factor.factor(new double[] {1, 1.001}, new double[] {-1});
        assertThat(factor.leastPivotShare()).isCloseTo(0.001 / 2.001, within(1e-9));
    }

    @Test
    void refusesACouplingThatIsNone() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SymmetricPattern.analyse(2, new int[] {1}, new int[] {1}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SymmetricPattern.analyse(2, new int[] {0}, new int[] {2}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SymmetricPattern.analyse(2, new int[] {-1}, new int[] {0}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SymmetricPattern.analyse(0, new int[0], new int[0]));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SymmetricPattern.analyse(2, new int[] {0}, new int[0]));
    }
}
