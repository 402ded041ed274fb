package liftwright.plant;

import static liftwright.plant.RigSketch.si;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.random.RandomGenerator;
import liftwright.physics.CellLaw;
import liftwright.physics.FuseCurve;
import liftwright.plant.heat.HeatPart;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.CellType;
import liftwright.rig.Element;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Wear;
import liftwright.rig.Wiring;
import liftwright.rig.table.StartState;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** A run in which every part warms: what must hold whatever the temperatures are. */
class HeatedRunTest {

    /** A rig of two packs with two fans each. */
    private static RigSketch sketch(int gauge) {
        RigSketch sketch = new RigSketch();
        sketch.limits = new Limits(Map.of(LimitName.CELL_UNDER_LOAD, 2.5));
        for (int k = 1; k <= 2; k++) {
            sketch.packs.add(RigSketch.pack("p", k, RigSketch.cellType("cell"), 14, 1));
            sketch.wire(
                    "p." + k,
                    "split." + k,
                    RigSketch.joint("plug." + k, 0.0004),
                    fuse("fuse." + k, 250),
                    RigSketch.run("trunk." + k, 8, 0.4),
                    RigSketch.pole("main." + k, 0.0002));
            for (int fan = 2 * k - 1; fan <= 2 * k; fan++) {
                sketch.fans.add(RigSketch.fan("fan", fan, RigSketch.fanType("F")));
                sketch.wire(
                        "split." + k,
                        "fan." + fan,
                        RigSketch.run("wire." + fan, gauge, 0.5),
                        RigSketch.joint("end." + fan, 0.0004));
            }
        }
        return sketch;
    }

    private static Element.Fuse fuse(String id, double rating) {
        Element.Fuse like = (Element.Fuse) RigSketch.fuse(id, 0.0003);
        return new Element.Fuse(
                like.id(),
                like.declaredAt(),
                si(rating),
                like.resistance(),
                like.breaks(),
                like.voltage());
    }

    private static Discharge started(Plant plant) {
        Discharge run = plant.discharge();
        run.load(plant.parameters().nominal(), new CellDraw.Expected());
        run.start();
        return run;
    }

    private static int part(Plant plant, HeatPart.Kind kind, String id) {
        for (int part = 0; part < plant.heatParts().size(); part++) {
            HeatPart of = plant.heatParts().get(part);
            if (of.kind() == kind && of.id().text().equals(id)) {
                return part;
            }
        }
        throw new AssertionError(kind + " " + id);
    }

    /** At every moment and in all: what the cells give is what parts lose and shafts take. */
    @Test
    void everyWattIsAccountedFor() {
        Plant plant = Plant.assembleHeated(sketch(12).rig());
        Discharge run = started(plant);
        Discharge.Watcher closes =
                at -> {
                    double lost = 0;
                    for (int part = 0; part < plant.heatParts().size(); part++) {
                        lost += at.lossW(part);
                    }
                    double given = at.givenW();
                    assertThat(given).isPositive();
                    assertThat(at.shaftW() + lost).isCloseTo(given, within(1e-9 * given));
                    assertThat(at.network().closure()).isLessThan(1e-9);
                };
        run.follow(new Order.Lift(200), 40, closes);
        run.follow(new Order.Throttle(1), 15, closes);
        run.follow(new Order.Throttle(0), 60, closes);
        double lost = 0;
        for (int part = 0; part < plant.heatParts().size(); part++) {
            lost += run.energyJ(part);
        }
        assertThat(run.failed()).isFalse();
        assertThat(run.givenJ()).isGreaterThan(100_000);
        assertThat(run.shaftJ() + lost).isCloseTo(run.givenJ(), within(1e-9 * run.givenJ()));
    }

    /** Rings, islands, unequal packs, wires of no length: all that is wired closes. */
    @Test
    void everyShapeOfWiringWarms() {
        Seeded.check(Seeded.deep() ? 10 : 25, HeatedRunTest::warm);
    }

