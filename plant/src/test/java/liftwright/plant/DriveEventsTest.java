package liftwright.plant;

import static liftwright.plant.RigSketch.si;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import liftwright.plant.fault.Effect;
import liftwright.plant.heat.HeatPart;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Element;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Limits, losses and heat of rotors in time, beside the runs of a supply that know no rotor. */
class DriveEventsTest {

    private static final double DT_S = 0.001;

    /** A rig of two packs with two fans each, all alike. */
    private static RigSketch sketch(double fuseA) {
        RigSketch sketch = new RigSketch();
        sketch.limits = new Limits(Map.of(LimitName.CELL_UNDER_LOAD, 2.5));
        for (int k = 1; k <= 2; k++) {
            sketch.packs.add(RigSketch.pack("p", k, RigSketch.cellType("cell"), 14, 1));
            Element.Fuse like = (Element.Fuse) RigSketch.fuse("fuse." + k, 0.0003);
            sketch.wire(
                    "p." + k,
                    "split." + k,
                    new Element.Fuse(
                            like.id(),
                            like.declaredAt(),
                            si(k == 1 ? fuseA : 400),
                            like.resistance(),
                            like.breaks(),
                            like.voltage()),
                    RigSketch.run("trunk." + k, 8, 0.4));
            for (int fan = 2 * k - 1; fan <= 2 * k; fan++) {
                sketch.fans.add(RigSketch.fan("fan", fan, RigSketch.fanType("F")));
                sketch.wire("split." + k, "fan." + fan, RigSketch.run("wire." + fan, 12, 0.5));
            }
        }
        return sketch;
    }

    private static Drive started(Plant plant) {
        Drive drive = plant.drive();
        drive.load(plant.parameters().nominal(), new CellDraw.Expected());
        drive.start();
        return drive;
    }

