package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

class CellHeatTest {

    /** 60 A through 2 mΩ in half a kilogram of 1000 J/(kg·K): 0.864 K a minute (closed form). */
    @Test
    void aCellWarmsItself() {
        double rise = CellHeat.lossW(60, 2e-3) * 60 / (0.5 * 1000);
        assertThat(rise).isCloseTo(0.864, within(1e-9));
        assertThat(CellHeat.lossW(-60, 2e-3)).isEqualTo(CellHeat.lossW(60, 2e-3));
    }

    /** 50 W behind 2 K/W into 500 J/K for 600 s: 45.119 K of 100 K (closed form). */
    @Test
    void oneNode() {
        double watts = CellHeat.lossW(50, 20e-3);
        assertThat(watts).isCloseTo(50, within(1e-12));
        assertThat(CellLaw.lumpAfterK(300, 300, watts, 500, 0.5, 600) - 300)
                .isCloseTo(45.119, within(1e-3));
    }

    /**
     * Energy closes: over a pulse, what the open-circuit voltage gives is what the terminals give,
     * what warms the cell, and what the pair's capacitor holds at the end.
     */
    @Test
    void whatIsLostIsWhatWarms() {
        Seeded.check(
                50,
                random -> {
                    double instant = random.nextDouble(1e-3, 50e-3);
                    double pair = random.nextDouble(1e-3, 50e-3);
                    double farad = random.nextDouble(100, 5000);
                    double current = random.nextDouble(-50, 50);
                    double end = random.nextDouble(1, 200);
                    int steps = 20_000;
                    double step = end / steps;
                    double lost = 0;
                    double dropped = 0;
                    double volt = 0;
                    for (int k = 0; k < steps; k++) {
                        volt = current * pair * (1 - Math.exp(-(k + 0.5) * step / (pair * farad)));
                        lost += step * CellHeat.lossW(current, instant, volt, pair);
                        dropped += step * current * (current * instant + volt);
                    }
                    volt = current * pair * (1 - Math.exp(-end / (pair * farad)));
                    assertThat(lost + farad * volt * volt / 2)
                            .isCloseTo(dropped, within(1e-5 * Math.abs(dropped)));
                });
    }

    @Test
    void pairsAddUp() {
        double[] volt = {0.03, 0.05};
        double[] ohm = {2e-3, 5e-3};
        assertThat(CellHeat.lossW(10, 4e-3, volt, ohm)).isCloseTo(0.4 + 0.45 + 0.5, within(1e-12));
        assertThat(CellHeat.lossW(10, 4e-3, 0.03, 2e-3)).isCloseTo(0.4 + 0.45, within(1e-12));
        assertThat(CellHeat.lossW(10, 4e-3, new double[0], new double[0])).isEqualTo(0.4);
    }
}
