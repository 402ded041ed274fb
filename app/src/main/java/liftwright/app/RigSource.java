package liftwright.app;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import liftwright.rig.file.RigReading;

/**
 * A rig file as it was read.
 *
 * @param file where it is
 * @param read what stands in it
 */
record RigSource(UserFile file, RigReading read) {

    /**
     * @throws UsageException when it cannot be read at all
     */
    static RigSource of(UserFile file) {
        return new RigSource(file, RigReading.read(file.named(), file.read()));
    }

    /** Of the bytes of the file, so that an answer names what it answers about. */
    String digest() {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(read.text().bytes());
            return "sha256:" + HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
