package liftwright.quantity;

import java.util.List;
import liftwright.quantity.Refusal.Code;

/**
 * Reads one number: sign, digits, a decimal point, an exponent. A decimal comma and separators
 * between groups of digits are refused, because {@code 1,000} means one to some and a thousand to
 * others.
 */
final class NumberReader {

    private static final String A_NUMBER = "a number such as 0.5, -3 or 1e-3";

    /** Significant digits kept; the next would change no double by as much as half its last bit. */
    private static final int KEPT_DIGITS = 18;

    private static final int LARGEST_EXPONENT = 999;

    private NumberReader() {}

    static Decimal read(Cursor in) throws RefusedException {
        int start = in.at;
        boolean negative = sign(in);
        return negative ? negated(unsigned(in, start)) : unsigned(in, start);
    }

    private static boolean sign(Cursor in) throws RefusedException {
        char c = in.peek();
        if (c == '\u2013' || c == '\u2014') {
            throw in.refusal(
                    Code.DASH_FOR_MINUS,
                    in.at,
                    in.at + 1,
                    "a dash is no minus sign",
                    "- or \u2212 before a number, … between the ends of a range",
                    List.of("-"));
        }
        if (Cursor.isSign(c)) {
            in.at++;
            return Cursor.isMinus(c);
        }
        return false;
    }

    private static Decimal negated(Decimal d) {
        return new Decimal(-d.digits(), d.tens());
    }

    private static Decimal unsigned(Cursor in, int start) throws RefusedException {
        long digits = 0;
        int kept = 0;
        int tens = 0;
        int seen = 0;
        boolean fraction = false;
        while (true) {
            char c = in.peek();
            if (Cursor.isDigit(c)) {
                seen++;
                if (kept < KEPT_DIGITS) {
                    digits = digits * 10 + (c - '0');
                    kept += digits == 0 ? 0 : 1;
                    tens -= fraction ? 1 : 0;
                } else {
                    tens += fraction ? 0 : 1;
                }
            } else if (c == '.' && !fraction && Cursor.isDigit(in.peek(1))) {
                fraction = true;
            } else {
                break;
            }
            in.at++;
        }
        if (seen == 0) {
            throw missing(in, start);
        }
        tens += exponent(in, start);
        refuseWhatIsNoPartOfANumber(in, start);
        return new Decimal(digits, digits == 0 ? 0 : tens);
    }

    private static RefusedException missing(Cursor in, int start) {
        int end = start;
        while (end < in.text.length() && !Cursor.isSpace(in.charAt(end))) {
            end++;
        }
        int next = in.nextAfterSpaces();
        if (in.at > start && next > in.at && Cursor.isDigit(in.charAt(next))) {
            return in.refusal(
                    Code.NUMBER_MALFORMED,
                    start,
                    next,
                    "a sign stands right before its number",
                    A_NUMBER,
                    List.of(in.text.substring(start, in.at)));
        }
        return in.refusal(
                Code.NUMBER_MISSING,
                start,
                end,
                end == start ? "a number is missing here" : "this does not start with a number",
                A_NUMBER);
    }

    private static int exponent(Cursor in, int start) throws RefusedException {
        if (in.peek() != 'e' && in.peek() != 'E') {
            return 0;
        }
        boolean signed = Cursor.isSign(in.peek(1));
        if (!Cursor.isDigit(in.peek(signed ? 2 : 1))) {
            return 0; // a unit, or what will be told to be none
        }
        boolean negative = Cursor.isMinus(in.peek(1));
        in.at += signed ? 2 : 1;
        int value = 0;
        for (; Cursor.isDigit(in.peek()); in.at++) {
            value = Math.min(value * 10 + (in.peek() - '0'), LARGEST_EXPONENT + 1);
        }
        if (value > LARGEST_EXPONENT) {
            throw outOfRange(in, start, in.at);
        }
        return negative ? -value : value;
    }

    static RefusedException outOfRange(Cursor in, int from, int to) {
        return in.refusal(
                Code.NUMBER_OUT_OF_RANGE,
                from,
                to,
                "no computed number is as large or as small as this",
                "a number of a size that a rig can have");
    }

