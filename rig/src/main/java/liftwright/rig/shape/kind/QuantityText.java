package liftwright.rig.shape.kind;

import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Range;
import liftwright.quantity.Reading;
import liftwright.quantity.Refusal;
import liftwright.rig.Problem.Code;

/** The door to the parser of quantities: what it says, in the words of a problem. */
final class QuantityText {

    private QuantityText() {}

    /** One value; reported and empty when the text is none. */
    static Optional<Quantity> read(
            String text, Measure measure, Spot spot, String expected, Problems problems) {
        return told(reading(text, measure), text, spot, expected, problems);
    }

    /** One value or two ends; reported and empty when the text is neither. */
    static Optional<Range> readRange(
            String text, Measure measure, Spot spot, String expected, Problems problems) {
        return told(
                QuantityParser.parseRange(text, measure.dimension()),
                text,
                spot,
                expected,
                problems);
    }

    /** One value, for trying: empty when the text is none. */
    static Optional<Quantity> attempt(String text, Measure measure) {
        return switch (reading(text, measure)) {
            case Reading.Parsed<Quantity>(var quantity) -> Optional.of(quantity);
            case Reading.Refused<Quantity> _ -> Optional.empty();
        };
    }

    private static Reading<Quantity> reading(String text, Measure measure) {
        return switch (measure) {
            case KELVIN -> QuantityParser.parseTemperatureDifference(text);
            case SOUND_LEVEL -> level(text);
            default -> QuantityParser.parse(text, measure.dimension());
        };
    }

    /** A sound level; the format began with plain numbers of dB(A), which are read for ever. */
    private static Reading<Quantity> level(String text) {
        Reading<Quantity> withUnit = QuantityParser.parse(text, Measure.SOUND_LEVEL.dimension());
        return withUnit instanceof Reading.Refused<Quantity>
                        && QuantityParser.parse(text, Measure.RATIO.dimension())
                                instanceof Reading.Parsed<Quantity>(var number)
                        && text.indexOf('%') < 0
                ? new Reading.Parsed<>(
                        new Quantity(
                                number.si(), Measure.SOUND_LEVEL.dimension(), number.tolerance()))
                : withUnit;
    }

    private static <T> Optional<T> told(
            Reading<T> reading, String text, Spot spot, String expected, Problems problems) {
        return switch (reading) {
            case Reading.Parsed<T>(var value) -> Optional.of(value);
            case Reading.Refused<T>(var refusal) -> {
                problems.add(
                        code(refusal.code()),
                        spot,
                        Problems.quote(text) + ": " + refusal.message(),
                        expected,
                        refusal.suggestion()
                                .map(s -> "Perhaps “" + s + "” is meant.")
                                .orElse("Expected here: " + refusal.expected() + "."));
                yield Optional.empty();
            }
        };
    }

    private static Code code(Refusal.Code code) {
        return switch (code) {
            case WRONG_DIMENSION,
                    TOLERANCE_WRONG_DIMENSION,
                    UNIT_MISSING,
                    UNIT_UNKNOWN,
                    NOT_A_UNIT,
                    UNIT_AMBIGUOUS,
                    OFFSET_UNIT_NOT_ALONE ->
                    Code.WRONG_UNIT;
            case NUMBER_OUT_OF_RANGE, BELOW_ABSOLUTE_ZERO, TOLERANCE_TOO_WIDE, RANGE_DESCENDS ->
                    Code.OUT_OF_RANGE;
            case EMPTY,
                    TEXT_TOO_LONG,
                    NUMBER_MISSING,
                    NUMBER_MALFORMED,
                    DIGIT_GROUPS,
                    DECIMAL_COMMA,
                    DASH_FOR_MINUS,
                    UNIT_MALFORMED,
                    UNIT_TOO_COMPLEX,
                    VALUE_MISSING,
                    TOLERANCE_MALFORMED,
                    TOLERANCE_NEGATIVE,
                    TOLERANCE_ONE_SIDED,
                    TOLERANCE_UNIT_MISSING,
                    TOLERANCE_RELATIVE_TO_ZERO,
                    TOLERANCE_NOT_ALLOWED,
                    WORD_WITHOUT_TOLERANCE,
                    WORD_REPEATED,
                    RANGE_NOT_ALLOWED,
                    TRAILING_TEXT ->
                    Code.NOT_A_QUANTITY;
        };
    }
}
