package liftwright.plant.identify;

/**
 * Tables of measured rows do not tell what they were to tell: a fault of the tables, not of the
 * program. The message is a sentence for the builder.
 */
public final class NotToldException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * @param sentence names the table or the part, and what is amiss
     */
    public NotToldException(String sentence) {
        super(sentence);
    }
}
