package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** The operating point of any rig equals that of an independent formulation. */
class PlantAgainstRefereeTest {

    private static final double SAME = 1e-9;

    @Test
    void withAllEffects() {
        Seeded.check(
                Seeded.deep() ? 1600 : 8000,
                random -> compare(RandomRigs.exact(random), Effects.ALL));
    }

    @Test
    void withAnyEffects() {
        Seeded.check(
                Seeded.deep() ? 500 : 2500,
                random -> compare(RandomRigs.exact(random), effects(random)));
    }

    /** The comparison is worth what the rigs contain: all that makes networks hard occurs. */
    @Test
    void theRandomRigsContainWhatIsHard() {
        Set<String> met = new TreeSet<>();
        Seeded.check(
                200,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    Plant plant = Plant.assemble(rig);
                    SteadyState state = plant.state();
                    double[] p = plant.parameters().nominal();
                    plant.solve(p, Effects.ALL, plant.workspace(), state);
                    for (int f = 0; f < state.fans(); f++) {
                        met.add(state.fanFed(f) ? "fed" : "unfed");
                        met.add(state.fanLimited(f) ? "limited" : "free");
                        met.add(state.fanDuty(f) < 0.99 ? "part duty" : "full duty");
                        if (state.fanFed(f) && state.fanSpeedRadps(f) == 0) {
                            met.add("stalled");
                        }
                    }
                    for (int k = 0; k < state.packs(); k++) {
                        met.add(state.packA(k) < -1 ? "charged" : "discharged");
                    }
                    if (rig.wiring().chains().stream().anyMatch(c -> c.elements().isEmpty())) {
                        met.add("direct");
                    }
                });
        assertThat(met)
                .contains(
                        "fed",
                        "unfed",
                        "limited",
                        "free",
                        "part duty",
                        "full duty",
                        "charged",
                        "discharged",
                        "direct");
    }

    private static Effects effects(RandomGenerator random) {
        return new Effects(
                random.nextBoolean(),
                random.nextBoolean(),
                random.nextBoolean(),
                random.nextBoolean(),
                random.nextBoolean(),
                random.nextBoolean(),
                random.nextBoolean());
    }

    private static void compare(Rig rig, Effects effects) {
        Plant plant = Plant.assemble(rig);
        double[] p = plant.parameters().nominal();
        SteadyState state = plant.state();
        plant.solve(p, effects, plant.workspace(), state);
        Referee referee = new Referee(rig, effects);
        assertThat(state.converged()).isTrue();
        assertThat(state.closure()).isLessThan(1e-9);
        int unfed = 0;
        for (int f = 0; f < state.fans(); f++) {
            assertThat(state.fanFed(f)).isEqualTo(referee.fed[f]);
            unfed += referee.fed[f] ? 0 : 1;
            same(state.fanTerminalV(f), referee.terminalV[f], "voltage of fan " + f);
            same(state.fanDuty(f), referee.duty[f], "duty of fan " + f);
            same(state.fanSpeedRadps(f), referee.speed[f], "speed of fan " + f);
            same(state.fanWindingA(f), referee.windingA[f], "winding current of fan " + f);
            same(state.fanBusA(f), referee.busA[f], "bus current of fan " + f);
            same(state.fanThrustN(f), referee.thrustN[f], "thrust of fan " + f);
            same(state.fanUpwardThrustN(f), referee.upwardN[f], "upward thrust of fan " + f);
        }
        assertThat(state.fansWithoutSupply()).isEqualTo(unfed);
        same(state.liftN(), referee.liftN, "lift");
        double currents = 1;
        for (double amps : referee.busA) {
            currents += amps;
        }
        for (int k = 0; effects.sag() && k < state.packs(); k++) {
            assertThat(state.packA(k))
                    .as("current of pack " + k)
                    .isCloseTo(referee.packA[k], within(SAME * currents));
        }
        for (int k = 0; effects.sag() && k < state.chains(); k++) {
            assertThat(state.chainA(k))
                    .as("current of chain " + k)
                    .isCloseTo(referee.chainA[k], within(SAME * currents));
        }
        same(plant.massKg(p), referee.massKg(), "mass");
        same(plant.mass().massKg(), referee.massKg(), "sum of the parts");
    }

    private static void same(double actual, double expected, String what) {
        assertThat(actual).as(what).isCloseTo(expected, within(SAME * Math.abs(expected)));
    }
}
