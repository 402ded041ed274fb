package liftwright.rig;

/**
 * Something wrong with a text from outside, at its place.
 *
 * @param code stable; the wording may change
 * @param at where
 * @param found what stands there
 * @param expected what should stand there
 * @param advice what to do, or empty
 */
public record Problem(Code code, Place at, String found, String expected, String advice) {

    /**
     * Line and column count from 1, columns in code points; {@code path} is a {@link RigPath} in
     * print.
     */
    public record Place(String file, int line, int column, String path) {}

    /** Severity is part of the code: see {@link #isError()}. */
    public enum Code {
        NOT_TEXT,
        TOO_LARGE,
        TOO_DEEP,
        SYNTAX,
        NOT_ALLOWED_IN_RIG_FILES,
        DUPLICATE_KEY,
        UNKNOWN_KEY,
        MISSING_KEY,
        WRONG_KIND,
        WRONG_UNIT,
        NOT_A_QUANTITY,
        OUT_OF_RANGE,
        UNKNOWN_WORD,
        NO_SUCH_PART,
        DUPLICATE_ID,
        BAD_ID,
        CONTRADICTION,
        OUTSIDE_FOLDER,
        UNSUPPORTED_VERSION,
        /** Not an error: the key is part of the format, and no question reads it yet. */
        USED_BY_NO_QUESTION_YET;

        public boolean isError() {
            return this != USED_BY_NO_QUESTION_YET;
        }
    }
}
