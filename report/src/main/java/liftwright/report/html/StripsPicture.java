package liftwright.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import liftwright.answer.Section.Strips;
import liftwright.answer.Section.Strips.Strip;
import liftwright.answer.Section.Timeline;
import liftwright.answer.Value;
import liftwright.quantity.QuantityFormat;
import liftwright.quantity.UnitSystem;
import liftwright.report.Figures;
import liftwright.report.PlotFrame.Axis;

/**
 * Strips over one axis of time, one a channel: the band hatched, what was expected dashed, what was
 * measured solid, and dots where it leaves the band. Events are numbered lines across all strips,
 * and stand in words below.
 */
final class StripsPicture {

    private static final int WIDTH = 640;
    private static final double LEFT = 58;
    private static final double HEAD = 18;
    private static final double STRIP = 62;
    private static final double GAP = 12;
    private static final double TOP = 22;
    private static final double FOOT = 40;
    private static final double ROOM = 0.06;

    private final Markup page;
    private final Canvas canvas;
    private final Figures figures;
    private final QuantityFormat format;

    StripsPicture(Markup page, Figures figures, UnitSystem units) {
        this.page = page;
        this.canvas = new Canvas(page);
        this.figures = figures;
        this.format = new QuantityFormat(units, false);
    }

    void draw(Strips strips, String id) {
        if (strips.strips().isEmpty()) {
            return;
        }
        Axis time = time(strips);
        double bottom = TOP + (HEAD + STRIP + GAP) * strips.strips().size();
        page.element(
                "figure",
                () -> {
                    page.element("figcaption", strips.title());
                    canvas.picture(
                            id,
                            WIDTH,
                            (int) (bottom + FOOT),
                            strips.title(),
                            words(strips),
                            () -> {
                                axis(time, bottom);
                                double y = TOP;
                                for (Strip strip : strips.strips()) {
                                    strip(strip, time, y + HEAD);
                                    y += HEAD + STRIP + GAP;
                                }
                                events(strips, time, bottom);
                            });
                    page.element(
                            "p",
                            "Hatched: the 95 % band of what each instrument would show; dashed:"
                                    + " expected at the declared values; solid: measured, with a dot"
                                    + " where it leaves the band.",
                            "class",
                            "key");
                    if (!strips.events().isEmpty()) {
                        page.element("ol", () -> list(strips));
                    }
                },
                "class",
                "timeline");
    }

    private void list(Strips strips) {
        for (Strips.Event event : strips.events()) {
            page.element("li", when(event) + ": " + told(event));
        }
    }

    private String when(Strips.Event event) {
        return figures.bare(Value.of(Timeline.TIME, event.timeS()));
    }

    private static String told(Strips.Event event) {
        return event.part().isEmpty() ? event.label() : event.part() + " " + event.label();
    }

    private Axis time(Strips strips) {
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (Strip strip : strips.strips()) {
            from = Math.min(from, strip.timesS().getFirst());
            to = Math.max(to, strip.timesS().getLast());
        }
        return Axis.between(Timeline.TIME, from, to > from ? to : from + 1, format);
    }

    private void axis(Axis time, double bottom) {
        for (double tick : time.ticks()) {
            double x = x(time, tick);
            canvas.line(x, TOP, x, bottom, "hair");
            String words = time.number(tick, time.step());
            double half = Canvas.widthOf(words) / 2;
            canvas.text(Math.clamp(x, half, WIDTH - half), bottom + 16, "middle", words, "soft");
        }
        canvas.line(LEFT, bottom, WIDTH - 1, bottom, "axis");
        canvas.text(WIDTH, bottom + 33, "end", time.title(), "soft");
    }

