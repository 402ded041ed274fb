package liftwright.report.html;

import java.util.List;
import java.util.Locale;
import liftwright.answer.Section.Matrix;
import liftwright.answer.Section.Matrix.Standing;
import liftwright.answer.Section.Table;
import liftwright.answer.Value;

/**
 * Lines of the long tables of failures that hold and tell nothing more: a rig has hundreds, and
 * paper has no fold. They stay in the sheet, where a screen shows them; printed is how many there
 * are and where they stand.
 */
final class OffPaper {

    /** A table with no more lines than this is printed whole. */
    private static final int SHORT = 12;

    private static final String STYLE = "offpaper";
    private static final String NONE = "none";
    private static final String LOW = "low";
    private static final String NEGLIGIBLE = "IV negligible";

    private OffPaper() {}

    /** Whether a line of a matrix stays off paper: all that is asked of it holds. */
    static boolean leaves(Matrix matrix, Matrix.Line line) {
        return matrix.lines().size() > SHORT
                && line.cells().stream().map(Matrix.Cell::standing).allMatch(OffPaper::isQuiet);
    }

    private static boolean isQuiet(Standing standing) {
        return switch (standing) {
            case HOLDS, TOLD -> true;
            case SHORT, UNTOLD -> false;
        };
    }

    /** Whether a row of a table stays off paper. */
    static boolean leaves(Table table, List<Value> row) {
        return table.rows().size() > SHORT
                && switch (table.id()) {
                    case "goes-next" -> is(table, row, "goes-next-after", Value.Figure.Never.class);
                    case "survivors" -> says(table, row, "survivor-limits", NONE);
                    case "failure-risks" ->
                            says(table, row, "fault-severity", NEGLIGIBLE)
                                    && (says(table, row, "fault-risk", LOW)
                                            || is(
                                                    table,
                                                    row,
                                                    "fault-risk",
                                                    Value.Figure.NotComputed.class));
                    default -> false;
                };
    }

    private static boolean says(Table table, List<Value> row, String field, String word) {
        return row.get(table.columns().indexOf(field)).figure()
                        instanceof Value.Figure.Words(String text)
                && text.equals(word);
    }

    private static boolean is(
            Table table, List<Value> row, String field, Class<? extends Value.Figure> kind) {
        return kind.isInstance(row.get(table.columns().indexOf(field)).figure());
    }

    /** Attributes of a line. */
    static String[] style(boolean leaves) {
        return leaves ? new String[] {"class", STYLE} : new String[0];
    }

    /** Says on paper, and nowhere else, what is not there. */
    static void say(Markup page, String question, long left, int all) {
        if (left > 0) {
            page.element(
                    "p",
                    String.format(
                            Locale.ROOT,
                            "Not printed: %,d of %,d lines, which hold and tell nothing more. They"
                                    + " stand in this sheet on a screen, and in “liftwright review"
                                    + " %s --json”.",
                            left,
                            all,
                            question),
                    "class",
                    "key onpaper");
        }
    }
}
