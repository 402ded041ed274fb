package liftwright.plant;

import static liftwright.plant.RigSketch.si;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.random.RandomGenerator;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.CellType;
import liftwright.rig.Control;
import liftwright.rig.Demands;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wiring;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Thrusts given, on random networks of any topology: the duties that are found, ordered as duties
 * in the independent formulation of {@link Referee}, give those thrusts and those voltages. And
 * what stands open is as if it were not there.
 */
class OrdersAgainstRefereeTest {

    private static final double SAME = 1e-9;

    private static final class Tally {
        int rigs;
        int held;
        int fallen;
    }

    @Test
    void thrustsOrderedAreThrustsGiven() {
        Tally tally = new Tally();
        Seeded.check(
                Seeded.deep() ? 400 : 1500,
                random -> thrusts(RandomRigs.exact(random), random, tally));
        if (tally.rigs > 1000) {
            assertThat(tally.held).as("fans that hold their thrust").isGreaterThan(2000);
            assertThat(tally.fallen).as("fans at their end").isGreaterThan(300);
        }
    }

    private static void thrusts(Rig drawn, RandomGenerator random, Tally tally) {
        tally.rigs++;
        RigSketch sketch = rested(drawn);
        Rig rig = sketch.rig();
        Plant plant = Plant.assemble(rig);
        double[] p = plant.parameters().nominal();
        SteadyState full = plant.state();
        plant.solve(p, Effects.ALL, plant.workspace(), full);
        double[] wanted = new double[full.fans()];
        for (int fan = 0; fan < wanted.length; fan++) {
            wanted[fan] = full.fanThrustN(fan) * random.nextDouble(0.2, 1.2);
        }
        Discharge run = plant.discharge();
        run.load(p, new CellDraw.Expected());
        run.start();
        run.follow(new Order.Thrusts(wanted), 0, at -> {});
        assertThat(run.failed()).isFalse();
        assertThat(run.network().closure()).isLessThan(1e-9);

        List<Control.Group> groups = new ArrayList<>();
        for (int fan = 0; fan < wanted.length; fan++) {
            Fan of = rig.fans().get(fan);
            boolean fed = full.fanFed(fan);
            boolean falls = fed && run.fans().units().falls(fan);
            if (fed && run.fans().units().isStopped(fan)) {
                return; // below its cut-off: another test's matter
            }
            double duty = !fed ? 0 : falls ? 1 : run.fans().units().duty(fan);
            groups.add(
                    new Control.Group(
                            "g" + fan,
                            RigPath.of("control", "groups", "g" + fan),
                            List.of(of.id()),
                            si(duty)));
        }
        sketch.groups.clear();
        sketch.groups.addAll(groups);
        Referee referee = new Referee(sketch.rig(), Effects.ALL);
        for (int fan = 0; fan < wanted.length; fan++) {
            if (!full.fanFed(fan)) {
                continue;
            }
            assertThat(run.network().loadTerminalV(fan))
                    .as("voltage of fan " + fan)
                    .isCloseTo(referee.terminalV[fan], within(SAME * referee.terminalV[fan]));
            if (run.fans().units().falls(fan)) {
                tally.fallen++;
                assertThat(referee.thrustN[fan]).isLessThanOrEqualTo(wanted[fan] * (1 + 1e-7));
            } else {
                tally.held++;
                assertThat(referee.thrustN[fan]).isCloseTo(wanted[fan], within(1e-7 * wanted[fan]));
            }
        }
    }

    /** Rested packs at their own charge, no slow voltages: the moment a run begins. */
    private static RigSketch rested(Rig drawn) {
        RigSketch sketch = RigSketch.of(drawn);
        sketch.demands = new Demands(si(1), si(60), si(0.2), si(1));
        List<Pack> packs = List.copyOf(sketch.packs);
        sketch.packs.clear();
        for (Pack pack : packs) {
            CellType cell = pack.cell();
            CellType fast =
                    new CellType(
                            cell.name(),
                            cell.chemistry(),
                            cell.capacity(),
                            cell.resistance(),
                            List.of(),
                            cell.resistanceOverCharge(),
                            cell.ageing(),
                            cell.temperatureCoefficient(),
                            cell.mass(),
                            cell.openCircuit(),
                            cell.openCircuitDoubt(),
                            cell.continuousCurrent(),
                            cell.peakCurrent(),
                            cell.measured());
            sketch.packs.add(Copies.of(pack).cell(fast).unmarked().made());
        }
        return sketch;
    }

    @Test
    void anOpenContactorIsAsIfItsChainsWereNotThere() {
        int[] opened = {0};
        Seeded.check(
                500,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    RigSketch without = RigSketch.of(rig);
                    without.chains.removeIf(OrdersAgainstRefereeTest::hasMain);
                    if (without.chains.size() == rig.wiring().chains().size()) {
                        return;
                    }
                    opened[0]++;
                    SteadyState open = solved(Plant.assemble(rig, Set.of("main")));
                    SteadyState gone = solved(Plant.assemble(without.rig()));
                    assertThat(open.fansWithoutSupply()).isEqualTo(gone.fansWithoutSupply());
                    for (int fan = 0; fan < open.fans(); fan++) {
                        assertThat(open.fanFed(fan)).isEqualTo(gone.fanFed(fan));
                        assertThat(open.fanTerminalV(fan))
                                .isCloseTo(gone.fanTerminalV(fan), within(1e-9));
                    }
                    for (int chain = 0; chain < open.chains(); chain++) {
                        if (hasMain(rig.wiring().chains().get(chain))) {
                            assertThat(open.chainA(chain)).isZero();
                        }
                    }
                });
        if (opened[0] > 1) {
            assertThat(opened[0]).as("rigs with a contactor").isGreaterThan(20);
        }
    }

    private static boolean hasMain(Wiring.Chain chain) {
        return chain.elements().stream()
                .anyMatch(
                        element ->
                                element instanceof Element.Pole pole
                                        && pole.contactor().name().equals("main"));
    }

    private static SteadyState solved(Plant plant) {
        SteadyState state = plant.state();
        plant.solve(plant.parameters().nominal(), Effects.ALL, plant.workspace(), state);
        assertThat(state.converged()).isTrue();
        return state;
    }
}
