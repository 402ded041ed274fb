package liftwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import liftwright.answer.Fields;
import liftwright.answer.Section.Table;
import liftwright.answer.Value;

/**
 * A table in columns. Of one too wide for the terminal the words wrap within their columns; where
 * that is not enough, each row has lines of its own.
 */
final class TableText {

    /** Lists to be worked down on paper: a terminal shows how they begin. */
    private static final Set<String> FOR_PAPER =
            Set.of("soldering", "soldering-loads", "inspection");

    private static final int ROWS_OF_A_LIST = 6;

    /** Words in a narrower column are read one by one. */
    private static final int LEAST_WORDS = 12;

    private static final int INDENT = 2;
    private static final int GAP = 2;

    private final Paper paper;
    private final Figures figures;

    TableText(Paper paper, Figures figures) {
        this.paper = paper;
        this.figures = figures;
    }

    void write(Table table) {
        int rows = table.rows().size();
        if (!FOR_PAPER.contains(table.id()) || rows <= ROWS_OF_A_LIST) {
            whole(table);
            return;
        }
        whole(
                new Table(
                        table.id(),
                        table.title(),
                        table.columns(),
                        table.rows().subList(0, ROWS_OF_A_LIST)));
        paper.text(
                INDENT,
                "and " + (rows - ROWS_OF_A_LIST) + " more rows: all of them with --html or --json");
    }

    private void whole(Table table) {
        paper.heading(table.title());
        List<String> heads =
                table.columns().stream()
                        .map(field -> paper.plain(Fields.of(field).label()))
                        .toList();
        List<List<String>> rows =
                table.rows().stream()
                        .map(row -> row.stream().map(v -> paper.plain(figures.value(v))).toList())
                        .toList();
        write(heads, rows, rightAligned(table));
    }

    /**
     * Rows under their heads, as wide as there is room.
     *
     * @param right which columns hold numbers
     */
    void write(List<String> heads, List<List<String>> rows, boolean[] right) {
        int[] widths = widths(heads, rows);
        if (!narrowed(widths, heads, rows, right)) {
            var inRows = new RowsText(paper);
            rows.forEach(row -> inRows.write(heads, right, row));
            return;
        }
        write(heads, widths, right);
        rows.forEach(row -> write(row, widths, right));
    }

    /** Whether rows have room in columns. */
    boolean fits(List<String> heads, List<List<String>> rows, boolean[] right) {
        return narrowed(widths(heads, rows), heads, rows, right);
    }

    private static int total(int[] widths) {
        int total = INDENT - GAP;
        for (int width : widths) {
            total += width + GAP;
        }
        return total;
    }

    private static int[] widths(List<String> heads, List<List<String>> rows) {
        int[] widths = heads.stream().mapToInt(Columns::of).toArray();
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                widths[i] = Math.max(widths[i], Columns.of(row.get(i)));
            }
        }
        return widths;
    }

    /**
     * Takes from the widest columns what is too much, so that their words go on in the next line;
     * no word is broken and no number. False where that is not enough.
     */
    private boolean narrowed(
            int[] widths, List<String> heads, List<List<String>> rows, boolean[] right) {
        int[] least = heads.stream().mapToInt(Columns::ofWidestWord).toArray();
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                String cell = row.get(i);
                least[i] =
                        Math.max(
                                least[i],
                                right[i]
                                        ? Columns.of(cell)
                                        : Math.max(
                                                Columns.ofWidestWord(cell),
                                                Math.min(LEAST_WORDS, Columns.of(cell))));
            }
        }
        while (total(widths) > paper.columns()) {
            int widest = -1;
            for (int i = 0; i < widths.length; i++) {
                if (widths[i] > least[i] && (widest < 0 || widths[i] > widths[widest])) {
                    widest = i;
                }
            }
            if (widest < 0) {
                return false;
            }
            widths[widest]--;
        }
        return true;
    }

    /** Numbers stand under each other by their last digit; words by their first letter. */
    private static boolean[] rightAligned(Table table) {
        boolean[] right = new boolean[table.columns().size()];
        for (List<Value> row : table.rows()) {
            for (int i = 0; i < row.size(); i++) {
                right[i] |= row.get(i).figure() instanceof Value.Figure.Amount;
            }
        }
        return right;
    }

    private void write(List<String> cells, int[] widths, boolean[] right) {
        List<List<String>> wrapped = new ArrayList<>();
        int lines = 1;
        for (int i = 0; i < cells.size(); i++) {
            wrapped.add(Columns.wrapped(cells.get(i), widths[i]));
            lines = Math.max(lines, wrapped.get(i).size());
        }
        for (int k = 0; k < lines; k++) {
            var line = new StringBuilder(" ".repeat(INDENT));
            for (int i = 0; i < cells.size(); i++) {
                String cell = k < wrapped.get(i).size() ? wrapped.get(i).get(k) : "";
                line.append(
                                right[i]
                                        ? Columns.rightAligned(cell, widths[i])
                                        : Columns.padded(cell, widths[i]))
                        .append(" ".repeat(GAP));
            }
            paper.set(line.toString());
        }
    }
}
