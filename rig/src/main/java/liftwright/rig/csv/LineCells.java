package liftwright.rig.csv;

import de.siegmar.fastcsv.reader.AbstractBaseCsvCallbackHandler;
import java.util.ArrayList;
import java.util.List;

/** Takes the cells of one line and finds where each stands. */
final class LineCells extends AbstractBaseCsvCallbackHandler<List<Cell>> {

    private final String line;
    private final int number;
    private final List<Cell> cells = new ArrayList<>();

    /** Where the next cell begins, in UTF-16 units of the line. */
    private int next;

    private int last;

    LineCells(String line, int number) {
        this.line = line;
        this.number = number;
    }

    @Override
    protected void handleField(int index, char[] buffer, int from, int length, boolean quoted) {
        last = next;
        String text = new String(buffer, from, length);
        String bare = bare(text);
        int blanks = quoted ? 0 : bare.isEmpty() ? 0 : text.indexOf(bare);
        cells.add(new Cell(bare, number, column(Math.min(next + blanks, line.length()))));
        next += length + 1;
        if (quoted) {
            next += 2 + (int) text.chars().filter(c -> c == '"').count();
        }
    }

    @Override
    protected List<Cell> buildRecord() {
        return cells;
    }

    List<Cell> cells() {
        return cells;
    }

    /** Whether the last quote is not closed: then the cells are longer than the line. */
    boolean open() {
        return next - 1 != line.length();
    }

    /** Where the last cell begins. */
    int lastColumn() {
        return column(last);
    }

    /** Where the next cell would begin. */
    int column() {
        return column(Math.min(next, line.length()));
    }

    private int column(int offset) {
        return line.codePointCount(0, offset) + 1;
    }

    /** Without the blanks around it, those of typesetters too. */
    private static String bare(String text) {
        int from = 0;
        int to = text.length();
        while (from < to && isBlank(text.charAt(from))) {
            from++;
        }
        while (to > from && isBlank(text.charAt(to - 1))) {
            to--;
        }
        return text.substring(from, to);
    }

    private static boolean isBlank(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }
}
