package liftwright.answer;

import liftwright.quantity.Measure;

/**
 * One kind of number that answers show (architecture contract 11).
 *
 * @param id stable name used in JSON, lower case with hyphens
 * @param label column head and spoken name
 * @param measure what it measures, which decides unit and rounding
 * @param meaning one sentence
 * @param formula how it is computed
 * @param source where the formula comes from
 * @param test the test that checks it, {@code Class.method}
 */
public record Field(
        String id,
        String label,
        Measure measure,
        String meaning,
        String formula,
        String source,
        String test) {}
