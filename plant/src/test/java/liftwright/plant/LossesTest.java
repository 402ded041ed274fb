package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
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
        return new Fan(
                fan.id(),
                fan.declaredAt(),
                fan.type(),
                fan.mount(),
                fan.at(),
                blows,
                fan.leans(),
                spin,
                fan.intake(),
                fan.installation(),
                fan.serial());
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
}
