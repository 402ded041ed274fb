package liftwright.app;

/** What the user asked cannot be done as asked; the message is for them and says what could. */
final class UsageException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String words;

    UsageException(String words) {
        super(words);
        this.words = words;
    }

    String words() {
        return words;
    }
}
