package liftwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Sizes of units against printed figures; the tolerance is half of the last printed digit. */
class UnitSizesTest {

    /**
     * NIST SP 811 (2008), appendix B.8, as printed there; SI units are 1 by table 1 to 3, and those
     * used with SI stand in table 6. Typed from memory of the table; psi, hp, lb, lbf, ft, in, kt
     * and inH2O were checked against the print.
     */
    private static final String PRINTED =
            """
            m 1, g 1e-3, s 1, A 1, V 1, Ω 1, F 1, H 1, C 1, J 1, W 1, N 1, Pa 1, K 1, Hz 1, rad 1
            in 2.54e-2, ft 3.048e-1, yd 9.144e-1, mi 1.609344e3, mil 2.54e-5
            cmil 5.067075e-10, in² 6.4516e-4, ft² 9.290304e-2, ft³ 2.831685e-2, L 1e-3
            ft³/min 4.719474e-4
            nmi 1.852e3, ksi 6.894757e6, d 8.64e4, T 1, Wb 1, arcmin 2.908882e-4
            t 1e3, lb 4.535924e-1, oz 2.834952e-2, slug 1.459390e1
            min 60, h 3.6e3
            Ah 3.6e3, Wh 3.6e3, kWh 3.6e6, Btu 1.055056e3, Btu/h 2.930711e-1
            hp 7.456999e2, PS 7.354988e2, ft·lbf/s 1.355818
            lbf 4.448222, ozf 2.780139e-1, kgf 9.80665, gf 9.80665e-3, lbf/ft 1.459390e1
            lbf·ft 1.355818, ft·lbf 1.355818, lbf·in 1.129848e-1, ozf·in 7.061552e-3, kgf·m 9.80665
            bar 1e5, mbar 1e2, atm 1.01325e5, psi 6.894757e3, psf 4.788026e1
            inHg 3.386389e3, mmHg 1.333224e2, inH2O 2.490889e2, mmH2O 9.80665
            °R 5.555556e-1, Btu/(h·ft²·°R) 5.678263
            ° 1.745329e-2, rev 6.283185, rpm 1.047198e-1
            mph 4.4704e-1, kt 5.144444e-1, km/h 2.777778e-1, ft/s 3.048e-1, ft/min 5.08e-3
            gn 9.80665, lb/ft³ 1.601846e1, lb/in³ 2.767990e4, slug/ft³ 5.153788e2, lb/ft 1.488164
            lb·ft² 4.214011e-2, lb·in² 2.926397e-4, g/cm³ 1e3
            % 1e-2, ppm 1e-6
            √Hz 1, √s 1, √h 60
            dBA 1
            """;

    static List<String> printed() {
        return Pattern.compile("[,\\n]").splitAsStream(PRINTED).map(String::strip).toList();
    }

    @ParameterizedTest
    @MethodSource("printed")
    void agreesWithThePrintedFactor(String row) {
        String unit = row.split(" ", 2)[0];
        String figure = row.split(" ", 2)[1];
        double expected = Double.parseDouble(figure);
        double one = Read.si("1 " + unit);
        assertThat(one).isCloseTo(expected, within(halfOfLastDigit(figure)));
    }

    private static double halfOfLastDigit(String figure) {
        String mantissa = figure.split("e", 2)[0];
        int power = figure.contains("e") ? Integer.parseInt(figure.split("e", 2)[1]) : 0;
        int decimals = mantissa.contains(".") ? mantissa.length() - mantissa.indexOf('.') - 1 : 0;
        return decimals < 5
                ? 1e-15 * Double.parseDouble(figure) // exact there
                : 0.51 * Math.pow(10, (double) power - decimals);
    }

