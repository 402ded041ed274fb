package liftwright.quantity;

/**
 * What came of reading a text: the thing, or the reason why not.
 *
 * @param <T> what was to be read
 */
public sealed interface Reading<T> {

    /**
     * @param value what the text says
     */
    record Parsed<T>(T value) implements Reading<T> {}

    /**
     * @param refusal what is wrong with the text
     */
    record Refused<T>(Refusal refusal) implements Reading<T> {}
}
