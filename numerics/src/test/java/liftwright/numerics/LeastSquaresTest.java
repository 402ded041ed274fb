package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import liftwright.testkit.Seeded;
import org.ejml.simple.SimpleMatrix;
import org.junit.jupiter.api.Test;

/** Fits of our own making: against normal equations, and where no fit can be had. */
class LeastSquaresTest {

    /** Straight models in random numbers of rows and unknowns: (AᵀA)⁻¹Aᵀy, by another library. */
    @Test
    void aStraightModelIsSolvedLikeNormalEquations() {
        Seeded.check(
                200,
                random -> {
                    int n = random.nextInt(1, 5);
                    int rows = n + random.nextInt(0, 20);
                    double[][] a = new double[rows][n];
                    double[] y = new double[rows];
                    for (int i = 0; i < rows; i++) {
                        Arrays.setAll(a[i], k -> random.nextGaussian());
                        y[i] = random.nextGaussian();
                    }
                    double mean = random.nextGaussian();
                    double deviation = random.nextDouble(0.1, 2);
                    LeastSquaresFit fit =
                            new LeastSquares(
                                            rows,
                                            new boolean[n],
                                            (x, out) -> {
                                                for (int i = 0; i < rows; i++) {
                                                    Dual sum = Dual.constant(-y[i], n);
                                                    for (int k = 0; k < n; k++) {
                                                        sum = sum.plus(x[k].times(a[i][k]));
                                                    }
                                                    out[i] = sum;
                                                }
                                            })
                                    .prior(0, mean, deviation)
                                    .fit(new double[n]);
                    SimpleMatrix all = new SimpleMatrix(rows + 1, n);
                    SimpleMatrix right = new SimpleMatrix(rows + 1, 1);
                    for (int i = 0; i < rows; i++) {
                        for (int k = 0; k < n; k++) {
                            all.set(i, k, a[i][k]);
                        }
                        right.set(i, 0, y[i]);
                    }
                    all.set(rows, 0, 1 / deviation);
                    right.set(rows, 0, mean / deviation);
                    SimpleMatrix normal = all.transpose().mult(all);
                    if (normal.conditionP2() > 1e8) {
                        return;
                    }
                    SimpleMatrix inverse = normal.invert();
                    SimpleMatrix solution = inverse.mult(all.transpose()).mult(right);
                    assertThat(fit.status()).isEqualTo(LeastSquaresFit.Status.CONVERGED);
                    for (int k = 0; k < n; k++) {
                        double size = 1 + Math.abs(solution.get(k, 0));
                        assertThat(fit.value(k)).isCloseTo(solution.get(k, 0), within(1e-7 * size));
                        assertThat(fit.covariance(k, k) / inverse.get(k, k))
                                .isCloseTo(1, within(1e-7));
                    }
                });
    }

    /** Two unknowns that only ever add up. */
    @Test
    void whatTheRowsLeaveOpenIsSaid() {
        LeastSquares problem =
                new LeastSquares(
                        3,
                        new boolean[2],
                        (x, out) -> {
                            for (int i = 0; i < 3; i++) {
                                out[i] = x[0].plus(x[1]).minus(1 + 0.1 * i);
                            }
                        });
        assertThat(problem.fit(new double[] {0, 0}).status())
                .isEqualTo(LeastSquaresFit.Status.UNDETERMINED);
    }

    /** x⁴-like hill: slope 0 on its top, which is no least. */
    @Test
    void theTopOfAHillIsNoResult() {
        LeastSquares problem =
                new LeastSquares(
                        2,
                        new boolean[1],
                        (x, out) -> {
                            out[0] = x[0].times(0.1);
                            out[1] = x[0].times(x[0]).times(-1).plus(1);
                        });
        LeastSquaresFit there = problem.fit(new double[] {0});
        assertThat(there.value(0) == 0 && there.status() == LeastSquaresFit.Status.CONVERGED)
                .isFalse();
        LeastSquaresFit beside = problem.fit(new double[] {0.5});
        assertThat(beside.status()).isEqualTo(LeastSquaresFit.Status.CONVERGED);
        // d/dx [0.01 x² + (1 − x²)²] = 0 at x² = 1 − 0.005
        assertThat(beside.value(0)).isCloseTo(Math.sqrt(0.995), within(1e-9));
    }

    /** A decaying model has its least at infinity: no place is one. */
    @Test
    void aLeastAtInfinityIsNoResult() {
        LeastSquares problem =
                new LeastSquares(
                        2,
                        new boolean[1],
                        (x, out) -> {
                            out[0] = x[0].negated().exp();
                            out[1] = Dual.constant(1, 1);
                        });
        assertThat(problem.fit(new double[] {0}).status())
                .isNotEqualTo(LeastSquaresFit.Status.CONVERGED);
    }

    @Test
    void refusesWhatIsNoProblem() {
        LeastSquares one =
                new LeastSquares(1, new boolean[] {true}, (x, out) -> out[0] = x[0].log());
        assertThatIllegalArgumentException().isThrownBy(() -> one.fit(new double[] {0}));
        assertThatIllegalArgumentException().isThrownBy(() -> one.fit(new double[] {1, 2}));
        assertThatIllegalArgumentException().isThrownBy(() -> one.prior(0, 0, 0));
        LeastSquares nowhere =
                new LeastSquares(1, new boolean[1], (x, out) -> out[0] = x[0].plus(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> nowhere.fit(new double[] {0}));
        LeastSquares few =
                new LeastSquares(1, new boolean[2], (x, out) -> out[0] = x[0].plus(x[1]));
        assertThatIllegalArgumentException().isThrownBy(() -> few.fit(new double[2]));
    }

    /** Slopes against differences, every operation. */
    @Test
    void slopesAreExact() {
        Seeded.check(
                100,
                random -> {
                    double a = random.nextDouble(0.5, 2);
                    double b = random.nextDouble(0.5, 2);
                    double h = 1e-6;
                    for (int k = 0; k < 2; k++) {
                        double da = k == 0 ? h : 0;
                        double db = k == 1 ? h : 0;
                        double difference =
                                (mixed(a + da, b + db).value() - mixed(a - da, b - db).value())
                                        / (2 * h);
                        assertThat(mixed(a, b).slope(k))
                                .isCloseTo(difference, within(1e-7 * (1 + Math.abs(difference))));
                    }
                });
    }

    private static Dual mixed(double a, double b) {
        Dual x = Dual.unknown(a, 0, 2);
        Dual y = Dual.unknown(b, 1, 2);
        return x.pow(y)
                .plus(x.times(y).sqrt())
                .minus(x.over(y).log())
                .plus(y.pow(-1.5).times(2))
                .plus(x.negated().exp().over(3).minus(1).plus(2))
                .times(y.minus(x));
    }

    /** Tables of Student's t, two-sided 95 %: 12.706, 2.571, 2.228, 2.042 (printed everywhere). */
    @Test
    void studentsTable() {
        assertThat(StudentT.within(0.95, 1)).isCloseTo(12.706, within(0.0005));
        assertThat(StudentT.within(0.95, 5)).isCloseTo(2.571, within(0.0005));
        assertThat(StudentT.within(0.95, 10)).isCloseTo(2.228, within(0.0005));
        assertThat(StudentT.within(0.95, 30)).isCloseTo(2.042, within(0.0005));
        assertThat(StudentT.cdf(-2.571, 5)).isCloseTo(0.025, within(5e-5));
    }
}
