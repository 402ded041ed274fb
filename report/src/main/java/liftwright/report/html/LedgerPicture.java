package liftwright.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section.Table;
import liftwright.answer.Value;
import liftwright.quantity.Band;
import liftwright.report.Figures;

/** Contributions to one turning moment as bars to both sides of nothing, each with its band. */
final class LedgerPicture {

    private static final int WIDTH = 360;
    private static final double ROW = 38;
    private static final double BAR = 13;
    private static final double TOP = 26;

    private final Markup page;
    private final Canvas canvas;
    private final Figures figures;

    LedgerPicture(Markup page, Figures figures) {
        this.page = page;
        this.figures = figures;
        this.canvas = new Canvas(page);
    }

    private record Row(String label, Value value) {
        double si() {
            return value.figure() instanceof Value.Figure.Amount amount ? amount.si() : 0;
        }

        boolean isNothing() {
            return si() == 0 && band().map(band -> band.width() == 0).orElse(true);
        }

        Optional<Band> band() {
            return value.band();
        }
    }

    /** Which moment a table lists cause by cause; empty where it is no ledger. */
    static Optional<String> moment(Table table) {
        return table.id().endsWith("-ledger") && table.columns().contains("turning-cause")
                ? table.columns().stream().filter(column -> column.endsWith("-moment")).findFirst()
                : Optional.empty();
    }

    void draw(Table table, String moment, String id) {
        int causes = table.columns().indexOf("turning-cause");
        int amounts = table.columns().indexOf(moment);
        List<Row> rows = new ArrayList<>();
        for (List<Value> row : table.rows()) {
            rows.add(new Row(figures.value(row.get(causes)), row.get(amounts)));
        }
        int all = rows.size();
        rows.subList(0, all - 1).removeIf(Row::isNothing); // the sum stays
        double reach = 0;
        for (Row row : rows) {
            reach = Math.max(reach, Math.abs(row.si()));
            if (row.band().isPresent()) {
                Band band = row.band().get();
                reach = Math.max(reach, Math.max(Math.abs(band.low()), Math.abs(band.high())));
            }
        }
        double scale = reach > 0 ? (WIDTH / 2.0 - 4) / reach : 0;
        page.element(
                "figure",
                () -> {
                    page.element("figcaption", table.title());
                    canvas.picture(
                            id,
                            WIDTH,
                            (int) (TOP + ROW * rows.size() + 4),
                            table.title(),
                            words(rows),
                            () -> bars(rows, moment, scale));
                    page.element(
                            "p",
                            "Whisker: 95 % band."
                                    + (rows.size() < all
                                            ? " Causes that add nothing are left out here."
                                            : ""),
                            "class",
                            "key");
                },
                "class",
                "ledger");
    }

    private void bars(List<Row> rows, String moment, double scale) {
        double zero = WIDTH / 2.0;
        canvas.text(0, 13, "start", "← " + negative(moment), "soft");
        canvas.text(WIDTH, 13, "end", positive(moment) + " →", "soft");
        double y = TOP;
        for (int k = 0; k < rows.size(); k++) {
            Row row = rows.get(k);
            boolean sum = k == rows.size() - 1;
            if (sum) {
                canvas.line(0, y - 4, WIDTH, y - 4, "hair");
            }
            canvas.text(0, y + 11, "start", row.label, sum ? "strong" : "label");
            canvas.text(WIDTH, y + 11, "end", figures.bare(row.value), sum ? "strong" : "number");
            double end = zero + scale * row.si();
            double from = Math.min(zero, end);
            canvas.box(
                    from,
                    y + 16,
                    Math.max(row.si() == 0 ? 0 : 1.5, Math.abs(end - zero)),
                    BAR,
                    sum ? "sum" : row.si() < 0 ? "taken" : "added");
            canvas.line(zero, y + 14, zero, y + 18 + BAR, "axis");
            double middle = y + 16 + BAR / 2;
            row.band()
                    .filter(band -> band.width() * scale > 1)
                    .ifPresent(
                            band ->
                                    whisker(
                                            zero + scale * band.low(),
                                            zero + scale * band.high(),
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

    /** What the wearer feels of a moment above zero. */
    private static String positive(String moment) {
        return switch (moment) {
            case "roll-moment" -> "right side down";
            case "pitch-moment" -> "leans back";
            case "yaw-moment" -> "turns right";
            default -> "positive";
        };
    }

    private static String negative(String moment) {
        return switch (moment) {
            case "roll-moment" -> "left side down";
            case "pitch-moment" -> "leans forward";
            case "yaw-moment" -> "turns left";
            default -> "negative";
        };
    }

    private String words(List<Row> rows) {
        List<String> words = new ArrayList<>();
        rows.forEach(row -> words.add(row.label + " " + figures.value(row.value)));
        return String.join("; ", words);
    }
}
