package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CentralDifferencesTest {

    /**
     * A decay with a known answer: amplitude, rate and offset come back, and so do their slopes.
     */
    @Test
    void slopesAreThoseOfTheClosedForm() {
        double[] time = {0, 0.5, 1, 2, 4};
        boolean[] positive = {true, true, false};
        var rows =
                new CentralDifferences(
                        (x, into) -> {
                            for (int i = 0; i < time.length; i++) {
                                into[i] = x[0] * Math.exp(-x[1] * time[i]) + x[2];
                            }
                        },
                        positive,
                        new double[] {1, 1, 1});
        Dual[] at = {
            Dual.unknown(3, 0, 3).times(1), Dual.unknown(0.7, 1, 3), Dual.unknown(-0.2, 2, 3)
        };
        Dual[] out = new Dual[time.length];
        rows.at(at, out);
        for (int i = 0; i < time.length; i++) {
            double decay = Math.exp(-0.7 * time[i]);
            assertThat(out[i].value()).isEqualTo(3 * decay - 0.2);
            assertThat(out[i].slope(0)).isCloseTo(decay, within(1e-8));
            assertThat(out[i].slope(1)).isCloseTo(-3 * time[i] * decay, within(1e-8));
            assertThat(out[i].slope(2)).isCloseTo(1, within(1e-8));
        }
    }

    /** The slopes handed in are those by the coordinate of the fit, ln x for a positive unknown. */
    @Test
    void aFitFindsThePlantedValues() {
        double[] time = {0, 0.5, 1, 2, 4, 6};
        boolean[] positive = {true, true, false};
        var fit =
                new LeastSquares(
                                time.length,
                                positive,
                                new CentralDifferences(
                                        (x, into) -> {
                                            for (int i = 0; i < time.length; i++) {
                                                into[i] =
                                                        x[0] * Math.exp(-x[1] * time[i])
                                                                + x[2]
                                                                - (3 * Math.exp(-0.7 * time[i])
                                                                        - 0.2);
                                            }
                                        },
                                        positive,
                                        new double[] {1, 1, 1}))
                        .tolerance(1e-8)
                        .fit(new double[] {1, 0.2, 0});
        assertThat(fit.status()).isEqualTo(LeastSquaresFit.Status.CONVERGED);
        assertThat(fit.value(0)).isCloseTo(3, within(1e-7));
        assertThat(fit.value(1)).isCloseTo(0.7, within(1e-7));
        assertThat(fit.value(2)).isCloseTo(-0.2, within(1e-7));
        assertThat(fit.evaluations()).isLessThan(60);
    }
}