    private static void refuseWhatIsNoPartOfANumber(Cursor in, int start) throws RefusedException {
        char c = in.peek();
        char next = in.peek(1);
        if ((c == ',' || c == '\'' || c == '_' || c == '\u2019') && Cursor.isDigit(next)) {
            throw separated(in, start);
        }
        if (c == '.' && Cursor.isDigit(next)) {
            throw separated(in, start); // 1.234.567: a second point in one number
        }
        if (c == '.' && next != '.') {
            throw in.refusal(
                    Code.NUMBER_MALFORMED,
                    in.at,
                    in.at + 1,
                    "no digit follows the decimal point",
                    A_NUMBER,
                    List.of(""));
        }
        if (c == '\u00d7') {
            throw in.refusal(
                    Code.NUMBER_MALFORMED,
                    in.at,
                    in.at + 1,
                    "a power of ten is written with e",
                    A_NUMBER);
        }
        if (Cursor.isSpace(c) && isGroupOfThree(in)) {
            throw separated(in, start);
        }
    }

    /** Whether three digits stand after the space here, and not the 1 of {@code 1/K}. */
    private static boolean isGroupOfThree(Cursor in) {
        int i = in.nextAfterSpaces();
        int digits = 0;
        while (Cursor.isDigit(in.charAt(i + digits))) {
            digits++;
        }
        return digits == 3;
    }

    /** The number with something between its digits, and the two ways it may have been meant. */
    private static RefusedException separated(Cursor in, int start) {
        int end = in.at;
        int marks = 0;
        while (end < in.text.length() && isDigitOrMark(in, end)) {
            marks += Cursor.isDigit(in.charAt(end)) ? 0 : 1;
            end++;
        }
        String written = in.text.substring(start, end);
        boolean comma = in.peek() == ',' && marks == 1 && !looksGrouped(in, start);
        if (comma) {
            return in.refusal(
                    Code.DECIMAL_COMMA,
                    in.at,
                    in.at + 1,
                    "a decimal point is needed, not a comma",
                    A_NUMBER,
                    List.of("."));
        }
        return in.refusal(
                Code.DIGIT_GROUPS,
                start,
                end,
                "nothing may stand between the digits of " + written,
                "digits without separators; a decimal point where one is meant",
                List.of(withoutMarks(written)));
    }

    private static boolean isDigitOrMark(Cursor in, int place) {
        char c = in.charAt(place);
        return Cursor.isDigit(c)
                || ((",.'_\u2019".indexOf(c) >= 0 || Cursor.isSpace(c))
                        && Cursor.isDigit(in.charAt(place + 1)));
    }

    /** {@code 12,500}: one to three digits, not a lone 0, then exactly three. */
    private static boolean looksGrouped(Cursor in, int start) {
        int first = start;
        while (Cursor.isSign(in.charAt(first))) {
            first++;
        }
        int before = in.at - first;
        int after = 0;
        while (Cursor.isDigit(in.charAt(in.at + 1 + after))) {
            after++;
        }
        boolean allDigits = in.text.indexOf('.', first) < 0 || in.text.indexOf('.', first) > in.at;
        return allDigits && before >= 1 && before <= 3 && in.charAt(first) != '0' && after == 3;
    }

    /** All separators out; the last point stays where it is the only one and comes last. */
    private static String withoutMarks(String written) {
        int point = written.lastIndexOf('.');
        boolean keepsPoint =
                point == written.indexOf('.') && point > lastOtherMark(written) && point > 0;
        var out = new StringBuilder(written.length());
        for (int i = 0; i < written.length(); i++) {
            char c = written.charAt(i);
            if (Cursor.isDigit(c) || Cursor.isSign(c) || (keepsPoint && i == point)) {
                out.append(c);
            }
        }
        return out.toString();
    }

    private static int lastOtherMark(String written) {
        for (int i = written.length() - 1; i >= 0; i--) {
            char c = written.charAt(i);
            if (!Cursor.isDigit(c) && c != '.' && !Cursor.isSign(c)) {
                return i;
            }
        }
        return -1;
    }
}
