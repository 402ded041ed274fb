package liftwright.report.html;

import java.util.List;
import liftwright.answer.Fields;
import liftwright.answer.Section.Matrix;
import liftwright.answer.Section.Matrix.Cell;
import liftwright.answer.Section.Matrix.Line;
import liftwright.answer.Section.Matrix.Standing;
import liftwright.answer.Value;
import liftwright.report.Figures;

/**
 * A matrix of failures: picture and table in one. How a number stands is a mark, a hatch and a
 * word; colour says nothing.
 */
final class MatrixHtml {

    private static final String KEY =
            "✓ holds what is asked. ◆ and hatched: short of what is asked. ◐ and dotted: cannot be"
                    + " told. Without a mark: nothing is asked of it.";

    private final Markup page;
    private final Figures figures;

    MatrixHtml(Markup page, Figures figures) {
        this.page = page;
        this.figures = figures;
    }

    void draw(Matrix matrix, String question, String id) {
        page.element(
                "div",
                () -> {
                    page.element(
                            "div",
                            () -> page.element("table", () -> table(matrix, id)),
                            "class",
                            "scroll",
                            "role",
                            "group",
                            "tabindex",
                            "0",
                            "aria-labelledby",
                            id);
                    OffPaper.say(
                            page,
                            question,
                            matrix.lines().stream()
                                    .filter(line -> OffPaper.leaves(matrix, line))
                                    .count(),
                            matrix.lines().size());
                    page.element("p", KEY, "class", "key");
                },
                "class",
                "matrix");
    }

    private void table(Matrix matrix, String id) {
        page.element("caption", matrix.title(), "id", id);
        page.element("thead", () -> page.element("tr", () -> heads(matrix.columns())));
        page.element(
                "tbody",
                () ->
                        matrix.lines()
                                .forEach(
                                        line ->
                                                page.element(
                                                        "tr",
                                                        () -> cells(line),
                                                        OffPaper.style(
                                                                OffPaper.leaves(matrix, line)))));
    }

    private void heads(List<String> columns) {
        page.element("th", "what fails", "scope", "col");
        for (String column : columns) {
            page.element("th", Fields.of(column).label(), "scope", "col");
        }
    }

    private void cells(Line line) {
        page.element(
                "th",
                () -> {
                    TableHtml.named(page, line.label());
                    if (!line.members().isEmpty()) {
                        page.element(
                                "span",
                                () ->
                                        TableHtml.named(
                                                page,
                                                "the same: " + String.join(", ", line.members())),
                                "class",
                                "alike");
                    }
                },
                "scope",
                "row");
        line.cells().forEach(this::cell);
    }

    private void cell(Cell cell) {
        page.element(
                "td",
                () -> {
                    String mark = mark(cell.standing());
                    if (!mark.isEmpty()) {
                        page.element("span", mark, "class", "mark", "aria-hidden", "true");
                        page.text(" ");
                    }
                    page.text(figures.value(cell.value()));
                    if (!mark.isEmpty()) {
                        page.element("span", cell.standing().word(), "class", "stands");
                    }
                },
                "class",
                style(cell.standing())
                        + (cell.value().figure() instanceof Value.Figure.Amount ? " number" : ""));
    }

    private static String mark(Standing standing) {
        return switch (standing) {
            case HOLDS -> "✓";
            case SHORT -> "◆";
            case UNTOLD -> "◐";
            case TOLD -> "";
        };
    }

    private static String style(Standing standing) {
        return switch (standing) {
            case HOLDS -> "cell-holds";
            case SHORT -> "cell-short";
            case UNTOLD -> "cell-untold";
            case TOLD -> "cell-told";
        };
    }
}
