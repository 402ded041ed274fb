package liftwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import liftwright.quantity.Refusal.Code;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is refused, where, and what is proposed instead. Codes and places, not wording. */
class RefusalTest {

    /** how | text | needed dimension or - | code | offset | length | suggestion or - */
    private static final String TABLE =
            """
            q |  | MASS | EMPTY | 0 | 0 | -
            q | kg | MASS | NUMBER_MISSING | 0 | 2 | -
            q | about 5 kg | MASS | NUMBER_MISSING | 0 | 5 | -
            q | 5. kg | MASS | NUMBER_MALFORMED | 1 | 1 | 5 kg
            q | - 5 mm | LENGTH | NUMBER_MALFORMED | 0 | 2 | -5 mm
            q | 1/2 | - | NUMBER_MALFORMED | 1 | 1 | -
            q | 1.2×10³ N | FORCE | NUMBER_MALFORMED | 3 | 1 | -
            q | 1e999 kg | MASS | NUMBER_OUT_OF_RANGE | 0 | 5 | -
            q | 1e-999 kg | MASS | NUMBER_OUT_OF_RANGE | 0 | 6 | -
            q | 5 kg ± 1e999 kg | MASS | NUMBER_OUT_OF_RANGE | 7 | 8 | -
            q | 1,000 mm | LENGTH | DIGIT_GROUPS | 0 | 5 | 1000 mm
            q | 1 000 mm | LENGTH | DIGIT_GROUPS | 0 | 5 | 1000 mm
            q | 1'000.5 mm | LENGTH | DIGIT_GROUPS | 0 | 7 | 1000.5 mm
            q | 12,345,678.5 mm | LENGTH | DIGIT_GROUPS | 0 | 12 | 12345678.5 mm
            q | 30_000 rpm | ANGULAR_SPEED | DIGIT_GROUPS | 0 | 6 | 30000 rpm
            q | 1,5 kg | MASS | DECIMAL_COMMA | 1 | 1 | 1.5 kg
            q | 0,500 kg | MASS | DECIMAL_COMMA | 1 | 1 | 0.500 kg
            q | 5 kg ± 0,1 kg | MASS | DECIMAL_COMMA | 8 | 1 | 5 kg ± 0.1 kg
            q | –5 mm | LENGTH | DASH_FOR_MINUS | 0 | 1 | -5 mm
            q | 68 | MASS | UNIT_MISSING | 2 | 0 | -
            q | 68 ± 3 % | MASS | UNIT_MISSING | 2 | 0 | -
            q | 12 KG | MASS | UNIT_UNKNOWN | 3 | 2 | 12 kg
            q | 12 Kg | MASS | UNIT_UNKNOWN | 3 | 2 | 12 kg
            q | 5200 mah | CHARGE | UNIT_UNKNOWN | 5 | 3 | 5200 mAh
            q | 40 v | VOLTAGE | UNIT_UNKNOWN | 3 | 1 | 40 V
            q | 2 l | VOLUME | UNIT_UNKNOWN | 2 | 1 | 2 L
            q | 5 Nm | TORQUE | UNIT_UNKNOWN | 2 | 2 | 5 N·m
            q | 5 kgm2 | INERTIA | UNIT_UNKNOWN | 2 | 3 | 5 kg·m2
            q | 60 secs | TIME | UNIT_UNKNOWN | 3 | 4 | 60 s
            q | 3 inchs | LENGTH | UNIT_UNKNOWN | 2 | 5 | 3 in
            q | 5 lbs | FORCE | UNIT_UNKNOWN | 2 | 3 | 5 lbf
            q | 5 lbs | MASS | UNIT_UNKNOWN | 2 | 3 | 5 lb
            q | 8 " | LENGTH | UNIT_UNKNOWN | 2 | 1 | 8 in
            q | 9 +5/-4 lb | FORCE | WRONG_DIMENSION | 8 | 2 | 9 +5/-4 lbf
            q | 30 C | TEMPERATURE | WRONG_DIMENSION | 3 | 1 | 30 °C
            q | 30 c | TEMPERATURE | UNIT_UNKNOWN | 3 | 1 | 30 °C
            q | 15 kph | SPEED | UNIT_UNKNOWN | 3 | 3 | 15 km/h
            q | 5 slgu | MASS | UNIT_UNKNOWN | 2 | 4 | 5 slug
            q | 5 mft | LENGTH | UNIT_UNKNOWN | 2 | 3 | -
            q | 5 furlong | LENGTH | UNIT_UNKNOWN | 2 | 7 | -
            q | 12 AWG | AREA | NOT_A_UNIT | 3 | 3 | -
            q | 12 awg | AREA | NOT_A_UNIT | 3 | 3 | -
            q | 700 KV | SPEED_CONSTANT | NOT_A_UNIT | 4 | 2 | 700 rpm/V
            q | 3 dB | - | NOT_A_UNIT | 2 | 2 | -
            q | 2 ton | MASS | NOT_A_UNIT | 2 | 3 | 2 t
            q | 5 m per s | SPEED | NOT_A_UNIT | 4 | 3 | 5 m / s
            q | 5 ft-lb | TORQUE | UNIT_MALFORMED | 4 | 1 | 5 ft·lbf
            q | 5 ozf-in | TORQUE | UNIT_MALFORMED | 5 | 1 | 5 ozf·in
            q | 5 m/ | - | UNIT_MALFORMED | 4 | 0 | -
            q | 5 N/(m/s | DAMPING | UNIT_MALFORMED | 4 | 4 | 5 N/(m/s)
            q | 5 m^ | - | UNIT_MALFORMED | 3 | 1 | -
            q | 5 m^0 | - | UNIT_MALFORMED | 3 | 2 | -
            q | 5 m^99 | - | UNIT_MALFORMED | 3 | 3 | -
            q | 8 W/m·K | THERMAL_CONDUCTIVITY | UNIT_AMBIGUOUS | 3 | 4 | 8 W/(m·K)
            q | 8 W/m K | THERMAL_CONDUCTIVITY | UNIT_AMBIGUOUS | 3 | 4 | 8 W/(m·K)
            q | 8 (m^9)^9 | - | UNIT_TOO_COMPLEX | 2 | 7 | -
            q | 8 ((((((m)))))) | - | UNIT_TOO_COMPLEX | 6 | 1 | -
            q | 8 W/(m·°C) | THERMAL_CONDUCTIVITY | OFFSET_UNIT_NOT_ALONE | 7 | 2 | 8 W/(m·K)
            q | 8 °C² | - | OFFSET_UNIT_NOT_ALONE | 2 | 2 | 8 K²
            q | -300 °C | TEMPERATURE | BELOW_ABSOLUTE_ZERO | 0 | 4 | -
            d | 20 °C | - | OFFSET_UNIT_NOT_ALONE | 3 | 2 | 20 K
            d | 20 °F | - | OFFSET_UNIT_NOT_ALONE | 3 | 2 | 20 °R
            d | 20 V | - | WRONG_DIMENSION | 3 | 1 | -
            q | 16 lb | FORCE | WRONG_DIMENSION | 3 | 2 | 16 lbf
            q | 16 lb ± 1 lb | FORCE | WRONG_DIMENSION | 3 | 2 | 16 lbf ± 1 lbf
            q | 16 ± 1 lb | FORCE | WRONG_DIMENSION | 7 | 2 | 16 ± 1 lbf
            q | 16 lbf | MASS | WRONG_DIMENSION | 3 | 3 | 16 lb
            q | 5 kg | FORCE | WRONG_DIMENSION | 2 | 2 | 5 kgf
            q | 900 g | FORCE | WRONG_DIMENSION | 4 | 1 | 900 gf
            q | 3 g | ACCELERATION | WRONG_DIMENSION | 2 | 1 | 3 gn
            q | 2e-3 lb·in·s² | INERTIA | WRONG_DIMENSION | 5 | 8 | 2e-3 lbf·in·s²
            q | 700 kV | SPEED_CONSTANT | WRONG_DIMENSION | 4 | 2 | 700 rpm/V
            q | 700 rpm | SPEED_CONSTANT | WRONG_DIMENSION | 4 | 3 | 700 rpm/V
            q | 2e-5 N·s² | THRUST_COEFFICIENT | WRONG_DIMENSION | 5 | 4 | 2e-5 N·s²/rad²
            q | 20 C | CURRENT | WRONG_DIMENSION | 3 | 1 | -
            q | 5 A | CHARGE | WRONG_DIMENSION | 2 | 1 | 5 Ah
            q | 100 Hz | ANGULAR_SPEED | WRONG_DIMENSION | 4 | 2 | 100 rev/s
            q | 88 cm | AREA | WRONG_DIMENSION | 3 | 2 | 88 cm²
            q | 88 cm² | LENGTH | WRONG_DIMENSION | 3 | 3 | 88 cm
            q | 30° | TEMPERATURE | WRONG_DIMENSION | 2 | 1 | 30°C
            q | 5 mm | DIMENSIONLESS | WRONG_DIMENSION | 2 | 2 | -
            q | ± 3 % | DIMENSIONLESS | VALUE_MISSING | 0 | 1 | -
            q | 5 mm +- 1 mm | LENGTH | TOLERANCE_MALFORMED | 5 | 2 | 5 mm ± 1 mm
            q | 5 mm +1/+2 mm | LENGTH | TOLERANCE_MALFORMED | 5 | 3 | -
            q | 5 mm ± -1 mm | LENGTH | TOLERANCE_NEGATIVE | 7 | 1 | 5 mm ± 1 mm
            q | 5 mm +0.1 mm | LENGTH | TOLERANCE_ONE_SIDED | 5 | 7 | 5 mm +0.1 mm/-0
            q | 68 kg ± 0.4 | MASS | TOLERANCE_UNIT_MISSING | 8 | 3 | 68 kg ± 0.4 kg
            q | 68 kg ± 4 mm | MASS | TOLERANCE_WRONG_DIMENSION | 8 | 4 | -
            q | 0 mm ± 5 % | LENGTH | TOLERANCE_RELATIVE_TO_ZERO | 7 | 3 | -
            q | 12 °C ± 5 % | TEMPERATURE | TOLERANCE_RELATIVE_TO_ZERO | 8 | 3 | -
            q | 5 kg ± 150 % | MASS | TOLERANCE_TOO_WIDE | 7 | 5 | -
            q | 4 kg each | MASS | WORD_WITHOUT_TOLERANCE | 5 | 4 | -
            q | 5 kg ± 1 % each each | MASS | WORD_REPEATED | 16 | 4 | -
            q | 5 kg ± 1 % each shared | MASS | WORD_REPEATED | 16 | 6 | -
            q | -40…180 mm | LENGTH | RANGE_NOT_ALLOWED | 0 | 10 | -
            r | 180…-40 mm | LENGTH | RANGE_DESCENDS | 0 | 7 | -40…180 mm
            r | -40-180 mm | LENGTH | TOLERANCE_ONE_SIDED | 3 | 7 | -40…180 mm
            r | 40–180 mm | LENGTH | TRAILING_TEXT | 2 | 1 | 40…180 mm
            r | 40 mm…180 | LENGTH | UNIT_MISSING | 9 | 0 | 40 mm…180 mm
            r | 40…180 mm ± 2 mm | LENGTH | TOLERANCE_NOT_ALLOWED | 10 | 6 | -
            r | 40 kg…180 mm | LENGTH | WRONG_DIMENSION | 3 | 2 | -
            t | 3 % | - | TOLERANCE_MALFORMED | 0 | 3 | ± 3 %
            t | ± 3 kg | - | TOLERANCE_WRONG_DIMENSION | 2 | 4 | -
            u | 5 V | - | UNIT_MISSING | 0 | 3 | -
            q | 5 kg) | MASS | TRAILING_TEXT | 4 | 1 | -
            q | 5 kg of lead | MASS | UNIT_UNKNOWN | 5 | 2 | -
            """;

