package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import liftwright.plant.fault.Effect;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.CellType;
import liftwright.rig.Control;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Losses in the middle of a run, on plants with heat and without. */
class DischargeFailTest {

    private static final Order SOME = new Order.Throttle(0.6);

    /** A random rig whose packs remember charge alone. */
    private static RigSketch drawn(RandomGenerator random) {
        RigSketch sketch = RigSketch.of(RandomRigs.exact(random));
        sketch.packs.replaceAll(pack -> with(pack, plain(pack.cell()), 0.9));
        return sketch;
    }

    private static CellType plain(CellType cell) {
        return new CellType(
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
    }

    private static Pack with(Pack pack, CellType cell, double charge) {
        return Copies.of(pack).cell(cell).charge(RigSketch.si(charge)).made();
    }

    private static Discharge started(Plant plant) {
        Discharge run = plant.discharge();
        run.load(plant.parameters().nominal(), new CellDraw.Expected());
        run.start();
        return run;
    }

    private static int[] some(int count, RandomGenerator random) {
        return IntStream.range(0, count).filter(k -> random.nextInt(2 + count) < 2).toArray();
    }

    /**
     * From the loss on it is the run of a rig that was built without what is lost, with packs as
     * full as they are then.
     */
    @Test
    void theRunGoesOnAsThatOfTheRest() {
        int[] seen = new int[3];
        Seeded.check(
                60,
                random -> {
                    RigSketch sketch = drawn(random);
                    Rig rig = sketch.rig();
                    int[] lost = some(rig.packs().size(), random);
                    int[] open = some(rig.wiring().chains().size(), random);
                    Discharge run = started(Plant.assemble(rig));
                    if (!run.follow(SOME, 5, _ -> {}) || run.reached(Cause.CUT_OFF).isPresent()) {
                        return;
                    }
                    RigSketch rest = RigSketch.of(rig);
                    rest.packs.clear();
                    List<Integer> stays = new ArrayList<>();
                    for (int pack = 0; pack < rig.packs().size(); pack++) {
                        if (Arrays.binarySearch(lost, pack) < 0) {
                            Pack own = rig.packs().get(pack);
                            rest.packs.add(with(own, own.cell(), run.leastChargeLeft(pack)));
                            stays.add(pack);
                        }
                    }
                    List<Integer> closed = new ArrayList<>();
                    for (int chain = 0; chain < rig.wiring().chains().size(); chain++) {
                        if (Arrays.binarySearch(open, chain) < 0) {
                            closed.add(chain);
                        }
                    }
                    rest.chains.clear();
                    closed.forEach(chain -> rest.chains.add(rig.wiring().chains().get(chain)));
                    Discharge other = started(Plant.assemble(rest.rig()));
                    run.fail(Effect.lost(lost).and(Effect.open(open)));
                    for (double forS : new double[] {0.001, 4}) {
                        boolean goesOn = run.follow(SOME, forS, _ -> {});
                        assertThat(other.follow(SOME, forS, _ -> {})).isEqualTo(goesOn);
                        if (!goesOn) {
                            return;
                        }
                        for (int k = 0; k < stays.size(); k++) {
                            int pack = stays.get(k);
                            double size = 1 + Math.abs(other.packA(k));
                            assertThat(run.packA(pack))
                                    .isCloseTo(other.packA(k), within(1e-4 * size));
                            assertThat(run.leastChargeLeft(pack))
                                    .isCloseTo(other.leastChargeLeft(k), within(2e-5));
                            seen[0]++;
                        }
                        for (int pack : lost) {
                            assertThat(run.packA(pack)).isZero();
                            seen[1]++;
                        }
                        for (int chain : open) {
                            assertThat(run.network().chainA(chain)).isZero();
                            seen[2]++;
                        }
                        for (int fan = 0; fan < rig.fans().size(); fan++) {
                            assertThat(run.network().loadTerminalV(fan))
                                    .isCloseTo(other.network().loadTerminalV(fan), within(1e-3));
                        }
                    }
                });
        assertThat(seen[0]).isGreaterThan(40);
        assertThat(seen[1]).isGreaterThan(10);
        assertThat(seen[2]).isGreaterThan(10);
    }

    /** Every watt is accounted for, and what is dead makes no heat. */
    @Test
    void heatOfTheSurvivorsCloses() {
        int[] seen = new int[1];
        Seeded.check(
                15,
                random -> {
                    Rig rig = drawn(random).rig();
                    Plant plant = Plant.assembleHeated(rig);
                    Discharge run = started(plant);
                    if (!run.follow(SOME, 3, _ -> {})) {
                        return;
                    }
                    int fan = random.nextInt(rig.fans().size());
                    int pack = random.nextInt(rig.packs().size());
                    run.fail(Effect.dead(fan).and(Effect.lost(pack)));
                    run.follow(
                            SOME,
                            3,
                            at -> {
                                double sum = at.shaftW();
                                for (int part = 0; part < plant.heatParts().size(); part++) {
                                    sum += at.lossW(part);
                                }
                                assertThat(sum)
                                        .isCloseTo(at.givenW(), within(1e-9 * (1 + at.givenW())));
                                assertThat(at.packA(pack)).isZero();
                                assertThat(at.network().loadA(fan)).isZero();
                                seen[0]++;
                            });
                });
        assertThat(seen[0]).isGreaterThan(50);
    }

    /** Losing nothing changes nothing, to the last bit; a new start finds everything whole. */
    @Test
    void nothingLostAndStartedAnew() {
        Seeded.check(
                30,
                random -> {
                    Rig rig = drawn(random).rig();
                    for (Plant plant : List.of(Plant.assemble(rig), Plant.assembleHeated(rig))) {
                        Discharge run = started(plant);
                        List<Double> whole = course(run, Effect.NONE, false);
                        run.start();
                        assertThat(course(run, Effect.NONE, true)).isEqualTo(whole);
                        run.start();
                        Effect lost =
                                Effect.lost(0)
                                        .and(Effect.stuck(0, 1))
                                        .and(Effect.reversed(rig.fans().size() - 1));
                        course(run, lost, true);
                        run.start();
                        assertThat(course(run, Effect.NONE, false)).isEqualTo(whole);
                    }
                });
    }

    private static List<Double> course(Discharge run, Effect effect, boolean fails) {
        List<Double> course = new ArrayList<>();
        Discharge.Watcher watcher =
                at -> {
                    course.add(at.timeS());
                    course.add(at.packA(0));
                    course.add(at.fans().liftN());
                };
        run.follow(SOME, 1, watcher);
        if (fails) {
            run.fail(effect);
        }
        run.follow(SOME, 1, watcher);
        return course;
    }

    /** One fan stuck at full: a computer takes back the others, and the lift stays the weight. */
    @Test
    void theOthersMakeUpForAStuckFan() {
        int[] seen = new int[1];
        Seeded.check(
                60,
                random -> {
                    RigSketch sketch = drawn(random);
                    sketch.steering = Control.Kind.FLIGHT_COMPUTER;
                    Rig rig = sketch.rig();
                    Plant plant = Plant.assemble(rig);
                    Discharge run = started(plant);
                    run.follow(new Order.Throttle(1), 0.1, _ -> {});
                    Order hover = new Order.Lift(0.4 * run.fans().liftN());
                    if (run.fans().liftN() <= 0 || !run.follow(hover, 1, _ -> {})) {
                        return;
                    }
                    double lift = run.fans().liftN();
                    int fan = random.nextInt(rig.fans().size());
                    double before = run.fans().units().thrustAtPointN(fan);
                    run.fail(Effect.stuck(fan, 1));
                    if (!run.follow(hover, 1, _ -> {})
                            || !run.fans().reached()
                            || run.fans().liftN() > lift * 1.0001) {
                        return;
                    }
                    assertThat(run.fans().liftN()).isCloseTo(lift, within(1e-6 * lift));
                    assertThat(run.fans().units().thrustAtPointN(fan))
                            .isGreaterThanOrEqualTo(before - 1e-6);
                    seen[0]++;
                });
        assertThat(seen[0]).isGreaterThan(10);
    }
}
