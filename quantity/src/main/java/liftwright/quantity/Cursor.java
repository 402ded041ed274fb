package liftwright.quantity;

import java.util.ArrayList;
import java.util.List;
import liftwright.quantity.Refusal.Code;

/** A place in a text that moves forward, and the refusals that can be made there. */
final class Cursor {

    /** Stands for the end of the text; never part of a quantity. */
    static final char END = '\0';

    final String text;
    int at;

    Cursor(String text) {
        this.text = text;
    }

    char peek() {
        return peek(0);
    }

    char peek(int ahead) {
        int i = at + ahead;
        return i < text.length() ? text.charAt(i) : END;
    }

    boolean atEnd() {
        return at >= text.length();
    }

    /** Moves over the next character where it is this one. */
    boolean take(char c) {
        if (peek() == c && !atEnd()) {
            at++;
            return true;
        }
        return false;
    }

    /** Moves over {@code word} where it stands here and no letter or digit follows. */
    boolean takeWord(String word) {
        if (!isWord(word)) {
            return false;
        }
        at += word.length();
        return true;
    }

    boolean isWord(String word) {
        return text.startsWith(word, at) && !Character.isLetterOrDigit(peek(word.length()));
    }

    void skipSpaces() {
        while (isSpace(peek())) {
            at++;
        }
    }

    /** Place of the first character at or after here that is no space. */
    int nextAfterSpaces() {
        int i = at;
        while (i < text.length() && isSpace(text.charAt(i))) {
            i++;
        }
        return i;
    }

    /** The character at {@code place}, or {@link #END}. */
    char charAt(int place) {
        return place < text.length() ? text.charAt(place) : END;
    }

    /** Plain, no-break and thin spaces: NIST SP 811 wants one between number and unit. */
    static boolean isSpace(char c) {
        return c == ' '
                || c == '\t'
                || c == '\n'
                || c == '\r'
                || c == '\u00a0'
                || c == '\u202f'
                || c == '\u2009';
    }

    static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** The hyphen of the keyboard, or the true minus sign U+2212. */
    static boolean isMinus(char c) {
        return c == '-' || c == '\u2212';
    }

    static boolean isSign(char c) {
        return c == '+' || isMinus(c);
    }

    RefusedException refusal(Code code, int from, int to, String message, String expected) {
        return new RefusedException(code, from, to, message, expected, List.of());
    }

    /**
     * A refusal of the text {@code from} to {@code to}, which was perhaps meant to be one of these.
     */
    RefusedException refusal(
            Code code, int from, int to, String message, String expected, List<String> instead) {
        var whole = new ArrayList<String>(instead.size());
        for (String part : instead) {
            whole.add(text.substring(0, from) + part + text.substring(to));
        }
        return new RefusedException(code, from, to, message, expected, whole);
    }
}
