package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.plant.hold.FanAlone;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** A fan that runs alone, on random rigs: against the same fan among others, and on no load. */
class FullThrustTest {

    @Test
    void aFanAlonePushesAtLeastAsMuchAsAmongOthersAndAtMostAsOnNoSag() {
        Seeded.check(
                60,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    Plant plant = Plant.assemble(rig);
                    double[] p = plant.parameters().nominal();
                    List<FanAlone> alone = plant.fullThrust().at(p).orElseThrow();
                    SteadyState together = plant.state();
                    Effects full = Effects.ALL.withCharge(false);
                    plant.solve(p, full, plant.workspace(), together);
                    SteadyState free = plant.state();
                    plant.solve(p, full.withSag(false), plant.workspace(), free);
                    assertThat(alone).hasSameSizeAs(rig.fans());
                    for (int k = 0; k < alone.size(); k++) {
                        FanAlone fan = alone.get(k);
                        boolean ownShare =
                                rig.control().groups().stream()
                                        .anyMatch(g -> g.fans().contains(fan.id()));
                        assertThat(fan.thrustN())
                                .isGreaterThanOrEqualTo(together.fanThrustN(k) * (1 - 1e-9));
                        if (!ownShare) {
                            assertThat(fan.thrustN())
                                    .isLessThanOrEqualTo(free.fanThrustN(k) * (1 + 1e-9));
                        }
                        assertThat(fan.direction().length()).isCloseTo(1, within(1e-12));
                        assertThat(-fan.direction().z())
                                .isCloseTo(plant.upShare(p, k), within(1e-12));
                        assertThat(fan.at().minus(plant.fanPlace(p, k)).length()).isLessThan(1e-12);
                        double against = Math.signum(fan.swirlNm());
                        if (against != 0 && rig.fans().get(k).type().swirl().si() > 0) {
                            assertThat(against)
                                    .isEqualTo(
                                            rig.fans().get(k).spin() == Fan.Spin.RIGHT_HAND
                                                    ? -1
                                                    : 1);
                        }
                    }
                });
    }

    @Test
    void theOnlyFanOfARigIsAloneAnyway() {
        RigSketch sketch = RigSketch.of(RandomRigs.exact(new java.util.SplittableRandom(3)));
        while (sketch.fans.size() > 1) {
            sketch.fans.removeLast();
        }
        sketch.groups.clear();
        Rig rig = sketch.rig();
        Plant plant = Plant.assemble(rig);
        double[] p = plant.parameters().nominal();
        SteadyState state = plant.state();
        plant.solve(p, Effects.ALL.withCharge(false), plant.workspace(), state);
        FanAlone fan = plant.fullThrust().at(p).orElseThrow().getFirst();
        assertThat(fan.thrustN()).isPositive().isCloseTo(state.fanThrustN(0), within(1e-9));
    }
}
