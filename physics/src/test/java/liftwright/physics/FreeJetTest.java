package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class FreeJetTest {

    /**
     * Radius and share are each other's inverse beyond the core; at the exit the stream is even.
     */
    @Test
    void raysHoldTheirShareOfMomentum() {
        double area = 0.0128;
        double core = 6.1 * Math.sqrt(4 * area / Math.PI);
        assertThat(FreeJet.coreM(area)).isCloseTo(core, within(1e-12));
        for (double share = 0; share < 1; share += 0.09) {
            for (double x : new double[] {core, 1.5 * core, 4 * core}) {
                double r = FreeJet.radiusM(share, x, area);
                if (share > 0) {
                    assertThat(FreeJet.momentumShare(Math.PI * r * r, x, area))
                            .isCloseTo(share, within(1e-12));
                }
            }
            double exit = FreeJet.radiusM(share, 0, area);
            assertThat(Math.PI * exit * exit / area).isCloseTo(share, within(1e-12));
        }
    }

    /** Sixteen merged jets reach four times as far; the wall jet falls with r^−1.1. */
    @Test
    void mergedJetsReachFurther() {
        double one = FreeJet.axisSpeedShare(2, 0.0128, 1);
        assertThat(one).isCloseTo(6.1 * Math.sqrt(4 * 0.0128 / Math.PI) / 2, within(1e-12));
        assertThat(FreeJet.axisSpeedShare(8, 0.0128, 16)).isCloseTo(one, within(1e-12));
        assertThat(FreeJet.axisSpeedShare(0.1, 0.0128, 1)).isEqualTo(1);
        assertThat(FreeJet.wallSpeedShare(4, 1) / FreeJet.wallSpeedShare(2, 1))
                .isCloseTo(Math.pow(2, -1.1), within(1e-12));
        assertThatThrownBy(() -> FreeJet.wallSpeedShare(1.9, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FreeJet.radiusM(1, 1, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FreeJet.axisSpeedShare(1, 1, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theReachOfAWallJetIsWhereItHasThatSpeed() {
        for (double share : new double[] {0.02, 0.1, 0.4}) {
            double reach = FreeJet.wallReachM(share, 0.6);
            assertThat(FreeJet.wallSpeedShare(reach, 0.6)).isCloseTo(share, within(1e-12));
        }
        assertThat(FreeJet.wallReachM(0.9, 0.6)).isEqualTo(1.2);
        assertThatThrownBy(() -> FreeJet.wallReachM(0, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FreeJet.wallReachM(1, 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Momentum of the Gaussian over all radii, by Simpson's rule, is that of the exit. */
    @Test
    void theConstantsCarryTheMomentumOfTheExit() {
        double diameter = 0.1;
        double x = 2;
        double axis = FreeJet.CORE_DIAMETERS * diameter / x;
        double half = FreeJet.HALF_SPEED_SLOPE * x;
        double sum = 0;
        int n = 2000;
        double step = 6 * half / n;
        for (int i = 0; i <= n; i++) {
            double r = i * step;
            double v = axis * Math.exp(-Math.log(2) * (r / half) * (r / half));
            double weight = i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * v * v * 2 * Math.PI * r;
        }
        double exit = Math.PI / 4 * diameter * diameter;
        assertThat(sum * step / 3 / exit).isCloseTo(1, within(0.015));
    }

    /** The share against the integral of the profile over the disc. */
    @Test
    void theShareIsTheIntegralOfTheProfile() {
        Seeded.check(
                200,
                random -> {
                    double exit = random.nextDouble(0.002, 0.05);
                    double x = random.nextDouble(6.2, 40) * Math.sqrt(4 * exit / Math.PI);
                    double area = random.nextDouble(0.01, 3) * exit;
                    double half = 0.096 * x;
                    double disc = Math.sqrt(area / Math.PI);
                    assertThat(FreeJet.momentumShare(area, x, exit))
                            .isCloseTo(inside(disc, half) / inside(8 * half, half), within(1e-5));
                });
    }

    private static double inside(double radius, double half) {
        int n = 2000;
        double sum = 0;
        double step = radius / n;
        for (int i = 0; i < n; i++) {
            double r = (i + 0.5) * step;
            sum += Math.pow(0.5, 2 * (r / half) * (r / half)) * r * step;
        }
        return sum;
    }

    @Test
    void withinTheCoreABodyMeetsItsShareOfTheExitAndNoMoreThanAll() {
        assertThat(FreeJet.momentumShare(0.0012, 0.2, 0.012)).isCloseTo(0.1, within(1e-12));
        assertThat(FreeJet.momentumShare(0.02, 0.2, 0.012)).isEqualTo(1);
        double diameter = Math.sqrt(4 * 0.012 / Math.PI);
        double before = FreeJet.momentumShare(0.0006, 6.09 * diameter, 0.012);
        double behind = FreeJet.momentumShare(0.0006, 6.11 * diameter, 0.012);
        assertThat(behind).isCloseTo(before, within(0.03 * before));
    }

    @Test
    void whatIsNoPlaceIsRefused() {
        assertThatThrownBy(() -> FreeJet.momentumShare(0, 1, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FreeJet.momentumShare(1, -1, 1))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FreeJet.momentumShare(1, 1, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /**
     * Over any section the jet carries the momentum of its exit; at a half-width half the speed.
     */
    @Test
    void everySectionCarriesTheMomentumOfTheExit() {
        Seeded.check(
                100,
                random -> {
                    double exit = random.nextDouble(0.002, 0.05);
                    double x = random.nextDouble(0.02, 40) * Math.sqrt(4 * exit / Math.PI);
                    double wide = Math.sqrt(exit / Math.PI) + 5 * 0.096 * x;
                    int n = 4000;
                    double sum = 0;
                    for (int i = 0; i < n; i++) {
                        double r = (i + 0.5) * wide / n;
                        double share = FreeJet.speedShare(x, r, exit);
                        sum += share * share * 2 * Math.PI * r * wide / n;
                    }
                    boolean core = x < 6.1 * Math.sqrt(4 * exit / Math.PI);
                    assertThat(sum / exit).isCloseTo(1, within(core ? 2e-3 : 0.012));
                    assertThat(FreeJet.speedShare(x, 0, exit))
                            .isCloseTo(FreeJet.axisSpeedShare(x, exit, 1), within(1e-12));
                    if (!core) {
                        assertThat(FreeJet.speedShare(x, 0.096 * x, exit))
                                .isCloseTo(FreeJet.speedShare(x, 0, exit) / 2, within(1e-12));
                    }
                });
        assertThat(FreeJet.speedShare(0, 0.05, 0.0128)).isEqualTo(1);
        assertThat(FreeJet.speedShare(0, 0.07, 0.0128)).isZero();
    }
}
