package liftwright.report;

import java.util.List;

/**
 * A row of a table that is too wide for columns: what it is about on a line, under it each other
 * cell as {@code head: value}, side by side on a grid that is the same for every row.
 */
final class RowsText {

    /** What stands where a row has nothing. */
    private static final String NOTHING = "–";

    private static final int INDENT = 2;
    private static final int INNER = 4;
    private static final int GAP = 2;

    /** Side by side, a pair has at least so much room. */
    private static final int LEAST_PAIR = 24;

    private static final int MOST_PAIRS = 3;

    private final Paper paper;

    RowsText(Paper paper) {
        this.paper = paper;
    }

    /**
     * @param numbers which columns hold numbers
     */
    void write(List<String> heads, boolean[] numbers, List<String> row) {
        String first = row.getFirst();
        paper.block(
                INDENT,
                INNER,
                Paper.Ink.PLAIN,
                numbers.length > 0 && numbers[0] ? heads.getFirst() + " " + first : first);
        int room = paper.columns() - INNER;
        int across = Math.clamp((room + GAP) / (LEAST_PAIR + GAP), 1, MOST_PAIRS);
        int pitch = (room + GAP) / across;
        var line = new StringBuilder();
        for (int i = 1; i < row.size(); i++) {
            if (row.get(i).equals(paper.plain(NOTHING))) {
                continue;
            }
            String pair = heads.get(i) + ": " + row.get(i);
            int used = Columns.of(line.toString());
            if (used > 0 && used + Columns.of(pair) > room) {
                end(line);
                used = 0;
            }
            if (Columns.of(pair) > room) {
                paper.block(INNER, INNER + GAP, Paper.Ink.PLAIN, pair);
                continue;
            }
            line.append(pair);
            int cells = (Columns.of(pair) + GAP + pitch - 1) / pitch;
            line.append(" ".repeat(Math.max(GAP, cells * pitch - Columns.of(pair))));
        }
        if (!line.isEmpty()) {
            end(line);
        }
    }

    private void end(StringBuilder line) {
        paper.set(" ".repeat(INNER) + line.toString().stripTrailing());
        line.setLength(0);
    }
}
