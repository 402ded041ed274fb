package liftwright.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section.Waterfall;
import liftwright.answer.Value;
import liftwright.quantity.Band;
import liftwright.report.Figures;

/**
 * A waterfall, a row a step: words and number above, the bar below them, hung where the sum stands.
 * What is taken is hatched, what is added is dotted, sums are solid; a whisker is the band.
 */
final class WaterfallPicture {

    private static final int WIDTH = 420;
    private static final double ROW = 38;
    private static final double BAR = 13;
    private static final double TOP = 8;

    private final Markup page;
    private final Canvas canvas;
    private final Figures figures;

    WaterfallPicture(Markup page, Figures figures) {
        this.page = page;
        this.figures = figures;
        this.canvas = new Canvas(page);
    }

    /**
     * @param from where the bar begins, SI
     * @param to where it ends, the sum after the step
     */
    private record Row(
            String label, String amount, double from, double to, Value value, String style) {
        Optional<Band> band() {
            return value.band();
        }
    }

    void draw(Waterfall waterfall, String id) {
        List<Row> rows = rows(waterfall);
        double least = 0;
        double most = 0;
        for (Row row : rows) {
            double doubt = row.band().map(band -> high(row, band)).orElse(row.to);
            most = Math.max(most, Math.max(row.from, Math.max(row.to, doubt)));
            least = Math.min(least, Math.min(row.from, row.to));
        }
        double scale = most > least ? (WIDTH - 2) / (most - least) : 0;
        double zero = 1 - least * scale;
        page.element(
                "figure",
                () -> {
                    page.element("figcaption", waterfall.title());
                    canvas.picture(
                            id,
                            WIDTH,
                            (int) (TOP + ROW * rows.size() + 4),
                            waterfall.title(),
                            words(rows),
                            () -> bars(rows, zero, scale));
                    page.element(
                            "p",
                            "Solid: a sum. Hatched: taken away. Dotted: added. Whisker: 95 % band.",
                            "class",
                            "key");
                },
                "class",
                "waterfall");
    }

    private void bars(List<Row> rows, double zero, double scale) {
        double y = TOP;
        for (int k = 0; k < rows.size(); k++) {
            Row row = rows.get(k);
            canvas.text(0, y + 11, "start", row.label, "label");
            canvas.text(WIDTH, y + 11, "end", row.amount, "number");
            double from = zero + scale * Math.min(row.from, row.to);
            double to = zero + scale * Math.max(row.from, row.to);
            canvas.box(from, y + 16, Math.max(1.5, to - from), BAR, row.style);
            double end = zero + scale * row.to;
            if (k + 2 < rows.size()) { // down to the next step, not to what the sum is held against
                canvas.line(end, y + 16 + BAR, end, y + ROW + 16, "hair");
            }
            double middle = y + 16 + BAR / 2;
            row.band()
                    .ifPresent(
                            band ->
                                    whisker(
                                            zero + scale * low(row, band),
                                            zero + scale * high(row, band),
                                            middle));
            y += ROW;
        }
    }

    private void whisker(double low, double high, double y) {
        canvas.line(low, y, high, y, "halo");
        canvas.line(low, y, high, y, "whisker");
        canvas.line(low, y - 4, low, y + 4, "whisker");
        canvas.line(high, y - 4, high, y + 4, "whisker");
    }

    /** A step's band is of the change; its whisker stands about where the sum comes to. */
    private static double low(Row row, Band band) {
        return row.to + band.low() - si(row.value);
    }

    private static double high(Row row, Band band) {
        return row.to + band.high() - si(row.value);
    }

    private List<Row> rows(Waterfall waterfall) {
        List<Row> rows = new ArrayList<>();
        double sum = si(waterfall.start().value());
        double size = sum;
        rows.add(whole(waterfall.start(), size, "sum"));
        for (Waterfall.Step step : waterfall.steps()) {
            double change = si(step.value());
            rows.add(
                    new Row(
                            step.label(),
                            figures.signedBeside(size, step.value()),
                            sum,
                            sum + change,
                            step.value(),
                            change < 0 ? "taken" : "added"));
            sum += change;
        }
        rows.add(whole(waterfall.end(), size, "sum"));
        rows.add(whole(waterfall.against(), size, "against"));
        return rows;
    }

    private Row whole(Waterfall.Step step, double size, String style) {
        double si = si(step.value());
        return new Row(
                step.label(), figures.beside(size, step.value()), 0, si, step.value(), style);
    }

    private static String words(List<Row> rows) {
        List<String> words = new ArrayList<>();
        rows.forEach(row -> words.add(row.label + " " + row.amount));
        return String.join("; ", words);
    }

    /** What was not computed has no bar; its words stand in its place. */
    private static double si(Value value) {
        return value.figure() instanceof Value.Figure.Amount amount ? amount.si() : 0;
    }
}
