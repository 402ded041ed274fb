package liftwright.plant;

import static liftwright.plant.RigSketch.si;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.random.RandomGenerator;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.CellType;
import liftwright.rig.FanType;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What happens within a run: controllers that stop, currents, packs side by side, other names. */
class DischargeEventsTest {

    private static FanType type(double cutOffV) {
        FanType like = RigSketch.fanType("F", FanType.Data.MEASURED, Optional.empty(), si(1));
        FanType.Controller c = like.controller();
        return new FanType(
                like.name(),
                like.ducted(),
                like.tip(),
                like.hub(),
                like.exitArea(),
                like.mass(),
                like.data(),
                like.performance(),
                like.motor(),
                like.rotor(),
                new FanType.Controller(
                        c.onResistance(),
                        c.currentLimit(),
                        c.topVoltage(),
                        c.topElectricalSpeed(),
                        c.capacitance(),
                        c.capacitorVoltage(),
                        Optional.of(si(cutOffV)),
                        c.fixedPower(),
                        c.switchingLoss(),
                        c.mass(),
                        c.switching()),
                like.intake(),
                like.swirl(),
                like.scatter(),
                like.installation(),
                like.lot(),
                like.extremes());
    }

    private static CellType cell(double peakA, double ohm) {
        CellType like = RigSketch.cellType("cell");
        return new CellType(
                "cell",
                "LiPo",
                Optional.of(si(20_000)),
                Optional.of(si(ohm)),
                List.of(new CellType.Settling(si(0.0005), si(15))),
                Optional.empty(),
                CellType.Ageing.NONE,
                si(0),
                si(0.165),
                like.openCircuit(),
                si(0),
                Optional.empty(),
                Optional.of(si(peakA)),
                Optional.empty());
    }

    private static Discharge started(Rig rig) {
        Plant plant = Plant.assemble(rig);
        Discharge run = plant.discharge();
        run.load(plant.parameters().nominal(), new CellDraw.Expected());
        run.start();
        return run;
    }

    /** Two packs; the second feeds a fan behind a long thin wire, whose controller stops first. */
    private static Rig twoPacks(double cutOffV, double peakA) {
        RigSketch sketch = new RigSketch();
        sketch.limits = new Limits(Map.of(LimitName.CELL_UNDER_LOAD, 2.5));
        for (int k = 1; k <= 2; k++) {
            sketch.packs.add(RigSketch.pack("p", k, cell(peakA, 0.001), 14, 1));
            sketch.fans.add(RigSketch.fan("fan", k, type(k == 2 ? cutOffV : 20)));
        }
        sketch.wire("p.1", "fan.1", RigSketch.joint("near", 0.002));
        sketch.wire("p.2", "fan.2", RigSketch.joint("far", 0.045));
        return sketch.rig();
    }

    @Test
    void aControllerThatCutsOffStaysStoppedAndItsPackRests() {
        Discharge probe = started(twoPacks(20, 1000));
        probe.follow(new Order.Throttle(1), 0, at -> {});
        double cutOffV = probe.network().loadTerminalV(1) - 1.5;
        Discharge run = started(twoPacks(cutOffV, 1000));
        double[] lastV = {Double.POSITIVE_INFINITY};
        run.follow(
                new Order.Throttle(1),
                2000,
                at -> {
                    if (!at.fans().units().isStopped(1)) {
                        lastV[0] = at.network().loadTerminalV(1);
                    } else {
                        assertThat(at.network().loadA(1)).isZero();
                        assertThat(at.packA(1)).isCloseTo(0, within(1e-9));
                    }
                });
        double when = run.reached(Cause.CUT_OFF, 1).orElseThrow();
        // Before it the voltage was above, and the charge that left fits the voltage found there.
        assertThat(lastV[0]).isGreaterThanOrEqualTo(cutOffV - 1e-6);
        assertThat(when).isGreaterThan(1);
        double passed = run.state().passedAs(1);
        run.start();
        run.follow(new Order.Throttle(1), when * (1 - 1e-4), at -> {});
        assertThat(run.fans().units().isStopped(1)).isFalse();
        assertThat(run.network().loadTerminalV(1)).isCloseTo(cutOffV, within(0.02));
        assertThat(run.state().passedAs(1)).isCloseTo(passed, within(2e-4 * passed));
        run.follow(new Order.Throttle(1), when * 2e-4, at -> {});
        assertThat(run.fans().units().isStopped(1)).isTrue();
    }

