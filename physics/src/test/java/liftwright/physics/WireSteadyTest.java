package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import liftwright.testkit.Seeded;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

class WireSteadyTest {

    private static WireSteady tenGauge(double outerM, double airMps) {
        return new WireSteady(
                3.2770e-3, outerM, Double.POSITIVE_INFINITY, 293.15, 101_325, airMps, 0.9);
    }

    /**
     * Solid 10 AWG, 3.5 mm over the insulation, ε 0.9, 20 °C, drop in the wall neglected: 30 A
     * gives 36.6 °C and 60 A 81.1 °C (recomputed in another language from the papers' formulas).
     */
    @Test
    void aTenGaugeWireInStillAir() {
        WireSteady wire = tenGauge(3.5e-3, 0);
        assertThat(wire.conductorK(30) - 273.15).isCloseTo(36.555, within(0.005));
        assertThat(wire.conductorK(60) - 273.15).isCloseTo(81.118, within(0.005));
        assertThat(wire.conductorK(0)).isCloseTo(293.15, within(1e-6));
        assertThat(wire.conductorK(-30)).isEqualTo(wire.conductorK(30));
    }

    /** The heat made is the heat given, at surface and conductor. */
    @Test
    void heatMadeIsHeatGiven() {
        Seeded.check(
                200,
                random -> {
                    double outer = random.nextDouble(1e-3, 20e-3);
                    double ohmpm = random.nextDouble(1e-4, 2e-2);
                    double wall = random.nextDouble(0.5, 10);
                    double air = random.nextDouble(250, 320);
                    double mps = random.nextInt(2) * random.nextDouble(0, 10);
                    WireSteady wire = new WireSteady(ohmpm, outer, wall, air, 90_000, mps, 0.8);
                    double current = Math.sqrt(random.nextDouble(0.5, 20) / ohmpm);
                    double conductor = wire.conductorK(current);
                    if (conductor == Double.POSITIVE_INFINITY) {
                        return;
                    }
                    double made = current * current * ohmpm * (1 + 0.00393 * (conductor - 293.15));
                    assertThat(wire.heatWpm(conductor)).isCloseTo(made, withPercentage(1e-4));
                    double surface = conductor - made / wall;
                    assertThat(
                                    SurfaceExchange.wireWpmK(outer, surface, air, 90_000, mps, 0.8)
                                            * (surface - air))
                            .isCloseTo(made, withPercentage(1e-4));
                    assertThat(wire.conductorK(current * 1.05)).isGreaterThan(conductor);
                    if (conductor < air + 1) {
                        return;
                    }
                    double slope = wire.slopeWpmK(current, conductor);
                    double warmer = conductor + 0.05;
                    double colder = conductor - 0.05;
                    double byHand =
                            (wire.heatWpm(warmer) - wire.heatWpm(colder)) / 0.1
                                    - current * current * ohmpm * 0.00393;
                    assertThat(slope).isCloseTo(byHand, withPercentage(2));
                });
    }

    @Test
    void airAcrossAndAThickerWireCool() {
        double still = tenGauge(3.5e-3, 0).conductorK(60);
        assertThat(tenGauge(3.5e-3, 0.5).conductorK(60)).isLessThan(still);
        assertThat(tenGauge(4.5e-3, 0).conductorK(60)).isLessThan(still);
    }

    /** Where the surface would pass 700 K there is no steady state to tell. */
    @Test
    void aWireThatBurnsHasNone() {
        WireSteady wire = tenGauge(3.5e-3, 0);
        assertThat(wire.conductorK(1000)).isEqualTo(Double.POSITIVE_INFINITY);
        double most =
                Math.sqrt(
                        SurfaceExchange.wireWpmK(3.5e-3, 700, 293.15, 101_325, 0, 0.9)
                                * (700 - 293.15)
                                / (3.2770e-3 * (1 + 0.00393 * (700 - 293.15))));
        assertThat(wire.conductorK(most * 1.0001)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(wire.conductorK(most * 0.9999)).isBetween(699.0, 700.0);
    }

    @Test
    void whatIsNoWireIsRefused() {
        double infinite = Double.POSITIVE_INFINITY;
        for (double bad : new double[] {0, -1, Double.NaN}) {
            refused(() -> new WireSteady(bad, 3e-3, 1, 293.15, 1e5, 0, 0.9));
            refused(() -> new WireSteady(1e-3, bad, 1, 293.15, 1e5, 0, 0.9));
            refused(() -> new WireSteady(1e-3, 3e-3, bad, 293.15, 1e5, 0, 0.9));
            refused(() -> new WireSteady(1e-3, 3e-3, 1, 293.15, bad, 0, 0.9));
        }
        refused(() -> new WireSteady(1e-3, 3e-3, 1, 150, 1e5, 0, 0.9));
        refused(() -> new WireSteady(1e-3, 3e-3, 1, 700, 1e5, 0, 0.9));
        refused(() -> new WireSteady(1e-3, 3e-3, 1, 293.15, 1e5, -1, 0.9));
        refused(() -> new WireSteady(1e-3, 3e-3, 1, 293.15, 1e5, 0, 1.1));
        WireSteady wire = new WireSteady(1e-3, 3e-3, infinite, 293.15, 1e5, 0, 0.9);
        refused(() -> wire.heatWpm(293.14));
        refused(() -> wire.heatWpm(700.1));
        refused(() -> wire.heatWpm(Double.NaN));
        assertThat(wire.heatWpm(293.15)).isCloseTo(0, within(1e-9));
    }

    private static void refused(ThrowingCallable asked) {
        assertThatIllegalArgumentException().isThrownBy(asked);
    }
}
