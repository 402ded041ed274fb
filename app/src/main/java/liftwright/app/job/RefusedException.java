package liftwright.app.job;

/** What was asked of a job cannot be done to it; the message is for the reader. */
public final class RefusedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Why. */
    public enum Why {
        MISSING,
        TOO_MANY,
        REFUSED,
        DISK
    }

    private final Why why;

    RefusedException(Why why, String sentence) {
        super(sentence, null, false, false);
        this.why = why;
    }

    public Why why() {
        return why;
    }
}
