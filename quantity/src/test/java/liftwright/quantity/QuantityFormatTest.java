package liftwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityFormatTest {

    private static Band band(double low, double high) {
        return new Band(low, high, 0.95, "sampled", 1024, 0);
    }

    private static String spaced(String shown) {
        return shown.replace('\u00a0', ' ');
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            textBlock =
                    """
                    # measure, SI, in SI, in US; converted by hand with the factors of SP 811
                    THRUST,                 2912.3,    2912.3 N,     655 lbf
                    THRUST,                 92,        92 N,         20.7 lbf
                    MASS,                   68,        68 kg,        149.9 lb
                    LENGTH,                 1.74,      1.74 m,       5.71 ft
                    SMALL_LENGTH,           0.14,      140 mm,       5.51 in
                    AREA,                   0.0128,    128 cm²,      19.84 in²
                    TIME,                   60,        60 s,         60 s
                    TIME,                   0.004,     4 ms,         4 ms
                    ROTATION,               2722.7136, 26000 rpm,    26000 rpm
                    SPEED,                  5,         5 m/s,        16.40 ft/s
                    CURRENT,                130,       130 A,        130 A
                    VOLTAGE,                52.5,      52.5 V,       52.5 V
                    POWER,                  4600,      4.6 kW,       4.6 kW
                    POWER,                  5,         5 W,          5 W
                    ENERGY,                 1.5e6,     417 Wh,       417 Wh
                    CHARGE,                 28800,     8 Ah,         8 Ah
                    RESISTANCE,             0.0042,    4.2 mΩ,       4.2 mΩ
                    RESISTANCE,             12,        12 Ω,         12 Ω
                    CAPACITANCE,            940e-6,    940 µF,       940 µF
                    TEMPERATURE,            285.15,    12 °C,        53.6 °F
                    TEMPERATURE_DIFFERENCE, 60,        60 K,         108 °F
                    ANGLE,                  0.0698132, 4.00°,        4.00°
                    MOMENT,                 10,        10 N·m,       7.38 lbf·ft
                    ANGULAR_ACCELERATION,   1,         57.3 °/s²,    57.3 °/s²
                    INERTIA,                12,        12 kg·m²,     8.85 lbf·ft·s²
                    DENSITY,                1.225,     1.225 kg/m³,  0.0765 lb/ft³
                    PRESSURE,               101325,    1013.25 hPa,   29.9 inHg
                    PRESSURE,               250,       250 Pa,       5.22 psf
                    RATIO,                  1.0432,    1.0432,       1.0432
                    PERCENT,                0.2,       20 %,         20 %
                    COUNT,                  24,        24,           24
                    THRUST,                 -0.0001,   −0.0001 N   , −0.0000225 lbf
                    THRUST,                 0,         0 N,          0 lbf
                    TIME,                   0,         0 s,          0 s
                    RATIO,                  1.15,      1.15,         1.15
                    PERCENT,                0.3333333, 33.3 %,       33.3 %
                    THRUST,                 1559.8123, 1560 N,       351 lbf
                    """)
    void showsWhatWasDeclaredAndElseThreeDigitsOrFour(
            Measure measure, double si, String inSi, String inUs) {
        assertThat(spaced(new QuantityFormat(UnitSystem.SI, false).amount(measure, si)))
                .isEqualTo(inSi);
        assertThat(spaced(new QuantityFormat(UnitSystem.US, false).amount(measure, si)))
                .isEqualTo(inUs);
    }

    @Test
    void aMomentShowsNoDigitThatTurnsNothing() {
        var format = new QuantityFormat(UnitSystem.SI, false);
        assertThat(spaced(format.amountWithBand(Measure.MOMENT, -1e-17, band(-0.00028, 0.00029))))
                .isEqualTo("0.000 N·m");
        assertThat(spaced(format.amount(Measure.MOMENT, Math.PI / 250))).isEqualTo("0.013 N·m");
        assertThat(spaced(format.amountWithBand(Measure.PERCENT, 0.303, band(0.303, 0.303))))
                .as("a band that cannot be seen")
                .isEqualTo("30.3 %");
        assertThat(format.band(Measure.PERCENT, 0.303, band(0.303, 0.303))).isEmpty();
        assertThat(spaced(format.amountWithBand(Measure.COUNT, 4, band(3, 3))))
                .as("one that lies apart")
                .isEqualTo("4 (3 to 3)");
        assertThat(spaced(format.amountWithBand(Measure.MOMENT, 12.3456, band(12.1, 12.5))))
                .isEqualTo("12.35 N·m (12.10 to 12.50 N·m)");
    }

    /** JCGM 100:2008, 7.2.6: at most two digits of the uncertainty, and the value to match. */
    @ParameterizedTest
    @CsvSource({
        "2912.3, 2850.2, 2990.1, 2912 N (2850 to 2990 N)",
        "2912.3, 2901.2, 2925.1, 2912 N (2901 to 2925 N)",
        "2912.3, 2912.0, 2912.8, 2912.3 N (2912.0 to 2912.8 N)",
        "100.021, 100.0203, 100.0217, 100.0210 N (100.0203 to 100.0217 N)",
        "2912.3, 2912.3, 2912.3, 2912.3 N",
        "-3, -5.2, -0.02, −3.0 N (−5.2 to 0.0 N)"
    })
    void theBandDecidesTheDigits(double si, double low, double high, String shown) {
        var format = new QuantityFormat(UnitSystem.SI, false);
        assertThat(spaced(format.amountWithBand(Measure.THRUST, si, band(low, high))))
                .isEqualTo(shown);
    }

    @Test
    void asciiSpellsTheSignsOut() {
        var format = new QuantityFormat(UnitSystem.SI, true);
        assertThat(format.amount(Measure.RESISTANCE, 0.0042)).isEqualTo("4.2 mohm");
        assertThat(format.amount(Measure.TEMPERATURE, 263.15)).isEqualTo("-10 degC");
        assertThat(format.amount(Measure.AREA, 0.0128)).isEqualTo("128 cm^2");
        assertThat(format.unitText(Measure.CAPACITANCE, 1e-3)).isEqualTo("uF");
        assertThat(format.number(Measure.POWER, 400, 4000)).isEqualTo("0.4");
    }

    /**
     * A referee that knows nothing of rounding: what is shown, read back, is near what was given.
     */
    @ParameterizedTest
    @EnumSource(Measure.class)
    void whatIsShownReadsBackNearToWhatItWas(Measure measure) {
        var shiftsByTrade = EnumSet.of(Measure.TEMPERATURE_DIFFERENCE); // 5 °F of rise
        Seeded.check(
                200,
                random -> {
                    double si = 300 + random.nextDouble() * Math.pow(10, random.nextInt(5));
                    for (var units : UnitSystem.values()) {
                        for (boolean ascii : new boolean[] {false, true}) {
                            String shown = new QuantityFormat(units, ascii).amount(measure, si);
                            if (units == UnitSystem.US && shiftsByTrade.contains(measure)) {
                                continue;
                            }
                            double back = Read.si(shown);
                            double error = Math.abs(back - si) / si;
                            assertThat(error).as("%s of %s", shown, si).isLessThan(0.0051);
                        }
                    }
                });
    }

    @Test
    void aBandKnowsWhatItClears() {
        assertThat(band(3, 5).isAtLeast(3)).isTrue();
        assertThat(band(3, 5).isAtLeast(3.1)).isFalse();
        assertThat(band(3, 5).isAtMost(5)).isTrue();
        assertThat(band(3, 5).isAtMost(4.9)).isFalse();
        assertThat(band(3, 5).width()).isEqualTo(2);
    }
}
