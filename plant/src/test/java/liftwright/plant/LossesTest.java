package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import liftwright.plant.balance.Allocation;
import liftwright.plant.balance.FanAtWork;
import liftwright.plant.fault.Effect;
import liftwright.rig.Control;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What must hold of every loss, whatever the rig. */
class LossesTest {

    /** A random rig whose fans blow and spin any way, steered as asked. */
    static Rig drawn(RandomGenerator random, Control.Kind kind) {
        RigSketch sketch = RigSketch.of(RandomRigs.exact(random));
        sketch.fans.replaceAll(
                fan -> {
                    Vec3 blows =
                            new Vec3(random.nextDouble(-0.3, 0.3), random.nextDouble(-0.3, 0.3), 1);
                    return turned(
                            fan,
                            blows.times(1 / blows.length()),
                            random.nextBoolean() ? Fan.Spin.LEFT_HAND : Fan.Spin.RIGHT_HAND);
                });
        sketch.steering = kind;
        return sketch.rig();
    }

    private static Fan turned(Fan fan, Vec3 blows, Fan.Spin spin) {
        return Copies.of(fan).blows(blows).spin(spin).made();
    }

    /** With a shared throttle the same point of lift-off, to the last bit. */
    @Test
    void losingNothingChangesNothingOfASharedThrottle() {
        Seeded.check(
                60,
                random -> {
                    Plant plant = Plant.assemble(drawn(random, Control.Kind.SHARED_THROTTLE));
                    double[] p = plant.parameters().nominal();
                    HoverPoint whole = plant.balancing().worker().liftOff(p);
                    LossPoint point = plant.losses(Losses.Charge.FULL).worker().at(p, Effect.NONE);
                    LossPoint.Shared shared = point.shared().orElseThrow();
                    assertThat(point.converged()).isEqualTo(whole.converged());
                    assertThat(shared.lifts()).isEqualTo(whole.lifts());
                    assertThat(shared.throttle()).isEqualTo(whole.throttle());
                    assertThat(shared.ledger().moment()).isEqualTo(whole.ledger().moment());
                    assertThat(shared.ledger().force()).isEqualTo(whole.ledger().force());
                });
    }

    /** With a flight computer the trims and reserves of the whole rig. */
    @Test
    void losingNothingChangesNothingOfAFlightComputer() {
        Seeded.check(
                60,
                random -> {
                    Plant plant = Plant.assemble(drawn(random, Control.Kind.FLIGHT_COMPUTER));
                    double[] p = plant.parameters().nominal();
                    Balancing.Worker worker = plant.balancing().worker();
                    HoverPoint whole = worker.liftOff(p);
                    List<FanAtWork> full =
                            worker.fullThrottle(p, whole.mass().centre()).orElseThrow();
                    Allocation can = new Allocation(full, whole.mass().weightN());
                    LossPoint point = plant.losses(Losses.Charge.FULL).worker().at(p, Effect.NONE);
                    LossPoint.Computer computer = point.computer().orElseThrow();
                    double size = point.liftN() + point.weightN();
                    assertThat(computer.held().greatestLiftN().orElseThrow())
                            .isCloseTo(
                                    can.greatestLift(true).orElseThrow().liftN(),
                                    within(1e-10 * size));
                    for (Allocation.Axis axis : Allocation.Axis.values()) {
                        for (int sign = -1; sign <= 1; sign += 2) {
                            for (boolean held : new boolean[] {true, false}) {
                                var trims = held ? computer.held() : computer.free();
                                var before = can.reserveNm(axis, sign, held);
                                var after = trims.reserve(axis, sign).momentNm();
                                assertThat(after.isPresent()).isEqualTo(before.isPresent());
                                before.ifPresent(
                                        nm ->
                                                assertThat(after.orElseThrow())
                                                        .isCloseTo(nm, within(1e-9 * size)));
                            }
                        }
                    }
                });
    }

    private static Effect lost(Rig rig, RandomGenerator random) {
        Effect effect = Effect.dead(random.nextInt(rig.fans().size()));
        if (random.nextBoolean()) {
            effect = effect.and(Effect.lost(random.nextInt(rig.packs().size())));
        }
        int other = random.nextInt(rig.fans().size());
        return switch (random.nextInt(4)) {
            case 0 -> effect.and(Effect.stuck(other, random.nextDouble()));
            case 1 -> effect.and(Effect.reversed(other));
            case 2 -> effect.and(Effect.noMore(other, random.nextDouble()));
            default -> effect;
        };
    }

