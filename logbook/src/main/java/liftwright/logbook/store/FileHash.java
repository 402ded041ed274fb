package liftwright.logbook.store;

import java.io.IOException;
import java.nio.file.Path;

/** Names the bytes of a file, however large. */
public final class FileHash {

    private FileHash() {}

    /** SHA-256, lower case hexadecimal. */
    public static String of(Path file) throws IOException {
        return Digests.hash(file);
    }
}
