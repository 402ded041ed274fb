package liftwright.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Where the program's words go: answers to one stream, all else to the other. */
final class Voice {

    private final OutputStream out;
    private final OutputStream err;

    Voice(OutputStream out, OutputStream err) {
        this.out = out;
        this.err = err;
    }

    /**
     * Writes an answer, whole.
     *
     * @throws NobodyReadsException when it could not be delivered
     */
    void answer(String text) {
        try {
            out.write(text.getBytes(StandardCharsets.UTF_8));
            out.flush();
        } catch (IOException e) {
            throw new NobodyReadsException(e);
        }
    }

    /** Says something beside the answer. That nobody hears it is no reason to stop. */
    void aside(String text) {
        try {
            err.write(text.getBytes(StandardCharsets.UTF_8));
            err.flush();
        } catch (IOException e) {
            return;
        }
    }

    /** The reader has left, or the disk is full. */
    static final class NobodyReadsException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NobodyReadsException(IOException cause) {
            super(cause.getMessage(), cause);
        }

        /** A reader who has seen enough ({@code | head}) needs no message. */
        boolean readerLeft() {
            String message = getMessage();
            return message != null && message.contains("Broken pipe");
        }
    }
}
