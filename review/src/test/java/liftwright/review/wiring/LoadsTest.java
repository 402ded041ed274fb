package liftwright.review.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** What chains carry. */
class LoadsTest {

    /** What leaves the packs in a hover is weight's worth of power; full throttle is more. */
    @Test
    void hoverAndFullThrottleOfAnExample() {
        for (String name : List.of("mudlark", "sandpiper")) {
            Rig rig = Sketch.example(name);
            Plant plant = Plant.assemble(rig);
            Loads loads = Loads.of(plant);
            double[] p = plant.parameters().nominal();
            SteadyState full = plant.state();
            plant.solve(p, Effects.ALL.withCharge(false), plant.workspace(), full);
            double share = plant.weightN(p) / full.liftN();
            assertThat(share).isLessThan(1);
            for (int chain = 0; chain < loads.worstA().length; chain++) {
                double most = Math.abs(full.chainA(chain));
                assertThat(loads.worstA()[chain]).isGreaterThanOrEqualTo(most);
                assertThat(loads.worstA()[chain]).isCloseTo(most, within(0.1 * most));
                // Power goes as thrust^1.5; sag and losses of part load add to it.
                assertThat(loads.expectedA()[chain] / most)
                        .isBetween(Math.pow(share, 1.5) * 0.95, Math.pow(share, 1.5) * 1.4);
            }
        }
    }
}
