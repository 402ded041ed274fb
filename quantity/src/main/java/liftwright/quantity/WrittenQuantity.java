package liftwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import liftwright.quantity.Reading.Parsed;

/**
 * A quantity, or the two ends of a range, as somebody wrote it: other numbers can be put in place
 * of theirs, and unit, tolerance and spacing stay as they are. {@link QuantityWriter} writes a
 * value to the last bit; this one writes a rounded number into a text that is there.
 */
public final class WrittenQuantity {

    /** Finer than this a number is not written, decimals. */
    private static final int MOST_DECIMALS = 12;

    /** A number of the text: where it stands and in which unit it is. */
    private record Digits(int from, int to, UnitExpression unit) {}

    private final String text;
    private final Range range;
    private final Digits first;
    private final Optional<Digits> second;

    private WrittenQuantity(String text, Range range, Digits first, Optional<Digits> second) {
        this.text = text;
        this.range = range;
        this.first = first;
        this.second = second;
    }

    /** The text taken apart; empty where it is no quantity or range of that dimension. */
    public static Optional<WrittenQuantity> read(String text, Dimension dimension) {
        return QuantityParser.parseRange(text, dimension) instanceof Parsed<Range>(var range)
                ? Optional.of(parts(text, dimension, range))
                : Optional.empty();
    }

    private static WrittenQuantity parts(String text, Dimension dimension, Range range) {
        var in = new Cursor(text);
        try {
            in.skipSpaces();
            int from = in.at;
            NumberReader.read(in);
            int to = in.at;
            in.skipSpaces();
            Optional<UnitExpression> unit = Optional.ofNullable(UnitReader.read(in));
            in.skipSpaces();
            if (!QuantityGrammar.takeRangeMark(in)) {
                return new WrittenQuantity(
                        text,
                        range,
                        new Digits(from, to, unit.orElseGet(() -> ofTolerance(in, dimension))),
                        Optional.empty());
            }
            in.skipSpaces();
            int secondFrom = in.at;
            NumberReader.read(in);
            int secondTo = in.at;
            in.skipSpaces();
            UnitExpression last =
                    Optional.ofNullable(UnitReader.read(in)).orElse(UnitExpression.ONE);
            return new WrittenQuantity(
                    text,
                    range,
                    new Digits(from, to, unit.orElse(last)),
                    Optional.of(new Digits(secondFrom, secondTo, last)));
        } catch (RefusedException refused) {
            throw new IllegalStateException("the parser has read it: " + text, refused);
        }
    }

    /** A number without unit has that of its tolerance: {@code 68 ± 0.4 kg}. */
    private static UnitExpression ofTolerance(Cursor in, Dimension dimension) {
        try {
            var written = ToleranceReader.read(in);
            if (written != null) {
                for (var side : new ToleranceReader.Side[] {written.plus(), written.minus()}) {
                    if (side.unit() != null && side.unit().dimension().equals(dimension)) {
                        return side.unit();
                    }
                }
            }
            return UnitExpression.ONE;
        } catch (RefusedException refused) {
            throw new IllegalStateException("the parser has read it: " + in.text, refused);
        }
    }

    /** As it was written. */
    public String text() {
        return text;
    }

    /** What it says. */
    public Range range() {
        return range;
    }

    /** Whether two ends are written, which may be equal. */
    public boolean hasTwoEnds() {
        return second.isPresent();
    }

    /** The unit of its first number as written; empty for a plain number. */
    public String unitText() {
        return first.unit().text();
    }

    /** What one of that unit is, in SI. */
    public double unitSi() {
        return first.unit().differenceToSi(new Decimal(1, 0));
    }

    /**
     * The text with its numbers moved. Where a tolerance in percent would be a share of nothing, it
     * is written as the width that it was.
     *
     * @param bySi how far, SI
     * @param finestSi numbers are rounded to the first decimal at or below this, SI, &gt; 0
     */
    public String moved(double bySi, double finestSi) {
        if (second.isEmpty()) {
            return with(range.from().si() + bySi, finestSi);
        }
        Digits last = second.get();
        String ahead = text.substring(0, first.from());
        String between = text.substring(first.to(), last.from());
        return ahead
                + number(first, range.from().si() + bySi, finestSi)
                + between
                + number(last, range.to().si() + bySi, finestSi)
                + text.substring(last.to());
    }

    /**
     * The text of one value with another in its place, as {@link #moved}.
     *
     * @throws IllegalStateException if two ends are written
     */
    public String with(double si, double finestSi) {
        if (second.isPresent()) {
            throw new IllegalStateException("two ends are written: " + text);
        }
        String plain =
                text.substring(0, first.from())
                        + number(first, si, finestSi)
                        + text.substring(first.to());
        Dimension dimension = range.from().dimension();
        if (QuantityParser.parseRange(plain, dimension) instanceof Parsed<Range>) {
            return plain;
        }
        double rounded =
                first.unit()
                        .toSi(Double.parseDouble(number(first, si, finestSi).replace('−', '-')));
        Tolerance wide = range.from().tolerance();
        var kept =
                new Tolerance(
                        withoutNoise(wide.plus()),
                        withoutNoise(wide.minus()),
                        wide.form(),
                        wide.scope());
        return QuantityWriter.writeLike(new Quantity(rounded, dimension, kept), text);
    }

    /** A share of a value ends in digits that nobody wrote. */
    private static double withoutNoise(double width) {
        return new BigDecimal(width).round(new MathContext(9)).doubleValue();
    }

    private String number(Digits place, double si, double finestSi) {
        UnitExpression unit = place.unit();
        double one = unit.differenceToSi(new Decimal(1, 0));
        int decimals = 0;
        while (decimals < MOST_DECIMALS && one > finestSi) {
            one /= 10;
            decimals++;
        }
        BigDecimal rounded =
                unit.exactFromSi(si)
                        .setScale(decimals, RoundingMode.HALF_EVEN)
                        .stripTrailingZeros();
        String plain = rounded.signum() == 0 ? "0" : rounded.toPlainString();
        boolean minusSign = text.startsWith("−", place.from());
        return minusSign ? plain.replace('-', '−') : plain;
    }
}
