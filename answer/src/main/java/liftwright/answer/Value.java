package liftwright.answer;

import java.util.Optional;
import liftwright.quantity.Band;

/**
 * One number of an answer with its meaning.
 *
 * @param field id of a row of the table of fields: label, unit, formula, source, test
 * @param figure what it is
 */
public record Value(String field, Figure figure) {

    public static Value of(String field, double si) {
        return new Value(field, new Figure.Amount(si, Optional.empty()));
    }

    public static Value of(String field, double si, Band band) {
        return new Value(field, new Figure.Amount(si, Optional.of(band)));
    }

    /** The same, where there may be none. */
    public static Value of(String field, double si, Optional<Band> band) {
        return new Value(field, new Figure.Amount(si, band));
    }

    public static Value words(String field, String text) {
        return new Value(field, new Figure.Words(text));
    }

    /** Its interval, where it is a number that has one. */
    public Optional<Band> band() {
        return figure instanceof Figure.Amount amount ? amount.band() : Optional.empty();
    }

    /** What a value can be; absence has its own words and is never a number. */
    public sealed interface Figure {
        /**
         * @param si SI, finite
         * @param band its interval, where it has one
         */
        record Amount(double si, Optional<Band> band) implements Figure {
            public Amount {
                if (Double.isNaN(si) || Double.isInfinite(si)) {
                    throw new IllegalArgumentException("a shown number is finite, not " + si);
                }
            }
        }

        record Words(String text) implements Figure {}

        /** Does not happen, however long one waits. */
        record Never() implements Figure {}

        /**
         * @param reason why there is no number
         */
        record NotComputed(String reason) implements Figure {}
    }
}
