package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The light of a fire, summed over a sphere, and the order of what is from memory. */
class PackFireTest {

    @Test
    void allThatShinesGoesThroughTheSphere() {
        double heat = 3e6;
        double burn = 50;
        double radiant = 0.3;
        double r = PackFire.radiantM(heat, burn, radiant, 1200);
        double through = 0;
        int n = 2000;
        for (int k = 0; k < n; k++) {
            double polar = (k + 0.5) * Math.PI / n;
            through += 1200 * 2 * Math.PI * r * r * Math.sin(polar) * Math.PI / n;
        }
        assertThat(through * burn).isCloseTo(radiant * heat, within(1e-6 * heat));
    }

    /**
     * From memory: 1.5 to 3 times the stored energy, 20 to 40 % shining, 30 s to 2 min, 2.5 kW/m².
     */
    @Test
    void whatIsFromMemory() {
        assertThat(PackFire.LEAST_HEAT).isEqualTo(1.5);
        assertThat(PackFire.MOST_HEAT).isEqualTo(3);
        assertThat(PackFire.LEAST_RADIANT).isEqualTo(0.2);
        assertThat(PackFire.MOST_RADIANT).isEqualTo(0.4);
        assertThat(PackFire.SHORTEST_S).isEqualTo(30);
        assertThat(PackFire.LONGEST_S).isEqualTo(120);
        assertThat(PackFire.PAIN_WPM2).isEqualTo(2500);
        assertThat(PackFire.FLAME_M).isEqualTo(1);
    }
}
