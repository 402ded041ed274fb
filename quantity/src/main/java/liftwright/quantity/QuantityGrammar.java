package liftwright.quantity;

import java.util.List;
import java.util.Locale;
import liftwright.quantity.Refusal.Code;
import liftwright.quantity.ToleranceReader.Side;
import org.jspecify.annotations.Nullable;

/**
 * One text against one need. Joins number, unit and tolerance, gives a unit written once to all
 * numbers that lack one, and converts to SI.
 */
final class QuantityGrammar {

    private static final UnitExpression ONE = UnitExpression.ONE;

    private final Cursor in;
    private final @Nullable Dimension needed;
    private final boolean difference;

    /**
     * @param needed what the value must measure, or null where anything will do
     * @param difference whether a temperature is the difference of two
     */
    QuantityGrammar(String text, @Nullable Dimension needed, boolean difference) {
        this.in = new Cursor(text);
        this.needed = needed;
        this.difference = difference;
    }

    Quantity quantity() throws RefusedException {
        start();
        refuseToleranceAlone();
        var range = oneOrTwo();
        if (!range.isSingle()) {
            throw in.refusal(
                    Code.RANGE_NOT_ALLOWED,
                    0,
                    in.text.length(),
                    "one value is needed here, not a range",
                    "one value, with a tolerance where it is in doubt");
        }
        return range.from();
    }

    Range range() throws RefusedException {
        start();
        refuseToleranceAlone();
        return oneOrTwo();
    }

    /** A tolerance with no value before it, as the tolerance of 1. */
    Quantity tolerance() throws RefusedException {
        start();
        int from = in.at;
        var written = ToleranceReader.read(in);
        if (written == null) {
            throw in.refusal(
                    Code.TOLERANCE_MALFORMED,
                    from,
                    in.text.length(),
                    "this is no tolerance",
                    "a tolerance alone, such as ± 3 % each",
                    List.of("± " + in.text.substring(from)));
        }
        end();
        return new Quantity(1, Dimension.NONE, tolerance(written, 1, ONE, false));
    }

    UnitExpression unit() throws RefusedException {
        start();
        int from = in.at;
        var unit = UnitReader.read(in);
        if (unit == null) {
            throw in.refusal(
                    Code.UNIT_MISSING,
                    from,
                    in.text.length(),
                    "this is no unit",
                    "a unit alone, such as V, rpm/V or °C");
        }
        end();
        return unit;
    }

    /** The unit in which {@code text} gives its value, or null where it cannot be read. */
    static @Nullable UnitExpression unitOf(String text) {
        var in = new Cursor(text);
        try {
            in.skipSpaces();
            NumberReader.read(in);
            in.skipSpaces();
            var unit = UnitReader.read(in);
            return unit == null ? ONE : unit;
        } catch (RefusedException refused) {
            return null;
        }
    }

    private void start() throws RefusedException {
        in.skipSpaces();
        if (in.atEnd()) {
            throw in.refusal(
                    Code.EMPTY,
                    0,
                    in.text.length(),
                    "nothing is written here",
                    needed == null ? "a value with its unit" : WrongDimension.expected(needed));
        }
    }

    private Range oneOrTwo() throws RefusedException {
        int from = in.at;
        var value = NumberReader.read(in);
        int valueEnd = in.at;
        in.skipSpaces();
        int unitFrom = in.at;
        var unit = UnitReader.read(in);
        int unitTo = in.at;
        in.skipSpaces();
        if (takeRangeMark(in)) {
            return twoEnds(from, value, unit, unitFrom, unitTo);
        }
        var written = ToleranceReader.read(in);
        end();
        var shared = unit;
        if (unit == null && written != null) {
            var side = written.plus().unit() != null ? written.plus() : written.minus();
            if (side.unit() != null && !side.unit().isShare()) {
                shared = side.unit(); // 68 ± 0.4 kg
                unitFrom = side.unitFrom();
                unitTo = side.unitTo();
            }
        }
        var in1 = shared == null ? ONE : shared;
        checkDimension(shared, shared == null ? valueEnd : unitFrom, unitTo);
        double si = toSi(value, in1, from, valueEnd);
        var tolerance =
                written == null ? Tolerance.NONE : tolerance(written, si, in1, unit != null);
        var quantity = new Quantity(si, in1.dimension(), tolerance);
        return new Range(quantity, quantity);
    }

