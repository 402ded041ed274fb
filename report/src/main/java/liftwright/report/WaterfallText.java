package liftwright.report;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section.Waterfall;
import liftwright.answer.Value;

/**
 * A waterfall as rows of label, number, band and bar. Bars hang where the sum stands at that step;
 * what is taken and what is added look different, and the sign of the number says the same.
 */
final class WaterfallText {

    private static final int INDENT = 2;
    private static final int WIDEST_LABEL = 28;
    private static final int LEAST_BAR = 16;
    private static final char WHOLE = '█';
    private static final char TAKEN = '▒';
    private static final char ADDED = '▓';

    private final Paper paper;
    private final Figures figures;

    WaterfallText(Paper paper, Figures figures) {
        this.paper = paper;
        this.figures = figures;
    }

    /**
     * @param from lower end of the bar, in the unit of the waterfall
     * @param to upper end
     */
    private record Row(
            String label, String amount, String band, double from, double to, char ink) {}

    void write(Waterfall waterfall) {
        paper.heading(waterfall.title());
        List<Row> rows = rows(waterfall);
        int label = widest(rows.stream().map(Row::label).toList());
        int amount = widest(rows.stream().map(Row::amount).toList());
        int band = widest(rows.stream().map(Row::band).toList());
        int bars = paper.columns() - INDENT - label - 2 - amount - (band > 0 ? band + 1 : 0) - 2;
        double least = rows.stream().mapToDouble(Row::from).min().orElse(0);
        double most = rows.stream().mapToDouble(Row::to).max().orElse(0);
        for (Row row : rows) {
            String text =
                    " ".repeat(INDENT)
                            + Columns.padded(row.label(), label)
                            + "  "
                            + Columns.rightAligned(row.amount(), amount)
                            + (band > 0 ? " " + Columns.padded(row.band(), band) : "");
            if (bars >= LEAST_BAR && most > least) {
                paper.set(text + "  " + bar(row, Math.min(0, least), most, bars));
            } else {
                paper.text(
                        INDENT,
                        (row.label() + ": " + row.amount() + " " + row.band()).stripTrailing());
            }
        }
        notes(waterfall);
    }

    private List<Row> rows(Waterfall waterfall) {
        var rows = new ArrayList<Row>();
        double sum = si(waterfall.start().value());
        double size = sum;
        rows.add(whole(waterfall.start(), size));
        for (Waterfall.Step step : waterfall.steps()) {
            double change = si(step.value());
            double after = sum + change;
            rows.add(
                    new Row(
                            label(step),
                            paper.plain(figures.signedBeside(size, step.value())),
                            paper.plain(figures.band(step.value())),
                            Math.min(sum, after),
                            Math.max(sum, after),
                            change < 0 ? TAKEN : ADDED));
            sum = after;
        }
        rows.add(whole(waterfall.end(), size));
        rows.add(whole(waterfall.against(), size));
        return rows;
    }

    private Row whole(Waterfall.Step step, double size) {
        double si = si(step.value());
        return new Row(
                label(step),
                paper.plain(figures.beside(size, step.value())),
                paper.plain(figures.band(step.value())),
                Math.min(0, si),
                Math.max(0, si),
                WHOLE);
    }

    private String label(Waterfall.Step step) {
        return Columns.cut(paper.plain(step.label()), WIDEST_LABEL);
    }

    private void notes(Waterfall waterfall) {
        var all = new ArrayList<Waterfall.Step>();
        all.add(waterfall.start());
        all.addAll(waterfall.steps());
        all.add(waterfall.end());
        all.add(waterfall.against());
        for (Waterfall.Step step : all) {
            if (!step.note().isBlank()) {
                paper.block(INDENT, INDENT + 2, Paper.Ink.PLAIN, step.label() + ": " + step.note());
            }
        }
    }

    private String bar(Row row, double least, double most, int columns) {
        double scale = columns / (most - least);
        int from = (int) Math.round((row.from() - least) * scale);
        int to = (int) Math.round((row.to() - least) * scale);
        if (to == from && showsSomething(row)) { // too small to draw, too true to hide
            from = Math.min(from, columns - 1);
            to = from + 1;
        }
        return " ".repeat(from) + String.valueOf(row.ink()).repeat(to - from);
    }

    /** Whether its number is not all zeros. */
    private static boolean showsSomething(Row row) {
        return row.amount().chars().anyMatch(c -> c >= '1' && c <= '9');
    }

    private static int widest(List<String> texts) {
        return texts.stream().mapToInt(Columns::of).max().orElse(0);
    }

    /** What was not computed has no bar; its words stand in its place. */
    private static double si(Value value) {
        return value.figure() instanceof Value.Figure.Amount amount ? amount.si() : 0;
    }
}
