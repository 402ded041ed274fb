package liftwright.logbook.reading;

import java.util.ArrayList;
import java.util.List;

/** One line of a log in cells. */
final class LogLine {

    /**
     * @param text without the blanks and the quotes around it
     * @param column where it begins, from 1, in code points
     */
    record Cell(String text, int column) {}

    private LogLine() {}

    /** Cells between separators; a quoted one may hold separators and doubled quotes. */
    static List<Cell> cut(String line, char separator) {
        var cells = new ArrayList<Cell>();
        int start = 0;
        boolean quoted = false;
        for (int i = 0; i <= line.length(); i++) {
            if (i < line.length() && line.charAt(i) == '"') {
                quoted = !quoted;
            } else if (i == line.length() || (line.charAt(i) == separator && !quoted)) {
                cells.add(cell(line, start, i));
                start = i + 1;
            }
        }
        return cells;
    }

    private static Cell cell(String line, int from, int to) {
        int begin = from;
        int end = to;
        while (begin < end && isBlank(line.charAt(begin))) {
            begin++;
        }
        while (end > begin && isBlank(line.charAt(end - 1))) {
            end--;
        }
        int column = line.codePointCount(0, begin) + 1;
        String text = line.substring(begin, end);
        if (text.length() > 1 && text.startsWith("\"") && text.endsWith("\"")) {
            text = text.substring(1, text.length() - 1).replace("\"\"", "\"").strip();
        }
        return new Cell(text, column);
    }

    private static boolean isBlank(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == '\uFEFF';
    }
}
