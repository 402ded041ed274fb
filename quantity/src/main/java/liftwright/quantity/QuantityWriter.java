package liftwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Writes quantities for files: what it writes, the parser reads as the same quantity, to the last
 * bit of value and tolerance, with form and scope. Of the texts that do, it takes a short one.
 */
public final class QuantityWriter {

    /** Enough for any double and a factor that is none itself. */
    private static final int MOST_DIGITS = 18;

    private QuantityWriter() {}

    /** In the unit, of those usual for its dimension, that makes the shortest text. */
    public static String write(Quantity quantity) {
        var name = DimensionName.of(quantity.dimension());
        var texts = new ArrayList<String>();
        if (quantity.dimension().equals(Dimension.NONE)) {
            addWhereExact(texts, quantity, UnitExpression.ONE);
        }
        for (String unit : name.units()) {
            addWhereExact(texts, quantity, UnitExpression.known(unit));
        }
        if (texts.isEmpty()) { // no usual unit hits the last bit; the coherent one always does
            addWhereExact(texts, quantity, coherent(quantity.dimension()));
        }
        return texts.stream().min(Comparator.comparingInt(String::length)).orElseThrow();
    }

    /**
     * In the unit that {@code like} has, a text of a quantity of the same dimension, so that an
     * edit keeps the builder's unit; in a usual unit where that one cannot hold the last bit or
     * {@code like} cannot be read.
     */
    public static String writeLike(Quantity quantity, String like) {
        var unit = QuantityGrammar.unitOf(like);
        if (unit == null || !unit.dimension().equals(quantity.dimension())) {
            return write(quantity);
        }
        String text = inUnit(quantity, unit);
        return text == null ? write(quantity) : text;
    }

    /** Any text of the writer or of the format with signs beyond ASCII spelt out. */
    public static String ascii(String text) {
        return PlainSpelling.of(text);
    }

    private static void addWhereExact(List<String> texts, Quantity q, UnitExpression unit) {
        String text = inUnit(q, unit);
        if (text != null) {
            texts.add(text);
        }
    }

    private static UnitExpression coherent(Dimension dimension) {
        String text = CoherentUnit.of(dimension);
        return text.isEmpty() ? UnitExpression.ONE : UnitExpression.known(text);
    }

    private static @Nullable String inUnit(Quantity q, UnitExpression unit) {
        String number = shortest(unit.exactFromSi(q.si()), q.si(), unit::toSi);
        if (number == null) {
            return null;
        }
        String value = withUnit(number, unit);
        if (q.tolerance().equals(Tolerance.NONE)) {
            return value;
        }
        String tolerance = tolerance(q, unit);
        return tolerance == null ? null : value + " " + tolerance;
    }

    private static @Nullable String tolerance(Quantity q, UnitExpression unit) {
        var t = q.tolerance();
        String sides = t.plus() == t.minus() ? even(q, unit) : uneven(q, unit);
        if (sides == null) {
            return null;
        }
        String form =
                switch (t.form()) {
                    case NORMAL -> "";
                    case BOUND -> " bound";
                };
        String scope =
                switch (t.scope()) {
                    case SHARED -> "";
                    case EACH -> " each";
                };
        return sides + form + scope;
    }

    private static @Nullable String even(Quantity q, UnitExpression unit) {
        double width = q.tolerance().plus();
        String absolute = width(width, unit);
        String share = share(width, q.si(), unit);
        if (absolute == null && share == null) {
            return null;
        }
        String inUnit = absolute == null ? null : withUnit(absolute, unit);
        String inPercent = share == null ? null : withUnit(share, PERCENT);
        return "± " + shorter(inUnit, inPercent);
    }

    private static @Nullable String uneven(Quantity q, UnitExpression unit) {
        var t = q.tolerance();
        String absolute = pair(width(t.plus(), unit), width(t.minus(), unit), unit);
        String share = pair(share(t.plus(), q.si(), unit), share(t.minus(), q.si(), unit), PERCENT);
        return shorter(absolute, share);
    }

    /** The shorter text, of equals the first; null only where both are. */
    private static @Nullable String shorter(@Nullable String one, @Nullable String other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return other.length() < one.length() ? other : one;
    }

    private static @Nullable String pair(
            @Nullable String plus, @Nullable String minus, UnitExpression unit) {
        return plus == null || minus == null ? null : "+" + plus + "/-" + withUnit(minus, unit);
    }

    private static @Nullable String width(double width, UnitExpression unit) {
        return shortest(unit.exactDifferenceFromSi(width), width, unit::differenceToSi);
    }

    /** The width in percent of the value; null where a percentage means something else there. */
    private static @Nullable String share(double width, double si, UnitExpression unit) {
        if (si == 0 || unit.hasOffset() || unit.isShare() || width > Math.abs(si)) {
            return null;
        }
        var percent =
                new BigDecimal(width)
                        .scaleByPowerOfTen(2)
                        .divide(new BigDecimal(si).abs(), new MathContext(40));
        return shortest(percent, width, d -> Math.abs(si) * PERCENT.differenceToSi(d));
    }

    private static final UnitExpression PERCENT = UnitExpression.known("%");

    /** The shortest decimal near {@code value} that is read as {@code si} exactly, or null. */
    private static @Nullable String shortest(
            BigDecimal value, double si, ToDoubleFunction<Decimal> read) {
        if (value.signum() == 0) {
            return read.applyAsDouble(new Decimal(0, 0)) == si ? "0" : null;
        }
        for (int digits = 1; digits <= MOST_DIGITS; digits++) {
            var rounded =
                    value.round(new MathContext(digits, RoundingMode.HALF_EVEN))
                            .stripTrailingZeros(); // as the parser will meet it
            if (read.applyAsDouble(decimal(rounded)) == si) {
                return text(rounded);
            }
        }
        return null;
    }

    private static Decimal decimal(BigDecimal value) {
        return new Decimal(value.unscaledValue().longValueExact(), -value.scale());
    }

    private static String text(BigDecimal value) {
        int exponent = value.precision() - value.scale() - 1;
        if (exponent >= -4 && exponent < 7) {
            return value.toPlainString();
        }
        var mantissa = value.scaleByPowerOfTen(-exponent);
        return mantissa.toPlainString() + "e" + exponent;
    }

    private static String withUnit(String number, UnitExpression unit) {
        String text = unit.text();
        boolean close = text.isEmpty() || text.equals("°");
        return close ? number + text : number + " " + text;
    }
}