    @Test
    void aHoverThatLosesAFanAsksTheOthersForMore() {
        Discharge probe = started(twoPacks(20, 1000));
        probe.follow(new Order.Throttle(1), 0, at -> {});
        double wanted = 0.35 * probe.fans().liftN();
        probe.start();
        probe.follow(new Order.Lift(wanted), 0, at -> {});
        double together = probe.packA(0);
        double cutOffV = probe.network().loadTerminalV(1) - 1;
        Discharge run = started(twoPacks(cutOffV, 1000));
        run.follow(new Order.Lift(wanted), 200, at -> {});
        double when = run.reached(Cause.CUT_OFF, 1).orElseThrow();
        assertThat(when).isGreaterThan(1).isLessThan(200);
        assertThat(run.fans().liftN()).isCloseTo(wanted, within(1e-6 * wanted));
        assertThat(run.packA(0)).isGreaterThan(1.5 * together);
        assertThat(run.packA(1)).isCloseTo(0, within(1e-9));
    }

    /** In a hover the current rises as the pack sags: it passes a limit between start and end. */
    @Test
    void aCurrentIsReachedWhenTheRunSaysIt() {
        Rig free = twoPacks(20, 1e6);
        Discharge probe = started(free);
        probe.follow(new Order.Throttle(1), 0, at -> {});
        Order hover = new Order.Lift(0.5 * probe.fans().liftN());
        probe.start();
        probe.follow(hover, 0, at -> {});
        double first = probe.packA(0);
        probe.follow(hover, 60, at -> {});
        double limit = (first + probe.packA(0)) / 2;
        Discharge run = started(twoPacks(20, limit));
        run.follow(hover, 120, at -> {});
        double when = run.reached(Cause.CELL_CURRENT, 0).orElseThrow();
        probe.start();
        probe.follow(hover, when, at -> {});
        assertThat(probe.packA(0)).isCloseTo(limit, within(1e-4 * limit));
    }

    /**
     * Past full throttle the current falls again: a limit that lies just below its highest is
     * passed and left within one step, and is found all the same.
     */
    @Test
    void aCurrentThatFallsAgainWithinAStepIsFound() {
        Discharge probe = started(twoPacks(20, 1e6));
        probe.follow(new Order.Throttle(1), 0, at -> {});
        Order hover = new Order.Lift(0.75 * probe.fans().liftN());
        probe.start();
        probe.follow(hover, 1e5, at -> {});
        double full = probe.reached(Cause.FULL_THROTTLE).orElseThrow();
        double highest = probe.packA(0);
        for (double share : new double[] {0.9999, 0.999, 0.997, 0.99, 0.98}) {
            double limit = share * highest;
            Discharge run = started(twoPacks(20, limit));
            run.follow(hover, 1e5, at -> {});
            double when = run.reached(Cause.CELL_CURRENT, 0).orElseThrow();
            assertThat(when).as("%s of the highest", share).isLessThan(full);
            probe.start();
            probe.follow(hover, when, at -> {});
            assertThat(probe.packA(0)).isCloseTo(limit, within(2e-4 * limit));
        }
    }

    /** A pack that feeds two fans; another, which stays fuller, feeds one. */
    private static Rig unlikeLoads(double peakA) {
        RigSketch sketch = new RigSketch();
        sketch.limits = new Limits(Map.of(LimitName.CELL_UNDER_LOAD, 2.5));
        for (int k = 1; k <= 2; k++) {
            sketch.packs.add(RigSketch.pack("p", k, cell(peakA, 0.001), 14, 1));
        }
        for (int k = 1; k <= 3; k++) {
            sketch.fans.add(RigSketch.fan("fan", k, type(20)));
            sketch.wire(k < 3 ? "p.1" : "p.2", "fan." + k, RigSketch.joint("joint " + k, 0.002));
        }
        return sketch.rig();
    }

    /**
     * Where the voltage of a pack begins to fall faster, at a knee of its cells, the fans of others
     * take over some of the lift and its current crests, between the ends of a step as may be.
     */
    @Test
    void aCurrentThatCrestsWithinAStepIsFound() {
        Discharge probe = started(unlikeLoads(1e6));
        probe.follow(new Order.Throttle(1), 0, at -> {});
        Order hover = new Order.Lift(0.5 * probe.fans().liftN());
        probe.start();
        double highest = 0;
        double crestS = 0;
        double last = 0;
        for (double time = 0.25; probe.follow(hover, 0.25, at -> {}); time += 0.25) {
            last = probe.packA(0);
            if (time > 20 && last > highest) {
                highest = last;
                crestS = time;
            }
        }
        assertThat(last).as("it falls again").isLessThan(highest * 0.999);
        for (double share : new double[] {0.99999, 0.9999, 0.9995, 0.999}) {
            double limit = share * highest;
            Discharge run = started(unlikeLoads(limit));
            run.follow(hover, 1e5, at -> {});
            double when = run.reached(Cause.CELL_CURRENT, 0).orElseThrow();
            assertThat(when).as("%s of the highest", share).isLessThan(crestS + 0.25);
            probe.start();
            probe.follow(hover, when, at -> {});
            assertThat(probe.packA(0)).isCloseTo(limit, within(2e-4 * limit));
        }
    }