    /** Numbered, so that no words lie one over the other. */
    private void events(Strips strips, Axis time, double bottom) {
        double free = 0;
        for (int k = 0; k < strips.events().size(); k++) {
            double timeS = strips.events().get(k).timeS();
            if (timeS < time.low() || timeS > time.high()) {
                continue;
            }
            double x = x(time, timeS);
            canvas.line(x, TOP - 4, x, bottom, "whisker");
            String number = Integer.toString(k + 1);
            double half = Canvas.widthOf(number) / 2 + 2;
            if (x - half >= free) {
                canvas.text(Math.min(x, WIDTH - half), TOP - 8, "middle", number, "strong");
                free = x + half;
            }
        }
    }

    private void strip(Strip strip, Axis time, double top) {
        Axis value = value(strip);
        String unit = value.unit().isEmpty() ? "" : " [" + value.unit() + "]";
        canvas.text(LEFT, top - 5, "start", Canvas.cut(strip.label() + unit, WIDTH - LEFT), "over");
        for (double tick : ends(value)) {
            double y = y(value, tick, top);
            canvas.line(LEFT, y, WIDTH - 1, y, "hair");
            canvas.text(LEFT - 6, y + 4.5, "end", value.number(tick, value.step()), "soft");
        }
        canvas.path(band(strip, time, value, top), "taken");
        canvas.path(line(strip, strip.expected(), time, value, top), "dashes");
        canvas.path(line(strip, strip.measured(), time, value, top), "curveline");
        for (int k = 0; k < strip.timesS().size(); k++) {
            if (!strip.isInside(k)) {
                canvas.disk(
                        x(time, strip.timesS().get(k)),
                        y(value, strip.measured().get(k), top),
                        2.6,
                        "dot");
            }
        }
        canvas.line(LEFT, top, LEFT, top + STRIP, "axis");
    }

    /** The lowest and the highest of the round values: a strip is low. */
    private static List<Double> ends(Axis value) {
        List<Double> ticks = value.ticks();
        return ticks.size() < 2 ? ticks : List.of(ticks.getFirst(), ticks.getLast());
    }

    private Axis value(Strip strip) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (List<Double> of : List.of(strip.measured(), strip.low(), strip.high())) {
            for (double si : of) {
                low = Math.min(low, si);
                high = Math.max(high, si);
            }
        }
        double room = high > low ? ROOM * (high - low) : Math.max(Math.abs(high), 1) * ROOM;
        return Axis.between(strip.field(), low - room, high + room, format);
    }

    private static String band(Strip strip, Axis time, Axis value, double top) {
        StringBuilder d = new StringBuilder(line(strip, strip.high(), time, value, top));
        for (int k = strip.timesS().size() - 1; k >= 0; k--) {
            point(d, x(time, strip.timesS().get(k)), y(value, strip.low().get(k), top));
        }
        return d.append(" Z").toString();
    }

    private static String line(
            Strip strip, List<Double> values, Axis time, Axis value, double top) {
        StringBuilder d = new StringBuilder();
        for (int k = 0; k < values.size(); k++) {
            point(d, x(time, strip.timesS().get(k)), y(value, values.get(k), top));
        }
        return d.toString();
    }

    private static void point(StringBuilder d, double x, double y) {
        d.append(d.isEmpty() ? "M" : " L").append(Canvas.n(x)).append(' ').append(Canvas.n(y));
    }

    private static double x(Axis time, double si) {
        return LEFT + time.share(si) * (WIDTH - LEFT - 2);
    }

    private static double y(Axis value, double si, double top) {
        return top + (1 - value.share(si)) * STRIP;
    }

    private String words(Strips strips) {
        List<String> words = new ArrayList<>();
        for (Strip strip : strips.strips()) {
            long inside = IntStream.range(0, strip.timesS().size()).filter(strip::isInside).count();
            words.add(
                    strip.label()
                            + ": "
                            + inside
                            + " of "
                            + strip.timesS().size()
                            + " points within the band");
        }
        strips.events().forEach(event -> words.add(when(event) + ": " + told(event)));
        return String.join("; ", words);
    }
}
