package liftwright.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import liftwright.answer.Section.Timeline;
import liftwright.answer.Section.Timeline.Bar;
import liftwright.answer.Value;
import liftwright.quantity.Band;
import liftwright.quantity.QuantityFormat;
import liftwright.quantity.UnitSystem;
import liftwright.report.Figures;
import liftwright.report.OpenBars;
import liftwright.report.PlotFrame.Axis;

/**
 * A timeline, a row a part in order of time: its limit and when it comes above the bar, what it
 * came to below. A bar that reaches its limit is solid and ends there; one that does not is hatched
 * and open.
 */
final class TimelinePicture {

    private static final int WIDTH = 640;
    private static final double ROW = 54;
    private static final double BAR = 13;
    private static final double TOP = 8;
    private static final double FOOT = 40;

    /** Length of the two teeth that an open end has. */
    private static final double TEETH = 6;

    private final Markup page;
    private final Canvas canvas;
    private final Figures figures;
    private final QuantityFormat format;

    TimelinePicture(Markup page, Figures figures, UnitSystem units) {
        this.page = page;
        this.canvas = new Canvas(page);
        this.figures = figures;
        this.format = new QuantityFormat(units, false);
    }

    void draw(Timeline timeline, String id) {
        OpenBars shown = OpenBars.of(timeline);
        Axis axis = Axis.between(Timeline.TIME, 0, shown.endS(), format);
        double bottom = TOP + ROW * shown.bars().size();
        page.element(
                "figure",
                () -> {
                    page.element("figcaption", timeline.title());
                    canvas.picture(
                            id,
                            WIDTH,
                            (int) (bottom + FOOT),
                            timeline.title(),
                            words(timeline, shown.bars()),
                            () -> {
                                axis(axis, bottom);
                                double y = TOP;
                                for (Bar bar : shown.bars()) {
                                    row(timeline, bar, axis, y);
                                    y += ROW;
                                }
                            });
                    page.element("p", key(timeline, shown), "class", "key");
                },
                "class",
                "timeline");
    }

    private void axis(Axis axis, double bottom) {
        for (double tick : axis.ticks()) {
            double x = x(axis, tick);
            canvas.line(x, TOP, x, bottom, "hair");
            String words = axis.number(tick, axis.step());
            double half = Canvas.widthOf(words) / 2;
            canvas.text(Math.clamp(x, half, WIDTH - half), bottom + 16, "middle", words, "soft");
        }
        canvas.line(1, bottom, WIDTH - 1, bottom, "axis");
        canvas.text(WIDTH, bottom + 33, "end", axis.title(), "soft");
    }

    private void row(Timeline timeline, Bar bar, Axis axis, double y) {
        String when = Canvas.cut(figures.when(timeline, bar.at()), WIDTH / 2.0);
        String label = bar.part() + ", " + bar.what();
        double room = WIDTH - Canvas.widthOf(when) - 10;
        canvas.text(0, y + 11, "start", Canvas.cut(label, room), "over");
        canvas.text(WIDTH, y + 11, "end", when, "over strong");
        double from = x(axis, 0);
        if (bar.at().figure() instanceof Value.Figure.Amount(double atS, Optional<Band> band)) {
            double to = Math.max(from + 1.5, x(axis, atS));
            canvas.box(from, y + 16, to - from, BAR, "sum");
            band.ifPresent(b -> whisker(axis, b, y + 16 + BAR / 2));
        } else {
            canvas.path(open(from, WIDTH - 1, y + 16), "taken");
        }
        canvas.text(0, y + 42, "start", Canvas.cut(below(bar), WIDTH), "soft over");
    }

    /** A bar whose far end is torn. */
    private static String open(double from, double to, double top) {
        double low = top + BAR;
        return String.format(
                Locale.ROOT,
                "M%s %s L%s %s L%s %s L%s %s L%s %s L%s %s L%s %s Z",
                Canvas.n(from),
                Canvas.n(top),
                Canvas.n(to),
                Canvas.n(top),
                Canvas.n(to - TEETH),
                Canvas.n(top + BAR / 4),
                Canvas.n(to),
                Canvas.n(top + BAR / 2),
                Canvas.n(to - TEETH),
                Canvas.n(top + 3 * BAR / 4),
                Canvas.n(to),
                Canvas.n(low),
                Canvas.n(from),
                Canvas.n(low));
    }

    private void whisker(Axis axis, Band band, double y) {
        double low = x(axis, Math.max(0, band.low()));
        double high = x(axis, Math.min(axis.high(), band.high()));
        if (high - low > 1) {
            canvas.line(low, y, high, y, "halo");
            canvas.line(low, y, high, y, "whisker");
            canvas.line(low, y - 4, low, y + 4, "whisker");
            canvas.line(high, y - 4, high, y + 4, "whisker");
        }
    }

    private String below(Bar bar) {
        return Stream.of(
                        figures.against(bar.hottest(), bar.limit()),
                        bar.where(),
                        Figures.unsettled(bar.at()))
                .filter(words -> !words.isBlank())
                .collect(Collectors.joining("; "));
    }

    private static double x(Axis axis, double si) {
        return 1 + axis.share(si) * (WIDTH - 2);
    }

    private String key(Timeline timeline, OpenBars shown) {
        return "Solid: reaches its limit where the bar ends; whisker: 95 % band. Hatched with a"
                + " torn end: comes to no limit. Below each: the worst, of what is allowed. It was"
                + " computed as far as "
                + figures.bare(Value.of(Timeline.TIME, timeline.horizonS()))
                + "."
                + shown.leftOut();
    }

    private String words(Timeline timeline, List<Bar> bars) {
        List<String> words = new ArrayList<>();
        for (Bar bar : bars) {
            words.add(bar.part() + ", " + bar.what() + " " + figures.when(timeline, bar.at()));
        }
        return String.join("; ", words);
    }
}
