package liftwright.quantity;

import java.util.List;
import liftwright.quantity.Refusal.Code;
import org.jspecify.annotations.Nullable;

/**
 * Reads a unit: symbols multiplied by {@code ·}, {@code *} or a space, divided by {@code /}, raised
 * by {@code ²}, {@code ^2} or a digit right behind, grouped by parentheses. A product behind a
 * {@code /} needs parentheses (NIST SP 811, 6.1.6); further {@code /} do not.
 */
final class UnitReader {

    private static final String A_UNIT = "a unit such as mm, N·m or rpm/V";
    private static final int DEEPEST = 4;
    private static final int LARGEST_POWER = 9;

    /** Dimension and size of what was read so far. */
    private record Part(Dimension dimension, Scale scale) {
        static final Part ONE = new Part(Dimension.NONE, Scale.ONE);

        Part times(Part other) {
            return new Part(dimension.times(other.dimension), scale.times(other.scale));
        }

        Part per(Part other) {
            return new Part(dimension.per(other.dimension), scale.per(other.scale));
        }

        Part power(int n) {
            return new Part(dimension.power(n), scale.power(n));
        }
    }

    private final Cursor in;

    private UnitReader(Cursor in) {
        this.in = in;
    }

    /** The unit that starts here, or null where none does; then the cursor has not moved. */
    static @Nullable UnitExpression read(Cursor in) throws RefusedException {
        return startsUnit(in) ? new UnitReader(in).whole() : null;
    }

    private static boolean startsUnit(Cursor in) {
        return in.peek() == '(' || startsSymbol(in) || startsReciprocal(in) || startsBelow(in);
    }

    /** {@code 1/K}, but not the 1 of another number. */
    private static boolean startsReciprocal(Cursor in) {
        if (in.peek() != '1') {
            return false;
        }
        int i = in.at + 1;
        while (Cursor.isSpace(in.charAt(i))) {
            i++;
        }
        return in.charAt(i) == '/';
    }

    /** {@code /h}, as people write rates. */
    private static boolean startsBelow(Cursor in) {
        return in.peek() == '/' && Character.isLetter(in.charAt(in.at + 1));
    }

    private static boolean startsSymbol(Cursor in) {
        return isSymbolCharacter(in.peek()) && !isKeyword(in);
    }

    private static boolean isSymbolCharacter(char c) {
        return Character.isLetter(c)
                || c == '%'
                || c == '°'
                || c == '√'
                || c == '\u2103'
                || c == '\u2109'
                || c == '"'
                || c == '\''
                || c == '\u2032'
                || c == '\u2033';
    }

    private static boolean isKeyword(Cursor in) {
        return in.isWord("to") || in.isWord("each") || in.isWord("shared") || in.isWord("bound");
    }

    private UnitExpression whole() throws RefusedException {
        int start = in.at;
        int end = symbolEnd();
        var single = UnitIndex.find(in.text.substring(start, end));
        if (single != null) {
            in.at = end;
            if (!continues()) {
                return UnitExpression.of(in.text.substring(start, end), single);
            }
            in.at = start;
        }
        var part = product(0);
        String text = in.text.substring(start, in.at);
        if (!isReasonable(part)) {
            throw in.refusal(
                    Code.UNIT_TOO_COMPLEX,
                    start,
                    in.at,
                    text + " has powers beyond all that is measured",
                    A_UNIT);
        }
        return new UnitExpression(text, part.dimension(), part.scale(), Decimal.ZERO, false);
    }

    private static boolean isReasonable(Part part) {
        var d = part.dimension();
        int most = LARGEST_POWER;
        return part.scale().isUsable()
                && Math.abs(d.length()) <= most
                && Math.abs(d.mass()) <= most
                && Math.abs(d.time()) <= most
                && Math.abs(d.current()) <= most
                && Math.abs(d.temperature()) <= most
                && Math.abs(d.angle()) <= most
                && Math.abs(d.level()) <= most;
    }

    /** Whether the symbol that ends here is only the first part of a unit. */
    private boolean continues() {
        char c = in.peek();
        if (isTimes(c) || c == '^' || Cursor.isDigit(c) || isSuperscript(c) || c == '(') {
            return true;
        }
        if (c == '-' && Character.isLetter(in.peek(1))) {
            return true; // ft-lbf, refused there
        }
        int before = in.at;
        in.skipSpaces();
        boolean goesOn = isDivision() || startsSymbol(in) || isTimes(in.peek()) || in.peek() == '(';
        in.at = before;
        return goesOn;
    }

    private Part product(int depth) throws RefusedException {
        var part = depth == 0 && startsBelow(in) ? Part.ONE : factor(depth);
        int divisionAt = -1;
        while (true) {
            int before = in.at;
            refuseHyphen();
            in.skipSpaces();
            if (isDivision()) {
                divisionAt = in.at;
                in.at++;
                in.skipSpaces();
                part = part.per(divisor(depth));
            } else if (isTimes(in.peek())) {
                refuseProductBelowTheLine(divisionAt, in.at);
                in.at++;
                in.skipSpaces();
                part = part.times(factor(depth));
            } else if (startsSymbol(in) || in.peek() == '(') {
                refuseProductBelowTheLine(divisionAt, before);
                part = part.times(factor(depth));
            } else {
                in.at = before;
                return part;
            }
        }
    }

    private static boolean isTimes(char c) {
        return c == '·' || c == '*' || c == '\u22c5';
    }

    /** A solidus, unless it parts the two sides of a tolerance: {@code +0.1 mm/-0.2 mm}. */
    private boolean isDivision() {
        return in.peek() == '/' && !Cursor.isSign(in.peek(1));
    }

