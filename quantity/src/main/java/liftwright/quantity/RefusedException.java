package liftwright.quantity;

import java.util.List;
import liftwright.quantity.Refusal.Code;

/**
 * Carries a refusal out of the depth of the grammar; never leaves this package. Without a stack
 * trace, since a text with a mistake is an everyday thing.
 */
final class RefusedException extends Exception {

    private static final long serialVersionUID = 1L;

    final Code code;
    final int from;
    final int to;
    final String expected;

    /** Whole texts that may have been meant, best first; not yet known to be readable. */
    final transient List<String> guesses;

    RefusedException(
            Code code, int from, int to, String message, String expected, List<String> guesses) {
        super(message, null, false, false);
        this.code = code;
        this.from = from;
        this.to = to;
        this.expected = expected;
        this.guesses = guesses;
    }
}
