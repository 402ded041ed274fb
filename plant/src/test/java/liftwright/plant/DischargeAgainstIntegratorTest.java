package liftwright.plant;

import static liftwright.plant.RigSketch.si;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.random.RandomGenerator;
import liftwright.plant.DischargeReference.PackWithFans;
import liftwright.plant.supply.CellDraw;
import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.Control;
import liftwright.rig.Demands;
import liftwright.rig.FanType;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Site;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * A run steps as the equations say: every event of a hover comes when an adaptive integrator of
 * order 8 (Dormand and Prince 8(5,3), Hairer, Nørsett and Wanner, Solving Ordinary Differential
 * Equations I, 1993) says it does.
 */
class DischargeAgainstIntegratorTest {

    /** Of the time itself; the production step aims at 0.5 %. */
    private static final double SAME = 0.002;

    private static final double RESERVE = 0.2;
    private static final double LEAST_V = 3.3;

    @Test
    void everyEventComesWhenTheReferenceSays() {
        int[] met = new int[4];
        Seeded.check(Seeded.deep() ? 6 : 20, random -> compare(random, met));
        if (met[0] > 10) { // not one case replayed
            assertThat(met).as("reserve, voltage, full throttle, empty").doesNotContain(0);
        }
    }

    private static void compare(RandomGenerator random, int[] met) {
        List<PackWithFans> packs = new ArrayList<>();
        int count = random.nextInt(1, 4);
        for (int k = 0; k < count; k++) {
            packs.add(DischargeReference.random(random, random.nextInt(1, 4)));
        }
        double full = new DischargeReference(packs, 1, RESERVE, LEAST_V).fullLiftAtStart();
        double weightN = full * random.nextDouble(0.4, 0.85);
        var reference = new DischargeReference(packs, weightN, RESERVE, LEAST_V);
        DischargeReference.Times times = reference.run();

        Plant plant = Plant.assemble(rig(packs));
        Discharge run = plant.discharge();
        run.load(plant.parameters().nominal(), new CellDraw.Expected());
        run.start();
        run.follow(
                new Order.Lift(weightN),
                50_000,
                at -> assertThat(at.network().closure()).isLessThan(1e-9));

        assertThat(run.failed()).isFalse();
        for (int k = 0; k < count; k++) {
            met[0] += same(run.reached(Cause.RESERVE, k), times.reserve[k], times.end());
            met[1] += same(run.reached(Cause.CELL_VOLTAGE, k), times.cellVolt[k], times.end());
        }
        met[2] += same(run.reached(Cause.FULL_THROTTLE), times.fullThrottle, times.end());
        met[3] += same(run.reached(Cause.EMPTY), times.empty, times.end());
    }

    /** Events within the tolerance of the end may come on either side of it. */
    private static int same(OptionalDouble found, double reference, double end) {
        if (Math.abs(reference - end) < SAME * end && reference != end) {
            return 0;
        }
        if (reference > end) {
            assertThat(found.orElse(end)).isCloseTo(end, within(SAME * end));
            return 0;
        }
        assertThat(found.orElse(Double.POSITIVE_INFINITY)).isCloseTo(reference, within(SAME * end));
        return 1;
    }

    @Test
    void splittingARunChangesNothing() {
        Seeded.check(
                60,
                random -> {
                    List<PackWithFans> packs = List.of(DischargeReference.random(random, 2));
                    double full =
                            new DischargeReference(packs, 1, RESERVE, LEAST_V).fullLiftAtStart();
                    double weightN = full * random.nextDouble(0.4, 0.8);
                    Plant plant = Plant.assemble(rig(packs));
                    Discharge whole = started(plant);
                    Discharge split = started(plant);
                    whole.follow(new Order.Lift(weightN), 50_000, at -> {});
                    while (split.follow(
                            new Order.Lift(weightN), random.nextDouble(0.5, 20), at -> {})) {
                        assertThat(split.failed()).isFalse();
                    }
                    double end = whole.ended().orElseThrow().timeS();
                    assertThat(split.ended().orElseThrow().cause())
                            .isEqualTo(whole.ended().orElseThrow().cause());
                    assertThat(split.ended().orElseThrow().timeS())
                            .isCloseTo(end, within(SAME * end));
                });
    }

    @Test
    void moreCapacityNeverEndsSooner() {
        Seeded.check(
                60,
                random -> {
                    PackWithFans one = DischargeReference.random(random, 2);
                    PackWithFans more =
                            new PackWithFans(
                                    one.series(),
                                    one.capacityAs() * random.nextDouble(1.001, 1.5),
                                    one.charge(),
                                    one.cellOhm(),
                                    one.slowOhm(),
                                    one.slowS(),
                                    one.seriesOhm(),
                                    one.fans());
                    double full =
                            new DischargeReference(List.of(one), 1, RESERVE, LEAST_V)
                                    .fullLiftAtStart();
                    Order hover = new Order.Lift(full * random.nextDouble(0.3, 0.8));
                    Discharge less = started(Plant.assemble(rig(List.of(one))));
                    Discharge longer = started(Plant.assemble(rig(List.of(more))));
                    less.follow(hover, 50_000, at -> {});
                    longer.follow(hover, 50_000, at -> {});
                    assertThat(longer.firstS()).isGreaterThan(less.firstS());
                });
    }

