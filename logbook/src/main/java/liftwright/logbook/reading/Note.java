package liftwright.logbook.reading;

/**
 * Something that was found or done while a log was read, and that its reader should know.
 *
 * @param source name of the file
 * @param kind stable; the wording may change
 * @param line of the file, from 1; 0 for the file as a whole
 * @param text one sentence
 */
public record Note(String source, Kind kind, long line, String text) {

    /** What is told. */
    public enum Kind {
        /** How the file was understood: encoding, separator, decimal sign, clock. */
        READ_AS,
        /** A column that is not read. */
        COLUMN_LEFT,
        /** Rows set aside. */
        ROWS_ASIDE,
        /** Cells that say that nothing was measured. */
        CELLS_EMPTY,
        /** No samples for much longer than usual. */
        GAP,
        /** The clock went back or leapt. */
        CLOCK_JUMP,
        /** A row that came twice. */
        DUPLICATE,
        /** A channel that repeats its values at a faster clock. */
        REPEATED,
        /** Two channels of which one is some rows late. */
        OUT_OF_STEP,
        /** The clocks of two files were brought together. */
        ALIGNED,
        /** They could not be. */
        NOT_ALIGNED
    }
}
