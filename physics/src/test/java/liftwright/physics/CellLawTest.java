package liftwright.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import liftwright.physics.CellLaw.PowerDraw;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellLawTest {

    /**
     * Closed forms, recomputed: 50 W into 500 J/K behind 2 K/W for 600 s give 45.119 K; 60 A
     * through 2 mΩ in 500 J/K warm it by 0.864 K/min where next to nothing leaves it.
     */
    @Test
    void aLumpWarms() {
        assertThat(CellLaw.lumpAfterK(300, 300, 50, 500, 0.5, 600) - 300)
                .isCloseTo(45.119, within(5e-4));
        assertThat(CellLaw.lumpAfterK(300, 300, 60 * 60 * 0.002, 500, 1e-9, 60) - 300)
                .isCloseTo(0.864, within(1e-6));
        assertThat(CellLaw.lumpAfterK(320, 300, 0, 500, 0.5, 1e9)).isCloseTo(300, within(1e-9));
    }

    /**
     * A constant current gives the closed form; a ramp from rest gives I' R (t − τ (1 − e^(−t/τ))).
     */
    @Test
    void aPairFollowsAnyStraightCurrent() {
        assertThat(CellLaw.pairAfterV(0, 10, 10, 0.015, 30, 90))
                .isCloseTo(0.242532 - 0.1, within(1e-6));
        Seeded.check(
                200,
                random -> {
                    double tau = Math.exp(random.nextDouble(-2, 7));
                    double step = tau * Math.exp(random.nextDouble(-14, 4));
                    double ramp = random.nextDouble(-5, 5);
                    double exact = ramp * 0.01 * (step + tau * Math.expm1(-step / tau));
                    assertThat(CellLaw.pairAfterV(0, 0, ramp * step, 0.01, tau, step))
                            .isCloseTo(exact, within(1e-7 * Math.abs(ramp) * 0.01 * step));
                    double half = CellLaw.pairAfterV(0.02, 3, 4, 0.01, tau, step / 2);
                    assertThat(CellLaw.pairAfterV(half, 4, 5, 0.01, tau, step / 2))
                            .isCloseTo(
                                    CellLaw.pairAfterV(0.02, 3, 5, 0.01, tau, step), within(1e-9));
                });
    }

    /** A step that is short against the time constant: x/2 − x²/6 + x³/24 of the ramp. */
    @Test
    void aPairKeepsItsDigitsInShortSteps() {
        for (double x : new double[] {1e-9, 1e-6, 3e-5, 9.9e-5}) {
            double series = x / 2 - x * x / 6 + x * x * x / 24;
            assertThat(CellLaw.pairAfterV(0, 0, 1, 1, 1, x))
                    .isCloseTo(series, within(1e-9 * series));
        }
        for (double x : new double[] {1e-6, 1e-3, 0.0199, Math.nextDown(0.02), 0.02, 0.03}) {
            double gone = -Math.expm1(-x);
            assertThat(CellLaw.pairAfterV(0, 1, 1, 1, 1, x)).isCloseTo(gone, within(4e-16 * gone));
            // what is left of 1 − gone/x has lost so many digits
            assertThat(CellLaw.pairAfterV(0, 0, 1, 1, 1, x)).isCloseTo(1 - gone / x, within(4e-16));
        }
    }

    /** Straight between the points, held beyond them. */
    @ParameterizedTest
    @CsvSource({"0, 2", "0.1, 2", "0.3, 1.5", "0.5, 1", "0.75, 0.9", "1, 0.8"})
    void resistanceOverCharge(double charge, double factor) {
        double[] points = {0.1, 0.5, 1};
        double[] factors = {2, 1, 0.8};
        assertThat(CellLaw.chargeFactor(points, factors, charge)).isCloseTo(factor, within(1e-15));
    }

    /** Closed form, recomputed: I, terminal voltage, efficiency, greatest power. */
    @ParameterizedTest
    @CsvSource({
        "50.4, 0.030, 5000, 105.879, 47.2236, 0.93698, 21168",
        "44.4, 0.030, 5000, 122.802, 40.7159, 0.91703, 16428",
        "22.2, 0.012, 3000, 146.781, 20.4386, 0.92066, 10267.5",
    })
    void constantPower(
            double source,
            double ohm,
            double watt,
            double current,
            double terminal,
            double efficiency,
            double greatest) {
        PowerDraw.Carries draw = (PowerDraw.Carries) CellLaw.constantPower(source, ohm, watt);
        assertThat(draw.currentA()).isCloseTo(current, withPercentage(1e-3));
        assertThat(draw.terminalV()).isCloseTo(terminal, withPercentage(1e-3));
        assertThat(draw.terminalV() / source).isCloseTo(efficiency, within(1e-4));
        PowerDraw.Collapses beyond =
                (PowerDraw.Collapses) CellLaw.constantPower(source, ohm, greatest * 1.001);
        assertThat(beyond.greatestW()).isCloseTo(greatest, withPercentage(1e-3));
    }

    /** 44.4 V behind 30 mΩ cannot give 17 kW; it is reported, not clipped. */
    @Test
    void collapsesWhereNoVoltageCarriesTheLoad() {
        assertThat(CellLaw.constantPower(44.4, 0.030, 17_000))
                .isEqualTo(new PowerDraw.Collapses(44.4 * 44.4 / 0.12));
        assertThat(CellLaw.constantPower(50, 0, 1000)).isEqualTo(new PowerDraw.Carries(20, 50));
        assertThat(CellLaw.constantPower(50, 0.03, 0)).isEqualTo(new PowerDraw.Carries(0, 50));
    }

    @Test
    void aCarriedLoadGetsItsPowerAtTheHigherVoltage() {
        Seeded.check(
                500,
                random -> {
                    double source = random.nextDouble(3, 80);
                    double ohm = Math.exp(random.nextDouble(-9, -1));
                    double watt = random.nextDouble(0, 1) * source * source / (4 * ohm);
                    PowerDraw.Carries draw =
                            (PowerDraw.Carries) CellLaw.constantPower(source, ohm, watt);
                    assertThat(draw.currentA() * draw.terminalV())
                            .isCloseTo(watt, within(1e-9 * (1 + watt)));
                    assertThat(draw.terminalV()).isBetween(source / 2, source);
                });
    }

    /** 10 A on 10 mΩ, 15 mΩ, 2000 F (τ 30 s): closed form. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.1000",
        "10, 0.142520",
        "30, 0.194818",
        "90, 0.242532",
        "300, 0.249993",
    })
    void pulseOfOnePair(double second, double drop) {
        assertThat(CellLaw.pulseDropV(10, 0.010, 0.015, 2000, second))
                .isCloseTo(drop, within(1e-6));
    }

    /**
     * Plett, Battery Management Systems 1 (2015), chapter 2 (from memory): 5 A, 41 mV at once and
     * 120 mV settled give 8.2 mΩ and 15.8 mΩ.
     */
    @Test
    void settledResistance() {
        assertThat(5 * CellLaw.settledOhm(0.0082, 0.0158)).isCloseTo(0.120, within(1e-9));
        assertThat(CellLaw.settledOhm(0.0082)).isEqualTo(0.0082);
        assertThat(CellLaw.settledOhm(0.01, 0.02, 0.03)).isCloseTo(0.06, within(1e-15));
        assertThat(CellLaw.pairShare(600, 600)).isCloseTo(0.6321205588, within(1e-9));
    }

    @Test
    void openCircuitVoltageIsLinearBetweenPointsAndHeldBeyond() {
        double[] charge = {0.1, 0.2, 0.5, 1};
        double[] volt = {3.0, 3.4, 3.7, 4.2};
        assertThat(CellLaw.openCircuitV(charge, volt, 0)).isEqualTo(3.0);
        assertThat(CellLaw.openCircuitV(charge, volt, 0.1)).isEqualTo(3.0);
        assertThat(CellLaw.openCircuitV(charge, volt, 0.15)).isCloseTo(3.2, within(1e-12));
        assertThat(CellLaw.openCircuitV(charge, volt, 0.2)).isEqualTo(3.4);
        assertThat(CellLaw.openCircuitV(charge, volt, 0.35)).isCloseTo(3.55, within(1e-12));
        assertThat(CellLaw.openCircuitV(charge, volt, 0.75)).isCloseTo(3.95, within(1e-12));
        assertThat(CellLaw.openCircuitV(charge, volt, 1)).isEqualTo(4.2);
        assertThat(CellLaw.openCircuitV(charge, volt, 1.5)).isEqualTo(4.2);
        assertThat(CellLaw.openCircuitV(new double[] {0.5}, new double[] {3.7}, 0.2))
                .isEqualTo(3.7);
    }

    /** exp(B (1/T − 1/298.15 K)) by hand: B = 2500 K, 0 °C gives 2.1539; 25 °C gives 1. */
    @Test
    void coldCellsResistMore() {
        assertThat(CellLaw.temperatureFactor(2500, 298.15)).isEqualTo(1);
        assertThat(CellLaw.temperatureFactor(2500, 273.15))
                .isCloseTo(Math.exp(2500 * (25 / (273.15 * 298.15))), within(1e-12));
        assertThat(CellLaw.temperatureFactor(2500, 318.15)).isLessThan(1);
    }

    /** Chen and Rincón-Mora, IEEE Trans. Energy Conversion 21(2) 2006, coefficients read. */
    @ParameterizedTest
    @CsvSource({
        "1, 4.10290",
        "0.8, 3.94598",
        "0.5, 3.80336",
        "0.2, 3.72503",
        "0.1, 3.67457",
    })
    void publishedPolymerCell(double charge, double volt) {
        assertThat(PolymerCell.openCircuitV(charge)).isCloseTo(volt, within(1e-5));
    }

    /** The same at s = 0.5, and at s = 0.05 recomputed by hand from the printed coefficients. */
    @Test
    void publishedPolymerCellResistances() {
        assertThat(PolymerCell.instantOhm(0.5)).isCloseTo(0.07446, within(1e-5));
        assertThat(PolymerCell.fastOhm(0.5)).isCloseTo(0.04669, within(1e-5));
        assertThat(PolymerCell.fastFarad(0.5)).isCloseTo(702.72, within(0.01));
        assertThat(PolymerCell.slowOhm(0.5)).isCloseTo(0.04984, within(1e-5));
        assertThat(PolymerCell.slowFarad(0.5)).isCloseTo(4474.99, within(0.01));
        double s = 0.05;
        assertThat(PolymerCell.instantOhm(s)).isCloseTo(0.12064418, within(1e-7));
        assertThat(PolymerCell.fastOhm(s)).isCloseTo(0.12141524, within(1e-7));
        assertThat(PolymerCell.fastFarad(s)).isCloseTo(320.44775, within(1e-4));
        assertThat(PolymerCell.slowOhm(s)).isCloseTo(0.05265589, within(1e-7));
        assertThat(PolymerCell.slowFarad(s)).isCloseTo(2914.43253, within(1e-4));
    }

    /** 0.85 A at s = 0.5 held: 0.063292, 0.075576, 0.106596, 0.142467 V at 0, 10, 60, 600 s. */
    @ParameterizedTest
    @CsvSource({"0, 0.063292", "10, 0.075576", "60, 0.106596", "600, 0.142467"})
    void publishedPolymerCellStep(double second, double drop) {
        double fast = PolymerCell.fastOhm(0.5);
        double slow = PolymerCell.slowOhm(0.5);
        double sum =
                PolymerCell.instantOhm(0.5)
                        + fast * CellLaw.pairShare(second, fast * PolymerCell.fastFarad(0.5))
                        + slow * CellLaw.pairShare(second, slow * PolymerCell.slowFarad(0.5));
        assertThat(0.85 * sum).isCloseTo(drop, within(1e-5));
    }

    /** The fitted capacitances turn negative towards an empty cell: refused there. */
    @Test
    void publishedPolymerCellIsRefusedWhereItsFitFails() {
        assertThatIllegalArgumentException().isThrownBy(() -> PolymerCell.fastFarad(0));
        assertThatIllegalArgumentException().isThrownBy(() -> PolymerCell.slowFarad(0.049));
        assertThatIllegalArgumentException().isThrownBy(() -> PolymerCell.openCircuitV(1.01));
        assertThatIllegalArgumentException().isThrownBy(() -> PolymerCell.instantOhm(Double.NaN));
    }
}
