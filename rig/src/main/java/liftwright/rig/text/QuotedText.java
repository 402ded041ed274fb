package liftwright.rig.text;

/**
 * Texts for files that the program writes: in double quotes, so that no reader of YAML can take one
 * for something else.
 */
public final class QuotedText {

    private QuotedText() {}

    /** In double quotes, printable whatever it says. */
    public static String of(String text) {
        var quoted = new StringBuilder(text.length() + 2).append('"');
        text.codePoints().forEach(point -> append(quoted, point));
        return quoted.append('"').toString();
    }

    private static void append(StringBuilder quoted, int point) {
        switch (point) {
            case '"' -> quoted.append("\\\"");
            case '\\' -> quoted.append("\\\\");
            case '\n' -> quoted.append("\\n");
            case '\t' -> quoted.append("\\t");
            default -> {
                if (isPlain(point)) {
                    quoted.appendCodePoint(point);
                } else {
                    String hex = Integer.toHexString(point);
                    quoted.append("\\U").append("0".repeat(8 - hex.length())).append(hex);
                }
            }
        }
    }

    private static boolean isPlain(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.PRIVATE_USE,
                    Character.SURROGATE,
                    Character.UNASSIGNED ->
                    false;
            default -> true;
        };
    }
}
