package liftwright.plant.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import liftwright.physics.RatedWire;
import liftwright.plant.RandomRigs;
import liftwright.plant.RigSketch;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.supply.Wires;
import liftwright.rig.Element;
import liftwright.rig.Insulation;
import liftwright.rig.Rig;
import liftwright.rig.book.PartsBook;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** One step of heat against closed forms, against the slope of its own equations, and its order. */
class HeatStepTest {

    private static final double AIR_K = 288.15;

    /** What warms, loaded at declared values. */
    private record Warm(HeatBank bank, HeatNumbers n, HeatStep step) {

        static Warm of(Rig rig) {
            ParameterRows rows = new ParameterRows();
            HeatBank bank = HeatBank.declare(rig, rows);
            HeatNumbers n = bank.newNumbers();
            bank.load(rows.table().nominal(), AIR_K, 101_325, n);
            return new Warm(bank, n, new HeatStep(n));
        }

        HeatState cold() {
            HeatState state = n.newState();
            new HeatStart(bank, n).rest(new double[] {AIR_K}, state);
            return state;
        }

        HeatLoad load() {
            return bank.newLoad(n);
        }

        /** Goes on at one load. */
        HeatState after(HeatState from, HeatLoad load, double untilS, int steps) {
            HeatState at = n.newState();
            at.copyFrom(from);
            HeatState next = n.newState();
            double h = untilS / steps;
            for (int k = 0; k < steps; k++) {
                step.settle(at, load);
                step.predict(at, load, h, next);
                step.correct(at, load, load, h, next);
                at.copyFrom(next);
            }
            step.settle(at, load);
            return at;
        }
    }

