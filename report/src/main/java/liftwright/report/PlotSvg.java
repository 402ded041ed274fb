package liftwright.report;

import java.util.List;
import java.util.Locale;
import liftwright.answer.Section.Plot;
import liftwright.answer.Untrusted;
import liftwright.quantity.QuantityFormat;
import liftwright.quantity.UnitSystem;

/**
 * Plots as one SVG 1.1 picture that needs nothing else: no script, no style sheet, no font file.
 * Black, greys, and marks that differ in shape, so that it can be read printed in grey.
 */
public final class PlotSvg {

    private static final int WIDTH = 720;
    private static final int PANEL = 380;
    private static final int HEAD = 56;
    private static final int LEFT = 84;
    private static final int RIGHT = 24;
    private static final int TOP = 58;
    private static final int BOTTOM = 58;
    private static final int LEGEND_STEP = 150;

    private final StringBuilder out = new StringBuilder();
    private final QuantityFormat format;
    private double panelTop;

    private PlotSvg(UnitSystem units) {
        format = new QuantityFormat(units, false);
    }

    /**
     * @param title of the whole, from a file perhaps: it is escaped
     * @param plots under each other, at least one
     * @param units of the axes
     */
    public static String write(String title, List<Plot> plots, UnitSystem units) {
        if (plots.isEmpty()) {
            throw new IllegalArgumentException("a picture of nothing");
        }
        PlotSvg svg = new PlotSvg(units);
        svg.whole(title, plots);
        return svg.out.toString();
    }

    private void whole(String title, List<Plot> plots) {
        int height = HEAD + PANEL * plots.size();
        line(
                String.format(
                        Locale.ROOT,
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"%d\""
                                + " height=\"%d\" viewBox=\"0 0 %d %d\" role=\"img\""
                                + " font-family=\"sans-serif\" font-size=\"13\">",
                        WIDTH,
                        height,
                        WIDTH,
                        height));
        line(String.format(Locale.ROOT, "<title>%s</title>", escaped(title)));
        line(
                String.format(
                        Locale.ROOT,
                        "<rect width=\"%d\" height=\"%d\" fill=\"#ffffff\"/>",
                        WIDTH,
                        height));
        line(
                String.format(
                        Locale.ROOT,
                        "<text x=\"%d\" y=\"34\" font-size=\"17\" font-weight=\"bold\">%s</text>",
                        LEFT,
                        escaped(title)));
        for (int i = 0; i < plots.size(); i++) {
            panelTop = HEAD + (double) PANEL * i;
            panel(plots.get(i));
        }
        line("</svg>");
    }

    private void panel(Plot plot) {
        PlotFrame frame = PlotFrame.of(plot, format);
        text(LEFT, panelTop + 14, "start", "font-weight=\"bold\"", plot.title());
        legend(plot);
        axes(frame);
        for (Plot.Series series : plot.series()) {
            series(series, frame);
        }
    }

    private void axes(PlotFrame frame) {
        double bottom = y(frame, frame.y().low());
        double top = y(frame, frame.y().high());
        double left = LEFT;
        double right = WIDTH - RIGHT;
        double xStep = frame.x().step();
        for (double tick : frame.x().ticks()) {
            double x = x(frame, tick);
            stroke(x, top, x, bottom, "#d9d9d9", 1, "");
            text(x, bottom + 18, "middle", "", frame.x().number(tick, xStep));
        }
        double yStep = frame.y().step();
        for (double tick : frame.y().ticks()) {
            double y = y(frame, tick);
            stroke(left, y, right, y, "#d9d9d9", 1, "");
            text(left - 8, y + 4.5, "end", "", frame.y().number(tick, yStep));
        }
        stroke(left, top, left, bottom, "#000000", 1.2, "");
        stroke(left, bottom, right, bottom, "#000000", 1.2, "");
        text((left + right) / 2, bottom + 40, "middle", "", frame.x().title());
        double middle = (top + bottom) / 2;
        text(
                22,
                middle,
                "middle",
                String.format(Locale.ROOT, "transform=\"rotate(-90 22 %.1f)\"", middle),
                frame.y().title());
    }

