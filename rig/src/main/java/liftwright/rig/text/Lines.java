package liftwright.rig.text;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Where the lines of a text begin. A line ends at a line feed, a carriage return, or both together,
 * as YAML 1.2 has it (chapter 5.4).
 */
final class Lines {

    private final String text;
    private final int[] starts;

    /** Where the second halves of characters beyond the basic plane stand. */
    private final int[] halves;

    Lines(String text) {
        this.text = text;
        var found = new int[64];
        int count = 1;
        found[0] = text.startsWith("\uFEFF") ? 1 : 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && !text.startsWith("\n", i + 1))) {
                if (count == found.length) {
                    found = Arrays.copyOf(found, 2 * count);
                }
                found[count++] = i + 1;
            }
        }
        starts = Arrays.copyOf(found, count);
        halves =
                IntStream.range(1, text.length())
                        .filter(i -> Character.isSurrogatePair(text.charAt(i - 1), text.charAt(i)))
                        .toArray();
    }

    /** How many lines there are, the last one perhaps empty. */
    int count() {
        return starts.length;
    }

    /** Number, from 0, of the line that holds the character at {@code offset}. */
    int indexOf(int offset) {
        int at = Arrays.binarySearch(starts, offset);
        return Math.max(0, at >= 0 ? at : -at - 2);
    }

    /** Offset of the first character of line {@code index} from 0. */
    int start(int index) {
        return starts[index];
    }

    /** Offset after the last character of line {@code index} before its line ending. */
    int end(int index) {
        int end = index + 1 < starts.length ? starts[index + 1] : text.length();
        while (end > starts[index]
                && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
            end--;
        }
        return end;
    }

    /** Offset after the line ending of line {@code index}. */
    int next(int index) {
        return index + 1 < starts.length ? starts[index + 1] : text.length();
    }

    Span span(int from, int to) {
        int line = indexOf(from);
        int start = Math.min(starts[line], from);
        return new Span(
                from, to, line + 1, from - start - (halvesBefore(from) - halvesBefore(start)) + 1);
    }

    private int halvesBefore(int offset) {
        int at = Arrays.binarySearch(halves, offset);
        return at >= 0 ? at : -at - 1;
    }
}