    private void refuseHyphen() throws RefusedException {
        if (in.peek() == '-' && Character.isLetter(in.peek(1))) {
            String product = in.text.substring(0, in.at) + "·" + in.text.substring(in.at + 1);
            String withForce = product.replace("lb", "lbf").replace("oz", "ozf");
            throw new RefusedException(
                    Code.UNIT_MALFORMED,
                    in.at,
                    in.at + 1,
                    "a hyphen does not multiply units",
                    "· or * between units",
                    List.of(product, withForce));
        }
    }

    private void refuseProductBelowTheLine(int divisionAt, int here) throws RefusedException {
        if (divisionAt < 0) {
            return;
        }
        int from = divisionAt + 1;
        int end = in.at;
        while (end < in.text.length() && isUnitText(in.charAt(end))) {
            end++;
        }
        String below =
                in.text.substring(from, here)
                        + "·"
                        + in.text.substring(in.at, end).replaceFirst("^[·*\u22c5]", "").strip();
        throw in.refusal(
                Code.UNIT_AMBIGUOUS,
                divisionAt,
                end,
                "it cannot be told whether the second factor stands below the line too",
                "parentheses around what is below the line",
                List.of("/(" + below + ")"));
    }

    private static boolean isUnitText(char c) {
        return isSymbolCharacter(c)
                || isTimes(c)
                || isSuperscript(c)
                || c == '^'
                || Cursor.isDigit(c);
    }

    /** What is divided by: {@code 1000 ft} counts as one factor. */
    private Part divisor(int depth) throws RefusedException {
        int start = in.at;
        int whole = 0;
        while (Cursor.isDigit(in.peek()) && in.at - start < 7) {
            whole = whole * 10 + (in.peek() - '0');
            in.at++;
        }
        if (in.at == start) {
            return factor(depth);
        }
        in.skipSpaces();
        if (whole == 0 || !startsSymbol(in)) {
            throw in.refusal(
                    Code.UNIT_MALFORMED,
                    start,
                    in.at,
                    "a unit is divided by a unit",
                    "a unit below the line, such as m, or 1000 ft");
        }
        return new Part(Dimension.NONE, Scale.of(whole, 0)).times(factor(depth));
    }

    private Part factor(int depth) throws RefusedException {
        if (in.peek() == '1' && startsReciprocal(in)) {
            in.at++;
            return Part.ONE;
        }
        var part = in.peek() == '(' ? group(depth) : symbol();
        return part.power(exponent());
    }

    private Part group(int depth) throws RefusedException {
        int open = in.at;
        if (depth == DEEPEST) {
            throw in.refusal(
                    Code.UNIT_TOO_COMPLEX,
                    open,
                    open + 1,
                    "parentheses go this deep in no unit",
                    A_UNIT);
        }
        in.at++;
        in.skipSpaces();
        var part = product(depth + 1);
        in.skipSpaces();
        if (!in.take(')')) {
            throw in.refusal(
                    Code.UNIT_MALFORMED,
                    open,
                    in.at,
                    "this parenthesis is not closed",
                    "a closing parenthesis",
                    List.of(in.text.substring(open, in.at) + ")"));
        }
        return part;
    }

    private Part symbol() throws RefusedException {
        int start = in.at;
        int end = symbolEnd();
        if (end == start) {
            throw in.refusal(
                    Code.UNIT_MALFORMED,
                    start,
                    Math.min(start + 1, in.text.length()),
                    "a unit is missing here",
                    A_UNIT);
        }
        var entry = UnitIndex.find(in.text.substring(start, end));
        if (entry == null) {
            throw UnknownUnit.refusal(in, start, end);
        }
        if (entry.unit().hasOffset()) {
            throw in.refusal(
                    Code.OFFSET_UNIT_NOT_ALONE,
                    start,
                    end,
                    entry.symbol() + " stands only alone; within a unit it would be a difference",
                    "K, or °R for differences of °F",
                    List.of(entry.unit().scale().equals(Scale.ONE) ? "K" : "°R"));
        }
        in.at = end;
        return new Part(entry.unit().dimension(), entry.scale());
    }

    /** Letters and signs; digits only where a unit has them in its name ({@code inH2O}). */
    private int symbolEnd() {
        int end = in.at;
        while (isSymbolCharacter(in.charAt(end))) {
            end++;
        }
        if (Cursor.isDigit(in.charAt(end)) && Character.isLetter(in.charAt(end + 1))) {
            int longer = end;
            while (Character.isLetterOrDigit(in.charAt(longer))) {
                longer++;
            }
            if (UnitIndex.find(in.text.substring(in.at, longer)) != null) {
                return longer;
            }
        }
        return end;
    }

    private int exponent() throws RefusedException {
        int start = in.at;
        boolean caret = in.take('^');
        boolean raised = !caret && isSuperscript(in.peek());
        boolean negative = raised ? in.take('⁻') : caret && (in.take('-') || in.take('\u2212'));
        int value = 0;
        int digits = 0;
        for (; digits < 3; digits++) {
            int digit = raised ? Superscript.digit(in.peek()) : plainDigit(in.peek());
            if (digit < 0) {
                break;
            }
            value = value * 10 + digit;
            in.at++;
        }
        if (digits == 0 && !caret && !raised) {
            return 1;
        }
        if (value < 1 || value > LARGEST_POWER) {
            throw in.refusal(
                    Code.UNIT_MALFORMED,
                    start,
                    in.at,
                    "a power is a whole number from 1 to " + LARGEST_POWER,
                    "² or ^2");
        }
        return negative ? -value : value;
    }

    private static int plainDigit(char c) {
        return Cursor.isDigit(c) ? c - '0' : -1;
    }

    private static boolean isSuperscript(char c) {
        return c == '⁻' || Superscript.digit(c) >= 0;
    }
}
