package liftwright.rig.text;

import java.util.Comparator;
import java.util.List;

/**
 * One replacement in a text. What lies outside of it stays, byte for byte.
 *
 * @param from first character replaced, offset in UTF-16 units
 * @param to after the last one; equal to {@code from} for an insertion
 * @param replacement what stands there afterwards
 */
public record Splice(int from, int to, String replacement) {

    /** The text with all {@code splices} made; they must not overlap. */
    static String apply(String text, List<Splice> splices) {
        var after = new StringBuilder();
        int done = 0;
        for (var splice : splices.stream().sorted(Comparator.comparingInt(Splice::from)).toList()) {
            after.append(text, done, splice.from).append(splice.replacement);
            done = splice.to;
        }
        return after.append(text, done, text.length()).toString();
    }
}
