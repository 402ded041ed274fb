package liftwright.rig.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PartsBookTest {

    /**
     * ASTM B258, printed in wire tables: 12 AWG 80.808 mil, 20 AWG 31.961 mil; 4/0 = 211,600 cmil.
     */
    @ParameterizedTest
    @CsvSource({"12, 80.808", "20, 31.961", "-3, 460.0", "10, 101.9", "36, 5.0"})
    void gaugesHaveThePrintedDiameters(int number, double mil) {
        assertThat(new WireGauge(number).diameterMm() / 0.0254).isCloseTo(mil, within(0.05));
    }

    @Test
    void theNearestGaugeOfAGaugesOwnAreaIsItself() {
        for (int n = WireGauge.THICKEST; n <= WireGauge.THINNEST; n++) {
            assertThat(WireGauge.nearest(new WireGauge(n).areaMm2())).isEqualTo(new WireGauge(n));
        }
        assertThat(WireGauge.nearest(4)).hasToString("11 AWG");
        assertThat(new WireGauge(-3)).hasToString("4/0 AWG");
    }

    @Test
    void curvesRiseFromEmptyToFullAndNameTheirSource() {
        assertThat(OpenCircuitCurves.ALL).isNotEmpty();
        for (OpenCircuitCurve curve : OpenCircuitCurves.ALL) {
            var charge = curve.curve().charge();
            var volt = curve.curve().volt();
            assertThat(charge).hasSameSizeAs(volt).startsWith(0.0).endsWith(1.0);
            for (int i = 1; i < charge.size(); i++) {
                assertThat(charge.get(i)).isGreaterThan(charge.get(i - 1));
                assertThat(volt.get(i)).isGreaterThan(volt.get(i - 1));
            }
            assertThat(curve.source()).isNotBlank();
            assertThat(curve.doubtV()).isPositive();
        }
    }

    /**
     * Chen and Rincón-Mora, IEEE Trans. Energy Conv. 21(2) 2006, for a polymer cell of 0.85 Ah that
     * ends at 4.10 V: another cell than ours, so within 0.1 V only.
     */
    @ParameterizedTest
    @CsvSource({"0.8, 3.94598", "0.5, 3.80336", "0.2, 3.72503", "0.1, 3.67457"})
    void thePolymerCurveLiesNearAPublishedOne(double charge, double volt) {
        var curve = PartsBook.openCircuit("LiPo").orElseThrow().curve();
        int i = curve.charge().indexOf(charge);
        assertThat(curve.volt().get(i)).isCloseTo(volt, within(0.1));
    }

    /** A data sheet that cites ISO 8820-3 prints 1.4 mΩ cold for 40 A. */
    @Test
    void aFuseOf40AmpereHasItsPrintedResistance() {
        assertThat(PartsBook.fuseResistanceOhm(40)).isCloseTo(1.4e-3, within(1e-12));
    }

    /** Momentum theory: ideal static power T^1.5 / √(4 ρ A). */
    @Test
    void aGenericFanNeedsTheIdealPowerOverItsShare() {
        for (double tipM : new double[] {0.07, 0.14, 0.46}) {
            var fan = new GenericFan(tipM);
            double idealW = Math.pow(fan.thrustN(), 1.5) / Math.sqrt(4 * 1.225 * fan.exitAreaM2());
            assertThat(idealW / fan.shaftPowerW()).isCloseTo(0.72, within(1e-12));
        }
    }

    @Test
    void jointsHaveDistinctNamesAndPositiveValues() {
        assertThat(PartsBook.jointNames()).hasSameSizeAs(BookJoint.ALL);
        assertThat(BookJoint.ALL)
                .allMatch(j -> j.resistanceOhm() > 0 && j.ratingA() > 0 && j.doubtShare() < 1);
    }
}
