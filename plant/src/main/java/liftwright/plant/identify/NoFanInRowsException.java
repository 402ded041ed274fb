package liftwright.plant.identify;

/**
 * The rows of a bench table do not make a fan: a fault of the table, not of the program. The
 * message is a sentence for the builder.
 */
public final class NoFanInRowsException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * @param sentence names the table and what is amiss with it
     */
    public NoFanInRowsException(String sentence) {
        super(sentence);
    }
}
