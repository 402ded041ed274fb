package liftwright.quantity;

import java.util.List;
import liftwright.quantity.Refusal.Code;

/** What to say about text behind a quantity that is already whole. */
final class TrailingText {

    private TrailingText() {}

    static RefusedException refusal(Cursor in) {
        char c = in.peek();
        int end = in.text.length();
        if ((Cursor.isMinus(c) || c == '\u2013' || c == '\u2014')
                && Cursor.isDigit(in.charAt(in.at + 1))) {
            return in.refusal(
                    Code.TRAILING_TEXT,
                    in.at,
                    in.at + 1,
                    "a range is not written with a dash, which could be a minus sign",
                    "… or to between the ends of a range",
                    List.of("…"));
        }
        if (c == '/' && Cursor.isDigit(in.charAt(in.at + 1))) {
            return in.refusal(
                    Code.NUMBER_MALFORMED,
                    in.at,
                    in.at + 1,
                    "a fraction is written as a decimal number",
                    "a number such as 0.5");
        }
        if (c == '\u2213' || c == '~') {
            return in.refusal(
                    Code.TOLERANCE_MALFORMED,
                    in.at,
                    in.at + 1,
                    "this sign has no meaning here",
                    "± before a tolerance",
                    List.of("±"));
        }
        return in.refusal(
                Code.TRAILING_TEXT,
                in.at,
                end,
                "nothing can follow here",
                "one value with its unit, a tolerance, and its words bound, shared or each");
    }
}