    @Test
    void everyUnitOfTheTableHasAPrintedFigure() {
        var checked = printed().stream().map(row -> row.split(" ", 2)[0]).toList();
        assertThat(Units.ALL).hasSizeGreaterThan(55);
        for (Unit unit : Units.ALL) {
            if (!unit.hasOffset()) {
                assertThat(checked).contains(unit.symbol());
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
                    # id, text, SI, relative tolerance; NIST SP 811, definitions and their products
                    U1,  1 lb,           0.45359237,       0
                    U1,  1 lbf,          4.4482216152605,  0
                    U2,  1 ft,           0.3048,           0
                    U2,  1 in,           0.0254,           0
                    U2,  1 kt,           0.514444,         1e-6
                    U3,  1 hp,           745.69987,        1e-8
                    U3,  1 PS,           735.49875,        1e-15
                    U4,  1 lbf·ft,       1.35581795,       2e-9
                    U4,  1 ft·lbf,       1.35581795,       2e-9
                    U5,  1 psi,          6894.75729,       1e-9
                    U5,  1 psf,          47.8802590,       1e-9
                    U6,  1 inH2O,        249.08891,        5e-8
                    U7,  1 slug,         14.5939029,       4e-9
                    U7,  1 slug/ft³,     515.378818,       1e-9
                    U8,  1 lbf·in·s²,    0.112984829,      5e-9
                    U9,  1 cmil,         5.06707e-10,      1e-6
                    U10, 1 Ω/1000 ft,    3.280840e-3,      5e-8
                    """)
    void agreesWithTheCheckValues(String id, String text, double si, double relative) {
        assertThat(Read.si(text)).as(id).isCloseTo(si, within(relative * si));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
                    # SP 811, B.8: t/°C = (t/°F − 32)/1.8; T/K = t/°C + 273.15
                    0 °C,       273.15
                    12 °C,      285.15
                    -40 °F,     233.15
                    32 °F,      273.15
                    68 °F,      293.15
                    212 °F,     373.15
                    98.6 degF,  310.15
                    30 degC,    303.15
                    459.67 °R,  255.37222222222223
                    """)
    void temperaturesHaveTheirZeroWhereItBelongs(String text, double kelvin) {
        assertThat(Read.si(text)).isCloseTo(kelvin, within(1e-13 * kelvin));
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
                    # rounded once: the same double that the compiler makes of the number
                    120 mm,     0.12
                    4.2 mΩ,     0.0042
                    0.7 mm,     0.0007
                    940 µF,     940e-6
                    128 cm²,    0.0128
                    120 kg·mm², 120e-6
                    90 km/h,    25
                    5.2 Ah,     18720
                    1e-3 kg,    0.001
                    11 in,      0.2794
                    0.1 ms,     0.0001
                    """)
    void numberAndPrefixAreRoundedTogether(String text, double exactly) {
        assertThat(Read.si(text)).isEqualTo(exactly);
    }

    @Test
    void everySpellingOfAUnitHasOneSize() {
        for (var entry : UnitIndex.all().entrySet()) {
            var unit = Read.ok(QuantityParser.parseUnit(entry.getKey()));
            var plain = Read.ok(QuantityParser.parseUnit(entry.getValue().ascii()));
            assertThat(unit.sameAs(plain)).as(entry.getKey()).isTrue();
        }
    }

    /** NIST SP 811, table 5. */
    @ParameterizedTest
    @CsvSource({
        "p, 1e-12",
        "n, 1e-9",
        "µ, 1e-6",
        "u, 1e-6",
        "m, 1e-3",
        "c, 1e-2",
        "d, 1e-1",
        "h, 1e2",
        "k, 1e3",
        "M, 1e6",
        "G, 1e9"
    })
    void prefixesAreThoseOfSI(String symbol, double size) {
        var units = UnitIndex.all().keySet().stream().filter(u -> isPrefixed(symbol, u)).toList();
        assertThat(units).isNotEmpty();
        for (String unit : units) {
            assertThat(Read.si("1 " + symbol + unit))
                    .as(symbol + unit)
                    .isCloseTo(size * Read.si("1 " + unit), within(1e-15 * size * 4e3));
        }
    }

    private static boolean isPrefixed(String symbol, String unit) {
        var entry = UnitIndex.find(symbol + unit);
        return entry != null
                && entry.unit().spellings().contains(unit)
                && !entry.unit().spellings().contains(symbol + unit);
    }
}