    private Range twoEnds(
            int from, Decimal low, @Nullable UnitExpression lowUnit, int unitFrom, int unitTo)
            throws RefusedException {
        in.skipSpaces();
        int highFrom = in.at;
        var high = NumberReader.read(in);
        int highEnd = in.at;
        in.skipSpaces();
        int highUnitFrom = in.at;
        var highUnit = UnitReader.read(in);
        int highUnitTo = in.at;
        in.skipSpaces();
        int rest = in.at;
        if (ToleranceReader.read(in) != null) {
            throw in.refusal(
                    Code.TOLERANCE_NOT_ALLOWED,
                    rest,
                    in.at,
                    "a range has no tolerance",
                    "the two ends alone");
        }
        end();
        if (highUnit == null && lowUnit != null) {
            throw in.refusal(
                    Code.UNIT_MISSING,
                    highEnd,
                    highEnd,
                    "the unit stands behind the second end",
                    "a unit behind the last number of a range",
                    List.of(" " + lowUnit.text()));
        }
        checkDimension(highUnit, highUnit == null ? highEnd : highUnitFrom, highUnitTo);
        if (lowUnit != null && highUnit != null) {
            if (!lowUnit.dimension().equals(highUnit.dimension())) {
                throw WrongDimension.refusal(in, unitFrom, unitTo, lowUnit, highUnit.dimension());
            }
        }
        var second = highUnit == null ? ONE : highUnit;
        var first = lowUnit == null ? second : lowUnit;
        double lowSi = toSi(low, first, from, unitFrom);
        double highSi = toSi(high, second, highFrom, highEnd);
        if (lowSi > highSi) {
            String swapped =
                    in.text.substring(highFrom, highEnd)
                            + "…"
                            + in.text.substring(from, Math.min(unitFrom, highFrom)).strip();
            throw in.refusal(
                    Code.RANGE_DESCENDS,
                    from,
                    highEnd,
                    "the first end of a range is the lower one",
                    "the lower end, then the upper one",
                    lowUnit == null ? List.of(lowToHigh(swapped)) : List.of());
        }
        return new Range(
                Quantity.exact(lowSi, first.dimension()),
                Quantity.exact(highSi, second.dimension()));
    }

    /** The swapped ends without the range mark that the first end dragged along. */
    private static String lowToHigh(String swapped) {
        int end = swapped.length();
        while (end > 0 && !Cursor.isDigit(swapped.charAt(end - 1))) {
            end--;
        }
        return swapped.substring(0, end);
    }

    /** Moves over what stands between the ends of a range, where it stands here. */
    static boolean takeRangeMark(Cursor in) {
        if (in.take('…')) {
            return true;
        }
        if (in.peek() == '.' && in.peek(1) == '.') {
            in.at += in.peek(2) == '.' ? 3 : 2;
            return true;
        }
        return in.takeWord("to");
    }

    private double toSi(Decimal value, UnitExpression unit, int from, int to)
            throws RefusedException {
        double si = unit.toSi(value) + 0.0; // -0 kg is 0 kg
        if (Double.isInfinite(si) || (si == 0 && !value.isZero() && !unit.hasOffset())) {
            throw NumberReader.outOfRange(in, from, to);
        }
        if (unit.hasOffset() && si < 0) {
            throw in.refusal(
                    Code.BELOW_ABSOLUTE_ZERO,
                    from,
                    to,
                    "nothing is colder than -273.15 °C",
                    "a temperature above that");
        }
        return si;
    }

