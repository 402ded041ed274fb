package liftwright.report.html;

import java.util.stream.IntStream;
import liftwright.answer.Section.Plot;
import liftwright.report.PlotFrame;

/** Points and curves over one axis. */
final class CurvePicture {

    private static final int WIDTH = 420;
    private static final int PLOT = 220;
    private static final double LEFT = 52;
    private static final double RIGHT = 12;
    private static final double LEGEND = 18;

    /** Ways in which lines are broken, in the style sheet. */
    private static final int PATTERNS = 5;

    private final Markup page;
    private final Canvas canvas;

    CurvePicture(Markup page) {
        this.page = page;
        this.canvas = new Canvas(page);
    }

    void draw(Plot plot, PlotFrame frame, String id) {
        double top =
                34
                        + LEGEND
                                * (plot.zones().size()
                                        + IntStream.range(0, plot.series().size())
                                                .filter(k -> PlotFrame.isExplained(plot, k))
                                                .count());
        page.element(
                "figure",
                () -> {
                    page.element("figcaption", plot.title());
                    canvas.picture(
                            id,
                            WIDTH,
                            (int) (top + PLOT + 46),
                            plot.title(),
                            words(plot, frame),
                            () -> {
                                legend(plot, frame);
                                canvas.text(0, top - 12, "start", frame.y().title(), "soft");
                                zones(plot, frame, top);
                                axes(frame, top);
                                for (int k = 0; k < plot.series().size(); k++) {
                                    series(plot, k, frame, top);
                                }
                            });
                },
                "class",
                "curve");
    }

    /** Lines after the first are broken, each in its own way. */
    private static String line(Plot plot, int at) {
        int line = PlotFrame.lineOf(plot, at);
        return line < 1 ? "curveline" : "curveline line-" + line % PATTERNS;
    }

    private void legend(Plot plot, PlotFrame frame) {
        double y = 4;
        for (int k = 0; k < plot.series().size(); k++) {
            if (PlotFrame.isExplained(plot, k)) {
                mark(plot, k, y + 7);
                canvas.text(36, y + 11, "start", plot.series().get(k).label(), "label");
                y += LEGEND;
            }
        }
        for (Plot.Zone zone : plot.zones()) {
            canvas.box(1, y + 1, 27, 12, "zone");
            canvas.text(36, y + 11, "start", frame.words(zone), "label");
            y += LEGEND;
        }
    }

    /** Behind all else, hatched, with its ends drawn. */
    private void zones(Plot plot, PlotFrame frame, double top) {
        for (Plot.Zone zone : plot.zones()) {
            double from = x(frame, zone.from());
            double to = x(frame, zone.to());
            canvas.box(from, top, Math.max(1.5, to - from), PLOT, "zone");
        }
    }

    private void mark(Plot plot, int at, double y) {
        switch (plot.series().get(at).mark()) {
            case DOT -> canvas.disk(14, y, 3.6, "dot");
            case CROSS -> cross(14, y);
            case LINE -> canvas.line(0, y, 28, y, line(plot, at));
            case DASHES -> canvas.line(0, y, 28, y, "dashes");
        }
    }

    private void axes(PlotFrame frame, double top) {
        double bottom = top + PLOT;
        for (double tick : frame.x().ticks()) {
            double x = x(frame, tick);
            canvas.line(x, top, x, bottom, "hair");
            canvas.text(x, bottom + 16, "middle", frame.x().number(tick, frame.x().step()), "soft");
        }
        for (double tick : frame.y().ticks()) {
            double y = y(frame, tick, top);
            canvas.line(LEFT, y, WIDTH - RIGHT, y, "hair");
            canvas.text(LEFT - 6, y + 4.5, "end", frame.y().number(tick, frame.y().step()), "soft");
        }
        canvas.line(LEFT, top, LEFT, bottom, "axis");
        canvas.line(LEFT, bottom, WIDTH - RIGHT, bottom, "axis");
        canvas.text(WIDTH - RIGHT, bottom + 36, "end", frame.x().title(), "soft");
    }

    private void series(Plot plot, int at, PlotFrame frame, double top) {
        Plot.Series series = plot.series().get(at);
        switch (series.mark()) {
            case DOT ->
                    series.points()
                            .forEach(
                                    p ->
                                            canvas.disk(
                                                    x(frame, p.x()),
                                                    y(frame, p.y(), top),
                                                    3.6,
                                                    "dot"));
            case CROSS ->
                    series.points().forEach(p -> cross(x(frame, p.x()), y(frame, p.y(), top)));
            case LINE -> canvas.path(path(series, frame, top), line(plot, at));
            case DASHES -> canvas.path(path(series, frame, top), "dashes");
        }
    }

    private void cross(double x, double y) {
        canvas.line(x - 5, y - 5, x + 5, y + 5, "cross");
        canvas.line(x - 5, y + 5, x + 5, y - 5, "cross");
    }

    private static String path(Plot.Series series, PlotFrame frame, double top) {
        StringBuilder d = new StringBuilder();
        for (Plot.Point point : series.points()) {
            d.append(d.isEmpty() ? "M" : " L")
                    .append(Canvas.n(x(frame, point.x())))
                    .append(' ')
                    .append(Canvas.n(y(frame, point.y(), top)));
        }
        return d.toString();
    }

    private static double x(PlotFrame frame, double si) {
        return LEFT + frame.x().share(si) * (WIDTH - LEFT - RIGHT);
    }

    private static double y(PlotFrame frame, double si, double top) {
        return top + (1 - frame.y().share(si)) * PLOT;
    }

    private static String words(Plot plot, PlotFrame frame) {
        StringBuilder words =
                new StringBuilder(frame.y().title()).append(" over ").append(frame.x().title());
        for (Plot.Series series : plot.series()) {
            Plot.Point first = series.points().getFirst();
            Plot.Point last = series.points().getLast();
            words.append("; ")
                    .append(series.label())
                    .append(" from ")
                    .append(frame.y().number(first.y(), frame.y().step() / 100))
                    .append(" at ")
                    .append(frame.x().number(first.x(), frame.x().step() / 100))
                    .append(" to ")
                    .append(frame.y().number(last.y(), frame.y().step() / 100))
                    .append(" at ")
                    .append(frame.x().number(last.x(), frame.x().step() / 100));
        }
        plot.zones().forEach(zone -> words.append("; ").append(frame.words(zone)));
        return words.toString();
    }
}
