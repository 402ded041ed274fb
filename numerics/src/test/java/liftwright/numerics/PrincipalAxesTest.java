package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.junit.jupiter.api.Test;

class PrincipalAxesTest {

    /** Values against the numeric library's QL algorithm; axes by what an axis is. */
    @Test
    void findsValuesAndAxesOfRandomMatrices() {
        Seeded.check(
                100,
                random -> {
                    int n = random.nextInt(1, 14);
                    double[][] a = CholeskyFactorTest.random(n, random.nextLong());
                    PrincipalAxes axes = PrincipalAxes.of(a);
                    double[] expected =
                            new EigenDecompositionSymmetric(new Array2DRowRealMatrix(a))
                                    .getEigenvalues();
                    for (int k = 0; k < n; k++) {
                        assertThat(axes.value(k)).isCloseTo(expected[k], within(1e-10));
                        double[] axis = axes.axis(k);
                        for (int i = 0; i < n; i++) {
                            double along = 0;
                            double dot = 0;
                            for (int j = 0; j < n; j++) {
                                along += a[i][j] * axis[j];
                                dot += axes.axis(i)[j] * axis[j];
                            }
                            assertThat(along).isCloseTo(axes.value(k) * axis[i], within(1e-10));
                            assertThat(dot).isCloseTo(i == k ? 1 : 0, within(1e-10));
                        }
                    }
                });
    }
}
