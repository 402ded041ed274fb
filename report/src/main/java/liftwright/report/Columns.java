package liftwright.report;

import java.util.ArrayList;
import java.util.List;

/** How many columns of a terminal a text takes. */
final class Columns {

    private Columns() {}

    static int of(String text) {
        int columns = 0;
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            columns += of(c);
            i += Character.charCount(c);
        }
        return columns;
    }

    /**
     * None for marks, two for the wide letters of East Asia and for pictures (Unicode Standard
     * Annex 11, the blocks from memory), one for others.
     */
    static int of(int c) {
        if (c < 0x300) {
            return 1;
        }
        if (Door.isMark(c)) {
            return 0;
        }
        boolean wide =
                (c >= 0x1100 && c <= 0x115f)
                        || (c >= 0x2e80 && c <= 0xa4cf)
                        || (c >= 0xac00 && c <= 0xd7a3)
                        || (c >= 0xf900 && c <= 0xfaff)
                        || (c >= 0xfe30 && c <= 0xfe6f)
                        || (c >= 0xff00 && c <= 0xff60)
                        || (c >= 0xffe0 && c <= 0xffe6)
                        || (c >= 0x1f000 && c <= 0x1faff)
                        || (c >= 0x20000 && c <= 0x3fffd);
        return wide ? 2 : 1;
    }

    /** The text, or as much of its head as fits with a sign that more was there. */
    static String cut(String text, int columns) {
        if (of(text) <= columns) {
            return text;
        }
        return text.substring(0, fitting(text, columns - 1)) + "~";
    }

    /** How many chars of the head fit; at least one code point of a text that is not empty. */
    static int fitting(String text, int columns) {
        int used = 0;
        int i = 0;
        while (i < text.length()) {
            int c = text.codePointAt(i);
            used += of(c);
            if (used > columns && i > 0) {
                return i;
            }
            i += Character.charCount(c);
        }
        return i;
    }

    static String padded(String text, int columns) {
        return text + " ".repeat(Math.max(0, columns - of(text)));
    }

    static String rightAligned(String text, int columns) {
        return " ".repeat(Math.max(0, columns - of(text))) + text;
    }

    /** Its words in lines that are no wider; a word that is wider itself goes on in the next. */
    static List<String> wrapped(String text, int columns) {
        List<String> lines = new ArrayList<>();
        var line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (!line.isEmpty() && of(line.toString()) + 1 + of(word) > columns) {
                lines.add(line.toString());
                line.setLength(0);
            }
            String rest = word;
            while (of(rest) > columns) {
                int cut = fitting(rest, columns);
                lines.add(rest.substring(0, cut));
                rest = rest.substring(cut);
            }
            line.append(line.isEmpty() ? "" : " ").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    /** Of the widest word. */
    static int ofWidestWord(String text) {
        int widest = 0;
        for (String word : text.split(" ", -1)) {
            widest = Math.max(widest, of(word));
        }
        return widest;
    }
}