    /** Seen in a mirror: the same lift, roll and yaw the other way round. */
    @Test
    void aLossOfTheMirroredRigIsTheMirroredLoss() {
        int[] seen = new int[1];
        Seeded.check(
                60,
                random -> {
                    Control.Kind kind =
                            random.nextBoolean()
                                    ? Control.Kind.FLIGHT_COMPUTER
                                    : Control.Kind.SHARED_THROTTLE;
                    Rig rig = drawn(random, kind);
                    Effect effect = lost(rig, random);
                    LossPoint one = at(rig, effect);
                    LossPoint other = at(MirroredRig.of(rig), effect);
                    double size = 1 + one.liftN() + one.weightN();
                    assertThat(other.converged()).isEqualTo(one.converged());
                    assertThat(other.liftN()).isCloseTo(one.liftN(), within(1e-8 * size));
                    one.shared()
                            .ifPresent(
                                    shared -> {
                                        Vec3 here = shared.ledger().moment();
                                        Vec3 there = other.shared().orElseThrow().ledger().moment();
                                        double near = 1e-6 * size;
                                        assertThat(there.x()).isCloseTo(-here.x(), within(near));
                                        assertThat(there.y()).isCloseTo(here.y(), within(near));
                                        assertThat(there.z()).isCloseTo(-here.z(), within(near));
                                    });
                    one.computer()
                            .ifPresent(
                                    computer -> {
                                        mirrored(computer.held(), other, true, size);
                                        mirrored(computer.free(), other, false, size);
                                        seen[0]++;
                                    });
                });
        assertThat(seen[0]).isGreaterThan(15);
    }

    private static LossPoint at(Rig rig, Effect effect) {
        Plant plant = Plant.assemble(rig);
        return plant.losses(Losses.Charge.JUDGED).worker().at(plant.parameters().nominal(), effect);
    }

    private static void mirrored(LossPoint.Trims here, LossPoint other, boolean held, double size) {
        LossPoint.Computer computer = other.computer().orElseThrow();
        LossPoint.Trims there = held ? computer.held() : computer.free();
        assertThat(there.holds()).isEqualTo(here.holds());
        for (LossPoint.Reserve reserve : here.reserves()) {
            int way =
                    switch (reserve.axis()) {
                        case ROLL, YAW -> -reserve.sign();
                        case PITCH -> reserve.sign();
                    };
            OptionalDouble same = there.reserve(reserve.axis(), way).momentNm();
            assertThat(same.isPresent()).isEqualTo(reserve.momentNm().isPresent());
            if (same.isPresent()) {
                assertThat(same.getAsDouble())
                        .isCloseTo(reserve.momentNm().getAsDouble(), within(1e-6 * size));
            }
        }
    }

    /** What a worker solved before decides nothing, to the last bit. */
    @Test
    void theOrderOfLossesDecidesNothing() {
        Seeded.check(
                20,
                random -> {
                    Control.Kind kind =
                            random.nextBoolean()
                                    ? Control.Kind.FLIGHT_COMPUTER
                                    : Control.Kind.SHARED_THROTTLE;
                    Rig rig = drawn(random, kind);
                    Plant plant = Plant.assemble(rig);
                    double[] p = plant.parameters().nominal();
                    Losses losses = plant.losses(Losses.Charge.FULL);
                    Effect effect = lost(rig, random);
                    Losses.Worker used = losses.worker();
                    for (int k = 0; k < 5; k++) {
                        used.at(p, lost(rig, random));
                    }
                    LossPoint fresh = losses.worker().at(p, effect);
                    LossPoint again = used.at(p, effect);
                    assertThat(again).usingRecursiveComparison().isEqualTo(fresh);
                });
    }

    /** A fan stuck at full stays there while the trim holds the weight with the others. */
    @Test
    void aStuckFanGivesWhatTheSaggingSupplyLeavesIt() {
        int[] seen = new int[1];
        Seeded.check(
                150,
                random -> {
                    Rig rig = drawn(random, Control.Kind.FLIGHT_COMPUTER);
                    Plant plant = Plant.assemble(rig);
                    double[] p = plant.parameters().nominal();
                    Losses.Worker worker = plant.losses(Losses.Charge.JUDGED).worker();
                    int fan = random.nextInt(rig.fans().size());
                    Effect stuck = Effect.stuck(fan, 1);
                    LossPoint full = worker.at(p, stuck, 1e9);
                    LossPoint hover = worker.at(p, stuck, 0.3 * Math.max(1, full.liftN()));
                    if (!hover.flow().hover()) {
                        return;
                    }
                    // With the others at less than full the supply sags less.
                    assertThat(hover.flow().thrustN().get(fan))
                            .isGreaterThanOrEqualTo(full.flow().thrustN().get(fan) - 1e-6);
                    seen[0]++;
                });
        assertThat(seen[0]).isGreaterThan(3);
    }
}