    record Row(
            String how,
            String text,
            String needed,
            Code code,
            int offset,
            int length,
            String suggestion) {

        static Row of(String line) {
            var c = Stream.of(line.split("\\|", -1)).map(String::strip).toList();
            return new Row(
                    c.get(0),
                    c.get(1),
                    c.get(2),
                    Code.valueOf(c.get(3)),
                    Integer.parseInt(c.get(4)),
                    Integer.parseInt(c.get(5)),
                    c.get(6));
        }

        Reading<?> read(String candidate) {
            boolean any = needed.equals("-");
            return switch (how) {
                case "r" -> QuantityParser.parseRange(candidate, Read.dimension(needed));
                case "t" -> QuantityParser.parseTolerance(candidate);
                case "u" -> QuantityParser.parseUnit(candidate);
                case "d" -> QuantityParser.parseTemperatureDifference(candidate);
                default ->
                        any
                                ? QuantityParser.parse(candidate)
                                : QuantityParser.parse(candidate, Read.dimension(needed));
            };
        }
    }

    static List<Row> rows() {
        return TABLE.lines().map(Row::of).toList();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void isRefusedWithItsPlaceAndWhatWasMeant(Row row) {
        var refusal = Read.no(row.read(row.text()));
        assertThat(refusal.code()).as("%s", refusal).isEqualTo(row.code());
        assertThat(List.of(refusal.offset(), refusal.length()))
                .as("%s", refusal)
                .isEqualTo(List.of(row.offset(), row.length()));
        assertThat(refusal.suggestion().orElse("-")).as("%s", refusal).isEqualTo(row.suggestion());
        assertThat(refusal.message()).isNotBlank();
        assertThat(refusal.expected()).isNotBlank();
        refusal.suggestion().ifPresent(better -> Read.ok(row.read(better)));
    }

    @Test
    void aTextBeyondAllMeasureIsNotLookedAt() {
        var refusal = Read.no(QuantityParser.parse("1".repeat(201)));
        assertThat(refusal.code()).isEqualTo(Code.TEXT_TOO_LONG);
        assertThat(QuantityParser.parse("1".repeat(200))).isInstanceOf(Reading.Parsed.class);
    }

    @Test
    void everyCodeHasARow() {
        var seen = EnumSet.of(Code.TEXT_TOO_LONG);
        rows().forEach(row -> seen.add(row.code()));
        assertThat(seen).isEqualTo(EnumSet.allOf(Code.class));
    }
}
