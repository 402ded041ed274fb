package liftwright.review;

import liftwright.answer.Outcome;
import liftwright.quantity.Band;

/**
 * The number that a question judges by, over the draws of the declared doubt. Draw k of two rigs is
 * the same draw of every input that they share, so that differences draw by draw are those of the
 * rigs alone.
 *
 * @param field of the number
 * @param nominal at the declared values
 * @param demand least that is asked of it
 * @param band of the draws about what is declared
 * @param values a number for each draw, in their order
 * @param outcome of the verdict; the checks of a whole answer can make it undecided, never better
 */
@SuppressWarnings("ArrayRecordComponent") // handed on, never compared
public record Judged(
        String field, double nominal, double demand, Band band, double[] values, Outcome outcome) {

    public Judged {
        values = values.clone();
    }

    @Override
    public double[] values() {
        return values.clone();
    }
}
