package liftwright.quantity;

import java.util.Optional;
import liftwright.quantity.Reading.Parsed;
import liftwright.quantity.Reading.Refused;
import liftwright.quantity.Refusal.Code;

/**
 * Reads quantities as people write them, strictly: {@code 4.2 mΩ ± 4 % each}, {@code 0.10
 * +0.15/-0.20}, {@code 700 rpm/V}. The only parser of units in the product. It never throws and
 * never guesses: what can be read in two ways is refused, with what was perhaps meant.
 *
 * <p>The language is described in {@code docs/reference/units.md}.
 */
public final class QuantityParser {

    /** Longest text that is looked at; no quantity comes near it. */
    static final int LONGEST = 200;

    private QuantityParser() {}

    /**
     * One value with its unit and, where written, its tolerance.
     *
     * @param needed what it must measure
     */
    public static Reading<Quantity> parse(String text, Dimension needed) {
        return read(text, t -> new QuantityGrammar(t, needed, false).quantity());
    }

    /** One value of whatever dimension its unit has. */
    public static Reading<Quantity> parse(String text) {
        return read(text, t -> new QuantityGrammar(t, null, false).quantity());
    }

    /** A difference of temperatures, in K: {@code 20 °C} would say how warm something is. */
    public static Reading<Quantity> parseTemperatureDifference(String text) {
        return read(text, t -> new QuantityGrammar(t, Dimensions.TEMPERATURE, true).quantity());
    }

    /** Two ends, {@code -40…180 mm}; one value reads as a range of no length. */
    public static Reading<Range> parseRange(String text, Dimension needed) {
        return read(text, t -> new QuantityGrammar(t, needed, false).range());
    }

    /**
     * A tolerance alone, {@code ± 3 % each}: a value of 1 with this tolerance, to multiply others
     * by.
     */
    public static Reading<Quantity> parseTolerance(String text) {
        return read(text, t -> new QuantityGrammar(t, Dimension.NONE, false).tolerance());
    }

    /** A unit alone, as in the head of a column. */
    public static Reading<UnitExpression> parseUnit(String text) {
        return read(text, t -> new QuantityGrammar(t, null, false).unit());
    }

    @FunctionalInterface
    private interface Rule<T> {
        T apply(String text) throws RefusedException;
    }

    private static <T> Reading<T> read(String text, Rule<T> rule) {
        if (text.length() > LONGEST) {
            return new Refused<>(tooLong());
        }
        try {
            return new Parsed<>(rule.apply(text));
        } catch (RefusedException refused) {
            return new Refused<>(told(refused, rule));
        }
    }

    private static <T> Refusal told(RefusedException refused, Rule<T> rule) {
        return new Refusal(
                refused.code,
                refused.from,
                refused.to - refused.from,
                String.valueOf(refused.getMessage()),
                refused.expected,
                firstThatReads(refused, rule));
    }

    /** A suggestion that would be refused in turn helps nobody. */
    private static <T> Optional<String> firstThatReads(RefusedException refused, Rule<T> rule) {
        return refused.guesses.stream().filter(guess -> reads(guess, rule)).findFirst();
    }

    private static <T> boolean reads(String text, Rule<T> rule) {
        try {
            rule.apply(text);
            return true;
        } catch (RefusedException refused) {
            return false;
        }
    }

    private static Refusal tooLong() {
        return new Refusal(
                Code.TEXT_TOO_LONG,
                LONGEST,
                0,
                "this is too long for a quantity",
                "at most " + LONGEST + " characters",
                Optional.empty());
    }
}
