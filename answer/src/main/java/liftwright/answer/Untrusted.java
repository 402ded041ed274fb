package liftwright.answer;

/** Text that came from a file: what of it must be escaped at every door. */
public final class Untrusted {

    private Untrusted() {}

    /**
     * Whether a character acts on nothing: it moves no cursor, breaks no line, turns no reading
     * direction, hides nothing, and is a character at all.
     */
    public static boolean isHarmless(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED ->
                    false;
            default -> true;
        };
    }
}
