package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.plant.fault.Effect;
import liftwright.plant.parameters.Parameter;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Rotors of rigs of every shape on their supply: where they end up, and what must always hold. */
class DriveOnRandomRigsTest {

    private static final double DT_S = 0.001;

    private static Drive loaded(Plant plant, double[] p) {
        Drive drive = plant.drive();
        drive.load(p, new CellDraw.Expected());
        drive.start();
        return drive;
    }

    private static void all(Drive drive, double share) {
        for (int fan = 0; fan < drive.fans(); fan++) {
            drive.duty(fan, share);
        }
    }

    private static void run(Drive drive, double forS, double dtS) {
        for (long k = Math.round(forS / dtS); k > 0; k--) {
            assertThat(drive.step(dtS)).isTrue();
        }
    }

    /** A rotor at rest that is told all at once draws what lets controllers cut off. */
    private static void raise(Drive drive, double share) {
        for (int k = 1; k <= 1000; k++) {
            all(drive, share * k / 1000);
            drive.step(0.002);
        }
    }

    /** Cells of so much capacity that a run takes nothing from it. */
    private static double[] endless(Plant plant) {
        double[] p = plant.parameters().nominal();
        List<Parameter> rows = plant.parameters().rows();
        int found = 0;
        for (int k = 0; k < p.length; k++) {
            if (rows.get(k).name().endsWith("/capacity")) {
                p[k] *= 1e8;
                found++;
            }
        }
        assertThat(found).isPositive();
        return p;
    }

    /** One operating point starts with full packs. */
    private static void fill(Plant plant, double[] p) {
        for (int k = 0; k < p.length; k++) {
            if (plant.parameters().rows().get(k).label().startsWith("charge")) {
                p[k] = 1;
            }
        }
    }

    /** At rest of all that moves, rotors, wires and cells are where a run of minutes has them. */
    @Test
    void steadyStateIsThatOfADischarge() {
        int[] compared = new int[1];
        Seeded.check(
                15,
                random -> {
                    Plant plant = Plant.assemble(RandomRigs.exact(random));
                    double[] p = endless(plant);
                    double share = random.nextDouble(0.3, 1);
                    double untilS = 1500;
                    Discharge run = plant.discharge();
                    run.load(p, new CellDraw.Expected());
                    run.start();
                    Order order = new Order.Throttle(share);
                    // Its steps ask for little error in charge, of which nothing goes here.
                    for (int second = 0; second < untilS; second++) {
                        run.follow(order, 1, at -> {});
                    }
                    Drive drive = loaded(plant, p);
                    drive.networkEvery(0.1);
                    raise(drive, share);
                    if (run.failed() || run.reached(Cause.CUT_OFF).isPresent()) {
                        return;
                    }
                    assertThat(drive.firsts()).doesNotContainKey(Cause.CUT_OFF);
                    // The cells settle, and rotors only follow.
                    run(drive, untilS, 0.01);
                    for (int fan = 0; fan < drive.fans(); fan++) {
                        if (!drive.isLive(fan)) {
                            assertThat(drive.speedRadps(fan)).isZero();
                            continue;
                        }
                        compared[0]++;
                        double radps = run.fans().units().speedRadps(fan);
                        assertThat(drive.speedRadps(fan)).isCloseTo(radps, within(1e-6 * radps));
                        double newton = run.fans().units().thrustAtPointN(fan);
                        assertThat(drive.thrustN(fan)).isCloseTo(newton, within(1e-6 * newton));
                        double volt = run.network().loadTerminalV(fan);
                        assertThat(drive.busV(fan)).isCloseTo(volt, within(1e-6 * volt));
                        double ampere = run.network().loadA(fan);
                        assertThat(drive.busA(fan)).isCloseTo(ampere, within(1e-5 * ampere));
                    }
                    for (int pack = 0; pack < plant.rig().packs().size(); pack++) {
                        double ampere = run.packA(pack);
                        assertThat(drive.packA(pack))
                                .isCloseTo(ampere, within(1e-6 * Math.abs(ampere) + 1e-4));
                        assertThat(drive.leastCellV(pack))
                                .isCloseTo(run.leastCellV(pack), within(1e-5));
                    }
                });
        assertThat(compared[0]).isGreaterThan(30);
    }

