package liftwright.logbook.engine;

import java.io.IOException;

/** Why the engine gave nothing. The message is a sentence for the builder. */
public final class EngineException extends IOException {

    private static final long serialVersionUID = 1;

    /** What kind of reason. */
    public enum Kind {
        /** The statement does more than ask, or asks elsewhere. */
        NOT_ALLOWED,
        /** The statement cannot be understood or computed. */
        STATEMENT,
        /** A file is not what it should be: cut off, of another format, gone. */
        FILE,
        /** More memory than the engine may have. */
        TOO_LARGE,
        /** It took longer than it may. */
        TOO_LONG,
        /** The user stopped it. */
        STOPPED,
        /** The engine's process is gone, or does not speak as it should. */
        DIED
    }

    private final Kind kind;

    EngineException(Kind kind, String message) {
        super(message);
        this.kind = kind;
    }

    public Kind kind() {
        return kind;
    }

    /** The sentence. */
    public String sentence() {
        return String.valueOf(getMessage());
    }
}
