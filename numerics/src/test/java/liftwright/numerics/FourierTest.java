package liftwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** The referee is the sum by which the transform is defined, term by term. */
class FourierTest {

    @Test
    void everyTermIsTheSumThatDefinesIt() {
        Seeded.check(
                60,
                random -> {
                    int size = 1 << random.nextInt(1, 9);
                    double[] re = random.doubles(size, -1, 1).toArray();
                    double[] im = random.doubles(size, -1, 1).toArray();
                    double[] wantedRe = new double[size];
                    double[] wantedIm = new double[size];
                    for (int k = 0; k < size; k++) {
                        for (int n = 0; n < size; n++) {
                            double angle = -2 * Math.PI * ((long) k * n % size) / size;
                            wantedRe[k] += re[n] * Math.cos(angle) - im[n] * Math.sin(angle);
                            wantedIm[k] += re[n] * Math.sin(angle) + im[n] * Math.cos(angle);
                        }
                    }
                    new Fourier(size).transform(re, im);
                    assertThat(re).usingComparatorWithPrecision(1e-11).containsExactly(wantedRe);
                    assertThat(im).usingComparatorWithPrecision(1e-11).containsExactly(wantedIm);
                });
    }

    @Test
    void theEnergyStays() {
        // Parseval: Σ|x|² = Σ|X|² / size.
        Seeded.check(
                20,
                random -> {
                    double[] re = random.doubles(1 << 14, -1, 1).toArray();
                    double[] im = new double[re.length];
                    double before = energy(re, im);
                    new Fourier(re.length).transform(re, im);
                    assertThat(energy(re, im) / re.length).isCloseTo(before, within(1e-9 * before));
                });
    }

    @Test
    void onlyPowersOfTwoAreTransformed() {
        for (int size : new int[] {-4, 0, 1, 3, 12, (1 << 24) + 1, 1 << 25}) {
            assertThatThrownBy(() -> new Fourier(size)).hasMessageContaining("power of two");
        }
        assertThatThrownBy(() -> new Fourier(8).transform(new double[8], new double[4]))
                .hasMessage("not 8 numbers");
        assertThat(Fourier.atLeast(1)).isEqualTo(2);
        assertThat(Fourier.atLeast(2)).isEqualTo(2);
        assertThat(Fourier.atLeast(1024)).isEqualTo(1024);
        assertThat(Fourier.atLeast(1025)).isEqualTo(2048);
    }

    private static double energy(double[] re, double[] im) {
        double sum = 0;
        for (int k = 0; k < re.length; k++) {
            sum += re[k] * re[k] + im[k] * im[k];
        }
        return sum;
    }
}
