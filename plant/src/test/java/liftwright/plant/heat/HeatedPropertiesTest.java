package liftwright.plant.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.RigSketch;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Element;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;
import liftwright.rig.table.StartState;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What must hold of heat whatever the numbers are, on random rigs and wires. */
class HeatedPropertiesTest {

    private static Discharge started(Plant plant) {
        Discharge run = plant.discharge();
        run.load(plant.parameters().nominal(), new CellDraw.Expected());
        run.start();
        return run;
    }

    /**
     * What parts lose and shafts take is what the cells gave: rest voltage times charge by the
     * reference, less what is left on the slow voltages, C v²/2.
     */
    @Test
    void energyCloses() {
        Seeded.check(
                8,
                random -> {
                    Rig rig = HeatedRigs.random(random);
                    Plant plant = Plant.assembleHeated(rig);
                    Discharge run = started(plant);
                    double share = random.nextDouble(0.4, 1);
                    double forS = random.nextDouble(5, 40);
                    if (!run.follow(new Order.Throttle(share), forS, at -> {})) {
                        return;
                    }
                    HeatedRigRun reference =
                            new HeatedRigRun(rig, plant.heatParts(), RefereeGrid.SAME);
                    reference.throttle(share);
                    reference.go(forS);
                    double given = reference.model.givenJ(reference.run.state());
                    double spent = run.shaftJ();
                    for (int part = 0; part < plant.heatParts().size(); part++) {
                        spent += run.energyJ(part);
                    }
                    assertThat(run.givenJ()).isCloseTo(given, within(1e-3 * given));
                    assertThat(spent).isCloseTo(given, within(1e-3 * given));
                });
    }

    /** The same current in a thicker wire, all else alike: never hotter. */
    @Test
    void thickerIsNeverHotter() {
        Seeded.check(
                60,
                random -> {
                    Rig thin = HeatedWires.random(random).rig();
                    RigSketch sketch = RigSketch.of(thin);
                    Wiring.Chain chain = sketch.chains.getFirst();
                    List<Element> elements = new ArrayList<>(chain.elements());
                    Element.Run run = (Element.Run) elements.get(HeatedWires.RUN);
                    int thicker = Math.max(-2, run.gauge() - 2);
                    elements.set(
                            HeatedWires.RUN,
                            new Element.Run(
                                    run.id(),
                                    run.declaredAt(),
                                    thicker == -2 ? -1 : thicker,
                                    run.conductors(),
                                    run.length(),
                                    run.covering()));
                    sketch.chains.set(
                            0, new Wiring.Chain(chain.id(), chain.from(), chain.to(), elements));
                    double forS = Math.exp(random.nextDouble(Math.log(0.05), Math.log(20)));
                    double share = random.nextDouble(0.2, 1);
                    assertThat(hottestK(sketch.rig(), share, forS))
                            .isLessThanOrEqualTo(hottestK(thin, share, forS) + 0.02);
                });
    }

    private static double hottestK(Rig rig, double share, double forS) {
        Plant plant = Plant.assembleHeated(rig);
        Discharge run = started(plant);
        run.follow(new Order.Throttle(share), forS, at -> {});
        return run.hottestK(HeatedWiresTest.part(plant, HeatPart.Kind.WIRE, "w"));
    }

    /**
     * After a longer pause no part of the next run comes to its limit sooner. Controllers are left
     * out: the rig stays live, and their fixed power warms them in standing air.
     */
    @Test
    void aLongerPauseNeverShortensTheNextRun() {
        int[] lengthened = new int[1];
        Seeded.check(40, random -> pauses(random, lengthened));
        assertThat(lengthened[0]).as("parts with more time").isNotNegative();
    }

    private static void pauses(RandomGenerator random, int[] lengthened) {
        Rig rig = HeatedRigs.random(random);
        if (HeatedRigs.isTied(rig)) {
            return; // what flows between two packs goes by their differences, cold or warm
        }
        Plant plant = Plant.assembleHeated(rig);
        Order order = new Order.Throttle(random.nextDouble(0.5, 0.9));
        double forS = random.nextDouble(5, 25);
        double brief = random.nextDouble(0, 120);
        double[] soon = next(plant, order, forS, brief);
        double[] late = next(plant, order, forS, brief + random.nextDouble(5, 600));
        for (int part = 0; part < soon.length; part++) {
            HeatPart.Kind kind = plant.heatParts().get(part).kind();
            if (kind == HeatPart.Kind.SWITCHES || kind == HeatPart.Kind.CONTROLLER) {
                continue;
            }
            // A cooler motor draws a little more: half a per cent of the time.
            assertThat(late[part])
                    .as(plant.heatParts().get(part).toString())
                    .isGreaterThanOrEqualTo(0.995 * soon[part] - 1e-3);
            lengthened[0] += late[part] > soon[part] + 0.01 ? 1 : 0;
        }
    }

    /** Times to the limits in a second run; 90 where none is reached or a fuse opened before. */
    private static double[] next(Plant plant, Order order, double forS, double pauseS) {
        Discharge run = started(plant);
        run.follow(order, forS, at -> {});
        run.follow(new Order.Throttle(0), pauseS, at -> {});
        StartState left = run.stateNow();
        Discharge again = started(plant);
        again.start(left);
        again.follow(order, 30, at -> {});
        double[] times = new double[plant.heatParts().size()];
        boolean opened = false;
        for (int part = 0; part < times.length; part++) {
            opened |= run.opened(part) || again.opened(part);
        }
        for (int part = 0; part < times.length; part++) {
            times[part] = opened ? 90 : again.heatReachedS(part).orElse(90);
        }
        return times;
    }

    /** However a run is cut into pieces, temperatures and times to limits stay. */
    @Test
    void splittingARunChangesNothing() {
        Seeded.check(
                25,
                random -> {
                    Plant plant = Plant.assembleHeated(HeatedRigs.random(random));
                    Order order = new Order.Throttle(random.nextDouble(0.5, 1));
                    Discharge whole = started(plant);
                    Discharge split = started(plant);
                    double all = 40;
                    boolean goes = whole.follow(order, all, at -> {});
                    double left = all;
                    while (left > 0) {
                        double part = Math.min(left, random.nextDouble(0.01, 8));
                        split.follow(order, part, at -> {});
                        left -= part;
                    }
                    if (!goes) {
                        return;
                    }
                    for (int part = 0; part < plant.heatParts().size(); part++) {
                        String what = plant.heatParts().get(part).toString();
                        assertThat(split.nowK(part))
                                .as(what)
                                .isCloseTo(whole.nowK(part), within(0.2));
                        boolean near =
                                Math.abs(
                                                whole.hottestK(part)
                                                        - plant.heatParts().get(part).limitK())
                                        < 0.2;
                        if (!near) {
                            double whenS = whole.heatReachedS(part).orElse(1e3);
                            assertThat(split.heatReachedS(part).orElse(1e3))
                                    .as(what)
                                    .isCloseTo(whenS, within(0.005 * whenS));
                        }
                    }
                });
    }
}
