package liftwright.logbook.sound;

/** A file that is no recording that can be read; its message is a sentence for the user. */
public final class BadWaveException extends Exception {

    private static final long serialVersionUID = 1L;

    BadWaveException(String message) {
        super(message);
    }
}
