package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * A hot rig equals, to an independent formulation, a cold one whose motors are declared as the hot
 * ones are: K_v / (1 − 0.0011 · 60 K), winding × (1 + 0.00393 · 80 K), switches × (1 + 0.65 · 75 K
 * / 100 K); common practice, copper after NBS Handbook 100.
 */
class HotMotorsTest {

    @Test
    void aHotRigIsOneWithOtherMotors() {
        Seeded.check(
                500,
                random -> {
                    Rig rig = RandomRigs.exact(random);
                    Plant plant = Plant.assemble(rig);
                    double[] p = plant.parameters().nominal();
                    SteadyState hot = plant.state();
                    plant.solve(p, Effects.ALL, MotorHeat.HOT, plant.workspace(), hot);
                    RigSketch warmed = RigSketch.of(rig);
                    warmed.fans.replaceAll(HotMotorsTest::warm);
                    Referee referee = new Referee(warmed.rig(), Effects.ALL);
                    assertThat(hot.converged()).isTrue();
                    same(hot.liftN(), referee.liftN);
                    for (int f = 0; f < hot.fans(); f++) {
                        same(hot.fanWindingA(f), referee.windingA[f]);
                        same(hot.fanSpeedRadps(f), referee.speed[f]);
                    }
                });
    }

    /** Weaker magnets outweigh the resistance at full duty: faster, and hungrier. */
    @Test
    void anUnlimitedHotMotorLiftsMoreAndDrawsMore() {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("C80"), 14, 1));
        FanType type =
                RigSketch.fanType("F", FanType.Data.MEASURED, Optional.empty(), RigSketch.si(1));
        sketch.fans.add(RigSketch.fan("f", 1, type));
        sketch.wire("p.1", "f.1", RigSketch.joint("j", 0.001));
        Plant plant = Plant.assemble(sketch.rig());
        double[] p = plant.parameters().nominal();
        SteadyState cold = plant.state();
        SteadyState hot = plant.state();
        plant.solve(p, Effects.ALL, plant.workspace(), cold);
        plant.solve(p, Effects.ALL, MotorHeat.HOT, plant.workspace(), hot);
        assertThat(hot.liftN()).isBetween(1.01 * cold.liftN(), 1.11 * cold.liftN());
        assertThat(hot.fanWindingA(0)).isGreaterThan(cold.fanWindingA(0));
    }

    private static Fan warm(Fan fan) {
        FanType type = fan.type();
        FanType.Motor motor = type.motor();
        FanType.Controller own = type.controller();
        FanType warmed =
                new FanType(
                        type.name(),
                        type.ducted(),
                        type.tip(),
                        type.hub(),
                        type.exitArea(),
                        type.mass(),
                        type.data(),
                        type.performance(),
                        new FanType.Motor(
                                motor.speedConstant().map(kv -> times(kv, 1 / 0.934)),
                                motor.windingResistance().map(ohm -> times(ohm, 1.3144)),
                                motor.noLoadCurrent(),
                                motor.polePairs()),
                        type.rotor(),
                        new FanType.Controller(
                                times(own.onResistance(), 1.4875),
                                own.currentLimit(),
                                own.topVoltage(),
                                own.topElectricalSpeed(),
                                own.capacitance(),
                                own.capacitorVoltage(),
                                own.cutOff(),
                                own.fixedPower(),
                                own.switchingLoss(),
                                own.mass(),
                                own.switching()),
                        type.intake(),
                        type.swirl(),
                        type.scatter(),
                        type.installation(),
                        type.lot(),
                        type.extremes());
        return Copies.of(fan).type(warmed).made();
    }

    private static Quantity times(Quantity value, double factor) {
        return Quantity.exact(value.si() * factor, value.dimension());
    }

    private static void same(double actual, double expected) {
        assertThat(actual).isCloseTo(expected, within(1e-8 * Math.abs(expected)));
    }
}
