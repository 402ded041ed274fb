package liftwright.plant.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.random.RandomGenerator;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.RigSketch;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Insulation;
import liftwright.rig.Rig;
import liftwright.rig.Wear;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Whole small rigs that warm, stepped by the product, against the same equations as one system,
 * integrated to four digits more ({@link RefereeGrid#SAME}).
 */
class HeatedRunAgainstIntegratorTest {

    /**
     * Temperatures, K, at the production step: 0.2 is asked of it, and 0.13 was the worst of 250
     * rigs. The few of a build keep half of it, so that a law that is a little off shows.
     */
    private static final double SAME_K = Seeded.deep() ? 0.2 : 0.1;

    /** Of the time to each limit and of each fuse. */
    private static final double SAME_TIME = 0.005;

    /**
     * What a part that warms quickly may be late: a wire that gains 17 K a second shows 0.15 % of
     * the time as 1 K. It is less than half of what {@link #SAME_TIME} allows.
     */
    private static final double LATE = 0.002;

    /** Time over which it is seen how quickly the reference warms, s. */
    private static final double SEEN_S = 0.1;

    /**
     * Hotter than any part still works, K: from here on neither side knows the law of its surface.
     */
    private static final double BEYOND_K = 523.15;

    @Test
    void temperaturesLimitsAndFuses() {
        Set<String> met = new TreeSet<>();
        AtomicInteger count = new AtomicInteger();
        Seeded.check(
                25,
                random -> {
                    compare(random, met);
                    count.incrementAndGet();
                });
        if (count.get() > 20) {
            assertThat(met).contains("WIRE", "JOINT", "opened", "whole", "lift", "soaked hotter");
            // Rarer: a motor or its controller is the first in one rig of ten.
            assertThat(met).containsAnyOf("WINDING", "SWITCHES", "MAGNETS");
        }
        if (Seeded.deep()) {
            assertThat(met).contains("WINDING", "SWITCHES", "MAGNETS");
        }
    }

    /** A bad joint that is soon above its limit and grows worse all the while. */
    @Test
    void aJointThatGrowsWorse() {
        RigSketch sketch = WarmSketch.sketch();
        sketch.packs.add(
                RigSketch.pack("p", 1, WarmSketch.cellType("C", WarmSketch.STIFF), 14, 0.95));
        sketch.fans.add(
                RigSketch.fan("f", 1, WarmSketch.fanType("F", WarmSketch.steadyFan(90, 57))));
        Wear wear = new Wear(RigSketch.si(5), Optional.of(RigSketch.si(0.03)));
        sketch.wire(
                "p.1",
                "f.1",
                WarmSketch.joint("bad", 1e-3, 100, 5, wear),
                WarmSketch.run("w", 8, 1, 0.5, Insulation.SILICONE, 453.15, 1e-3, 1, 0));
        WarmSketch.oneGroup(sketch);
        Rig rig = sketch.rig();
        Plant plant = Plant.assembleHeated(rig);
        HeatedRigRun reference = new HeatedRigRun(rig, plant.heatParts(), RefereeGrid.SAME);
        Discharge run = plant.discharge();
        run.load(plant.parameters().nominal(), new CellDraw.Expected());
        run.start();
        run.follow(new Order.Throttle(1), 60, at -> {});
        reference.throttle(1);
        reference.go(60);
        int joint = HeatedWiresTest.part(plant, HeatPart.Kind.JOINT, "bad");
        assertThat(reference.reachedS[joint]).isLessThan(50);
        assertThat(run.nowK(joint)).isCloseTo(reference.nowK(joint), within(0.2));
    }

    private static void compare(RandomGenerator random, Set<String> met) {
        Rig rig = HeatedRigs.random(random);
        Plant plant = Plant.assembleHeated(rig);
        HeatedRigRun reference = new HeatedRigRun(rig, plant.heatParts(), RefereeGrid.SAME);
        Discharge run = plant.discharge();
        run.load(plant.parameters().nominal(), new CellDraw.Expected());
        run.start();
        Order order = new Order.Throttle(random.nextDouble(0.6, 1));
        if (reference.openedS.length == 0 || random.nextInt(4) == 0) {
            double lift = 40 * rig.fans().size() * random.nextDouble(0.8, 1.2);
            order = new Order.Lift(lift);
            reference.lift(lift);
            met.add("lift");
        } else {
            reference.throttle(((Order.Throttle) order).share());
        }
        double[] warming = {};
        for (int k = 0; k < 6; k++) {
            double forS = random.nextDouble(1, 25);
            boolean goes = run.follow(order, forS, at -> {});
            assertThat(run.failed()).isFalse();
            if (!goes) {
                return; // it ended, of something that is no heat
            }
            warming = goes(reference, forS);
            if (beyond(reference)) {
                moments(plant, run, reference, met);
                return;
            }
            same(plant, run, reference, warming, "after " + run.state().timeS() + " s");
        }
        double[] before = new double[plant.heatParts().size()];
        for (int part = 0; part < before.length; part++) {
            before[part] = reference.nowK(part);
        }
        double endedS = run.state().timeS();
        run.follow(new Order.Throttle(0), 90, at -> {});
        reference.throttle(0);
        same(plant, run, reference, goes(reference, 90), "after the soak");
        for (int part = 0; part < before.length; part++) {
            assertThat(run.hottestK(part))
                    .as("hottest of " + plant.heatParts().get(part))
                    .isCloseTo(
                            reference.hottestK[part],
                            within(SAME_K + LATE * endedS * Math.abs(warming[part])));
            if (reference.hottestK[part] > before[part] + 2) {
                met.add("soaked hotter");
            }
        }
        moments(plant, run, reference, met);
    }

    private static void moments(
            Plant plant, Discharge run, HeatedRigRun reference, Set<String> met) {
        for (int part = 0; part < plant.heatParts().size(); part++) {
            times(plant, run, reference, part, met);
        }
        fuses(plant, run, reference, met);
    }

    /** Lets the reference go on, and sees how quickly each part warms at the end, K/s. */
    private static double[] goes(HeatedRigRun reference, double forS) {
        reference.go(forS - SEEN_S);
        double[] perS = new double[reference.hottestK.length];
        for (int part = 0; part < perS.length; part++) {
            perS[part] = -reference.nowK(part) / SEEN_S;
        }
        reference.go(SEEN_S);
        for (int part = 0; part < perS.length; part++) {
            perS[part] += reference.nowK(part) / SEEN_S;
        }
        return perS;
    }

    private static boolean beyond(HeatedRigRun reference) {
        return Arrays.stream(reference.hottestK).anyMatch(k -> k > BEYOND_K);
    }

    private static void same(
            Plant plant, Discharge run, HeatedRigRun reference, double[] perS, String when) {
        for (int part = 0; part < plant.heatParts().size(); part++) {
            double sameK = SAME_K + LATE * run.state().timeS() * Math.abs(perS[part]);
            assertThat(run.nowK(part))
                    .as(when + " " + plant.heatParts().get(part))
                    .isCloseTo(reference.nowK(part), within(sameK));
        }
    }

    private static void times(
            Plant plant, Discharge run, HeatedRigRun reference, int part, Set<String> met) {
        HeatPart of = plant.heatParts().get(part);
        if (Math.abs(reference.hottestK[part] - of.limitK()) < SAME_K) {
            return; // it may or may not
        }
        OptionalDouble found = run.heatReachedS(part);
        if (reference.reachedS[part] == Double.POSITIVE_INFINITY) {
            assertThat(found).as(of.toString()).isEmpty();
        } else {
            met.add(of.kind().toString());
            double whenS = reference.reachedS[part];
            assertThat(found.orElse(Double.NaN))
                    .as(of.toString())
                    .isCloseTo(whenS, within(SAME_TIME * whenS));
        }
    }

    private static void fuses(Plant plant, Discharge run, HeatedRigRun reference, Set<String> met) {
        int fuse = 0;
        for (int part = 0; part < plant.heatParts().size(); part++) {
            HeatPart of = plant.heatParts().get(part);
            if (of.kind() != HeatPart.Kind.FUSE) {
                continue;
            }
            double whenS = reference.openedS[fuse++];
            assertThat(run.opened(part)).as(of.toString()).isEqualTo(whenS < 1e9);
            met.add(run.opened(part) ? "opened" : "whole");
            if (run.opened(part)) {
                assertThat(run.openedS(part).orElseThrow())
                        .as(of.toString())
                        .isCloseTo(whenS, within(SAME_TIME * whenS));
            }
        }
    }
}
