package liftwright.rig.csv;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Problems;

/**
 * A CSV file in lines and cells. A cell does not run over the end of a line: a quote that is not
 * closed would take the rest of the file with it.
 *
 * @param separator between cells: tab, semicolon or comma
 * @param head the names of the columns
 * @param rows those with as many cells as the head
 */
record Tabular(char separator, Line head, List<Line> rows) {

    /** Largest table, bytes. */
    static final int MOST_BYTES = 4 << 20;

    /** Most rows below the head. */
    static final int MOST_ROWS = 20_000;

    static final int MOST_COLUMNS = 32;

    /** Longest cell, characters. */
    static final int LONGEST_CELL = 120;

    /** Cuts a file into lines and cells; empty when there is nothing to go on with. */
    static Optional<Tabular> read(byte[] bytes, Faults faults) {
        return TableText.decode(bytes, faults).flatMap(text -> cut(text, faults));
    }

    private static Optional<Tabular> cut(String text, Faults faults) {
        char separator = ',';
        Line head = null;
        var rows = new ArrayList<Line>();
        int number = 0;
        for (int start = 0; start < text.length(); ) {
            int end = end(text, start);
            String line = text.substring(start, end);
            start = end + (text.startsWith("\r\n", end) ? 2 : 1);
            number++;
            if (line.isBlank() || line.stripLeading().startsWith("#")) {
                continue;
            }
            if (head == null) {
                separator = separator(line);
            }
            Optional<Line> cells = cells(line, number, separator, faults);
            if (head == null) {
                if (cells.isEmpty() || tooWide(cells.get(), faults)) {
                    return Optional.empty();
                }
                head = cells.get();
            } else if (rows.size() == MOST_ROWS) {
                faults.add(
                        Code.TOO_LARGE,
                        number,
                        1,
                        "",
                        "more than " + MOST_ROWS + " rows",
                        "at most " + MOST_ROWS + " rows",
                        "Leave out rows: ten a second tell all that a pack or a fan does.");
                break;
            } else if (cells.isPresent() && fits(cells.get(), head, separator, faults)) {
                rows.add(cells.get());
            }
        }
        if (head == null) {
            faults.add(
                    Code.MISSING_KEY,
                    1,
                    1,
                    "",
                    "a table that says nothing",
                    "a line with the names of the columns, and rows below it",
                    "");
            return Optional.empty();
        }
        if (rows.isEmpty() && faults.isEmpty()) {
            faults.add(
                    Code.MISSING_KEY,
                    head.number(),
                    1,
                    "",
                    "names of columns and no row",
                    "at least one row below them",
                    "");
        }
        return Optional.of(new Tabular(separator, head, rows));
    }

    private static int end(String text, int start) {
        int at = start;
        while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
            at++;
        }
        return at;
    }

    /** The first of tab, semicolon and comma that the head has: no name or unit holds one. */
    private static char separator(String head) {
        if (head.indexOf('\t') >= 0) {
            return '\t';
        }
        return head.indexOf(';') >= 0 ? ';' : ',';
    }

    private static boolean tooWide(Line head, Faults faults) {
        if (head.cells().size() <= MOST_COLUMNS) {
            return false;
        }
        faults.add(
                Code.TOO_LARGE,
                head.cells().get(MOST_COLUMNS),
                "",
                head.cells().size() + " columns",
                "at most " + MOST_COLUMNS,
                "");
        return true;
    }

    private static Optional<Line> cells(String line, int number, char separator, Faults faults) {
        var fields = new LineCells(line, number);
        try {
            CsvReader.builder()
                    .fieldSeparator(separator)
                    .commentStrategy(CommentStrategy.NONE)
                    .ofSingleCsvRecord(fields, line);
        } catch (CsvParseException e) {
            faults.add(
                    Code.SYNTAX,
                    number,
                    fields.column(),
                    "",
                    "text after a closing quote",
                    "the end of the cell",
                    "A quote within a quoted cell is written twice.");
            return Optional.empty();
        }
        if (fields.open()) {
            faults.add(
                    Code.SYNTAX,
                    number,
                    fields.lastColumn(),
                    "",
                    "a quote that is not closed",
                    "a closing quote in the same line",
                    "Numbers need no quotes.");
            return Optional.empty();
        }
        for (Cell cell : fields.cells()) {
            if (cell.text().length() > LONGEST_CELL) {
                faults.add(
                        Code.TOO_LARGE,
                        cell,
                        "",
                        "a cell of " + cell.text().length() + " characters",
                        "at most " + LONGEST_CELL,
                        "Keep remarks in lines that begin with #.");
                return Optional.empty();
            }
            if (hides(cell.text())) {
                faults.add(
                        Code.NOT_TEXT,
                        cell,
                        "",
                        "an invisible character in " + Problems.quote(cell.text()),
                        "text",
                        "Take it out; an editor may show it as a blank or not at all.");
                return Optional.empty();
            }
        }
        return Optional.of(
                new Line(number, line.codePointCount(0, line.length()) + 1, fields.cells()));
    }

    /** Characters that show as nothing or turn the line round, and halves of characters. */
    private static boolean hides(String text) {
        return text.codePoints()
                .anyMatch(
                        c -> {
                            int type = Character.getType(c);
                            return type == Character.CONTROL
                                    || type == Character.FORMAT
                                    || type == Character.SURROGATE
                                    || type == Character.LINE_SEPARATOR
                                    || type == Character.PARAGRAPH_SEPARATOR;
                        });
    }

    private static boolean fits(Line row, Line head, char separator, Faults faults) {
        int cells = row.cells().size();
        int columns = head.cells().size();
        if (cells == columns) {
            return true;
        }
        boolean more = cells > columns;
        faults.add(
                Code.SYNTAX,
                row.number(),
                more ? row.cells().get(columns).column() : row.end(),
                "",
                cells + (cells == 1 ? " cell" : " cells"),
                columns + ", as many as line " + head.number() + " has names",
                !more
                        ? "What was not measured is an empty cell, with its separator."
                        : separator == ','
                                ? "A decimal comma needs semicolons or tabs between the cells."
                                : "");
        return false;
    }
}
