package liftwright.app.bay;

import java.util.function.Consumer;
import liftwright.answer.JsonText;

/** A stream of lines to a reader who may leave. May be told from several threads. */
interface Lines {

    /**
     * Sends one line at once.
     *
     * @param json an object on one line
     * @throws GoneException when the reader left, or the server is stopping
     */
    void tell(String json);

    /** Sends what {@code write} writes as one line. */
    default void tell(Consumer<JsonText> write) {
        var json = new JsonText();
        write.accept(json);
        tell(json.toString());
    }

    /** Whether there is no reader any more: long work asks this and stops. */
    boolean gone();

    /** Does {@code then} once when the reader leaves; at once where it has. Must be quick. */
    void onGone(Runnable then);

    /** The reader left. Nobody is to be told. */
    final class GoneException extends RuntimeException {

        private static final long serialVersionUID = 1L;

        GoneException() {
            super("the reader left", null, false, false);
        }
    }
}
