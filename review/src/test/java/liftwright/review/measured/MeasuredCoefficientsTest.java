package liftwright.review.measured;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/**
 * Every figure of {@code examples/measured/rig.yaml} that claims measured data follows from the
 * points marked "coefficient", to the digits it is written with; every ± is twice their spread.
 */
class MeasuredCoefficientsTest {

    private static final double RPM = Math.PI / 30;

    private final Rig rig = MeasuredRig.read();

    private FanType fanType(String name) {
        return rig.fanTypes().stream()
                .filter(type -> type.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private CellType cellType(String name) {
        return rig.cellTypes().stream()
                .filter(type -> type.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static FanType.Performance.AtSpeed atSpeed(FanType type) {
        return switch (type.performance()) {
            case FanType.Performance.AtSpeed point -> point;
            case FanType.Performance.Coefficients _ ->
                    throw new AssertionError("a point is declared");
            case FanType.Performance.Measured _ -> throw new AssertionError("a table");
        };
    }

    /** Half the last digit of the value; the share of a ± to half a percent. */
    private static void assertFigure(Quantity written, Figure derived, double halfDigit) {
        assertThat(written.si()).isCloseTo(derived.mean(), within(halfDigit));
        assertThat(written.tolerance().plus() / written.si())
                .isCloseTo(derived.share(), within(0.005));
        assertThat(written.tolerance().minus()).isEqualTo(written.tolerance().plus());
    }

    @Test
    void rotor() {
        FanType.Performance.AtSpeed point = atSpeed(fanType("research-rotor"));
        double rpm = point.speed().si() / RPM;
        assertFigure(point.thrust(), Coefficients.rotorThrustN(rpm), 0.0006);
        assertFigure(point.shaftPower(), Coefficients.rotorPowerW(rpm), 0.006);
    }

    @Test
    void drive() {
        FanType type = fanType("tunnel-drive");
        FanType.Performance.AtSpeed point = atSpeed(type);
        Figure derived =
                Coefficients.drivePowerW(
                        point.speed().si(),
                        type.motor().speedConstant().orElseThrow().si(),
                        type.motor().windingResistance().orElseThrow().si()
                                + type.controller().onResistance().si(),
                        type.motor().noLoadCurrent().orElseThrow().si());
        assertFigure(point.shaftPower(), derived, 0.06);
    }

    @Test
    void supply() {
        CellType quarter = cellType("tunnel-supply");
        Coefficients.Line line = Coefficients.supply();
        assertThat(quarter.openCircuit().orElseThrow().volt())
                .allSatisfy(volt -> assertThat(4 * volt).isCloseTo(line.restV(), within(0.0025)));
        assertFigure(
                quarter.resistance().orElseThrow(),
                new Figure(line.ohm() / 4, line.ohmPlusMinus() / 4),
                0.006e-3);
        assertThat(4 * quarter.openCircuitDoubt().tolerance().plus())
                .isCloseTo(line.residualPlusMinusV(), within(0.003));
    }

    @Test
    void cell() {
        CellType cell = cellType("E50");
        // Charge delivered down to 2.5 V: 4.842 Ah at 0.5C, 4.781 Ah at 1C, 25 °C (the data set's
        // own
        // current summed over time); the first reaches nearer to the slow capacity that the
        // open-circuit curve refers to, the difference is the doubt.
        double capacityAh = cell.capacity().orElseThrow().si() / 3600;
        assertThat(capacityAh).isCloseTo(4.842, within(0.005));

        Figure coefficient = Coefficients.cellTemperatureCoefficientK();
        assertFigure(cell.temperatureCoefficient(), coefficient, 0.6);

        Figure instant = Coefficients.cellInstantOhm(coefficient.mean());
        assertFigure(cell.resistance().orElseThrow(), instant, 0.06e-3);

        Figure settled =
                Coefficients.cellSettledOhm(
                        cell.openCircuit().orElseThrow(), capacityAh, coefficient.mean());
        Quantity pair = cell.settling().getFirst().resistance();
        assertThat(cell.resistance().orElseThrow().si() + pair.si())
                .isCloseTo(settled.mean(), within(0.11e-3));
        // The two ± together make that of the sum.
        assertThat(
                        Math.hypot(
                                cell.resistance().orElseThrow().tolerance().plus(),
                                pair.tolerance().plus()))
                .isCloseTo(settled.plusMinus(), within(0.2e-3));
    }
}
