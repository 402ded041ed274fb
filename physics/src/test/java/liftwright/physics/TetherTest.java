package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Catches against worked numbers and against the motion in the line, integrated. */
class TetherTest {

    private static final double G = 9.80665;

    /** m g (1 + √(1 + 2 h k/(m g))), worked by hand. */
    @ParameterizedTest
    @CsvSource({
        "100, 0.5, 20e3, 5516.63, 0.27583",
        "100, 1.8, 10e3, 7002.76, 0.70028",
        "150, 0.1, 50e3, 5578.77, 0.11158"
    })
    void dropsIntoALine(double kg, double slackM, double k, double peakN, double stretchM) {
        double peak = Tether.dropPeakN(kg, slackM, k);
        assertThat(peak).isCloseTo(peakN, within(0.0051));
        assertThat(peak / k).isCloseTo(stretchM, within(5.1e-6));
    }

    @Test
    void withoutSlackItIsTwiceTheWeight() {
        assertThat(Tether.dropPeakN(83, 0, 12_345)).isCloseTo(2 * 83 * G, within(1e-9));
        assertThat(Tether.catchPeakN(83, 0, 12_345)).isCloseTo(2 * 83 * G, within(1e-9));
    }

    /** Energy, worked by hand: 150 kg at 2 m/s, 20 kN/m. */
    @Test
    void aCatchAtSpeed() {
        assertThat(Tether.catchPeakN(150, 2, 20e3)).isCloseTo(5234.5, within(0.05));
    }

    @Test
    void peaksAreThoseOfTheMotion() {
        Seeded.check(
                100,
                random -> {
                    double mass = random.nextDouble(1, 200);
                    double slack = random.nextDouble(0, 2);
                    double k = random.nextDouble(2e3, 1e5);
                    double v = Math.sqrt(2 * G * slack);
                    // Downwards from where the line is straight until it stands still.
                    double[] low =
                            Marched.until(
                                            s -> s[1] + (s[0] <= 0 ? 1 : 0),
                                            20,
                                            new double[] {0, v},
                                            s ->
                                                    new double[] {
                                                        s[1], G - k * Math.max(0, s[0]) / mass
                                                    })
                                    .getPrimaryState();
                    assertThat(Tether.dropPeakN(mass, slack, k))
                            .isCloseTo(k * low[0], within(1e-6 * k * low[0]));
                    assertThat(Tether.catchPeakN(mass, v, k))
                            .isCloseTo(k * low[0], within(1e-6 * k * low[0]));
                });
    }
}
