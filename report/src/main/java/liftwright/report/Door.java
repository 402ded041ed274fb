package liftwright.report;

import java.util.Locale;
import liftwright.answer.Untrusted;

/**
 * The terminal's door: text from a file acts on nothing. What moves a cursor, breaks a line, turns
 * the reading direction, hides or is no character at all is written as its code, {@code <U+1B>}.
 * Without UTF-8 so is every letter that ASCII lacks, except signs that have a plain spelling.
 */
public final class Door {

    /** Longest stretch without a space that is written whole. */
    private static final int LONGEST_WORD = 72;

    private static final int HEAD = 40;
    private static final int TAIL = 12;

    /** More marks on one letter climb over the lines above and below. */
    private static final int MOST_MARKS = 2;

    private final boolean ascii;

    /**
     * @param ascii whether only ASCII may pass
     */
    public Door(boolean ascii) {
        this.ascii = ascii;
    }

    /** Escaped, and without stretches that no line could hold. */
    public String plain(String text) {
        return shortened(escaped(text));
    }

    /** Escaped, as long as it is. */
    String escaped(String text) {
        if (isHarmlessAscii(text)) {
            return text;
        }
        var out = new StringBuilder(text.length() + 16);
        int marks = 0;
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            marks = isMark(c) ? marks + 1 : 0;
            if (marks > MOST_MARKS) {
                code(out, c);
            } else {
                character(out, c);
            }
        }
        return out.toString();
    }

    /** Takes no column of its own and sits on the letter before. */
    static boolean isMark(int c) {
        int type = Character.getType(c);
        return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
    }

    private static boolean isHarmlessAscii(String text) {
        return text.chars().allMatch(c -> c >= ' ' && c < 0x7f);
    }

    private void character(StringBuilder out, int c) {
        if (c >= ' ' && c < 0x7f) {
            out.append((char) c);
        } else if (!isVisible(c)) {
            code(out, c);
        } else if (!ascii || c == NO_BREAK_SPACE) {
            out.appendCodePoint(c);
        } else {
            String spelled = spelled(c);
            if (spelled.isEmpty()) {
                code(out, c);
            } else {
                out.append(spelled);
            }
        }
    }

    /** Keeps a number and its unit on one line; written as a plain space. */
    static final char NO_BREAK_SPACE = '\u00a0';

    /** A wide or narrow space would be seen as a plain one. */
    private static boolean isVisible(int c) {
        boolean otherSpace = Character.getType(c) == Character.SPACE_SEPARATOR;
        return Untrusted.isHarmless(c) && (!otherSpace || c == NO_BREAK_SPACE);
    }

    private static String spelled(int c) {
        return switch (c) {
            case '±' -> "+/-";
            case '−', '–', '—', '─' -> "-";
            case '×' -> "x";
            case '·' -> ".";
            case '≥' -> ">=";
            case '≤' -> "<=";
            case '≠' -> "!=";
            case '≈' -> "~";
            case '°' -> "deg";
            case 'Ω' -> "ohm";
            case 'µ', 'μ' -> "u";
            case '²' -> "2";
            case '³' -> "3";
            case '√' -> "sqrt";
            case '…' -> "...";
            case '→' -> "->";
            case '“', '”', '„' -> "\"";
            case '‘', '’' -> "'";
            case '█' -> "#";
            case '▒' -> "-";
            case '▓' -> "+";
            case '│' -> "|";
            default -> "";
        };
    }

    private static void code(StringBuilder out, int c) {
        out.append("<U+").append(Integer.toHexString(c).toUpperCase(Locale.ROOT)).append('>');
    }

    /** A stretch that no line could hold keeps its head and tail and says how long it was. */
    private String shortened(String text) {
        if (text.length() <= LONGEST_WORD) {
            return text;
        }
        var out = new StringBuilder();
        int from = 0;
        while (from <= text.length()) {
            int space = text.indexOf(' ', from);
            int to = space < 0 ? text.length() : space;
            String word = text.substring(from, to);
            if (word.length() > LONGEST_WORD) {
                out.append(word, 0, whole(word, HEAD))
                        .append(ascii ? "..." : "…")
                        .append(word, whole(word, word.length() - TAIL), word.length())
                        .append(" (")
                        .append(word.length())
                        .append(" characters)");
            } else {
                out.append(word);
            }
            if (space >= 0) {
                out.append(' ');
            }
            from = to + 1;
        }
        return out.toString();
    }

    /** The index, or the one before where it would cut a character in two. */
    private static int whole(String word, int index) {
        return Character.isLowSurrogate(word.charAt(index)) ? index - 1 : index;
    }
}
