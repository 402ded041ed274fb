package liftwright.logbook.engine;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * One message between the program and its engine: four bytes of length, one of kind, what it says.
 */
final class Frame {

    /** Longest body, bytes: whoever sends more does not speak as agreed. */
    static final int LONGEST = 16 << 20;

    /** What a message can be; those of the program first. */
    enum Kind {
        /** Limits and a statement of the user. */
        ASK('a'),
        /** Limits and a statement of the program; the answer is rows. */
        RUN('r'),
        /** Likewise; the answer is columns of numbers. */
        NUMBERS('n'),
        /** Stop the statement that runs. */
        STOP('s'),
        /** The engine is locked and listens. */
        READY('R'),
        /** Names of columns. */
        HEAD('H'),
        /** Some rows. */
        ROWS('V'),
        /** Some rows of numbers. */
        BLOCK('B'),
        /** The answer is whole, or cut off. */
        DONE('D'),
        /** There is no answer. */
        ERROR('E');

        private final int code;

        Kind(int code) {
            this.code = code;
        }

        private static Kind of(int code) throws IOException {
            for (Kind kind : values()) {
                if (kind.code == code) {
                    return kind;
                }
            }
            throw new IOException("no message of ours");
        }
    }

    private final Kind kind;
    private final byte[] body;

    Frame(Kind kind, byte[] body) {
        this.kind = kind;
        this.body = body;
    }

    Kind kind() {
        return kind;
    }

    /** Its own bytes: nobody changes them. */
    byte[] body() {
        return body;
    }

    /** Writes parts of a message. */
    interface Writer {
        void to(DataOutputStream out) throws IOException;
    }

    static Frame of(Kind kind, Writer writer) {
        var bytes = new ByteArrayOutputStream();
        try (var out = new DataOutputStream(bytes)) {
            writer.to(out);
        } catch (IOException e) {
            throw new UncheckedIOException("memory takes every byte", e);
        }
        return new Frame(kind, bytes.toByteArray());
    }

    static Frame read(DataInputStream in) throws IOException {
        int length = in.readInt();
        Kind kind = Kind.of(in.readUnsignedByte());
        if (length < 0 || length > LONGEST) {
            throw new IOException("no message of ours");
        }
        byte[] body = in.readNBytes(length);
        if (body.length < length) {
            throw new EOFException("half a message");
        }
        return new Frame(kind, body);
    }

    void write(DataOutputStream out) throws IOException {
        out.writeInt(body.length);
        out.writeByte(kind.code);
        out.write(body);
        out.flush();
    }

    DataInputStream open() {
        return new DataInputStream(new ByteArrayInputStream(body));
    }

    static void writeText(DataOutputStream out, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    static String readText(DataInputStream in) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > in.available()) {
            throw new EOFException("half a text");
        }
        return new String(in.readNBytes(length), StandardCharsets.UTF_8);
    }
}
