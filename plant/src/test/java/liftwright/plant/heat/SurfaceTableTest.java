package liftwright.plant.heat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.random.RandomGenerator;
import liftwright.physics.SurfaceExchange;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * The table of exchange errs by 0.1 % at most against the laws themselves, surface and shell found
 * by bisection.
 */
class SurfaceTableTest {

    private static final double AIR_K = 290;
    private static final double PASCAL = 95_000;

    /** Heat that a shell gives, W/m. */
    private static double heatWpm(
            double outerM, double toSurface, double free, double airMps, double warmerK) {
        double low = Math.min(0, warmerK);
        double high = Math.max(0, warmerK);
        for (int k = 0; k < 80; k++) {
            double surface = (low + high) / 2;
            double given =
                    free
                            * surface
                            * SurfaceExchange.wireWpmK(
                                    outerM, AIR_K + surface, AIR_K, PASCAL, airMps, 0.9);
            if (toSurface * (warmerK - surface) > given) {
                low = surface;
            } else {
                high = surface;
            }
        }
        return toSurface * (warmerK - (low + high) / 2);
    }

    @Test
    void errsByATenthOfAPercentAtMost() {
        Seeded.check(20, SurfaceTableTest::compare);
    }

    private static void compare(RandomGenerator random) {
        double outerM = random.nextDouble(0.8e-3, 20e-3);
        double toSurface = random.nextDouble(2, 60);
        double free = 1 / Math.sqrt(random.nextInt(1, 30));
        double airMps = random.nextBoolean() ? 0 : random.nextDouble(0.1, 40);
        SurfaceTable table = new SurfaceTable();
        table.make(outerM, toSurface, free, AIR_K, PASCAL, airMps);
        for (int k = 0; k < 60; k++) {
            boolean colder = random.nextInt(4) == 0;
            double most = colder ? SurfaceTable.MOST_COLD_K : 0.8 * SurfaceTable.MOST_WARM_K;
            double size = Math.exp(random.nextDouble(Math.log(0.1), Math.log(most)));
            double warmerK = colder ? -size : size;
            double heat = heatWpm(outerM, toSurface, free, airMps, warmerK);
            assertThat(table.conductanceWpmK(warmerK) * warmerK / heat)
                    .as("%s K", warmerK)
                    .isBetween(0.999, 1.001);
            // The slope is that of the heat itself, to what an elimination needs.
            double step = size / 50;
            double slope =
                    (heatWpm(outerM, toSurface, free, airMps, warmerK + step)
                                    - heatWpm(outerM, toSurface, free, airMps, warmerK - step))
                            / (2 * step);
            assertThat(table.slopeWpmK(warmerK) / slope).isBetween(0.97, 1.03);
        }
    }

    @Test
    void isMadeAnewForOtherAir() {
        SurfaceTable table = new SurfaceTable();
        table.make(3e-3, 10, 1, AIR_K, PASCAL, 0);
        double still = table.conductanceWpmK(30);
        table.make(3e-3, 10, 1, AIR_K, PASCAL, 5);
        assertThat(table.conductanceWpmK(30)).isGreaterThan(2 * still);
    }

    /** In the coldest and the hottest air of a site there are entries to every difference. */
    @Test
    void holdsInEveryAir() {
        for (double airK = 223.15; airK < 400; airK += 1.37) {
            SurfaceTable table = new SurfaceTable();
            table.make(3e-3, 10, 1, airK, PASCAL, 0);
            for (double warmerK : new double[] {-500, -64, -1, 0, 1, 500, 5000}) {
                assertThat(table.conductanceWpmK(warmerK)).isBetween(0.02, 2.0);
            }
        }
    }
}
