package liftwright.logbook.reading;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** How the letters of a log are written. */
enum Encoding {
    UTF_8("UTF-8", StandardCharsets.UTF_8),
    UTF_16_LE("UTF-16, little end first", StandardCharsets.UTF_16LE),
    UTF_16_BE("UTF-16, big end first", StandardCharsets.UTF_16BE),
    /** With the signs that Windows puts where Latin-1 has none. */
    LATIN_1("Latin-1", Charset.forName("windows-1252"));

    /** Every second byte of Western text in UTF-16 is nought. */
    private static final double SHARE_OF_NOUGHTS = 0.3;

    private final String told;
    private final Charset charset;

    Encoding(String told, Charset charset) {
        this.told = told;
        this.charset = charset;
    }

    String told() {
        return told;
    }

    Charset charset() {
        return charset;
    }

    /** UTF-16 by its mark, or by its noughts; else UTF-8 until a byte says otherwise. */
    static Encoding guess(byte[] start, int length) {
        if (length >= 2 && (start[0] & 0xFF) == 0xFF && (start[1] & 0xFF) == 0xFE) {
            return UTF_16_LE;
        }
        if (length >= 2 && (start[0] & 0xFF) == 0xFE && (start[1] & 0xFF) == 0xFF) {
            return UTF_16_BE;
        }
        int even = 0;
        int odd = 0;
        for (int i = 0; i < length; i++) {
            if (start[i] == 0) {
                if (i % 2 == 0) {
                    even++;
                } else {
                    odd++;
                }
            }
        }
        double many = SHARE_OF_NOUGHTS * length;
        if (odd > many && even == 0) {
            return UTF_16_LE;
        }
        return even > many && odd == 0 ? UTF_16_BE : UTF_8;
    }
}