    /** The same at full throttle, as one operating point has it that knows no time at all. */
    @Test
    void steadyStateIsThatOfOneSolution() {
        Seeded.check(
                30,
                random -> {
                    Plant plant = Plant.assemble(RandomRigs.exact(random));
                    double[] p = endless(plant);
                    fill(plant, p);
                    SteadyState state = plant.state();
                    plant.solve(p, Effects.ALL.withCharge(false), plant.workspace(), state);
                    Drive drive = loaded(plant, p);
                    drive.networkEvery(0.1);
                    raise(drive, 1);
                    run(drive, 1500, 0.01);
                    if (!state.converged() || drive.firsts().containsKey(Cause.CUT_OFF)) {
                        return;
                    }
                    for (int fan = 0; fan < drive.fans(); fan++) {
                        double radps = state.fanSpeedRadps(fan);
                        assertThat(drive.speedRadps(fan)).isCloseTo(radps, within(1e-6 * radps));
                        assertThat(drive.thrustMiddleN(fan))
                                .isCloseTo(
                                        state.fanThrustN(fan),
                                        within(1e-6 * Math.abs(state.fanThrustN(fan))));
                        assertThat(drive.isLimited(fan)).isEqualTo(state.fanLimited(fan));
                    }
                });
    }

    /** What packs give equals what wires and controllers take, at every step of a wild course. */
    @Test
    void powerClosesAtEveryPoint() {
        Seeded.check(
                40,
                random -> {
                    Plant plant = Plant.assemble(RandomRigs.doubtful(random));
                    Drive drive = loaded(plant, plant.parameters().nominal());
                    drive.networkEvery(DT_S);
                    wild(
                            drive,
                            random,
                            600,
                            () -> assertThat(drive.network().closure()).isLessThan(1e-7));
                });
    }

    @Test
    void whatIsToldOfAllIsWhatIsToldOfEach() {
        Seeded.check(
                15,
                random -> {
                    Plant plant = Plant.assemble(RandomRigs.doubtful(random));
                    Drive drive = loaded(plant, plant.parameters().nominal());
                    double[] radps = new double[drive.fans()];
                    double[] volts = new double[drive.fans()];
                    wild(
                            drive,
                            random,
                            200,
                            () -> {
                                int met = random.nextInt(drive.fans());
                                drive.inflow(
                                        met, random.nextDouble(-9, 9), 9 * random.nextDouble());
                                drive.speedsRadps(radps);
                                drive.busesV(volts);
                                double thrustN = 0;
                                double powerW = 0;
                                boolean limited = false;
                                boolean beyond = false;
                                for (int fan = 0; fan < drive.fans(); fan++) {
                                    assertThat(radps[fan]).isEqualTo(drive.speedRadps(fan));
                                    assertThat(volts[fan]).isEqualTo(drive.busV(fan));
                                    thrustN += Math.abs(drive.thrustN(fan));
                                    powerW += drive.busV(fan) * drive.busA(fan);
                                    limited |= drive.isLimited(fan);
                                    beyond |= drive.isBeyondLaw(fan);
                                }
                                assertThat(drive.allThrustN()).isEqualTo(thrustN);
                                assertThat(drive.powerW()).isEqualTo(powerW);
                                assertThat(drive.isAnyLimited()).isEqualTo(limited);
                                assertThat(drive.isAnyBeyondLaw()).isEqualTo(beyond);
                            });
                });
    }

    private static void wild(Drive drive, RandomGenerator random, int steps, Runnable each) {
        for (int k = 0; k < steps && !drive.failed(); k++) {
            if (random.nextInt(15) == 0) {
                drive.duty(random.nextInt(drive.fans()), random.nextDouble());
            }
            drive.step(DT_S);
            each.run();
        }
    }

    /**
     * Energy: what controllers draw is in winding, friction, air and turning, to the order of the
     * step. Charge: what left the packs is what their currents sum up to.
     */
    @Test
    void energyAndChargeAreKept() {
        Seeded.check(
                20,
                random -> {
                    Plant plant = Plant.assemble(RandomRigs.exact(random));
                    double[] p = plant.parameters().nominal();
                    double share = random.nextDouble(0.4, 1);
                    double coarse = energyMiss(loaded(plant, p), share, 0.0005);
                    double fine = energyMiss(loaded(plant, p), share, 0.00025);
                    assertThat(fine).isLessThan(2e-3);
                    assertThat(fine).isLessThan(0.7 * coarse + 1e-9);
                });
    }

