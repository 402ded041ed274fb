package liftwright.trials;

import liftwright.quantity.Measure;

/**
 * Something that is read during a run.
 *
 * @param field row of the table of fields, which decides unit and meaning
 * @param part what it is read of, as an id or in words
 * @param measure unit and rounding
 * @param instrument with what
 */
public record Channel(String field, String part, Measure measure, Instrument instrument) {

    /**
     * @param words what reads it
     * @param errorSi 95 % of its errors are smaller, SI, ≥ 0
     * @param errorShare of the reading, added in quadrature, ≥ 0
     * @param origin declared, a standard, common practice, or from memory
     */
    public record Instrument(String words, double errorSi, double errorShare, String origin) {}
}
