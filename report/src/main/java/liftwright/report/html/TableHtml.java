package liftwright.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import liftwright.answer.Fields;
import liftwright.answer.Section.Plot;
import liftwright.answer.Section.Table;
import liftwright.answer.Section.Waterfall;
import liftwright.answer.Value;
import liftwright.report.Figures;
import liftwright.report.PlotFrame;

/** Numbers in rows and columns, with caption and heads; a wide one scrolls within itself. */
final class TableHtml {

    private final Markup page;
    private final Figures figures;

    TableHtml(Markup page, Figures figures) {
        this.page = page;
        this.figures = figures;
    }

    /**
     * After a dot or a slash within the name of a part of the wiring, or of a place in the file.
     */
    private static final Pattern LONG_NAME =
            Pattern.compile("(?<=[a-z0-9-]{2}[./])(?=[a-z0-9-])|(?<=[./][0-9]{1,3}[./])(?=[a-z])");

    /** A list for the workshop: its boxes are empty squares, and it is printed across the sheet. */
    private static final String TO_TICK = "done";

    void write(Table table, String chapter) {
        List<String> heads =
                table.columns().stream().map(field -> Fields.of(field).label()).toList();
        boolean named =
                table.rows().stream()
                        .allMatch(row -> row.getFirst().figure() instanceof Value.Figure.Words);
        boolean[] right = new boolean[heads.size()];
        for (List<Value> row : table.rows()) {
            for (int k = 0; k < row.size(); k++) {
                right[k] |= row.get(k).figure() instanceof Value.Figure.Amount;
            }
        }
        table(
                chapter + "-" + table.id(),
                table.title(),
                heads,
                right,
                table.columns().contains(TO_TICK) ? "scroll list" : "scroll",
                () ->
                        table.rows()
                                .forEach(
                                        row ->
                                                page.element(
                                                        "tr",
                                                        () -> cells(row, right, named),
                                                        OffPaper.style(
                                                                OffPaper.leaves(table, row)))));
        OffPaper.say(
                page,
                chapter,
                table.rows().stream().filter(row -> OffPaper.leaves(table, row)).count(),
                table.rows().size());
    }

    private void cells(List<Value> row, boolean[] right, boolean named) {
        for (int k = 0; k < row.size(); k++) {
            String text = figures.value(row.get(k));
            if (row.get(k).field().equals(TO_TICK)) {
                page.element("td", this::box, "class", "tick");
            } else if (k == 0 && named) {
                page.element("th", () -> named(text), "scope", "row");
            } else if (row.get(k).figure() instanceof Value.Figure.Words && !right[k]) {
                page.element("td", () -> named(text));
            } else {
                cell(text, right[k]);
            }
        }
    }

    /** Names of wiring are long: they may go on in the next line after a dot or a slash. */
    private void named(String words) {
        named(page, words);
    }

    /** The same on any page. */
    static void named(Markup page, String words) {
        String[] parts = LONG_NAME.split(words, -1);
        for (int k = 0; k < parts.length; k++) {
            page.text(parts[k]);
            if (k < parts.length - 1) {
                page.own("<wbr/>");
            }
        }
    }

    /** Empty, to be ticked by hand. */
    private void box() {
        page.element("span", "", "class", "box", "role", "img", "aria-label", "box to tick");
    }

    private void cell(String text, boolean right) {
        if (right) {
            page.element("td", text, "class", "number");
        } else {
            page.element("td", text);
        }
    }

    void write(Waterfall waterfall, String chapter) {
        table(
                chapter + "-" + waterfall.id(),
                waterfall.title(),
                List.of("step", "amount", "why"),
                new boolean[] {false, true, false},
                () -> {
                    step(waterfall.start(), figures.value(waterfall.start().value()));
                    for (Waterfall.Step step : waterfall.steps()) {
                        step(step, figures.signed(step.value()));
                    }
                    step(waterfall.end(), figures.value(waterfall.end().value()));
                    step(waterfall.against(), figures.value(waterfall.against().value()));
                });
    }

    private void step(Waterfall.Step step, String amount) {
        page.element(
                "tr",
                () -> {
                    page.element("th", step.label(), "scope", "row");
                    cell(amount, true);
                    cell(step.note(), false);
                });
    }

    void write(Plot plot, PlotFrame frame, String chapter) {
        int k = 0;
        for (Plot.Series series : plot.series()) {
            String id = chapter + "-" + plot.id() + "-" + k++;
            table(
                    id,
                    plot.title() + (series.label().isEmpty() ? "" : ": " + series.label()),
                    List.of(frame.x().title(), frame.y().title()),
                    new boolean[] {true, true},
                    () -> series.points().forEach(point -> point(point, frame)));
        }
    }

    private void point(Plot.Point point, PlotFrame frame) {
        page.element(
                "tr",
                () -> {
                    cell(frame.x().number(point.x(), frame.x().step() / 100), true);
                    cell(frame.y().number(point.y(), frame.y().step() / 100), true);
                });
    }

    private void table(
            String id, String caption, List<String> heads, boolean[] right, Runnable rows) {
        table(id, caption, heads, right, "scroll", rows);
    }

    private void table(
            String id,
            String caption,
            List<String> heads,
            boolean[] right,
            String style,
            Runnable rows) {
        page.element(
                "div",
                () ->
                        page.element(
                                "table",
                                () -> {
                                    page.element("caption", caption, "id", id);
                                    page.element(
                                            "thead",
                                            () -> page.element("tr", () -> heads(heads, right)));
                                    page.element("tbody", rows);
                                }),
                "class",
                style,
                "role",
                "group",
                "tabindex",
                "0",
                "aria-labelledby",
                id);
    }

    private void heads(List<String> heads, boolean[] right) {
        List<String> attributes = new ArrayList<>();
        for (int k = 0; k < heads.size(); k++) {
            attributes.clear();
            attributes.addAll(List.of("scope", "col"));
            if (right[k]) {
                attributes.addAll(List.of("class", "number"));
            }
            page.element("th", heads.get(k), attributes.toArray(new String[0]));
        }
    }
}
