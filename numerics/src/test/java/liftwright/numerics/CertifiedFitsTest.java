package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * NIST/ITL Statistical Reference Datasets, nonlinear regression: data and certified values (eleven
 * digits) as NIST publishes them; a work of the United States government, in the public domain.
 */
class CertifiedFitsTest {

    /** Model of one row. */
    interface Curve {
        Dual at(Dual[] b, double x);
    }

    enum Set {
        /** Lower difficulty; Misra, D., 1978, dental research. */
        MISRA1A(
                (b, x) -> b[1].times(-x).exp().negated().plus(1).times(b[0]),
                new double[][] {{500, 0.0001}, {250, 0.0005}},
                new double[] {2.3894212918E+02, 5.5015643181E-04},
                new double[] {2.7070075241E+00, 7.2668688436E-06},
                1.2455138894E-01,
                new double[] {
                    10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01,
                    66.40, 75.47, 81.78
                },
                new double[] {
                    77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8,
                    593.1, 689.1, 760.0
                }),
        /** Lower difficulty; Daniel, C., Wood, F. S., 1980, radiation against temperature. */
        DANWOOD(
                (b, x) -> b[1].times(Math.log(x)).exp().times(b[0]),
                new double[][] {{1, 5}, {0.7, 4}},
                new double[] {7.6886226176E-01, 3.8604055871E+00},
                new double[] {1.8281973860E-02, 5.1726610913E-02},
                4.3173084083E-03,
                new double[] {2.138, 3.421, 3.597, 4.340, 4.882, 5.660},
                new double[] {1.309, 1.471, 1.490, 1.565, 1.611, 1.680}),
        /** Higher difficulty; Kowalik, J. S., Osborne, M. R., 1978. */
        MGH09(
                (b, x) -> {
                    Dual above = b[1].times(x).plus(x * x).times(b[0]);
                    return above.over(b[2].times(x).plus(x * x).plus(b[3]));
                },
                new double[][] {{25, 39, 41.5, 39}, {0.25, 0.39, 0.415, 0.39}},
                new double[] {
                    1.9280693458E-01, 1.9128232873E-01, 1.2305650693E-01, 1.3606233068E-01
                },
                new double[] {
                    1.1435312227E-02, 1.9633220911E-01, 8.0842031232E-02, 9.0025542308E-02
                },
                3.0750560385E-04,
                new double[] {
                    0.1957, 0.1947, 0.1735, 0.1600, 0.0844, 0.0627, 0.0456, 0.0342, 0.0323, 0.0235,
                    0.0246
                },
                new double[] {4, 2, 1, 0.5, 0.25, 0.167, 0.125, 0.1, 0.0833, 0.0714, 0.0625}),
        /** Higher difficulty; Ratkowsky, D. A., 1983, growth of onions. */
        RAT43(
                (b, x) -> {
                    Dual e = b[1].minus(b[2].times(x)).exp().plus(1);
                    return b[0].over(e.log().over(b[3]).exp());
                },
                new double[][] {{100, 10, 1, 1}, {700, 5, 0.75, 1.3}},
                new double[] {
                    6.9964151270E+02, 5.2771253025E+00, 7.5962938329E-01, 1.2792483859E+00
                },
                new double[] {
                    1.6302297817E+01, 2.0828735829E+00, 1.9566123451E-01, 6.8761936385E-01
                },
                8.7864049080E+03,
                new double[] {
                    16.08, 33.83, 65.80, 97.20, 191.55, 326.20, 386.87, 520.53, 590.03, 651.92,
                    724.93, 699.56, 689.96, 637.56, 717.41
                },
                new double[] {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15});

        final Curve curve;
        final double[][] starts;
        final double[] certified;
        final double[] deviations;
        final double sumOfSquares;
        final double[] y;
        final double[] x;

        Set(
                Curve curve,
                double[][] starts,
                double[] certified,
                double[] deviations,
                double sumOfSquares,
                double[] y,
                double[] x) {
            this.curve = curve;
            this.starts = starts;
            this.certified = certified;
            this.deviations = deviations;
            this.sumOfSquares = sumOfSquares;
            this.y = y;
            this.x = x;
        }

        LeastSquares problem(boolean positive) {
            boolean[] signs = new boolean[certified.length];
            java.util.Arrays.fill(signs, positive);
            return new LeastSquares(
                    y.length,
                    signs,
                    (b, rows) -> {
                        for (int i = 0; i < rows.length; i++) {
                            rows[i] = curve.at(b, x[i]).minus(y[i]);
                        }
                    });
        }
    }

    private static void assertCertified(Set set, LeastSquaresFit fit) {
        for (int k = 0; k < set.certified.length; k++) {
            assertThat(fit.value(k) / set.certified[k]).isCloseTo(1, within(1e-8));
        }
        assertThat(fit.sumOfSquares() / set.sumOfSquares).isCloseTo(1, within(1e-9));
        assertThat(fit.freedom()).isEqualTo(set.y.length - set.certified.length);
    }

    @ParameterizedTest
    @EnumSource
    void nearStartGivesTheCertifiedValues(Set set) {
        LeastSquaresFit fit = set.problem(false).fit(set.starts[1]);
        assertThat(fit.status()).isEqualTo(LeastSquaresFit.Status.CONVERGED);
        assertCertified(set, fit);
        for (int k = 0; k < set.certified.length; k++) {
            assertThat(fit.scatter() * fit.deviation(k) / set.deviations[k])
                    .isCloseTo(1, within(1e-7));
        }
    }

    /** From afar it may fail, and then says so. */
    @ParameterizedTest
    @EnumSource
    void farStartGivesTheCertifiedValuesOrDoesNotClaimTo(Set set) {
        LeastSquaresFit fit = set.problem(false).fit(set.starts[0]);
        if (fit.status() == LeastSquaresFit.Status.CONVERGED) {
            assertCertified(set, fit);
        }
    }

    /** Logarithms change the way there, not the place. */
    @ParameterizedTest
    @EnumSource
    void logarithmsGiveTheSameValues(Set set) {
        LeastSquaresFit fit = set.problem(true).fit(set.starts[1]);
        assertThat(fit.status()).isEqualTo(LeastSquaresFit.Status.CONVERGED);
        assertCertified(set, fit);
        for (int k = 0; k < set.certified.length; k++) {
            assertThat(fit.scatter() * fit.deviation(k) * set.certified[k] / set.deviations[k])
                    .isCloseTo(1, within(1e-7));
        }
    }

    @Test
    void mostFarStartsArrive() {
        long arrived =
                java.util.Arrays.stream(Set.values())
                        .filter(
                                set ->
                                        set.problem(false).fit(set.starts[0]).status()
                                                == LeastSquaresFit.Status.CONVERGED)
                        .count();
        assertThat(arrived).isGreaterThanOrEqualTo(3);
    }
}
