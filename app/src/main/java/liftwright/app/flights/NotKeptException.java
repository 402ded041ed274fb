package liftwright.app.flights;

/**
 * Flights that cannot be read from their file, or not be kept in it; the message is for the user.
 */
public final class NotKeptException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public NotKeptException(String sentence) {
        super(sentence);
    }
}
