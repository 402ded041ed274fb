package liftwright.quantity;

import java.util.List;
import liftwright.quantity.Refusal.Code;
import liftwright.quantity.Tolerance.Form;
import liftwright.quantity.Tolerance.Scope;
import org.jspecify.annotations.Nullable;

/**
 * Reads a tolerance: {@code ± 4 %}, {@code +/- 0.2 N bound}, {@code +0.15/−0.20}, {@code +0/-5 %
 * each}.
 */
final class ToleranceReader {

    private static final String A_TOLERANCE = "a tolerance such as ± 4 %, ± 0.2 N or +0/-5 %";

    /**
     * One side as written.
     *
     * @param width half-width, not yet in SI, ≥ 0
     * @param unit its unit, or null where none was written
     * @param from where it starts in the text
     * @param to where it ends
     * @param unitFrom where its unit starts, which may stand behind the other side
     * @param unitTo where its unit ends
     */
    record Side(
            Decimal width,
            @Nullable UnitExpression unit,
            int from,
            int to,
            int unitFrom,
            int unitTo) {}

    /**
     * A whole tolerance as written.
     *
     * @param plus upper side
     * @param minus lower side
     * @param form distribution
     * @param scope whom one draw serves
     */
    record Written(Side plus, Side minus, Form form, Scope scope) {}

    private ToleranceReader() {}

    /** The tolerance that starts here, or null where none does. */
    static @Nullable Written read(Cursor in) throws RefusedException {
        if (takePlusMinus(in)) {
            var side = side(in);
            return words(in, side, side);
        }
        if (Cursor.isSign(in.peek())) {
            return pair(in);
        }
        refuseWordAlone(in);
        return null;
    }

    /** ±, or +/- where the keyboard has none. */
    private static boolean takePlusMinus(Cursor in) throws RefusedException {
        if (in.take('±')) {
            return true;
        }
        if (in.peek() == '+' && in.peek(1) == '/' && Cursor.isMinus(in.peek(2))) {
            in.at += 3;
            return true;
        }
        if (in.peek() == '+' && Cursor.isMinus(in.peek(1))) {
            throw in.refusal(
                    Code.TOLERANCE_MALFORMED,
                    in.at,
                    in.at + 2,
                    "this is neither ± nor two sides",
                    A_TOLERANCE,
                    List.of("±"));
        }
        return false;
    }

    private static Side side(Cursor in) throws RefusedException {
        in.skipSpaces();
        int from = in.at;
        if (Cursor.isSign(in.peek())) {
            throw in.refusal(
                    Code.TOLERANCE_NEGATIVE,
                    from,
                    from + 1,
                    "the width of a tolerance has no sign",
                    A_TOLERANCE,
                    List.of(""));
        }
        var width = NumberReader.read(in);
        int afterNumber = in.at;
        in.skipSpaces();
        int unitFrom = in.at;
        var unit = UnitReader.read(in);
        if (unit == null) {
            in.at = afterNumber;
        }
        return new Side(width, unit, from, in.at, unitFrom, in.at);
    }

    /** {@code +0.15/−0.20}, in either order; a unit at the end serves both. */
    private static Written pair(Cursor in) throws RefusedException {
        int start = in.at;
        boolean plusFirst = in.peek() == '+';
        in.at++;
        var first = side(in);
        in.skipSpaces();
        boolean slash = in.take('/');
        in.skipSpaces();
        boolean otherSign = plusFirst ? Cursor.isMinus(in.peek()) : in.peek() == '+';
        if (!otherSign) {
            throw oneSided(in, start, plusFirst, slash);
        }
        in.at++;
        var second = side(in);
        if (first.unit() == null) {
            first =
                    new Side(
                            first.width(),
                            second.unit(),
                            first.from(),
                            first.to(),
                            second.unitFrom(),
                            second.unitTo());
        }
        return plusFirst ? words(in, first, second) : words(in, second, first);
    }

    private static RefusedException oneSided(
            Cursor in, int start, boolean plusFirst, boolean slash) {
        if (slash) {
            return in.refusal(
                    Code.TOLERANCE_MALFORMED,
                    start,
                    in.at,
                    "the second side has the other sign",
                    A_TOLERANCE);
        }
        String written = in.text.substring(start, in.at).strip();
        return in.refusal(
                Code.TOLERANCE_ONE_SIDED,
                start,
                start + written.length(),
                "a tolerance says both of its sides",
                A_TOLERANCE,
                List.of("…" + written.substring(1), written + (plusFirst ? "/-0" : "/+0")));
    }

    private static Written words(Cursor in, Side plus, Side minus) throws RefusedException {
        boolean bound = false;
        var scope = (Scope) null;
        while (true) {
            in.skipSpaces();
            int from = in.at;
            if (in.takeWord("bound")) {
                refuseRepeated(in, from, bound);
                bound = true;
            } else if (in.takeWord("shared")) {
                refuseRepeated(in, from, scope != null);
                scope = Scope.SHARED;
            } else if (in.takeWord("each")) {
                refuseRepeated(in, from, scope != null);
                scope = Scope.EACH;
            } else {
                return new Written(
                        plus,
                        minus,
                        bound ? Form.BOUND : Form.NORMAL,
                        scope == null ? Scope.SHARED : scope);
            }
        }
    }

    private static void refuseRepeated(Cursor in, int from, boolean repeated)
            throws RefusedException {
        if (repeated) {
            throw in.refusal(
                    Code.WORD_REPEATED,
                    from,
                    in.at,
                    in.text.substring(from, in.at) + " does not go with the words before it",
                    "at most one of shared and each, and at most one bound");
        }
    }

    private static void refuseWordAlone(Cursor in) throws RefusedException {
        int from = in.at;
        if (in.takeWord("bound") || in.takeWord("shared") || in.takeWord("each")) {
            throw in.refusal(
                    Code.WORD_WITHOUT_TOLERANCE,
                    from,
                    in.at,
                    in.text.substring(from, in.at) + " speaks of a tolerance, and there is none",
                    A_TOLERANCE + " before it");
        }
    }
}
