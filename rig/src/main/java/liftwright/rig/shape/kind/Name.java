package liftwright.rig.shape.kind;

import liftwright.rig.Problem.Code;
import liftwright.rig.text.Span;

/**
 * Which names builders may give to parts: they become paths, parameter names and file names, so
 * they are letters (of any script), digits, spaces and hyphens. Dots count generated parts and
 * slashes separate paths.
 */
public final class Name {

    /** Longest name, characters. */
    public static final int LONGEST = 48;

    /** The same rule for schemas. */
    public static final String PATTERN =
            "^\\p{L}[\\p{L}\\p{M}\\p{Nd}_+-]*( [\\p{L}\\p{M}\\p{Nd}_+-]+)*$";

    static final String RULE =
            "a name: it begins with a letter, goes on with letters, digits, spaces or hyphens, and"
                    + " has at most "
                    + LONGEST
                    + " characters";

    private Name() {}

    /** Whether {@code name} may name a part. */
    public static boolean isGood(String name) {
        if (name.isEmpty() || name.length() > LONGEST || !Character.isLetter(name.codePointAt(0))) {
            return false;
        }
        int before = 0;
        for (int i = 0; i < name.length(); i += Character.charCount(before)) {
            int c = name.codePointAt(i);
            boolean allowed = Character.isLetterOrDigit(c) || isMark(c) || "_+- ".indexOf(c) >= 0;
            if (!allowed || (c == ' ' && before == ' ')) {
                return false;
            }
            before = c;
        }
        return before != ' ';
    }

    private static boolean isMark(int c) {
        int type = Character.getType(c);
        return type == Character.NON_SPACING_MARK || type == Character.COMBINING_SPACING_MARK;
    }

    /** Reports a bad name. */
    public static boolean check(String name, Spot spot, Span span, Problems problems) {
        boolean good = isGood(name);
        if (!good) {
            problems.add(
                    Code.BAD_ID,
                    spot,
                    span,
                    Problems.quote(name),
                    RULE,
                    name.indexOf('.') >= 0 ? "Dots count generated parts, as in left.3." : "");
        }
        return good;
    }
}
