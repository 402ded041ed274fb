package liftwright.rig.complete;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * The word at a cursor, found by its letters alone since the text may be broken.
 *
 * @param from where it begins
 * @param to where it ends
 * @param named whether a colon follows, so that it is a key already
 * @param glued whether a colon stands directly before, so that a blank is due
 */
record Slot(int from, int to, boolean named, boolean glued) {

    /**
     * One way to read the text, with a mark in place of the word.
     *
     * @param asKey whether the mark stands as a key
     */
    record Attempt(String text, boolean asKey) {}

    /** The word at {@code cursor}; empty in a comment. */
    static Optional<Slot> at(String text, int cursor) {
        int start = lineStart(text, cursor);
        if (inComment(text, start, cursor)) {
            return Optional.empty();
        }
        int from = cursor;
        while (from > start && !beginsWord(text, start, from)) {
            from--;
        }
        boolean glued = from > start && text.charAt(from - 1) == ':';
        while (from < cursor && text.charAt(from) == ' ') {
            from++;
        }
        int end = lineEnd(text, cursor);
        int to = cursor;
        while (to < end && !endsWord(text, to, end)) {
            to++;
        }
        boolean named = to < end && text.charAt(to) == ':';
        while (to > cursor && text.charAt(to - 1) == ' ') {
            to--;
        }
        return Optional.of(new Slot(from, to, named, glued));
    }

    private static int lineStart(String text, int cursor) {
        int start = cursor;
        while (start > 0 && text.charAt(start - 1) != '\n' && text.charAt(start - 1) != '\r') {
            start--;
        }
        return start == 0 && text.startsWith("\uFEFF") && cursor > 0 ? 1 : start;
    }

    private static int lineEnd(String text, int cursor) {
        int end = cursor;
        while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        return end;
    }

    private static boolean inComment(String text, int start, int cursor) {
        char quote = 0;
        for (int i = start; i < cursor; i++) {
            char c = text.charAt(i);
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if ((c == '"' || c == '\'') && (i == start || opens(text.charAt(i - 1)))) {
                quote = c;
            } else if (c == '#' && (i == start || text.charAt(i - 1) == ' ')) {
                return true;
            }
        }
        return false;
    }

    private static boolean opens(char before) {
        return " {[,".indexOf(before) >= 0;
    }

    /** Whether a word may begin at {@code from}. */
    private static boolean beginsWord(String text, int start, int from) {
        char before = text.charAt(from - 1);
        if ("{}[],".indexOf(before) >= 0) {
            return true;
        }
        if (before == ':') {
            // Only behind the cursor's own colon: elsewhere a blank follows it.
            return from == text.length() || " \r\n,}]".indexOf(text.charAt(from)) >= 0;
        }
        return before == ' ' && from - 2 >= start && isDash(text, start, from - 2);
    }

    /** Whether the dash of a list's entry stands at {@code at}. */
    private static boolean isDash(String text, int start, int at) {
        if (text.charAt(at) != '-') {
            return false;
        }
        for (int i = start; i < at; i++) {
            if (text.charAt(i) != ' ' && text.charAt(i) != '-') {
                return false;
            }
        }
        return true;
    }

    private static boolean endsWord(String text, int at, int end) {
        char c = text.charAt(at);
        return switch (c) {
            case ',', '}', ']', '{', '[' -> true;
            case ':' -> at + 1 == end || " ,}]".indexOf(text.charAt(at + 1)) >= 0;
            case '#' -> at > 0 && text.charAt(at - 1) == ' ';
            default -> false;
        };
    }

    /** The ways to read the text, the likelier first. */
    List<Attempt> attempts(String text) {
        String before = text.substring(0, from) + (glued ? " " : "");
        String after = text.substring(to);
        String rest = text.substring(lineEnd(text, to));
        String key = before + Marked.MARK + (named ? "" : ": ");
        String value = before + Marked.MARK;
        String closing = closing(text);
        return List.of(
                new Attempt(key + after, true),
                new Attempt(value + after, false),
                new Attempt(before + Marked.MARK + ": " + closing + rest, true),
                new Attempt(value + closing + rest, false));
    }

    /**
     * What closes the brackets that are open at the word; those of a line at the margin are new.
     */
    private String closing(String text) {
        Deque<Character> open = new ArrayDeque<>();
        char quote = 0;
        boolean comment = false;
        for (int i = 0; i < from; i++) {
            char c = text.charAt(i);
            boolean begins = i == 0 || text.charAt(i - 1) == '\n' || text.charAt(i - 1) == '\r';
            if (begins) {
                comment = false;
                if (c != ' ' && c != '#') {
                    open.clear();
                    quote = 0;
                }
            }
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (!comment) {
                comment = c == '#' && (begins || text.charAt(i - 1) == ' ');
                if ((c == '"' || c == '\'') && !begins && opens(text.charAt(i - 1))) {
                    quote = c;
                } else if (c == '{' || c == '[') {
                    open.push(c == '{' ? '}' : ']');
                } else if ((c == '}' || c == ']') && !open.isEmpty()) {
                    open.pop();
                }
            }
        }
        var closing = new StringBuilder();
        open.forEach(closing::append);
        return closing.toString();
    }
}
