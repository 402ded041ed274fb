package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import liftwright.rig.CellType;
import liftwright.rig.FanType;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** Small circuits whose answer can be had by hand or by bisection. */
class OperatingPointTest {

    private static final CellType CELL = RigSketch.cellType("C80");

    private static SteadyState solve(Rig rig) {
        Plant plant = Plant.assemble(rig);
        SteadyState state = plant.state();
        plant.solve(plant.parameters().nominal(), Effects.ALL, plant.workspace(), state);
        assertThat(state.converged()).isTrue();
        return state;
    }

    private static FanType unlimited() {
        return RigSketch.fanType("F", FanType.Data.MEASURED, Optional.empty(), RigSketch.si(1));
    }

    /** T = k Ω², torque balance and Ohm's law in one unknown, the terminal voltage. */
    @Test
    void onePackAndOneFanMeetWhereBisectionSays() {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, CELL, 14, 1));
        sketch.fans.add(RigSketch.fan("f", 1, unlimited()));
        sketch.wire("p.1", "f.1", RigSketch.joint("j", 0.002));
        SteadyState state = solve(sketch.rig());

        double emf = 14 * 3.65;
        double warm = Math.exp(1000 * (1 / 285.15 - 1 / 298.15));
        double ohm = 14 * (0.0009 + 0.0005) * warm + 0.0015 + 0.002;
        double density = new Referee(sketch.rig(), Effects.ALL).densityRatio();
        double kappa = 4600 / Math.pow(2722.7, 3) * density;
        double low = 0;
        double high = emf;
        for (int k = 0; k < 200; k++) {
            double volt = (low + high) / 2;
            // Ω from the voltage: κ K_v R Ω² + Ω/K_v + I0 R − V = 0.
            double a = kappa * 54.45 * 0.014;
            double speed =
                    (-1 / 54.45 + Math.sqrt(1 / (54.45 * 54.45) + 4 * a * (volt - 2.5 * 0.014)))
                            / (2 * a);
            double current = 2.5 + kappa * 54.45 * speed * speed + 5 / volt;
            if (emf - ohm * current > volt) {
                low = volt;
            } else {
                high = volt;
            }
        }
        assertThat(state.fanTerminalV(0)).isCloseTo(low, within(1e-9));
        assertThat(state.packA(0)).isCloseTo((emf - low) / ohm, within(1e-8));
        assertThat(state.chainA(0)).isCloseTo(state.packA(0), within(1e-8));
    }

    @Test
    void unequalPacksOnOneBusDriveACurrentBetweenThem() {
        RigSketch sketch = new RigSketch();
        sketch.demands =
                new liftwright.rig.Demands(
                        RigSketch.si(1.15), RigSketch.si(60), RigSketch.si(0.2), RigSketch.si(1));
        sketch.packs.add(RigSketch.pack("p", 1, CELL, 14, 1));
        sketch.packs.add(RigSketch.pack("p", 2, CELL, 14, 0.5));
        sketch.wire("p.1", "bus", RigSketch.joint("a", 0.001));
        sketch.wire("p.2", "bus", RigSketch.joint("b", 0.001));
        SteadyState state = solve(sketch.rig());
        double warm = Math.exp(1000 * (1 / 285.15 - 1 / 298.15));
        double pack = 14 * 0.0014 * warm + 0.0015;
        double circulating = 14 * (4.20 - 3.80) / (2 * (pack + 0.001));
        assertThat(state.packA(0)).isCloseTo(circulating, within(1e-9));
        assertThat(state.packA(1)).isCloseTo(-circulating, within(1e-9));
        assertThat(state.chainA(1)).isCloseTo(-circulating, within(1e-9));
    }

    @Test
    void aFanThatNoPackReachesIsDeadAndCounted() {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, CELL, 14, 1));
        sketch.fans.add(RigSketch.fan("f", 1, unlimited()));
        sketch.fans.add(RigSketch.fan("f", 2, unlimited()));
        sketch.fans.add(RigSketch.fan("f", 3, unlimited()));
        sketch.wire("p.1", "f.1", RigSketch.joint("j", 0.002));
        sketch.wire("f.2", "elsewhere", RigSketch.joint("k", 0.002));
        SteadyState state = solve(sketch.rig());
        assertThat(state.fansWithoutSupply()).isEqualTo(2);
        assertThat(state.fanFed(0)).isTrue();
        assertThat(state.fanFed(1)).isFalse();
        assertThat(state.fanThrustN(1)).isZero();
        assertThat(state.chainA(1)).isZero();
        assertThat(state.liftN()).isEqualTo(state.fanUpwardThrustN(0)).isPositive();
    }

    @Test
    void aRigWithoutPacksOrWithoutFansIsSolvedToo() {
        RigSketch fanOnly = new RigSketch();
        fanOnly.fans.add(RigSketch.fan("f", 1, unlimited()));
        assertThat(solve(fanOnly.rig()).liftN()).isZero();
        RigSketch packOnly = new RigSketch();
        packOnly.packs.add(RigSketch.pack("p", 1, CELL, 14, 1));
        assertThat(solve(packOnly.rig()).packA(0)).isZero();
    }

    @Test
    void currentsInWiresOfNoLengthFollowFromWhatTheyFeed() {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, CELL, 14, 1));
        sketch.fans.add(RigSketch.fan("f", 1, unlimited()));
        sketch.fans.add(RigSketch.fan("f", 2, unlimited()));
        sketch.wire("p.1", "a");
        sketch.wire("b", "a");
        sketch.wire("b", "f.1", RigSketch.run("none", 12, 0));
        sketch.wire("a", "f.2", RigSketch.joint("j", 0.003));
        SteadyState state = solve(sketch.rig());
        assertThat(state.chainA(0)).isCloseTo(state.packA(0), within(1e-9));
        assertThat(state.chainA(1)).isCloseTo(-state.fanBusA(0), within(1e-9));
        assertThat(state.chainA(2)).isCloseTo(state.fanBusA(0), within(1e-9));
        assertThat(state.chainA(3)).isCloseTo(state.fanBusA(1), within(1e-9));
    }

    @Test
    void aLoopWithoutResistanceIsNamed() {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, CELL, 14, 1));
        sketch.fans.add(RigSketch.fan("f", 1, unlimited()));
        sketch.wire("p.1", "f.1");
        sketch.wire("p.1", "f.1");
        Plant plant = Plant.assemble(sketch.rig());
        assertThat(plant.undeterminedChains())
                .extracting(chain -> chain.id().text())
                .containsExactly("chain.2");
        assertThat(solve(sketch.rig()).fanThrustN(0)).isPositive();
    }

    @Test
    void aFanAtItsCurrentLimitTakesThatCurrentAndNoMore() {
        RigSketch sketch = new RigSketch();
        FanType type =
                RigSketch.fanType(
                        "F", FanType.Data.MEASURED, Optional.of(RigSketch.si(60)), RigSketch.si(1));
        sketch.packs.add(RigSketch.pack("p", 1, CELL, 14, 1));
        sketch.fans.add(RigSketch.fan("f", 1, type));
        sketch.wire("p.1", "f.1", RigSketch.joint("j", 0.002));
        SteadyState state = solve(sketch.rig());
        assertThat(state.fanLimited(0)).isTrue();
        assertThat(state.fanWindingA(0)).isEqualTo(60);
        assertThat(state.fanDuty(0)).isBetween(0.5, 0.999);
        double driven = state.fanDuty(0) * state.fanTerminalV(0);
        assertThat(driven).isCloseTo(60 * 0.014 + state.fanSpeedRadps(0) / 54.45, within(1e-9));
    }

    @Test
    void aWeakerPackIsJudgedAtItsOwnCharge() {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, CELL, 14, 0.05));
        Pack full = RigSketch.pack("p", 2, CELL, 14, 1);
        sketch.packs.add(full);
        SteadyState state = solve(sketch.rig());
        assertThat(state.packRestV(0)).isCloseTo(14 * 3.45, within(1e-9));
        assertThat(state.packRestV(1)).isCloseTo(14 * 3.65, within(1e-9));
    }

    @Test
    void aSellersFigureIsWorthLess() {
        double measured = liftOf(FanType.Data.MEASURED, Effects.ALL);
        assertThat(liftOf(FanType.Data.SELLER, Effects.ALL))
                .isCloseTo(0.90 * measured, within(1e-9 * measured));
        double rated = liftOf(FanType.Data.MEASURED, Effects.RATED);
        assertThat(liftOf(FanType.Data.SELLER, Effects.RATED)).isEqualTo(rated);
    }

    private static double liftOf(FanType.Data data, Effects effects) {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, CELL, 14, 1));
        sketch.fans.add(
                RigSketch.fan(
                        "f", 1, RigSketch.fanType("F", data, Optional.empty(), RigSketch.si(1))));
        sketch.wire("p.1", "f.1", RigSketch.joint("j", 0.002));
        Plant plant = Plant.assemble(sketch.rig());
        SteadyState state = plant.state();
        plant.solve(plant.parameters().nominal(), effects, plant.workspace(), state);
        return state.liftN();
    }
}