    /** What packs side by side give each other is lost to none: the charges passed add up. */
    @Test
    void packsOnOneBusShareAsTheirVoltagesSayAndChargeIsKept() {
        Seeded.check(
                30,
                random -> {
                    RigSketch sketch = bus(random, 3);
                    Discharge run = started(sketch.rig());
                    run.follow(new Order.Throttle(0), 600, at -> {});
                    double sum = 0;
                    for (int k = 0; k < 3; k++) {
                        sum += run.state().passedAs(k);
                    }
                    double idle = 0; // what the idle controllers took: some ampere-seconds
                    for (int fan = 0; fan < 2; fan++) {
                        idle += 600 * 5 / run.network().loadTerminalV(fan);
                    }
                    assertThat(sum).isCloseTo(idle, within(0.02 * idle + 1e-6));
                    // The fullest has given, the emptiest has taken, and they end closer.
                    double before = range(sketch.packs, null);
                    double after = range(sketch.packs, run);
                    assertThat(after).isLessThan(before);
                });
    }

    private static double range(
            List<Pack> packs, @org.jspecify.annotations.Nullable Discharge run) {
        double least = 1;
        double most = 0;
        for (int k = 0; k < packs.size(); k++) {
            double left =
                    packs.get(k).charge().si()
                            - (run == null ? 0 : run.state().passedAs(k) / 20_000);
            least = Math.min(least, left);
            most = Math.max(most, left);
        }
        return most - least;
    }

    private static RigSketch bus(RandomGenerator random, int packs) {
        RigSketch sketch = new RigSketch();
        sketch.limits = new Limits(Map.of(LimitName.CELL_UNDER_LOAD, 2.5));
        for (int k = 1; k <= packs; k++) {
            double charge = 0.5 + 0.15 * k + random.nextDouble(0, 0.04);
            sketch.packs.add(
                    RigSketch.pack(
                            "p", k, cell(1e6, random.nextDouble(0.0008, 0.002)), 14, charge));
            sketch.wire("p." + k, "bus", RigSketch.joint("j" + k, random.nextDouble(0.002, 0.01)));
        }
        for (int k = 1; k <= 2; k++) {
            sketch.fans.add(RigSketch.fan("fan", k, type(20)));
            sketch.wire("bus", "fan." + k, RigSketch.joint("f" + k, 0.001));
        }
        return sketch;
    }

    /** Order of parts and a wire of no length change nothing of a run. */
    @Test
    void otherOrderAndWiresOfNoLengthChangeNothing() {
        Seeded.check(
                40,
                random -> {
                    RigSketch sketch = bus(random, 3);
                    Rig rig = sketch.rig();
                    RigSketch other = RigSketch.of(rig);
                    Collections.reverse(other.packs);
                    Collections.shuffle(other.chains, new Random(random.nextLong()));
                    List<liftwright.rig.Wiring.Chain> chains = new ArrayList<>(other.chains);
                    liftwright.rig.Wiring.Chain cut = chains.removeFirst();
                    other.chains.clear();
                    other.chains.addAll(chains);
                    other.chains.add(
                            new liftwright.rig.Wiring.Chain(
                                    cut.id(), cut.from(), "between", cut.elements()));
                    other.wire("between", cut.to());
                    Discharge full = started(rig);
                    full.follow(new Order.Throttle(1), 0, at -> {});
                    Order hover = new Order.Lift(full.fans().liftN() * random.nextDouble(0.4, 0.8));
                    Discharge one = started(rig);
                    Discharge two = started(other.rig());
                    one.follow(hover, 5000, at -> {});
                    two.follow(hover, 5000, at -> {});
                    assertThat(two.firstS()).isCloseTo(one.firstS(), within(1e-6 * one.firstS()));
                    assertThat(two.ended().orElseThrow().cause())
                            .isEqualTo(one.ended().orElseThrow().cause());
                });
    }
}
