package liftwright.logbook.store;

import java.nio.file.Path;

/** A file that shall stand in a new folder of the logbook. */
public sealed interface NewFile {

    /** Its name there, parts joined by slashes. */
    String name();

    /**
     * @param from where its bytes are now; it stays there
     */
    record Copied(String name, Path from) implements NewFile {}

    /** What it says. */
    record Said(String name, Bytes bytes) implements NewFile {

        /** As it is encoded. */
        public static Said of(String name, byte[] bytes) {
            return new Said(name, new Bytes(bytes));
        }
    }

    /** Bytes that nobody changes any more. */
    final class Bytes {
        private final byte[] bytes;

        Bytes(byte[] bytes) {
            this.bytes = bytes.clone();
        }

        byte[] get() {
            return bytes.clone();
        }
    }
}
