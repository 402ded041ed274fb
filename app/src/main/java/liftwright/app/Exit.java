package liftwright.app;

/** What the process ends with (architecture contract 10); of several, the last one wins. */
enum Exit {
    CLEAR(0),
    /** A finding that stops, or a verdict that is not "met". */
    STOPS(1),
    BAD_INPUT(2),
    STOPPED_EARLY(3),
    /** Ours: a crash must never read as a verdict. */
    FAULT(70);

    private final int code;

    Exit(int code) {
        this.code = code;
    }

    int code() {
        return code;
    }

    Exit worse(Exit other) {
        return code >= other.code ? this : other;
    }
}