    private void series(Plot.Series series, PlotFrame frame) {
        switch (series.mark()) {
            case DOT -> series.points().forEach(p -> dot(x(frame, p.x()), y(frame, p.y())));
            case CROSS -> series.points().forEach(p -> cross(x(frame, p.x()), y(frame, p.y())));
            case LINE -> curve(series, frame, "#000000", "");
            case DASHES -> curve(series, frame, "#555555", " stroke-dasharray=\"6 4\"");
        }
    }

    private void dot(double x, double y) {
        line(
                String.format(
                        Locale.ROOT,
                        "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3.6\" fill=\"#ffffff\" stroke=\"#000000\""
                                + " stroke-width=\"1.6\"/>",
                        x,
                        y));
    }

    private void cross(double x, double y) {
        stroke(x - 5, y - 5, x + 5, y + 5, "#000000", 2.4, "");
        stroke(x - 5, y + 5, x + 5, y - 5, "#000000", 2.4, "");
    }

    private void curve(Plot.Series series, PlotFrame frame, String colour, String dash) {
        StringBuilder points = new StringBuilder();
        for (Plot.Point point : series.points()) {
            points.append(points.isEmpty() ? "" : " ")
                    .append(
                            String.format(
                                    Locale.ROOT,
                                    "%.1f,%.1f",
                                    x(frame, point.x()),
                                    y(frame, point.y())));
        }
        line(
                String.format(
                        Locale.ROOT,
                        "<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"1.5\"%s/>",
                        points,
                        colour,
                        dash));
    }

    private void legend(Plot plot) {
        double x = LEFT;
        double y = panelTop + 36;
        for (Plot.Series series : plot.series()) {
            if (series.label().isEmpty()) {
                continue;
            }
            switch (series.mark()) {
                case DOT -> dot(x + 10, y - 4);
                case CROSS -> cross(x + 10, y - 4);
                case LINE -> stroke(x, y - 4, x + 22, y - 4, "#000000", 1.5, "");
                case DASHES ->
                        stroke(
                                x,
                                y - 4,
                                x + 22,
                                y - 4,
                                "#555555",
                                1.5,
                                " stroke-dasharray=\"6 4\"");
            }
            text(x + 28, y, "start", "", series.label());
            x += Math.max(LEGEND_STEP, 40 + 7.2 * series.label().length());
        }
    }

    private double x(PlotFrame frame, double si) {
        return LEFT + frame.x().share(si) * (WIDTH - LEFT - RIGHT);
    }

    private double y(PlotFrame frame, double si) {
        return panelTop + TOP + (1 - frame.y().share(si)) * (PANEL - TOP - BOTTOM);
    }

    private void stroke(
            double x1, double y1, double x2, double y2, String colour, double width, String more) {
        line(
                String.format(
                        Locale.ROOT,
                        "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\""
                                + " stroke-width=\"%.1f\"%s/>",
                        x1,
                        y1,
                        x2,
                        y2,
                        colour,
                        width,
                        more));
    }

    private void text(double x, double y, String anchor, String more, String words) {
        line(
                String.format(
                        Locale.ROOT,
                        "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\"%s>%s</text>",
                        x,
                        y,
                        anchor,
                        more.isEmpty() ? "" : " " + more,
                        escaped(words)));
    }

    private void line(String text) {
        out.append(text).append('\n');
    }

    /** The door of XML: marks by their entities, and no character that could act or hide. */
    private static String escaped(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints()
                .forEach(
                        c -> {
                            switch (c) {
                                case '<' -> safe.append("&lt;");
                                case '>' -> safe.append("&gt;");
                                case '&' -> safe.append("&amp;");
                                case '"' -> safe.append("&quot;");
                                case '\'' -> safe.append("&#39;");
                                default ->
                                        safe.appendCodePoint(
                                                Untrusted.isHarmless(c) ? c : '\uFFFD');
                            }
                        });
        return safe.toString();
    }
}
