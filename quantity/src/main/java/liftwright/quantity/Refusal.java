package liftwright.quantity;

import java.util.Optional;

/**
 * Why a text is not the quantity that is needed, and where.
 *
 * @param code what is wrong; stable, unlike the wording
 * @param offset where, in characters from the start of the text, 0 to its length
 * @param length how many characters; 0 at a place where something is missing; {@code offset +
 *     length} is at most the length of the text
 * @param message what is wrong, in one sentence without a full stop
 * @param expected what would be right here, a phrase
 * @param suggestion the whole text put right, where one guess is good; it can be read
 */
public record Refusal(
        Code code,
        int offset,
        int length,
        String message,
        String expected,
        Optional<String> suggestion) {

    /** What can be wrong with the text of a quantity. */
    public enum Code {
        EMPTY,
        TEXT_TOO_LONG,
        NUMBER_MISSING,
        NUMBER_MALFORMED,
        NUMBER_OUT_OF_RANGE,
        DIGIT_GROUPS,
        DECIMAL_COMMA,
        DASH_FOR_MINUS,
        UNIT_MISSING,
        UNIT_UNKNOWN,
        /** Written where a unit stands, but it has no fixed size: a wire gauge, a C-rate, dB. */
        NOT_A_UNIT,
        UNIT_MALFORMED,
        /** {@code W/m·K}: below the line or not? */
        UNIT_AMBIGUOUS,
        UNIT_TOO_COMPLEX,
        /** °C or °F with a power, in a compound, or for a difference. */
        OFFSET_UNIT_NOT_ALONE,
        BELOW_ABSOLUTE_ZERO,
        WRONG_DIMENSION,
        VALUE_MISSING,
        TOLERANCE_MALFORMED,
        TOLERANCE_NEGATIVE,
        TOLERANCE_ONE_SIDED,
        TOLERANCE_UNIT_MISSING,
        TOLERANCE_WRONG_DIMENSION,
        /** A percentage of nothing, or of a temperature in °C. */
        TOLERANCE_RELATIVE_TO_ZERO,
        TOLERANCE_TOO_WIDE,
        /** A tolerance where none has a meaning: on a range, on a unit. */
        TOLERANCE_NOT_ALLOWED,
        WORD_WITHOUT_TOLERANCE,
        WORD_REPEATED,
        RANGE_NOT_ALLOWED,
        RANGE_DESCENDS,
        TRAILING_TEXT
    }
}
