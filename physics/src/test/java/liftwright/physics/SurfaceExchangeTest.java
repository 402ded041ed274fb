package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

class SurfaceExchangeTest {

    /** Çengel and Ghajar, 5th ed., Example 9-1: a pipe of 0.08 m at 70 °C in a room at 20 °C. */
    @Test
    void naturalConvectionAtAPipe() {
        double prandtl = 0.7241;
        double viscosity = 1.750e-5;
        double rayleigh = 9.81 / 318 * 50 * Math.pow(0.08, 3) / (viscosity * viscosity) * prandtl;
        assertThat(rayleigh).isCloseTo(1.867e6, withPercentage(0.1));
        double nusselt = SurfaceExchange.naturalCylinderNusselt(rayleigh, prandtl);
        assertThat(nusselt).isCloseTo(17.39, withPercentage(0.1));
        double film = 0.02699 / 0.08 * nusselt;
        assertThat(film).isCloseTo(5.867, withPercentage(0.1));
        assertThat(film * Math.PI * 0.08 * 6 * 50).isCloseTo(442, within(0.5));
    }

    /** The value that an open heat-transfer library pins for the same correlation. */
    @Test
    void naturalConvectionAtALargeCylinder() {
        assertThat(SurfaceExchange.naturalCylinderNusselt(0.69 * 2.63e9, 0.69))
                .isCloseTo(139.13493970073597, within(1e-6));
    }

    /** Incropera, Example 9.2: Nu = 147. */
    @Test
    void naturalConvectionAtAPlate() {
        assertThat(SurfaceExchange.naturalPlateNusselt(1.813e9, 0.690)).isCloseTo(147, within(0.5));
    }

    /** Incropera, cylinder in cross-flow (40.6); Çengel and Ghajar (124). */
    @Test
    void forcedConvection() {
        assertThat(SurfaceExchange.crossFlowNusselt(6071, 0.700)).isCloseTo(40.637, within(0.01));
        assertThat(SurfaceExchange.crossFlowNusselt(4.219e4, 0.7202))
                .isCloseTo(124.45, within(0.05));
    }
}
