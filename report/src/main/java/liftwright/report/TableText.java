package liftwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import liftwright.answer.Fields;
import liftwright.answer.Section.Table;
import liftwright.answer.Value;

/** A table in columns; one too wide for the terminal is written a row at a time, in words. */
final class TableText {

    /** Lists to be worked down on paper: a terminal shows how they begin. */
    private static final Set<String> FOR_PAPER =
            Set.of("soldering", "soldering-loads", "inspection");

    private static final int ROWS_OF_A_LIST = 6;

    /** What stands where a row has nothing. */
    private static final String NOTHING = "–";

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
        int[] widths = widths(heads, rows);
        int total = INDENT - GAP;
        for (int width : widths) {
            total += width + GAP;
        }
        if (total > paper.columns()) {
            rows.forEach(row -> inWords(heads, row));
            return;
        }
        boolean[] right = rightAligned(table);
        paper.set(line(heads, widths, right));
        rows.forEach(row -> paper.set(line(row, widths, right)));
    }

    private void inWords(List<String> heads, List<String> row) {
        var parts = new ArrayList<String>();
        for (int i = 0; i < row.size(); i++) {
            if (!row.get(i).equals(paper.plain(NOTHING))) {
                parts.add(heads.get(i) + " " + row.get(i));
            }
        }
        paper.block(INDENT, INDENT + 2, Paper.Ink.PLAIN, String.join(", ", parts));
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

    private static String line(List<String> cells, int[] widths, boolean[] right) {
        var line = new StringBuilder(" ".repeat(INDENT));
        for (int i = 0; i < cells.size(); i++) {
            line.append(
                            right[i]
                                    ? Columns.rightAligned(cells.get(i), widths[i])
                                    : Columns.padded(cells.get(i), widths[i]))
                    .append(" ".repeat(GAP));
        }
        return line.toString();
    }
}
