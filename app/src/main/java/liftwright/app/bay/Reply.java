package liftwright.app.bay;

import java.util.function.Consumer;
import liftwright.answer.JsonText;

/** What goes back to the page. */
sealed interface Reply {

    /**
     * One document.
     *
     * @param text of it, JSON
     */
    record Document(String text) implements Reply {}

    /**
     * A stream of lines, one JSON object each, that ends when {@code teller} returns.
     *
     * @param teller runs on the request's thread
     * @param heartbeat the line sent when nothing else was for a while, so that a reader who left
     *     is noticed
     */
    record Stream(Consumer<Lines> teller, String heartbeat) implements Reply {}

    /**
     * Something to keep.
     *
     * @param name of the file: letters, digits, dots and dashes
     */
    @SuppressWarnings("ArrayRecordComponent") // sent once, never compared
    record Attachment(String name, String mediaType, byte[] bytes) implements Reply {

        public Attachment {
            if (!name.matches("[A-Za-z0-9-]+(\\.[A-Za-z0-9-]+)*")) {
                throw new IllegalArgumentException("no name to keep it under: " + name);
            }
            bytes = bytes.clone();
        }

        @Override
        public byte[] bytes() {
            return bytes.clone();
        }
    }

    /** One document, as {@code write} writes it. */
    static Reply json(Consumer<JsonText> write) {
        var json = new JsonText();
        write.accept(json);
        return new Document(json.toString());
    }

    /** A stream; its heartbeats are empty lines. */
    static Reply lines(Consumer<Lines> teller) {
        return new Stream(teller, "");
    }
}