    private static double energyMiss(Drive drive, double share, double dtS) {
        drive.networkEvery(dtS);
        all(drive, share);
        int fans = drive.fans();
        double drawn = 0;
        double spent = 0;
        double[] passed = new double[drive.packs()];
        double[] packBefore = new double[passed.length];
        double watt = 0;
        double spentBefore = 0;
        for (int k = 0; k < 0.25 / dtS; k++) {
            drive.step(dtS);
            double now = 0;
            double takes = 0;
            for (int fan = 0; fan < fans; fan++) {
                now += drive.busV(fan) * drive.busA(fan);
                takes += drive.spentW(fan);
            }
            if (k > 0) {
                drawn += dtS * (watt + now) / 2;
                spent += dtS * (spentBefore + takes) / 2;
                for (int pack = 0; pack < passed.length; pack++) {
                    passed[pack] += dtS * (packBefore[pack] + drive.packA(pack)) / 2;
                }
            }
            watt = now;
            spentBefore = takes;
            for (int pack = 0; pack < passed.length; pack++) {
                packBefore[pack] = drive.packA(pack);
            }
        }
        double turning = 0;
        for (int fan = 0; fan < fans; fan++) {
            // Voltages and powers are those of the start of the last step.
            double radps = drive.speedStartRadps(fan);
            turning += drive.inertiaKgm2(fan) * radps * radps / 2;
        }
        for (int pack = 0; pack < passed.length; pack++) {
            assertThat(drive.state().passedAs(pack))
                    .isCloseTo(passed[pack], within(1e-9 * Math.abs(passed[pack]) + 1e-12));
        }
        return drawn > 0 ? Math.abs(drawn - spent - turning) / drawn : 0;
    }

    /** The same calls give the same bits, whatever was flown before on the same scratch. */
    @Test
    void flightsRepeatToTheLastBit() {
        Seeded.check(
                10,
                random -> {
                    Rig rig = RandomRigs.doubtful(random);
                    Plant plant = Plant.assembleHeated(rig);
                    double[] p = plant.parameters().nominal();
                    long seed = random.nextLong();
                    Drive one = loaded(plant, p);
                    double[] first = course(one, seed);
                    one.start();
                    double[] again = course(one, seed);
                    double[] other = course(loaded(plant, p), seed);
                    assertThat(again).isEqualTo(first);
                    assertThat(other).isEqualTo(first);
                });
    }

    private static double[] course(Drive drive, long seed) {
        RandomGenerator random = new java.util.SplittableRandom(seed);
        int fans = drive.fans();
        wild(drive, random, 400, () -> {});
        drive.fail(Effect.dead(0).and(Effect.stuck(fans - 1, 0.3)));
        wild(drive, random, 400, () -> {});
        double[] out = new double[2 * fans];
        for (int fan = 0; fan < fans; fan++) {
            out[fan] = drive.speedRadps(fan);
            out[fans + fan] = drive.thrustMiddleN(fan) + drive.reactionNm(fan) + drive.busV(fan);
        }
        return out;
    }

    /** A step makes no garbage, with temperatures and inflow. */
    @Test
    void stepsAllocateNothing() {
        Plant plant = Plant.assembleHeated(RandomRigs.exact(new java.util.SplittableRandom(5)));
        Drive drive = loaded(plant, plant.parameters().nominal());
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().threadId();
        double[] told = new double[64];
        Arrays.setAll(told, k -> 0.5 + 0.4 * Math.sin(k));
        steps(drive, told, 30_000);
        drive.start();
        steps(drive, told, 2_000);
        long before = threads.getThreadAllocatedBytes(id);
        double sum = steps(drive, told, 10_000);
        long bytes = threads.getThreadAllocatedBytes(id) - before;
        assertThat(sum).isPositive();
        assertThat(bytes).isLessThan(10_000);
    }

    private static double steps(Drive drive, double[] told, int count) {
        double sum = 0;
        for (int k = 0; k < count; k++) {
            for (int fan = 0; fan < drive.fans(); fan++) {
                drive.duty(fan, told[(k / 50 + fan) & 63]);
                drive.inflow(fan, 0.2, 1);
            }
            drive.step(DT_S);
            for (int fan = 0; fan < drive.fans(); fan++) {
                sum +=
                        drive.thrustMiddleN(fan)
                                + drive.massFlowKgps(fan)
                                + Math.abs(drive.reactionNm(fan))
                                + Math.abs(drive.angularMomentum(fan));
            }
        }
        return sum;
    }
}
