package liftwright.app.bay;

import java.util.Optional;
import java.util.function.Consumer;
import liftwright.answer.JsonText;

/** What was asked cannot be done; the page gets the kind, the sentence and perhaps a document. */
final class FaultException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Kinds of faults, each with the status it goes out with. */
    enum Kind {
        KEY("key", 403),
        HOST("host", 421),
        ORIGIN("origin", 403),
        /** Made on a text that is no longer the one that stands. */
        STALE("stale", 409),
        /** Cannot be done to this document. */
        REFUSED("refused", 409),
        /** The disk holds something else. */
        CONFLICT("conflict", 409),
        MISSING("missing", 404),
        TOO_LARGE("too large", 413),
        TOO_MANY("too many", 429),
        BAD_REQUEST("bad request", 400),
        METHOD("bad request", 405),
        MEDIA_TYPE("bad request", 415),
        INTERNAL("internal", 500);

        private final String word;
        private final int status;

        Kind(String word, int status) {
            this.word = word;
            this.status = status;
        }

        String word() {
            return word;
        }

        int status() {
            return status;
        }
    }

    private final Kind kind;
    private final String sentence;
    private final transient Optional<Consumer<JsonText>> document;

    /**
     * @param sentence for the reader
     */
    FaultException(Kind kind, String sentence) {
        this(kind, sentence, Optional.empty());
    }

    /**
     * @param sentence for the reader
     * @param document writes the document as it stands
     */
    FaultException(Kind kind, String sentence, Consumer<JsonText> document) {
        this(kind, sentence, Optional.of(document));
    }

    private FaultException(Kind kind, String sentence, Optional<Consumer<JsonText>> document) {
        super(sentence, null, false, false); // an answer, not an accident: no trace
        this.kind = kind;
        this.sentence = sentence;
        this.document = document;
    }

    /** The request itself is wrong. */
    static FaultException badRequest(String sentence) {
        return new FaultException(Kind.BAD_REQUEST, sentence);
    }

    Kind kind() {
        return kind;
    }

    String sentence() {
        return sentence;
    }

    /** As the page reads it. */
    String json() {
        var json = new JsonText();
        json.object(
                () -> {
                    json.member("fault", kind.word()).member("sentence", sentence);
                    document.ifPresent(write -> write.accept(json.name("document")));
                });
        return json.toString();
    }
}
