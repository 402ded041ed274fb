package liftwright.rig.text;

/**
 * A stretch of a file's text.
 *
 * @param from offset of its first character, UTF-16 units from 0
 * @param to offset after its last character; equal to {@code from} for nothing at all
 * @param line line of {@code from}, from 1
 * @param column column of {@code from}, code points from 1; a byte order mark has no column
 */
public record Span(int from, int to, int line, int column) {

    /** What {@code text} says here. */
    public String of(String text) {
        return text.substring(from, to);
    }

    boolean covers(int offset) {
        return from <= offset && offset <= to;
    }
}
