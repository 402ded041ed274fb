package liftwright.report.html;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A mark by which a sheet is known again: the SHA-256 of the whole with the mark blank. One that
 * somebody wrote into carries it no longer, and is then theirs.
 */
final class Seal {

    private static final String BLANK = "0".repeat(64);
    private static final String HEAD = "<!-- Liftwright report, sha256:";
    private static final Pattern MARK = Pattern.compile(HEAD + "([0-9a-f]{64}) -->");

    private Seal() {}

    /** What a sheet is written with, to be filled by {@link #sealed}. */
    static String blank() {
        return HEAD + BLANK + " -->";
    }

    /** The sheet with its mark filled in. */
    static String sealed(String sheet) {
        if (!sheet.contains(blank())) {
            throw new IllegalArgumentException("a sheet without a place for its seal");
        }
        return sheet.replaceFirst(
                Pattern.quote(blank()), Matcher.quoteReplacement(HEAD + digest(sheet) + " -->"));
    }

    /** Whether these bytes are a sheet as it was written. */
    static boolean isWhole(byte[] bytes) {
        String text = new String(bytes, UTF_8);
        Matcher mark = MARK.matcher(text);
        if (!mark.find()) {
            return false;
        }
        String before = text.substring(0, mark.start()) + blank() + text.substring(mark.end());
        return digest(before).equals(mark.group(1));
    }

    static String digest(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
