package liftwright.learning.replay;

/** A recording from which the plant cannot be driven. The message says what is needed. */
public final class NotDrivenException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * @param needed what is needed, in words
     */
    public NotDrivenException(String needed) {
        super(needed);
    }
}