    /** As fast as fans that follow an order at once. */
    private static Drive spun(Plant plant, Discharge like, double share) {
        Drive drive = started(plant);
        double[] radps = new double[drive.fans()];
        for (int fan = 0; fan < radps.length; fan++) {
            drive.duty(fan, share);
            radps[fan] =
                    like.network().loadTerminalV(fan) > 0 ? like.fans().units().speedRadps(fan) : 0;
        }
        drive.spin(radps);
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

    /** Minutes at one throttle: each limit of each pack comes when a discharge says. */
    @Test
    void aHeldThrottleEndsAsADischargeDoes() {
        int[] met = new int[1];
        Seeded.check(
                6,
                random -> {
                    Plant plant = Plant.assemble(RandomRigs.exact(random));
                    double share = random.nextDouble(0.5, 1);
                    Discharge run = plant.discharge();
                    run.load(plant.parameters().nominal(), new CellDraw.Expected());
                    run.start();
                    Order order = new Order.Throttle(share);
                    run.follow(order, 1e-6, at -> {});
                    Drive drive = spun(plant, run, share);
                    run.follow(order, 900, at -> {});
                    double untilS = Math.min(run.timeS(), run.reached(Cause.CUT_OFF).orElse(1e9));
                    run(drive, Math.max(DT_S, untilS + 2), 0.005);
                    for (Cause cause :
                            new Cause[] {
                                Cause.RESERVE, Cause.EMPTY, Cause.CELL_VOLTAGE, Cause.CELL_CURRENT
                            }) {
                        for (int pack = 0; pack < drive.packs(); pack++) {
                            double when = run.reached(cause, pack).orElse(1e9);
                            if (when < untilS) {
                                met[0]++;
                                assertThat(drive.reachedS(cause, pack))
                                        .as(cause + " of " + pack)
                                        .isCloseTo(when, within(0.002 * untilS + 0.02));
                            }
                        }
                    }
                    run.reached(Cause.CUT_OFF)
                            .ifPresent(
                                    when -> {
                                        met[0]++;
                                        assertThat(drive.firsts().get(Cause.CUT_OFF))
                                                .isCloseTo(when, within(0.002 * when + 0.02));
                                    });
                });
        assertThat(met[0]).isGreaterThan(8);
    }

    /** A fuse too small for its fans opens when a discharge says, and its fans coast. */
    @Test
    void aFuseOpensWhenADischargeSays() {
        for (double rating : new double[] {50, 70, 90}) {
            Rig rig = sketch(rating).rig();
            Plant plant = Plant.assembleHeated(rig);
            Discharge run = plant.discharge();
            run.load(plant.parameters().nominal(), new CellDraw.Expected());
            run.start();
            run.follow(new Order.Throttle(0.9), 1e-6, at -> {});
            Drive drive = spun(plant, run, 0.9);
            run.follow(new Order.Throttle(0.9), 120, at -> {});
            double when = run.reached(Cause.FUSE_OPENED).orElseThrow();
            run(drive, when + 0.5, DT_S);
            assertThat(drive.firsts().get(Cause.FUSE_OPENED))
                    // Resistances are as warm as a tenth of a second ago at most.
                    .isCloseTo(when, within(0.007 * when + 0.01));
            assertThat(drive.isLive(0)).isFalse();
            assertThat(drive.isLive(1)).isFalse();
            assertThat(drive.isLive(2)).isTrue();
            assertThat(drive.busA(0)).isZero();
            assertThat(drive.speedRadps(0)).isPositive().isLessThan(0.7 * drive.speedRadps(2));
        }
    }

    /** Held for a minute, every part is as warm as in a discharge. */
    @Test
    void partsAreAsWarmAsInADischarge() {
        Plant plant = Plant.assembleHeated(sketch(400).rig());
        Discharge run = plant.discharge();
        run.load(plant.parameters().nominal(), new CellDraw.Expected());
        run.start();
        run.follow(new Order.Throttle(0.8), 1e-6, at -> {});
        Drive drive = spun(plant, run, 0.8);
        run.follow(new Order.Throttle(0.8), 60, at -> {});
        run(drive, 60, DT_S);
        drive.step(DT_S);
        assertThat(plant.heatParts()).isNotEmpty();
        int warmed = 0;
        for (int part = 0; part < plant.heatParts().size(); part++) {
            assertThat(drive.nowK(part))
                    .as(plant.heatParts().get(part).id().text())
                    .isCloseTo(run.nowK(part), within(0.2));
            if (plant.heatParts().get(part).kind() == HeatPart.Kind.WINDING) {
                warmed += run.nowK(part) > 300 ? 1 : 0;
            }
        }
        assertThat(warmed).isEqualTo(4);
    }

    /** Told each other's duties, two equal fans change places, and so do two equal packs. */
    @Test
    void swappedFansSwap() {
        Plant plant = Plant.assemble(sketch(400).rig());
        double[] duty = {0.3, 0.8, 0.5, 0.9};
        int[] swapped = {2, 3, 0, 1};
        Drive one = started(plant);
        Drive other = started(plant);
        for (int k = 0; k < 400; k++) {
            for (int fan = 0; fan < 4; fan++) {
                one.duty(fan, duty[fan]);
                other.duty(swapped[fan], duty[fan]);
            }
            one.step(DT_S);
            other.step(DT_S);
        }
        for (int fan = 0; fan < 4; fan++) {
            assertThat(other.speedRadps(swapped[fan]))
                    .isCloseTo(one.speedRadps(fan), within(1e-7 * one.speedRadps(fan)));
        }
        assertThat(other.packA(1)).isCloseTo(one.packA(0), within(1e-7 * one.packA(0)));
    }

    /** A fan that is told more takes from the one on its pack, and from no other. */
    @Test
    void sagCouplesFansOfOnePack() {
        Plant plant = Plant.assemble(sketch(400).rig());
        Drive calm = started(plant);
        Drive pulled = started(plant);
        all(calm, 0.5);
        all(pulled, 0.5);
        run(calm, 0.5, DT_S);
        run(pulled, 0.5, DT_S);
        pulled.duty(1, 1);
        run(calm, 0.05, DT_S);
        run(pulled, 0.05, DT_S);
        assertThat(pulled.busV(0)).isLessThan(calm.busV(0) - 0.5);
        assertThat(pulled.thrustN(0)).isLessThan(0.99 * calm.thrustN(0));
        assertThat(pulled.thrustN(2)).isCloseTo(calm.thrustN(2), within(1e-6));
    }

    /** Losses in mid-flight: dead, stuck, limited, reversed, exchanged, a pack. */
    @Test
    void lossesActFromTheMomentOn() {
        Plant plant = Plant.assemble(sketch(400).rig());
        Drive drive = started(plant);
        all(drive, 0.6);
        run(drive, 0.5, DT_S);
        double before = drive.thrustN(0);
        double turned = drive.angularMomentum(2);
        drive.fail(Effect.stuck(0, 0.9).and(Effect.noMore(1, 0.2)).and(Effect.reversed(2)));
        assertThat(drive.thrustN(0)).isEqualTo(before);
        run(drive, 0.5, DT_S);
        assertThat(drive.dutyInEffect(0)).isEqualTo(0.9);
        assertThat(drive.dutyInEffect(1)).isEqualTo(0.2);
        assertThat(drive.thrustN(0)).isGreaterThan(1.5 * before);
        assertThat(drive.thrustN(2)).isNegative();
        assertThat(Math.signum(drive.angularMomentum(2))).isEqualTo(-Math.signum(turned));
        drive.fail(Effect.lost(0).and(Effect.exchanged(2, 3)));
        drive.duty(2, 0.1);
        run(drive, 0.5, DT_S);
        assertThat(drive.isLive(0)).isFalse();
        assertThat(drive.packA(0)).isZero();
        assertThat(drive.dutyInEffect(3)).isEqualTo(0.1);
        assertThat(drive.dutyInEffect(2)).isEqualTo(0.6);
        drive.start();
        all(drive, 0.6);
        run(drive, 0.5, DT_S);
        assertThat(drive.thrustN(0)).isCloseTo(before, within(1e-9));
    }

    /** What a rotor takes up it takes from the frame: moments over time sum to what it turns. */
    @Test
    void angularMomentumIsKept() {
        Plant plant = Plant.assemble(sketch(400).rig());
        Drive drive = started(plant);
        all(drive, 0.7);
        double given = 0;
        for (int k = 0; k < 300; k++) {
            drive.step(DT_S);
            // The rig's swirl is a tenth of the shaft's torque, against the spin.
            double hand = Math.signum(drive.angularMomentum(1));
            given += DT_S * (drive.reactionNm(1) + hand * 0.1 * drive.dragTorqueNm(1));
        }
        assertThat(given)
                .isCloseTo(
                        -drive.angularMomentum(1),
                        within(1e-9 * Math.abs(drive.angularMomentum(1))));
        assertThat(Math.abs(given)).isGreaterThan(0.05);
    }

    /** In a stream along the thrust: T = ρ A V (V − v) with (1 + K) V³ − v² V = (1 + K) V₀³. */
    @Test
    void thrustGoesByTheStream() {
        Plant plant = Plant.assemble(sketch(400).rig());
        double[] p = plant.parameters().nominal();
        Drive drive = started(plant);
        all(drive, 0.7);
        run(drive, 1, DT_S);
        double rhoA = plant.siteDensityKgpm3(p) * 0.0128;
        double still = drive.thrustN(0);
        double jet = Math.sqrt(still / rhoA);
        for (double v : new double[] {-0.15 * jet, 0, 0.5, 3, 12, 0.6 * jet, 0.9 * jet}) {
            drive.inflow(0, v, 0);
            double low = jet;
            double high = 2 * jet;
            for (int halving = 0; halving < 60; halving++) {
                double middle = (low + high) / 2;
                boolean above = middle * middle * middle - v * v * middle > jet * jet * jet;
                low = above ? low : middle;
                high = above ? middle : high;
            }
            assertThat(drive.thrustN(0)).isCloseTo(rhoA * low * (low - v), within(1e-9 * still));
            assertThat(drive.massFlowKgps(0)).isCloseTo(rhoA * low, within(2e-5 * rhoA * low));
            assertThat(drive.isBeyondLaw(0)).isFalse();
        }
        drive.inflow(0, -0.3 * jet, 0);
        assertThat(drive.thrustN(0)).isGreaterThan(still);
        assertThat(drive.isBeyondLaw(0)).isTrue();
        drive.inflow(0, 0, 0.2 * jet);
        drive.thrustN(0);
        assertThat(drive.isBeyondLaw(0)).isTrue();
    }
}
