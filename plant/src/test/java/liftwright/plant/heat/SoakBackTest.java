package liftwright.plant.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.RigSketch;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Insulation;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * After a run the stream stops and heat goes on to spread: the peak of every part, its size and its
 * moment, against a reference that looks every quarter of a second.
 */
class SoakBackTest {

    private static final double SAME_K = 0.2;
    private static final double LOOK_S = 0.25;
    private static final double SOAK_S = 120;

    @Test
    void thePeakAfterARunIsFoundInSizeAndTime() {
        Set<String> met = new TreeSet<>();
        Seeded.check(15, random -> compare(random, met));
        assertThat(met).isNotEmpty();
    }

    private static void compare(RandomGenerator random, Set<String> met) {
        Rig rig = rig(random);
        Plant plant = Plant.assembleHeated(rig);
        HeatedRigRun reference = new HeatedRigRun(rig, plant.heatParts(), RefereeGrid.SAME);
        Discharge run = plant.discharge();
        run.load(plant.parameters().nominal(), new CellDraw.Expected());
        run.start();
        double share = random.nextDouble(0.6, 1);
        double forS = random.nextDouble(10, 60);
        run.follow(new Order.Throttle(share), forS, at -> {});
        run.follow(new Order.Throttle(0), SOAK_S, at -> {});
        reference.throttle(share);
        reference.go(forS);
        reference.throttle(0);
        int parts = plant.heatParts().size();
        int looks = (int) (SOAK_S / LOOK_S);
        double[][] kelvin = new double[parts][looks + 1];
        for (int look = 0; look <= looks; look++) {
            for (int part = 0; part < parts; part++) {
                kelvin[part][look] = reference.nowK(part);
            }
            reference.go(look < looks ? LOOK_S : 0);
        }
        for (int part = 0; part < parts; part++) {
            String what = plant.heatParts().get(part).toString();
            int top = 0;
            for (int look = 0; look <= looks; look++) {
                top = kelvin[part][look] > kelvin[part][top] ? look : top;
            }
            if (top == 0 || kelvin[part][top] < kelvin[part][0] + 1) {
                continue; // hottest when the run ends
            }
            met.add(plant.heatParts().get(part).kind().toString());
            assertThat(run.hottestK(part)).as(what).isCloseTo(kelvin[part][top], within(SAME_K));
            // A flat peak has no sharp moment: where the product says, it is as hot.
            double whenS = run.hottestAtS(part);
            assertThat(whenS).as(what).isGreaterThan(forS);
            int near = (int) Math.round((whenS - forS) / LOOK_S);
            assertThat(Math.abs(near - top) <= 2 || kelvin[part][top] - kelvin[part][near] < 0.05)
                    .as(what + " at " + whenS + " s, not " + (forS + top * LOOK_S))
                    .isTrue();
        }
    }

    /** One fan on a short lead: windings and junctions store what cases and sinks get later. */
    private static Rig rig(RandomGenerator random) {
        RigSketch sketch = WarmSketch.sketch();
        var cell = new WarmSketch.CellNumbers(30_000, 0.0012, 0.0006, 15, 165, 2, 0.1);
        sketch.packs.add(RigSketch.pack("p", 1, WarmSketch.cellType("C", cell), 14, 1));
        var fan =
                new WarmSketch.FanNumbers(
                        1.24e-5,
                        2.28e-7,
                        54.45,
                        random.nextDouble(0.008, 0.02),
                        2.5,
                        random.nextDouble(0.001, 0.004),
                        Optional.empty(),
                        WarmSketch.cooling(
                                random.nextDouble(20, 80),
                                random.nextDouble(2, 20),
                                random.nextDouble(0.5, 10),
                                random.nextDouble(0.8, 4)),
                        WarmSketch.heating(
                                random.nextDouble(20, 80),
                                random.nextDouble(40, 250),
                                random.nextDouble(0.5, 4),
                                random.nextDouble(1, 8)));
        sketch.fans.add(RigSketch.fan("f", 1, WarmSketch.fanType("F", fan)));
        sketch.wire(
                "p.1",
                "f.1",
                WarmSketch.joint("thick", 0.3e-3, 120, random.nextDouble(4, 30)),
                WarmSketch.run("w", 10, 1, 0.4, Insulation.SILICONE, 453.15, 1e-3, 1, 0),
                WarmSketch.joint("thin", 0.3e-3, 120, 3));
        WarmSketch.oneGroup(sketch);
        return sketch.rig();
    }
}