    private static void warm(RandomGenerator random) {
        Plant plant = Plant.assembleHeated(RandomRigs.exact(random));
        Discharge run = started(plant);
        Discharge.Watcher closes =
                at -> {
                    double lost = 0;
                    for (int part = 0; part < plant.heatParts().size(); part++) {
                        lost += at.lossW(part);
                        assertThat(at.nowK(part)).isBetween(200.0, 1e5);
                    }
                    double scale = Math.abs(at.givenW()) + at.shaftW() + lost;
                    assertThat(at.shaftW() + lost - at.givenW()).isCloseTo(0, within(1e-9 * scale));
                };
        run.follow(new Order.Throttle(random.nextDouble(0.3, 0.9)), 20, closes);
        run.follow(new Order.Throttle(0), 10, closes);
        assertThat(run.failed()).isFalse();
    }

    /**
     * A plant that warms is at an operating point what it was: heat adds rows behind the others.
     */
    @Test
    void operatingPointsStayAsTheyAre() {
        Seeded.check(
                10,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    Plant cold = Plant.assemble(rig);
                    Plant heated = Plant.assembleHeated(rig);
                    assertThat(cold.isHeated()).isFalse();
                    assertThat(cold.heatParts()).isEmpty();
                    double[] p = cold.parameters().nominal();
                    double[] q = heated.parameters().nominal();
                    assertThat(q).startsWith(p);
                    SteadyState one = cold.state();
                    SteadyState other = heated.state();
                    cold.solve(p, Effects.ALL, cold.workspace(), one);
                    heated.solve(q, Effects.ALL, heated.workspace(), other);
                    assertThat(other.liftN()).isEqualTo(one.liftN());
                    assertThat(other.sourceW()).isEqualTo(one.sourceW());
                });
    }

    /** A run that is stopped and goes on is the run that was not stopped. */
    @Test
    void splittingARunChangesNothing() {
        Plant plant = Plant.assembleHeated(sketch(14).rig());
        Discharge whole = started(plant);
        Discharge split = started(plant);
        Order hover = new Order.Lift(220);
        whole.follow(hover, 50, at -> {});
        for (double s : new double[] {7, 0.3, 22.7, 20}) {
            split.follow(hover, s, at -> {});
        }
        Order soak = new Order.Throttle(0);
        whole.follow(soak, 30, at -> {});
        split.follow(soak, 11, at -> {});
        split.follow(soak, 19, at -> {});
        assertThat(split.timeS()).isCloseTo(whole.timeS(), within(1e-9));
        for (int part = 0; part < plant.heatParts().size(); part++) {
            assertThat(split.nowK(part)).isCloseTo(whole.nowK(part), within(0.03));
            assertThat(split.hottestK(part)).isCloseTo(whole.hottestK(part), within(0.03));
            assertThat(split.energyJ(part))
                    .isCloseTo(whole.energyJ(part), within(2e-4 * whole.energyJ(part) + 1e-6));
            assertThat(split.heatReachedS(part).isPresent())
                    .isEqualTo(whole.heatReachedS(part).isPresent());
        }
    }

    /** What a run left behind starts the next: warm parts, given charge, fuses that remember. */
    @Test
    void aRunGoesOnWhereAnotherEnded() {
        CellType like = RigSketch.cellType("cell");
        CellType quick =
                new CellType(
                        "quick",
                        "LiPo",
                        like.capacity(),
                        like.resistance(),
                        List.of(),
                        Optional.empty(),
                        CellType.Ageing.NONE,
                        si(1000),
                        si(0.165),
                        like.openCircuit(),
                        si(0),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
        RigSketch sketch = sketch(12);
        sketch.packs.clear();
        for (int k = 1; k <= 2; k++) {
            sketch.packs.add(RigSketch.pack("p", k, quick, 14, 1));
        }
        Plant plant = Plant.assembleHeated(sketch.rig());
        Discharge first = started(plant);
        Order hover = new Order.Lift(220);
        first.follow(hover, 30, at -> {});
        StartState left = first.stateNow();
        Discharge second = plant.discharge();
        second.load(plant.parameters().nominal(), new CellDraw.Expected());
        second.start(left);
        second.follow(hover, 0, at -> {});
        int winding = part(plant, HeatPart.Kind.WINDING, "fan.1");
        int fuse = part(plant, HeatPart.Kind.FUSE, "fuse.1");
        assertThat(second.nowK(winding)).isEqualTo(first.nowK(winding));
        assertThat(second.fuseShare(fuse)).isEqualTo(first.fuseShare(fuse)).isPositive();
        assertThat(second.leastChargeLeft(0))
                .isCloseTo(first.leastChargeLeft(0), within(2e-3)); // unlike cells
        first.follow(hover, 30, at -> {});
        second.follow(hover, 30, at -> {});
        for (int part = 0; part < plant.heatParts().size(); part++) {
            // Only what is uneven within a wire or a pack is lost.
            assertThat(second.nowK(part)).isCloseTo(first.nowK(part), within(2.0));
        }
    }

    /** What a run finds depends on nothing that was run before with the same scratch. */
    @Test
    void aRunOwesNothingToTheOneBefore() {
        Plant plant = Plant.assembleHeated(sketch(14).rig());
        double[] p = plant.parameters().nominal();
        double[] widths = new double[plant.parameters().inputs().size()];
        Arrays.fill(widths, 1);
        Discharge used = plant.discharge();
        for (int draw = 0; draw < 4; draw++) {
            plant.parameters().draw(11, draw, p);
            CellDraw cells = new CellDraw.Drawn(11, draw, widths);
            Discharge fresh = plant.discharge();
            for (Discharge run : List.of(used, fresh)) {
                run.load(p, cells);
                run.start();
                run.follow(new Order.Lift(210), 20, at -> {});
                run.follow(new Order.Throttle(0), 20, at -> {});
            }
            for (int part = 0; part < plant.heatParts().size(); part++) {
                assertThat(used.nowK(part)).isEqualTo(fresh.nowK(part));
                assertThat(used.hottestAtS(part)).isEqualTo(fresh.hottestAtS(part));
                assertThat(used.energyJ(part)).isEqualTo(fresh.energyJ(part));
            }
            used.follow(new Order.Throttle(1), 30, at -> {}); // leaves it in another state
        }
    }

    /** A longer pause never shortens the next run, and the second run is shorter than the first. */
    @Test
    void aLongerPauseNeverShortensTheNextRun() {
        Plant plant = Plant.assembleHeated(sketch(16).rig());
        double first = overheats(plant, started(plant));
        double before = 0;
        for (double pause : new double[] {0, 5, 20, 60, 200, 600}) {
            Discharge run = started(plant);
            run.follow(new Order.Lift(200), 0.8 * first, at -> {});
            run.follow(new Order.Throttle(0), pause, at -> {});
            StartState left = run.stateNow();
            Discharge next = plant.discharge();
            next.load(plant.parameters().nominal(), new CellDraw.Expected());
            next.start(left);
            double second = overheats(plant, next);
            assertThat(second).isGreaterThan(before).isLessThan(first);
            before = second;
        }
        assertThat(before).isGreaterThan(0.9 * first);
    }

    /** When the thin wire of the first fan is at its limit, s. */
    private static double overheats(Plant plant, Discharge run) {
        run.follow(new Order.Lift(200), 120, at -> {});
        return run.heatReachedS(part(plant, HeatPart.Kind.WIRE, "wire.1")).orElseThrow();
    }

    /** Each loss is that of its law at the temperature of its part. */
    @Test
    void everyPartLosesWhatItsLawSays() {
        Plant plant = Plant.assembleHeated(sketch(12).rig());
        Discharge run = started(plant);
        double coldOhm = 14 * 0.0009 * CellLaw.temperatureFactor(1000, 285.15);
        run.follow(new Order.Throttle(0.7), 0, at -> {});
        assertThat(run.network().packOhm[0] - 0.0015).isCloseTo(coldOhm, within(1e-9));
        run.follow(new Order.Throttle(0.7), 60, at -> {});
        double current = run.fans().units().windingA(0);
        double speed = run.fans().units().speedRadps(0);
        double volt = run.network().loadTerminalV(0);
        double switchK = run.nowK(part(plant, HeatPart.Kind.SWITCHES, "fan.1"));
        double windingK = run.nowK(part(plant, HeatPart.Kind.WINDING, "fan.1"));
        double magnetK = run.nowK(part(plant, HeatPart.Kind.MAGNETS, "fan.1"));
        assertThat(windingK).isGreaterThan(magnetK + 5).isGreaterThan(300);
        assertThat(run.lossW(part(plant, HeatPart.Kind.WINDING, "fan.1")))
                .isCloseTo(
                        current * current * 0.012 * (1 + 0.00393 * (windingK - 293.15)),
                        within(1e-6));
        assertThat(run.lossW(part(plant, HeatPart.Kind.MAGNETS, "fan.1")))
                .isCloseTo(2.5 * speed / 54.45 * (1 - 0.0011 * (magnetK - 293.15)), within(1e-6));
        assertThat(run.lossW(part(plant, HeatPart.Kind.SWITCHES, "fan.1")))
                .isCloseTo(
                        current * current * 0.002 * (1 + 0.0065 * (switchK - 298.15))
                                + 0.08 * volt * current * (1 - 0.7)
                                + 5,
                        within(1e-6));
        // Cells have warmed, the mean one somewhat less than the worst.
        double worst = run.nowK(part(plant, HeatPart.Kind.CELLS, "p.1"));
        double warmOhm = run.network().packOhm[0] - 0.0015;
        double full = coldOhm - 14 * 0.0009 * CellLaw.temperatureFactor(1000, worst);
        assertThat(worst).isGreaterThan(287);
        assertThat(coldOhm - warmOhm).isBetween(0.85 * full, full);
    }

    /** A thicker wire is never hotter. */
    @Test
    void thickerIsNeverHotter() {
        for (int gauge : new int[] {18, 16, 14, 12, 10}) {
            Plant thin = Plant.assembleHeated(sketch(gauge).rig());
            Plant thick = Plant.assembleHeated(sketch(gauge - 2).rig());
            Discharge one = started(thin);
            Discharge other = started(thick);
            for (int k = 0; k < 3; k++) {
                one.follow(new Order.Lift(200), 12, at -> {});
                other.follow(new Order.Lift(200), 12, at -> {});
                int wire = part(thin, HeatPart.Kind.WIRE, "wire.1");
                assertThat(other.nowK(wire)).isLessThan(one.nowK(wire));
                assertThat(other.hottestK(wire)).isLessThan(one.hottestK(wire));
            }
        }
    }

    /** A hot thin wire heats the joint that it ends in, which is never cooler than its mouth. */
    @Test
    void aThinWireHeatsItsJoint() {
        List<Double> joints = new ArrayList<>();
        for (int gauge : new int[] {18, 8}) {
            Plant plant = Plant.assembleHeated(sketch(gauge).rig());
            Discharge run = started(plant);
            run.follow(new Order.Lift(200), 60, at -> {});
            joints.add(run.nowK(part(plant, HeatPart.Kind.JOINT, "end.1")));
        }
        assertThat(joints.get(0)).isGreaterThan(joints.get(1) + 10);
    }

    /** Windings cool into their case after a run: magnets are hottest when it is over. */
    @Test
    void magnetsAreHottestAfterTheRun() {
        Plant plant = Plant.assembleHeated(sketch(12).rig());
        Discharge run = started(plant);
        run.follow(new Order.Lift(250), 40, at -> {});
        int magnets = part(plant, HeatPart.Kind.MAGNETS, "fan.1");
        double atEnd = run.nowK(magnets);
        double[] seen = {atEnd};
        run.follow(new Order.Throttle(0), 120, at -> seen[0] = Math.max(seen[0], at.nowK(magnets)));
        assertThat(run.hottestAtS(magnets)).isBetween(41.0, 150.0);
        assertThat(run.hottestK(magnets)).isGreaterThan(atEnd + 0.5);
        assertThat(run.hottestK(magnets)).isGreaterThanOrEqualTo(seen[0]);
        assertThat(run.nowK(magnets)).isLessThan(run.hottestK(magnets));
    }

    /** A fuse opens at its time, what hangs behind it is dead, and the run goes on. */
    @Test
    void aFuseThatOpensTakesItsChainOut() {
        RigSketch sketch = sketch(10);
        sketch.chains.set(
                0,
                new Wiring.Chain(
                        sketch.chains.get(0).id(),
                        "p.1",
                        "split.1",
                        List.of(fuse("small", 40), RigSketch.run("trunk.1", 8, 0.4))));
        Plant plant = Plant.assembleHeated(sketch.rig());
        Discharge run = started(plant);
        int fuse = part(plant, HeatPart.Kind.FUSE, "small");
        double[] ampereS = new double[3];
        run.follow(
                new Order.Throttle(1),
                30,
                at -> {
                    if (at.openedS(fuse).isEmpty()) {
                        ampereS[0] += (at.timeS() - ampereS[1]) * at.network().chainA(0);
                        ampereS[1] = at.timeS();
                        ampereS[2] = at.network().chainA(0);
                    }
                });
        Element.Fuse declared = fuse("small", 40);
        FuseCurve curve =
                new FuseCurve(
                        declared.points().stream().mapToDouble(at -> at.current().si()).toArray(),
                        declared.points().stream().mapToDouble(at -> at.time().si()).toArray(),
                        declared.timeConstant().si());
        double when = run.openedS(fuse).orElseThrow();
        assertThat(run.failed()).isFalse();
        assertThat(run.timeS()).isEqualTo(30);
        assertThat(run.opened(fuse)).isTrue();
        assertThat(run.reached(Cause.FUSE_OPENED)).hasValue(when);
        // The current fell from its first to its last value on the way.
        double last = curve.timeS(ampereS[2]);
        assertThat(when).isBetween(0.7 * last, last);
        assertThat(run.network().chainA(0)).isZero();
        assertThat(run.packA(0)).isZero();
        assertThat(run.packA(1)).isGreaterThan(100);
        assertThat(run.network().closure()).isLessThan(1e-9);
        int dead = part(plant, HeatPart.Kind.WINDING, "fan.1");
        int alive = part(plant, HeatPart.Kind.WINDING, "fan.3");
        assertThat(run.lossW(dead)).isZero();
        assertThat(run.nowK(alive)).isGreaterThan(run.nowK(dead) + 20);
        // A run from there finds it open; one from the start has a new fuse.
        StartState left = run.stateNow();
        run.start(left);
        run.follow(new Order.Throttle(1), 0.01, at -> {});
        assertThat(run.openedS(fuse)).hasValue(0);
        assertThat(run.packA(0)).isZero();
        run.start();
        run.follow(new Order.Throttle(1), 0.01, at -> {});
        assertThat(run.packA(0)).isGreaterThan(100);
    }

    /** A run that stops at the first limit ends with it, and an earlier limit is not missed. */
    @Test
    void aRunEndsAtTheFirstLimitIfItIsToldTo() {
        Plant plant = Plant.assembleHeated(sketch(18).rig());
        Discharge on = started(plant);
        on.follow(new Order.Lift(200), 60, at -> {});
        Discharge stops = plant.discharge();
        stops.load(plant.parameters().nominal(), new CellDraw.Expected());
        stops.stopAtFirst(true);
        stops.start();
        boolean whole = stops.follow(new Order.Lift(200), 60, at -> {});
        assertThat(whole).isFalse();
        Discharge.End end = stops.ended().orElseThrow();
        assertThat(end.cause()).isEqualTo(Cause.OVERHEATED);
        assertThat(plant.heatParts().get(end.part().orElseThrow()).kind())
                .isIn(HeatPart.Kind.WIRE, HeatPart.Kind.JOINT);
        assertThat(end.timeS()).isCloseTo(on.firstS(), within(1e-9));
        assertThat(stops.timeS()).isLessThan(on.timeS());
        // The part is at its limit then.
        Discharge until = started(plant);
        until.follow(new Order.Lift(200), end.timeS(), at -> {});
        int part = end.part().orElseThrow();
        assertThat(until.nowK(part)).isCloseTo(plant.heatParts().get(part).limitK(), within(0.1));
    }

    /** The order in which a file lists its parts does not matter. */
    @Test
    void theOrderOfPartsDoesNotMatter() {
        Seeded.check(3, HeatedRunTest::reordered);
    }

    private static void reordered(RandomGenerator random) {
        RigSketch sketch = sketch(14);
        Plant plant = Plant.assembleHeated(sketch.rig());
        RigSketch other = RigSketch.of(sketch.rig());
        Random shuffle = new Random(random.nextLong());
        Collections.shuffle(other.chains, shuffle);
        Collections.shuffle(other.packs, shuffle);
        Collections.shuffle(other.fans, shuffle);
        Plant mixed = Plant.assembleHeated(other.rig());
        Discharge one = started(plant);
        Discharge two = started(mixed);
        one.follow(new Order.Lift(230), 30, at -> {});
        two.follow(new Order.Lift(230), 30, at -> {});
        for (int part = 0; part < plant.heatParts().size(); part++) {
            HeatPart of = plant.heatParts().get(part);
            if (of.kind() == HeatPart.Kind.CELLS) {
                continue; // cells of the whole rig are spread in the order of their names
            }
            int same = part(mixed, of.kind(), of.id().text());
            assertThat(two.nowK(same)).isCloseTo(one.nowK(part), within(2e-3));
        }
    }

    /** A damaged joint that grows while it is too hot ends hotter than one that stays. */
    @Test
    void aJointGrowsWorseAboveItsLimit() {
        List<Double> hottest = new ArrayList<>();
        for (double perS : new double[] {0, 0.02}) {
            RigSketch sketch = sketch(12);
            sketch.chains.set(
                    1,
                    new Wiring.Chain(
                            sketch.chains.get(1).id(),
                            "split.1",
                            "fan.1",
                            List.of(
                                    RigSketch.run("wire.1", 12, 0.5),
                                    new Element.Joint(
                                            new PartId("end.1"),
                                            RigPath.of("wiring", "end.1"),
                                            "bullet",
                                            si(0.0008),
                                            Optional.of(si(90)),
                                            new Wear(
                                                    si(40),
                                                    perS == 0
                                                            ? Optional.empty()
                                                            : Optional.of(si(perS))),
                                            si(4)))));
            Plant plant = Plant.assembleHeated(sketch.rig());
            Discharge run = started(plant);
            run.follow(new Order.Lift(200), 60, at -> {});
            int joint = part(plant, HeatPart.Kind.JOINT, "end.1");
            assertThat(run.heatReachedS(joint)).isPresent();
            hottest.add(run.hottestK(joint));
        }
        assertThat(hottest.get(1)).isGreaterThan(hottest.get(0) + 5);
    }

    /** A hover steps without making garbage. */
    @Test
    void stepsAllocateNothing() {
        Plant plant = Plant.assembleHeated(sketch(12).rig());
        Discharge run = started(plant);
        Order hover = new Order.Lift(200);
        for (int k = 0; k < 20; k++) {
            run.start();
            run.follow(hover, 60, at -> {});
        }
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().threadId();
        int[] steps = {0};
        Discharge.Watcher counts = at -> steps[0]++;
        run.start();
        run.follow(hover, 1, counts);
        steps[0] = 0;
        long before = threads.getThreadAllocatedBytes(id);
        run.follow(hover, 60, counts);
        long bytes = threads.getThreadAllocatedBytes(id) - before;
        assertThat(steps[0]).isGreaterThan(10);
        assertThat(bytes / (double) steps[0]).isLessThan(20);
    }

    /** A fan that spins by its fellow's side sees what it sees. */
    @Test
    void equalFansAreEquallyWarm() {
        Plant plant = Plant.assembleHeated(sketch(14).rig());
        Discharge run = started(plant);
        run.follow(new Order.Throttle(0.8), 20, at -> {});
        for (HeatPart.Kind kind :
                List.of(HeatPart.Kind.SWITCHES, HeatPart.Kind.WINDING, HeatPart.Kind.MAGNETS)) {
            double one = run.nowK(part(plant, kind, "fan.1"));
            assertThat(run.nowK(part(plant, kind, "fan.2"))).isCloseTo(one, within(1e-9));
        }
    }
}