    private void checkDimension(@Nullable UnitExpression unit, int from, int to)
            throws RefusedException {
        if (unit != null && difference && unit.hasOffset()) {
            throw in.refusal(
                    Code.OFFSET_UNIT_NOT_ALONE,
                    from,
                    to,
                    "a difference of temperatures is needed, and "
                            + unit.text()
                            + " says how warm something is",
                    "K, or °R for differences of °F",
                    List.of(unit.sameAs(KELVIN) ? "K" : "°R"));
        }
        if (needed == null) {
            return;
        }
        if (unit == null && !needed.equals(Dimension.NONE)) {
            throw WrongDimension.unitMissing(in, from, needed);
        }
        if (unit != null && !unit.dimension().equals(needed)) {
            throw WrongDimension.refusal(in, from, to, unit, needed);
        }
    }

    private static final UnitExpression KELVIN =
            new UnitExpression("K", Dimensions.TEMPERATURE, Scale.ONE, Decimal.ZERO, false);

    private Tolerance tolerance(
            ToleranceReader.Written written, double si, UnitExpression unit, boolean unitWritten)
            throws RefusedException {
        double plus = halfWidth(written.plus(), si, unit, unitWritten, false);
        double minus = halfWidth(written.minus(), si, unit, unitWritten, true);
        return new Tolerance(plus, minus, written.form(), written.scope());
    }

    private double halfWidth(
            Side side, double si, UnitExpression unit, boolean unitWritten, boolean lower)
            throws RefusedException {
        var own = side.unit();
        if (own == null) {
            if (unitWritten && !side.width().isZero()) {
                throw in.refusal(
                        Code.TOLERANCE_UNIT_MISSING,
                        side.from(),
                        side.to(),
                        "this side of the tolerance has no unit",
                        "a unit, or % of the value",
                        List.of(in.text.substring(side.from(), side.to()) + " " + unit.text()));
            }
            own = unit;
        }
        if (own.isShare() && !own.sameAs(unit)) {
            return share(side, own, si, unit, lower);
        }
        if (!own.dimension().equals(unit.dimension())) {
            throw in.refusal(
                    Code.TOLERANCE_WRONG_DIMENSION,
                    side.from(),
                    side.to(),
                    String.format(
                            Locale.ROOT,
                            "the tolerance is %s, the value is %s",
                            DimensionName.of(own.dimension()).words(),
                            DimensionName.of(unit.dimension()).words()),
                    "a tolerance in the unit of the value, or in %");
        }
        return finite(own.differenceToSi(side.width()), side);
    }

    private double share(
            Side side, UnitExpression own, double si, UnitExpression unit, boolean lower)
            throws RefusedException {
        double share = own.differenceToSi(side.width());
        if (share != 0 && (si == 0 || unit.hasOffset())) {
            throw in.refusal(
                    Code.TOLERANCE_RELATIVE_TO_ZERO,
                    side.from(),
                    side.to(),
                    si == 0
                            ? "a share of nothing is nothing"
                            : "a share of a temperature depends on where 0 lies",
                    unit.hasOffset() ? "a tolerance in K" : "a tolerance in the unit of the value");
        }
        if (lower && share > 1) {
            throw in.refusal(
                    Code.TOLERANCE_TOO_WIDE,
                    side.from(),
                    side.to(),
                    "more than 100 % down turns the value round",
                    "a tolerance in the unit of the value where its sign is in doubt");
        }
        return finite(Math.abs(si) * share, side);
    }

    private double finite(double width, Side side) throws RefusedException {
        if (Double.isInfinite(width) || (width == 0 && !side.width().isZero())) {
            throw NumberReader.outOfRange(in, side.from(), side.to());
        }
        return width;
    }

    private void refuseToleranceAlone() throws RefusedException {
        boolean plusMinus = in.peek() == '±' || (in.peek() == '+' && in.peek(1) == '/');
        if (plusMinus) {
            throw in.refusal(
                    Code.VALUE_MISSING,
                    in.at,
                    in.at + 1,
                    "a tolerance needs a value before it",
                    needed == null ? "a value" : WrongDimension.expected(needed));
        }
    }

    private void end() throws RefusedException {
        in.skipSpaces();
        if (!in.atEnd()) {
            throw TrailingText.refusal(in);
        }
    }
}
