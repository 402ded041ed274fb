package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

/** Jets on a platform against the profile of the jet, summed over the platform. */
class ScalePressureTest {

    @Test
    void theShareIsThePressureSummedOverThePlatform() {
        Seeded.check(
                30,
                random -> {
                    double exit = random.nextDouble(0.002, 0.05);
                    double x = random.nextDouble(6.2, 30) * Math.sqrt(4 * exit / Math.PI);
                    double half = 0.096 * x;
                    double across = random.nextDouble(-1, 1);
                    double along = random.nextDouble(-1, 1);
                    double width = random.nextDouble(0.2, 2);
                    double depth = random.nextDouble(0.2, 2);
                    int n = 300;
                    double sum = 0;
                    for (int i = 0; i < n; i++) {
                        double dx = across - width / 2 + (i + 0.5) * width / n;
                        for (int j = 0; j < n; j++) {
                            double dy = along - depth / 2 + (j + 0.5) * depth / n;
                            // The square of a speed that halves at the radius of half the speed.
                            sum += Math.pow(0.25, (dx * dx + dy * dy) / (half * half));
                        }
                    }
                    double whole = Math.PI * half * half / (2 * Math.log(2));
                    double share = sum * width * depth / n / n / whole;
                    assertThat(ScalePressure.share(across, along, width, depth, x, exit))
                            .isCloseTo(share, within(2e-4));
                });
    }

    /** Against the library's error function, at the exit too. */
    @Test
    void atEveryDistance() {
        Seeded.check(
                200,
                random -> {
                    double exit = random.nextDouble(0.002, 0.05);
                    double x = random.nextDouble(0, 3);
                    double b = FreeJet.radiusM(0.5, x, exit) / Math.sqrt(Math.log(2));
                    double off = random.nextDouble(-1, 1);
                    double width = random.nextDouble(0.1, 2);
                    double strip =
                            (Erf.erf((off + width / 2) / b) - Erf.erf((off - width / 2) / b)) / 2;
                    assertThat(ScalePressure.share(off, 0, width, 100, x, exit))
                            .isCloseTo(strip, within(1e-13));
                    assertThat(ScalePressure.share(0, off, 100, width, x, exit))
                            .isCloseTo(strip, within(1e-13));
                });
    }

    @Test
    void aLargePlatformTakesAllAndAFarOneNothing() {
        assertThat(ScalePressure.share(0, 0, 50, 50, 1, 0.01)).isCloseTo(1, within(1e-15));
        assertThat(ScalePressure.share(9, 0, 1, 1, 1, 0.01)).isZero();
        assertThat(ScalePressure.share(0.5, 0, 1, 50, 1, 0.01)).isCloseTo(0.5, within(1e-9));
    }
}
