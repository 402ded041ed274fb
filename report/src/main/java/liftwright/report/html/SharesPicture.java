package liftwright.report.html;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section.Shares;
import liftwright.answer.Value;
import liftwright.report.Figures;

/** What an amount consists of, a bar a share, each as long as its part of the whole. */
final class SharesPicture {

    private static final int WIDTH = 420;
    private static final double ROW = 38;
    private static final double BAR = 13;
    private static final double TOP = 8;

    private final Markup page;
    private final Canvas canvas;
    private final Figures figures;

    SharesPicture(Markup page, Figures figures) {
        this.page = page;
        this.canvas = new Canvas(page);
        this.figures = figures;
    }

    void draw(Shares shares, String id) {
        double whole = si(shares.whole());
        List<Shares.Share> rows = new ArrayList<>(shares.shares());
        rows.add(new Shares.Share("together", shares.whole()));
        page.element(
                "figure",
                () -> {
                    page.element("figcaption", shares.title());
                    canvas.picture(
                            id,
                            WIDTH,
                            (int) (TOP + ROW * rows.size() + 4),
                            shares.title(),
                            words(shares, rows),
                            () -> bars(shares, rows, whole));
                    page.element("p", "Outlined: the whole.", "class", "key");
                },
                "class",
                "waterfall");
    }

    private void bars(Shares shares, List<Shares.Share> rows, double whole) {
        double y = TOP;
        double from = 1;
        for (int k = 0; k < rows.size(); k++) {
            Shares.Share row = rows.get(k);
            boolean last = k == rows.size() - 1;
            String amount = amount(shares, row);
            double room = WIDTH - Canvas.widthOf(amount) - 10;
            canvas.text(0, y + 11, "start", Canvas.cut(row.label(), room), last ? "strong" : "");
            canvas.text(WIDTH, y + 11, "end", amount, last ? "strong" : "number");
            double wide = whole > 0 ? Math.max(0, si(row.value())) / whole * (WIDTH - 2) : 0;
            canvas.box(
                    last ? 1 : Math.min(from, WIDTH - 2.5),
                    y + 16,
                    Math.max(1.5, wide),
                    BAR,
                    last ? "against" : "sum");
            from += wide;
            y += ROW;
        }
    }

    private String amount(Shares shares, Shares.Share row) {
        return figures.bare(row.value()) + ", " + figures.bare(shares.share(row.value()));
    }

    private static double si(Value value) {
        return value.figure() instanceof Value.Figure.Amount(double si, var _) ? si : 0;
    }

    private String words(Shares shares, List<Shares.Share> rows) {
        List<String> words = new ArrayList<>();
        rows.forEach(row -> words.add(row.label() + " " + amount(shares, row)));
        return String.join("; ", words);
    }
}
