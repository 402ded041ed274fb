package liftwright.report.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Locale;

/** Style sheets of the program, and text from a file within one. */
final class Styles {

    private Styles() {}

    /** One that lies beside the classes. */
    static String read(String name) {
        try (InputStream in = Styles.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("missing from the program: " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Lets this style in and nothing else. */
    static String policy(String style) {
        try {
            return "default-src 'none'; style-src 'sha256-"
                    + Base64.getEncoder()
                            .encodeToString(
                                    MessageDigest.getInstance("SHA-256")
                                            .digest(style.getBytes(StandardCharsets.UTF_8)))
                    + "'";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /**
     * A string of a style sheet: all but letters and digits of ASCII is written as its code and a
     * space that ends it (CSS Syntax Level 3, §4.3.7), so that nothing in it ends the string or the
     * sheet.
     */
    static String quoted(String text) {
        var out = new StringBuilder(text.length() + 16).append('"');
        Markup.plain(text)
                .codePoints()
                .forEach(
                        c -> {
                            boolean plain = c < 0x80 && (Character.isLetterOrDigit(c) || c == ' ');
                            if (plain) {
                                out.append((char) c);
                            } else {
                                out.append(String.format(Locale.ROOT, "\\%x ", c));
                            }
                        });
        return out.append('"').toString();
    }
}
