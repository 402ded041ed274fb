package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.plant.OperatingLimit.Kind;
import liftwright.rig.CellType;
import liftwright.rig.FanType;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

class OperatingLimitsTest {

    private static final CellType CELL = RigSketch.cellType("C80");

    /** Air at 285.15 K: packs take its temperature, B = 1000 K. */
    private static final double PACK_OHM =
            14 * 0.0009 * Math.exp(1000 * (1 / 285.15 - 1 / 298.15)) + 0.0015;

    private static final double FULL_V = 14 * 4.20;

    private static RigSketch onePack() {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, CELL, 14, 0.3));
        sketch.fans.add(RigSketch.fan("f", 1, RigSketch.fanType("F")));
        sketch.wire(
                "p.1",
                "f.1",
                RigSketch.joint("first", 0.0004),
                RigSketch.fuse("fuse", 0.0003),
                RigSketch.pole("pole", 0.0002),
                RigSketch.joint("last", 0.0005));
        return sketch;
    }

    private record Solved(List<OperatingLimit> limits, SteadyState state) {
        OperatingLimit of(Kind kind, String part) {
            return limits.stream()
                    .filter(limit -> limit.kind() == kind && limit.part().text().equals(part))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static Solved solve(Rig rig) {
        Plant plant = Plant.assemble(rig);
        double[] p = plant.parameters().nominal();
        SteadyState state = plant.state();
        plant.solve(p, Effects.ALL, plant.workspace(), state);
        return new Solved(plant.limits(p, state), state);
    }

    @Test
    void everyFanStandsAgainstItsRatings() {
        Solved solved = solve(onePack().rig());
        SteadyState state = solved.state;
        OperatingLimit speed = solved.of(Kind.ROTOR_SPEED, "f.1");
        assertThat(speed.value()).isEqualTo(state.fanSpeedRadps(0));
        assertThat(speed.limit()).isCloseTo(0.95 * 3141.6, within(1e-9));
        assertThat(speed.name()).contains(LimitName.ROTOR_SPEED_SHARE);
        // a = √(1.4 · 287.053 · 285.15) = 338.5 m/s (US Standard Atmosphere 1976).
        assertThat(solved.of(Kind.TIP_MACH, "f.1").value())
                .isCloseTo(state.fanSpeedRadps(0) * 0.070 / 338.52, within(1e-4));
        assertThat(solved.of(Kind.ELECTRICAL_SPEED, "f.1").value())
                .isCloseTo(5 * state.fanSpeedRadps(0), within(1e-9));
        assertThat(solved.of(Kind.CONTROLLER_VOLTAGE, "f.1").value())
                .isCloseTo(FULL_V, within(1e-9));
        assertThat(solved.of(Kind.CAPACITOR_VOLTAGE, "f.1").limit()).isEqualTo(0.85 * 80);
        OperatingLimit cutOff = solved.of(Kind.CUT_OFF, "f.1");
        assertThat(cutOff.value()).isEqualTo(state.fanTerminalV(0));
        assertThat(cutOff.exceeded()).isFalse();
        assertThat(cutOff.margin()).isCloseTo(state.fanTerminalV(0) / 40 - 1, within(1e-12));
    }

    @Test
    void aFusesFaultCurrentIsTheFullPackThroughAllBeforeIt() {
        Solved solved = solve(onePack().rig());
        OperatingLimit fuse = solved.of(Kind.FUSE_BREAKING, "fuse");
        assertThat(fuse.value()).isCloseTo(FULL_V / (PACK_OHM + 0.0007), within(1e-6));
        assertThat(fuse.limit()).isCloseTo(10_000 / 1.2, within(1e-9));
        OperatingLimit pole = solved.of(Kind.CONTACTOR_BREAKING, "pole");
        assertThat(pole.value()).isCloseTo(FULL_V / (PACK_OHM + 0.0009), within(1e-6));
        assertThat(pole.exceeded()).isTrue();
        assertThat(solved.of(Kind.FUSE_VOLTAGE, "fuse").value()).isCloseTo(FULL_V, within(1e-9));
    }

    /** From the bus side two packs feed a fault in the third one's lead. */
    @Test
    void aFaultIsFedFromTheWorseSide() {
        RigSketch sketch = new RigSketch();
        for (int k = 1; k <= 3; k++) {
            sketch.packs.add(RigSketch.pack("p", k, CELL, 14, 1));
            sketch.wire(
                    "p." + k,
                    "bus",
                    RigSketch.joint("j" + k, 0.001),
                    RigSketch.fuse("fuse " + k, 0.0003));
        }
        Solved solved = solve(sketch.rig());
        double others = (PACK_OHM + 0.0013) / 2 + 0.0003;
        assertThat(others).isLessThan(PACK_OHM + 0.0013);
        assertThat(solved.of(Kind.FUSE_BREAKING, "fuse 2").value())
                .isCloseTo(FULL_V / others, within(1e-6));
    }

    @Test
    void currentsAreThoseOfTheChainAndTheCell() {
        Solved solved = solve(onePack().rig());
        double current = solved.state.chainA(0);
        assertThat(solved.of(Kind.JOINT_CURRENT, "last").value()).isEqualTo(current);
        assertThat(solved.of(Kind.JOINT_CURRENT, "last").limit()).isCloseTo(63, within(1e-9));
        assertThat(solved.of(Kind.FUSE_CURRENT, "fuse").limit()).isEqualTo(200);
        assertThat(solved.of(Kind.CONTACTOR_CURRENT, "pole").value()).isEqualTo(current);
        assertThat(solved.of(Kind.CELL_PEAK_CURRENT, "p.1").value())
                .isCloseTo(current, within(1e-9));
        double cell = (solved.state.packTerminalV(0) + current * 0.0015) / 14;
        assertThat(solved.of(Kind.CELL_UNDER_LOAD, "p.1").value()).isCloseTo(cell, within(1e-9));
    }

    @Test
    void aPackThatIsChargedByAnotherIsSaid() {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, CELL, 14, 0.15));
        sketch.packs.add(RigSketch.pack("p", 2, CELL, 14, 0.05));
        sketch.wire("p.1", "p.2", RigSketch.joint("tie", 0.001));
        Solved solved = solve(sketch.rig());
        assertThat(solved.of(Kind.REVERSE_CURRENT, "p.2").exceeded()).isTrue();
        assertThat(solved.limits)
                .noneMatch(
                        limit ->
                                limit.kind() == Kind.REVERSE_CURRENT
                                        && limit.part().text().equals("p.1"));
    }

    @Test
    void declaredLimitsReplaceTheDefaults() {
        RigSketch sketch = onePack();
        sketch.limits = new Limits(Map.of(LimitName.ROTOR_SPEED_SHARE, 0.5));
        OperatingLimit speed = solve(sketch.rig()).of(Kind.ROTOR_SPEED, "f.1");
        assertThat(speed.limit()).isCloseTo(0.5 * 3141.6, within(1e-9));
        assertThat(speed.exceeded()).isTrue();
        assertThat(speed.margin()).isNegative();
    }

    @Test
    void whatHasNoRatingHasNoLimit() {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, CELL, 14, 1));
        sketch.fans.add(
                RigSketch.fan(
                        "f",
                        1,
                        RigSketch.fanType(
                                "F", FanType.Data.MEASURED, Optional.empty(), RigSketch.si(1))));
        sketch.wire("p.1", "f.1", RigSketch.run("wire", 12, 0.5));
        assertThat(solve(sketch.rig()).limits)
                .noneMatch(limit -> limit.kind() == Kind.CONTROLLER_CURRENT);
    }
}