    /** dv/dt = i/C − v/(RC) with no current but that of idle controllers: v falls by exp(−t/τ). */
    @Test
    void aPauseLetsTheSlowVoltageFallByItsTimeConstant() {
        PackWithFans pack = new PackWithFans(14, 20_000, 1, 0.001, 0.001, 20, 0.003, 2);
        Discharge run = started(Plant.assemble(rig(List.of(pack))));
        run.follow(new Order.Throttle(0.8), 200, at -> {});
        double slow = run.state().slowV(0, 0);
        run.follow(new Order.Throttle(0), 30, at -> {});
        double idleA = idleA(run);
        double settled = pack.slowOhm() * idleA;
        assertThat(run.state().slowV(0, 0))
                .isCloseTo(settled + (slow - settled) * Math.exp(-30 / 20.0), within(2e-6));
    }

    private static double idleA(Discharge run) {
        return 2 * DischargeReference.FIXED_W / run.network().packTerminalV(0);
    }

    private static Discharge started(Plant plant) {
        Discharge run = plant.discharge();
        run.load(plant.parameters().nominal(), new CellDraw.Expected());
        run.start();
        return run;
    }

    /** The same as a rig: reference air, so that coefficients hold as they are. */
    static Rig rig(List<PackWithFans> packs) {
        RigSketch sketch = new RigSketch();
        sketch.site =
                new Site(
                        si(0),
                        Optional.of(si(298.15)),
                        // 1.225 kg/m³ at 25 °C and no humidity
                        Optional.of(si(1.225 * 287.05307 * 298.15)),
                        si(0));
        sketch.demands = new Demands(si(1), si(60), si(RESERVE), si(RESERVE));
        sketch.limits = new Limits(Map.of(LimitName.CELL_UNDER_LOAD, LEAST_V));
        FanType type = fanType();
        List<PartId> all = new ArrayList<>();
        int fan = 1;
        for (int k = 0; k < packs.size(); k++) {
            PackWithFans pack = packs.get(k);
            String split = "split." + (k + 1);
            sketch.packs.add(
                    RigSketch.pack(
                            "p", k + 1, cell("cell-" + k, pack), pack.series(), pack.charge()));
            // The sketch's packs have links of 1.5 mΩ.
            sketch.wire("p." + (k + 1), split, RigSketch.joint("j" + k, pack.seriesOhm() - 0.0015));
            for (int n = 0; n < pack.fans(); n++) {
                sketch.fans.add(RigSketch.fan("fan", fan, type));
                sketch.wire(split, "fan." + fan);
                all.add(PartId.of("fan", fan));
                fan++;
            }
        }
        sketch.groups.add(
                new Control.Group("all", RigPath.of("control", "groups", "all"), all, si(1)));
        return sketch.rig();
    }

    private static CellType cell(String name, PackWithFans pack) {
        CellType like = RigSketch.cellType(name);
        return new CellType(
                name,
                "LiPo",
                Optional.of(si(pack.capacityAs())),
                Optional.of(si(pack.cellOhm())),
                List.of(new CellType.Settling(si(pack.slowOhm()), si(pack.slowS()))),
                Optional.empty(),
                CellType.Ageing.NONE,
                si(1000),
                si(0.165),
                like.openCircuit(),
                si(0),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static FanType fanType() {
        FanType like = RigSketch.fanType("F");
        Quantity one = si(1);
        return new FanType(
                "F",
                true,
                like.tip(),
                like.hub(),
                like.exitArea(),
                like.mass(),
                FanType.Data.MEASURED,
                new FanType.Performance.Coefficients(
                        si(DischargeReference.THRUST), si(DischargeReference.TORQUE)),
                new FanType.Motor(
                        Optional.of(si(DischargeReference.KV)),
                        Optional.of(si(DischargeReference.OHM - 0.002)),
                        Optional.of(si(DischargeReference.NO_LOAD)),
                        OptionalInt.empty()),
                like.rotor(),
                new FanType.Controller(
                        si(0.002),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        si(DischargeReference.FIXED_W),
                        si(DischargeReference.SWITCHING),
                        si(0.12),
                        FanType.Switching.UNKNOWN),
                Optional.empty(),
                like.swirl(),
                one,
                one,
                Optional.empty(),
                FanType.Extremes.USUAL);
    }
}
