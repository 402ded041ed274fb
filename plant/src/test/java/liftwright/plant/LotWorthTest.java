package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.identify.LotWorth;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.FanType;
import liftwright.rig.table.BenchTable;
import liftwright.rig.table.CurrentKind;
import org.junit.jupiter.api.Test;

class LotWorthTest {

    private static final Quantity EXACT = RigSketch.si(1);

    static FanType with(FanType type, FanType.Lot.Evidence evidence, boolean findsScatter) {
        return new FanType(
                type.name(),
                type.ducted(),
                type.tip(),
                type.hub(),
                type.exitArea(),
                type.mass(),
                type.data(),
                type.performance(),
                type.motor(),
                type.rotor(),
                type.controller(),
                type.intake(),
                type.swirl(),
                type.scatter(),
                type.installation(),
                Optional.of(new FanType.Lot(evidence, findsScatter)),
                FanType.Extremes.USUAL);
    }

    private static FanType seller() {
        return RigSketch.fanType(
                "F", FanType.Data.SELLER, Optional.empty(), RigSketch.each(1, 0.05));
    }

    /** The worth of the lot takes the place of what sellers' figures are worth, and no other's. */
    @Test
    void theLotTakesThePlaceOfSellersWorth() {
        double sellers = liftOf(seller());
        FanType ofLot =
                with(seller(), new FanType.Lot.Fans(Map.of("a", 0.86, "b", 0.82), EXACT), true);
        assertThat(liftOf(ofLot)).isCloseTo(sellers * 0.84 / 0.90, within(1e-9 * sellers));
        FanType told = with(seller(), new FanType.Lot.Worth(RigSketch.about(0.7, 0.05)), true);
        assertThat(liftOf(told)).isCloseTo(sellers * 0.7 / 0.90, within(1e-9 * sellers));
    }

    /**
     * Three fans 0.86, 0.87, 0.85: mean 0.0248 as in LotEstimateTest, at 95 %, so that k = 2 is
     * 0.0248 · 2/1.96; the scatter of one is 4.303 · 0.01, the same.
     */
    @Test
    void meanIsSharedAndScatterIsEachFansOwn() {
        LotWorth lot =
                LotWorth.of(
                                with(
                                        seller(),
                                        new FanType.Lot.Fans(
                                                Map.of("a", 0.86, "b", 0.87, "c", 0.85), EXACT),
                                        true))
                        .orElseThrow();
        assertThat(lot.worth().si()).isCloseTo(0.86, within(1e-12));
        assertThat(lot.worth().tolerance().plus()).isCloseTo(0.02535, within(1e-4));
        assertThat(lot.worth().tolerance().scope()).isEqualTo(Tolerance.Scope.SHARED);
        assertThat(lot.scatter().tolerance().plus() * 0.86).isCloseTo(0.04391, within(1e-4));
        assertThat(lot.scatter().tolerance().scope()).isEqualTo(Tolerance.Scope.EACH);
    }

    /** A declared scatter stays, and two fans show none. */
    @Test
    void declaredScatterStays() {
        FanType.Lot.Fans three =
                new FanType.Lot.Fans(Map.of("a", 0.86, "b", 0.87, "c", 0.85), EXACT);
        FanType.Lot.Fans two = new FanType.Lot.Fans(Map.of("a", 0.86, "b", 0.87), EXACT);
        for (FanType type : List.of(with(seller(), three, false), with(seller(), two, true))) {
            LotWorth lot = LotWorth.of(type).orElseThrow();
            assertThat(lot.scatter()).isEqualTo(type.scatter());
            assertThat(lot.estimate().orElseThrow().scatterAssumed()).isTrue();
        }
    }

    /**
     * A declared ± 5 % (k = 2) is a deviation of 2.5 %: three fans that scatter by 6 % belie it.
     */
    @Test
    void fansThatScatterFarMoreThanDeclaredAreBelieved() {
        FanType.Lot.Fans wild =
                new FanType.Lot.Fans(Map.of("a", 0.80, "b", 0.86, "c", 0.92), EXACT);
        LotWorth lot = LotWorth.of(with(seller(), wild, false)).orElseThrow();
        assertThat(lot.estimate().orElseThrow().scatterAssumed()).isFalse();
        assertThat(lot.scatter().tolerance().plus()).isGreaterThan(0.2);
    }

    /**
     * The label is 92 N at 2722.7 rad/s in 1.225 kg/m³. At 1000 rad/s it promises 12.411 N in air
     * of 15 °C and 1013.25 hPa, and half of that at half the pressure.
     */
    @Test
    void rowsAreHeldAgainstTheLabelAtTheirSpeedAndInTheirAir() {
        double promisedN = 92 * (1000 / 2722.7) * (1000 / 2722.7);
        List<BenchTable.Row> rows = new ArrayList<>();
        rows.add(row(2, "a", 1000, 0.8 * promisedN, 101_325));
        rows.add(row(3, "b", 1000, 0.9 * promisedN / 2, 101_325 / 2.0));
        rows.add(row(4, "b", 2000, 0.9 * promisedN * 4 / 2, 101_325 / 2.0));
        LotWorth lot =
                LotWorth.of(
                                with(
                                        seller(),
                                        new FanType.Lot.Rows(
                                                new BenchTable("lot.csv", CurrentKind.BUS, rows),
                                                EXACT),
                                        true))
                        .orElseThrow();
        assertThat(lot.byFan().get("a")).isCloseTo(0.8, within(1e-3));
        assertThat(lot.byFan().get("b")).isCloseTo(0.9, within(1e-3));
        assertThat(lot.worth().si()).isCloseTo(0.85, within(1e-3));
    }

    private static BenchTable.Row row(
            int line, String fan, double speedRadps, double thrustN, double pascal) {
        return new BenchTable.Row(
                line,
                OptionalDouble.of(40),
                OptionalDouble.empty(),
                OptionalDouble.of(50),
                OptionalDouble.of(speedRadps),
                thrustN,
                OptionalDouble.empty(),
                OptionalDouble.of(288.15),
                OptionalDouble.of(pascal),
                OptionalDouble.empty(),
                Optional.of(fan));
    }

    /** One row for the worth of the lot, and none for what sellers' figures are worth. */
    @Test
    void theWorthOfTheLotIsAParameterOfTheRig() {
        FanType type = with(seller(), new FanType.Lot.Worth(RigSketch.about(0.86, 0.04)), true);
        Plant plant = Plant.assemble(sketch(type).rig());
        assertThat(plant.parameters().inputs())
                .anyMatch(input -> input.at().toString().equals("fan types/F/lot"))
                .noneMatch(input -> input.at().toString().equals("fan types/F/data"));
    }

    private static RigSketch sketch(FanType type) {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("C"), 14, 1));
        sketch.fans.add(RigSketch.fan("f", 1, type));
        sketch.wire("p.1", "f.1", RigSketch.joint("j", 0.002));
        return sketch;
    }

    private static double liftOf(FanType type) {
        Plant plant = Plant.assemble(sketch(type).rig());
        SteadyState state = plant.state();
        plant.solve(plant.parameters().nominal(), Effects.ALL, plant.workspace(), state);
        return state.liftN();
    }
}
