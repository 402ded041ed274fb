package liftwright.logbook.store;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * Sheets that grow: behind everything that is added stands a comment with the SHA-256 of all bytes
 * before it. A changed byte spoils the seal behind it, and what was put behind the last seal has
 * none.
 */
final class Seals {

    private static final String BEGIN = "# sealed sha256:";
    private static final int LENGTH = BEGIN.length() + 64 + 1;

    private Seals() {}

    /** What stood there with something put behind, sealed. */
    static byte[] sealed(byte[] before, String more) {
        var text = new ByteArrayOutputStream();
        text.writeBytes(before);
        text.writeBytes(more.getBytes(StandardCharsets.UTF_8));
        text.writeBytes(seal(text.toByteArray()));
        return text.toByteArray();
    }

    private static byte[] seal(byte[] before) {
        String hash = HexFormat.of().formatHex(Digests.sha256().digest(before));
        return (BEGIN + hash + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** Whether it ends with the seal of all that is before. */
    static boolean isWhole(byte[] bytes) {
        int at = bytes.length - LENGTH;
        return at >= 0
                && Arrays.equals(
                        Arrays.copyOfRange(bytes, at, bytes.length),
                        seal(Arrays.copyOf(bytes, at)));
    }
}
