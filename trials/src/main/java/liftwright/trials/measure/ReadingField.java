package liftwright.trials.measure;

import java.util.Locale;
import liftwright.quantity.Measure;

/** Names of the fields of readings and of errors, by what they measure. */
final class ReadingField {

    private ReadingField() {}

    /** Of a number that an instrument shows: {@code reading-mass}. */
    static String of(Measure measure) {
        return "reading-" + word(measure);
    }

    /** Of the error of an instrument: {@code error-mass}. */
    static String error(Measure measure) {
        return "error-" + word(measure);
    }

    private static String word(Measure measure) {
        return measure.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