    private static RigSketch sketch() {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("cell"), 14, 1));
        sketch.fans.add(RigSketch.fan("fan", 1, RigSketch.fanType("F")));
        return sketch;
    }

    private static Rig rig() {
        return sketch().wire(
                        "p.1",
                        "split",
                        RigSketch.joint("plug", 0.0004),
                        RigSketch.fuse("fuse", 0.0003),
                        RigSketch.run("trunk", 10, 0.4),
                        RigSketch.pole("main", 0.0002))
                .wire(
                        "split",
                        "fan.1",
                        RigSketch.run("thin", 16, 0.5),
                        RigSketch.run("nothing", 12, 0),
                        RigSketch.joint("end", 0.0006))
                .rig();
    }

    /** Check value B18: Q 50 W, R 2 K/W, C 500 J/K, 600 s give 45.119 K of 100 K. */
    @Test
    void aBodyOfOneNodeFollowsTheExponential() {
        Warm warm = Warm.of(rig());
        int body = warm.bank.meanCell(0);
        warm.n.capacityJpK[warm.n.inner(body)] = 450;
        warm.n.capacityJpK[warm.n.outer(body)] = 50;
        warm.n.betweenWpK[body] = 1e9;
        HeatLoad load = warm.load();
        load.innerW[body] = 50;
        load.toAirWpK[body] = 0.5;
        HeatState end = warm.after(warm.cold(), load, 600, 60);
        assertThat(warm.n.innerK(end, body) - AIR_K).isCloseTo(45.119, within(2e-3));
        HeatState late = warm.after(warm.cold(), load, 60_000, 200);
        assertThat(warm.n.innerK(late, body) - AIR_K).isCloseTo(100, within(1e-6));
    }

    /** Check value B17: 60 A through 2 mΩ in 0.5 kg of 1000 J/(kg·K) is 0.864 K a minute. */
    @Test
    void aBodyWithoutAirWarmsEvenly() {
        Warm warm = Warm.of(rig());
        int body = warm.bank.warmestCell(0);
        warm.n.capacityJpK[warm.n.inner(body)] = 400;
        warm.n.capacityJpK[warm.n.outer(body)] = 100;
        warm.n.betweenWpK[body] = 1e9;
        HeatLoad load = warm.load();
        load.innerW[body] = 60 * 60 * 0.002;
        HeatState end = warm.after(warm.cold(), load, 60, 1);
        assertThat(warm.n.innerK(end, body) - AIR_K).isCloseTo(0.864, within(1e-6));
    }

    /** Two nodes at one load have two exponentials in closed form. */
    @Test
    void aBodyOfTwoNodesFollowsBothItsExponentials() {
        Seeded.check(20, HeatStepTest::twoNodes);
    }

    private static void twoNodes(RandomGenerator random) {
        Warm warm = Warm.of(rig());
        int body = warm.bank.motor(0);
        double c1 = random.nextDouble(1, 60);
        double c2 = random.nextDouble(20, 300);
        double g = random.nextDouble(0.5, 20);
        double air = random.nextDouble(0.1, 5);
        double q1 = random.nextDouble(0, 200);
        double q2 = random.nextDouble(0, 100);
        warm.n.capacityJpK[warm.n.inner(body)] = c1;
        warm.n.capacityJpK[warm.n.outer(body)] = c2;
        warm.n.betweenWpK[body] = g;
        HeatLoad load = warm.load();
        load.innerW[body] = q1;
        load.outerW[body] = q2;
        load.toAirWpK[body] = air;
        double t = random.nextDouble(5, 300);
        HeatState end = warm.after(warm.cold(), load, t, 3000);
        // x' = A x + b with A = [[-a, a], [d, -e]].
        double a = g / c1;
        double d = g / c2;
        double e = (g + air) / c2;
        double steady2 = (q1 + q2) / air;
        double steady1 = steady2 + q1 / g;
        double half = (a + e) / 2;
        double root = Math.sqrt(half * half - (a * e - a * d));
        double fast = -half - root;
        double slow = -half + root;
        // Eigenvectors (a, a + λ); at the start x = 0.
        double det = a * (a + slow) - a * (a + fast);
        double one = (-steady1 * (a + slow) + steady2 * a) / det;
        double other = (-steady2 * a + steady1 * (a + fast)) / det;
        double x1 = steady1 + one * a * Math.exp(fast * t) + other * a * Math.exp(slow * t);
        double x2 =
                steady2
                        + one * (a + fast) * Math.exp(fast * t)
                        + other * (a + slow) * Math.exp(slow * t);
        double scale = Math.max(1, steady1);
        assertThat(warm.n.innerK(end, body) - AIR_K).isCloseTo(x1, within(2e-5 * scale));
        assertThat(warm.n.outerK(end, body) - AIR_K).isCloseTo(x2, within(2e-5 * scale));
    }

    private static HeatState random(Warm warm, RandomGenerator random) {
        HeatState state = warm.cold();
        for (int k = 0; k < state.kelvin.length; k++) {
            state.kelvin[k] += random.nextDouble(5, 90);
        }
        return state;
    }

    private static HeatLoad load(Warm warm, RandomGenerator random) {
        HeatLoad load = warm.load();
        for (int k = 0; k < load.chainA.length; k++) {
            load.chainA[k] = random.nextDouble(0, 150);
        }
        for (int k = 0; k < load.innerW.length; k++) {
            load.innerW[k] = random.nextDouble(0, 80);
            load.outerW[k] = random.nextDouble(0, 40);
            load.toAirWpK[k] = random.nextDouble(0.1, 4);
        }
        warm.n.gains(load);
        return load;
    }

    /** Eliminating undoes multiplying with the slope of the equations, found by differences. */
    @Test
    void theEliminationSolvesItsEquations() {
        Warm warm = Warm.of(rig());
        Seeded.check(
                10,
                random -> {
                    HeatState at = random(warm, random);
                    HeatLoad load = load(warm, random);
                    Arrays.fill(load.chainA, 0); // its slope is left out
                    double a = Math.exp(random.nextDouble(-5, 4));
                    double[] wanted = new double[at.kelvin.length];
                    double[] moved = at.kelvin.clone();
                    double small = 1e-4;
                    for (int k = 0; k < wanted.length; k++) {
                        boolean nothing =
                                k < 4 * warm.n.nodes
                                        && k >= warm.n.nodes
                                        && !warm.n.lines.isWire(k % warm.n.nodes);
                        wanted[k] = nothing ? 0 : random.nextDouble(-1, 1);
                        moved[k] += small * wanted[k];
                    }
                    double[] before = new double[wanted.length];
                    double[] after = new double[wanted.length];
                    HeatFlow.kept(warm.n, at.kelvin, at.grown, load, before);
                    HeatFlow.kept(warm.n, moved, at.grown, load, after);
                    double[] r = new double[wanted.length];
                    for (int k = 0; k < r.length; k++) {
                        r[k] =
                                warm.n.capacityJpK[k] * wanted[k]
                                        - a * (after[k] - before[k]) / small;
                    }
                    HeatSolver solver = new HeatSolver(warm.n);
                    solver.factor(at.kelvin, load, a);
                    solver.solve(r);
                    for (int k = 0; k < r.length; k++) {
                        assertThat(r[k]).as("%d", k).isCloseTo(wanted[k], within(1e-5));
                    }
                });
    }

    /** Halving the step quarters the error, while currents and cooling run on. */
    @Test
    void theStepIsOfOrderTwo() {
        Warm warm = Warm.of(rig());
        double coarse = ramp(warm, 200);
        double fine = ramp(warm, 400);
        double reference = ramp(warm, 6400);
        double order =
                Math.log(Math.abs(coarse - reference) / Math.abs(fine - reference)) / Math.log(2);
        assertThat(order).isBetween(1.8, 2.3);
    }

    /** Temperature of the thin wire's middle after a ramp of its current. */
    private static double ramp(Warm warm, int steps) {
        HeatState at = warm.cold();
        HeatState next = warm.n.newState();
        HeatLoad near = warm.load();
        HeatLoad far = warm.load();
        double h = 20.0 / steps;
        for (int k = 0; k < steps; k++) {
            ramp(warm, k * h, near);
            ramp(warm, (k + 1) * h, far);
            warm.step.settle(at, near);
            warm.step.predict(at, near, h, next);
            warm.step.correct(at, near, far, h, next);
            at.copyFrom(next);
        }
        int[] thin = warm.n.lines.nodesOf[4];
        return at.kelvin[thin[3]] + warm.n.innerK(at, warm.bank.motor(0));
    }

    private static void ramp(Warm warm, double timeS, HeatLoad load) {
        Arrays.fill(load.chainA, 40 + 2 * timeS);
        Arrays.fill(load.innerW, 10 + timeS * timeS / 10);
        Arrays.fill(load.toAirWpK, 2 - timeS / 20);
        warm.n.gains(load);
    }

    /** At one temperature chains have the resistance that a plant without heat gives them. */
    @Test
    void equallyWarmChainsHaveTheResistanceOfTheColdPlant() {
        Seeded.check(
                20,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    ParameterRows rows = new ParameterRows();
                    Wires wires = Wires.declare(rig.wiring(), rows);
                    HeatBank bank = HeatBank.declare(rig, rows);
                    double[] p = rows.table().nominal();
                    HeatNumbers n = bank.newNumbers();
                    bank.load(p, AIR_K, 101_325, n);
                    HeatState at = n.newState();
                    Arrays.fill(at.kelvin, AIR_K + Wires.ASSUMED_RISE_K);
                    Arrays.fill(at.grown, 1);
                    double[] cold = new double[rig.wiring().chains().size()];
                    double[] warm = new double[cold.length];
                    wires.resistance(p, AIR_K, cold);
                    n.resistance(at, warm);
                    for (int chain = 0; chain < cold.length; chain++) {
                        assertThat(warm[chain]).isCloseTo(cold[chain], within(1e-12 * cold[chain]));
                    }
                });
    }

    /** What is made is kept or given to the air. */
    @Test
    void heatIsKeptOrGiven() {
        Warm warm = Warm.of(rig());
        Seeded.check(
                10,
                random -> {
                    HeatLoad load = load(warm, random);
                    HeatState at = random(warm, random);
                    warm.step.settle(at, load);
                    double kept = 0;
                    for (double watt : at.keptW) {
                        kept += watt;
                    }
                    double made = 0;
                    for (int node = 0; node < warm.n.nodes; node++) {
                        double current = load.chainA[warm.n.lines.chainOf[node]];
                        made += current * current * warm.n.nodeOhm(at, node);
                    }
                    for (int k = 0; k < load.innerW.length; k++) {
                        made += load.innerW[k] + load.outerW[k];
                    }
                    double given = HeatFlow.toAirW(warm.n, at, load);
                    assertThat(kept + given).isCloseTo(made, within(1e-9 * made));
                });
    }

    /** A run without length is no body, and its neighbours meet. */
    @Test
    void aRunWithoutLengthIsNotThere() {
        Warm warm = Warm.of(rig());
        assertThat(warm.bank.parts()).noneMatch(part -> part.id().text().equals("nothing"));
        assertThat(warm.bank.parts())
                .extracting(HeatPart::kind)
                .containsSubsequence(
                        HeatPart.Kind.JOINT,
                        HeatPart.Kind.FUSE,
                        HeatPart.Kind.WIRE,
                        HeatPart.Kind.POLE,
                        HeatPart.Kind.WIRE,
                        HeatPart.Kind.JOINT);
    }

    /** Cells of a run fill it, finest at its ends. */
    @Test
    void cellsFillTheRun() {
        Element.Run run = (Element.Run) RigSketch.run("r", 12, 0.55);
        double[] shares = LineGrid.shares(WireKinds.cells(run));
        assertThat(Arrays.stream(shares).sum()).isCloseTo(1, within(1e-12));
        assertThat(shares[0]).isLessThan(shares[1]).isCloseTo(shares[6], within(1e-12));
        assertThat(shares[3]).isGreaterThan(shares[2]);
        double[] shortOne = LineGrid.places(0.05, 0.1);
        assertThat(shortOne[0]).isCloseTo(1.0 / 28, within(1e-12));
    }

    /** The bow of even heating is exact at the places of unlike cells: edges lie midway. */
    @Test
    void edgesLieMidwayBetweenPlaces() {
        double[] places = LineGrid.places(0.55, 0.03);
        double[] shares = LineGrid.shares(places);
        double edge = 0;
        for (int k = 0; k + 1 < places.length; k++) {
            edge += shares[k];
            assertThat(edge).isCloseTo((places[k] + places[k + 1]) / 2, within(1e-12));
            assertThat(places[k]).isCloseTo(1 - places[places.length - 1 - k], within(1e-12));
        }
        assertThat(places[0]).isCloseTo(0.1 * 0.03 / 0.55, within(1e-12));
    }

    /** A rated joint between its rated wires warms by 30 K at its rating, as in the test of it. */
    @Test
    void aJointAtItsRatingWarmsByThirtyKelvin() {
        RatedWire rated =
                RatedWire.of(90, 0.8e-3, PartsBook.insulation(Insulation.PVC).conductivityWpmK());
        int gauge = rated.wire().gauge();
        Warm warm =
                Warm.of(
                        sketch().wire(
                                        "p.1",
                                        "fan.1",
                                        RigSketch.run("near", gauge, 3),
                                        RigSketch.joint("rated", 0.002),
                                        RigSketch.run("far", gauge, 3))
                                .rig());
        HeatLoad load = warm.load();
        load.chainA[0] = 90;
        warm.n.gains(load);
        HeatState end = warm.after(warm.cold(), load, 40_000, 400);
        double joint = end.kelvin[warm.n.lines.nodesOf[1][0]] - AIR_K;
        assertThat(joint).isCloseTo(30, within(1.5));
    }
}
