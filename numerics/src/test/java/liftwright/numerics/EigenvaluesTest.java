package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import liftwright.testkit.Seeded;
import org.hipparchus.complex.Complex;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
import org.junit.jupiter.api.Test;

/** Eigenvalues against closed forms and a library's decomposition. */
class EigenvaluesTest {

    @Test
    void aLibrarySaysTheSameOfRandomMatrices() {
        Seeded.check(
                400,
                random -> {
                    int n = 1 + random.nextInt(12);
                    double[] a = new double[n * n];
                    for (int k = 0; k < a.length; k++) {
                        a[k] =
                                random.nextInt(4) == 0
                                        ? 0
                                        : random.nextGaussian()
                                                * Math.pow(10, random.nextInt(4) - 2);
                    }
                    a[0] = a[0] == 0 ? 1 : a[0]; // the library takes no matrix of noughts
                    agrees(a, n, 2e-7);
                });
    }

    @Test
    void rootsOfUnityAndOfAPolynomialAreFound() {
        // the companion of s⁴ − 1, which an unshifted step would leave as it is
        double[] cycle = {0, 0, 0, 1, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0};
        assertThat(sizes(cycle, 4))
                .allSatisfy(size -> assertThat(size).isCloseTo(1, within(1e-12)));
        // (s + 1)(s + 2)(s² + 2s + 5)
        double[] roots = {-5, -13, -19, -10, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0};
        double[] re = new double[4];
        double[] im = new double[4];
        Eigenvalues.of(roots, 4, re, im);
        for (double[] expected : new double[][] {{-1, 0}, {-2, 0}, {-1, 2}, {-1, -2}}) {
            assertThat(nearest(re, im, expected[0], expected[1])).isLessThan(1e-10);
        }
    }

    @Test
    void aDoubleIntegratorHasTwoNoughts() {
        double[] re = new double[2];
        double[] im = new double[2];
        Eigenvalues.of(new double[] {0, 1, 0, 0}, 2, re, im);
        assertThat(re).containsExactly(0, 0);
        assertThat(im).containsExactly(0, 0);
    }

    @Test
    void whatIsNoMatrixIsRefused() {
        assertThatThrownBy(
                        () ->
                                Eigenvalues.of(
                                        new double[] {Double.NaN}, 1, new double[1], new double[1]))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Eigenvalues.of(new double[3], 2, new double[2], new double[2]))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static List<Double> sizes(double[] a, int n) {
        double[] re = new double[n];
        double[] im = new double[n];
        Eigenvalues.of(a, n, re, im);
        List<Double> sizes = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            sizes.add(Math.hypot(re[k], im[k]));
        }
        return sizes;
    }

    private static void agrees(double[] a, int n, double by) {
        double[] re = new double[n];
        double[] im = new double[n];
        Eigenvalues.of(a, n, re, im);
        double[][] rows = new double[n][n];
        double size = 1;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                rows[i][j] = a[i * n + j];
                size = Math.max(size, Math.abs(rows[i][j]));
            }
        }
        Complex[] library =
                new EigenDecompositionNonSymmetric(new Array2DRowRealMatrix(rows)).getEigenvalues();
        double trace = 0;
        double sum = 0;
        for (int k = 0; k < n; k++) {
            trace += rows[k][k];
            sum += re[k];
        }
        assertThat(sum).isCloseTo(trace, within(1e-9 * size * n));
        for (Complex one : library) {
            assertThat(nearest(re, im, one.getReal(), one.getImaginary())).isLessThan(by * size);
        }
    }

    private static double nearest(double[] re, double[] im, double toRe, double toIm) {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < re.length; k++) {
            least = Math.min(least, Math.hypot(re[k] - toRe, im[k] - toIm));
        }
        return least;
    }
}
