package liftwright.flight.disperse;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.QuantileInterval;
import liftwright.numerics.Quantiles;
import liftwright.quantity.Band;

/** How far flights miss that were flown to their end. */
final class MissTables {

    private static final double[] QUANTILES = {0.5, 0.9, 0.95, 0.99};
    private static final double NEARLY_ALL = 0.95;
    private static final int MOST_BARS = 20;
    private static final List<FlightFigure> SHOWN =
            List.of(
                    FlightFigure.MISS,
                    FlightFigure.HEIGHT_LOST,
                    FlightFigure.TILT,
                    FlightFigure.DRIFT,
                    FlightFigure.LANDING);

    private final List<Flown.Made> ended;

    MissTables(List<Flown.Made> ended) {
        this.ended = List.copyOf(ended);
    }

    List<Section> sections() {
        if (ended.isEmpty()) {
            return List.of();
        }
        List<Bar> bars = bars();
        return List.of(quantiles(), histogram(bars), table(bars));
    }

    /** Greatest misses of equal width. */
    record Bar(double from, double to, int count) {}

    /** Bars of a round width, from nought on; every flight in one. */
    List<Bar> bars() {
        double[] misses = sorted(FlightFigure.MISS);
        double greatest = Math.max(misses[misses.length - 1], 1e-9);
        double width = round(greatest / MOST_BARS);
        int count = (int) (greatest / width) + 1;
        int[] counts = new int[count];
        for (double miss : misses) {
            counts[Math.clamp((int) (miss / width), 0, count - 1)]++;
        }
        List<Bar> bars = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            bars.add(new Bar(i * width, (i + 1) * width, counts[i]));
        }
        return bars;
    }

    /** The next of 1, 2, 5 times a power of ten. */
    private static double round(double width) {
        double power = Math.pow(10, Math.floor(Math.log10(width)));
        for (double step : new double[] {1, 2, 5}) {
            if (step * power >= width) {
                return step * power;
            }
        }
        return 10 * power;
    }

    /** Within what nearly all of them stay, as far as so many flights tell. */
    private List<Section.Plot.Zone> nearlyAll() {
        return quantile(FlightFigure.MISS, NEARLY_ALL)
                .band()
                .filter(band -> band.low() < band.high())
                .map(
                        band ->
                                new Section.Plot.Zone(
                                        "95 % of such flights miss by no more than this",
                                        band.low(), band.high()))
                .stream()
                .toList();
    }

    private Section histogram(List<Bar> bars) {
        List<Section.Plot.Point> points = new ArrayList<>();
        points.add(new Section.Plot.Point(0, 0));
        for (Bar bar : bars) {
            points.add(new Section.Plot.Point(bar.from, bar.count));
            points.add(new Section.Plot.Point(bar.to, bar.count));
        }
        points.add(new Section.Plot.Point(bars.getLast().to, 0));
        return new Section.Plot(
                "flights-histogram",
                "How far they miss",
                "flights-miss",
                "flights-counted",
                List.of(
                        new Section.Plot.Series(
                                "flights flown to their end", Section.Plot.Mark.LINE, points)),
                nearlyAll());
    }

    private static Section table(List<Bar> bars) {
        return new Section.Table(
                "flights-misses",
                "How many miss how far",
                List.of("flights-miss-from", "flights-miss-to", "flights-counted"),
                bars.stream()
                        .filter(bar -> bar.count > 0)
                        .map(
                                bar ->
                                        List.of(
                                                Value.of("flights-miss-from", bar.from),
                                                Value.of("flights-miss-to", bar.to),
                                                Value.of("flights-counted", bar.count)))
                        .toList());
    }

    private Section quantiles() {
        List<String> columns = new ArrayList<>(List.of("flights-quantile"));
        SHOWN.forEach(each -> columns.add(each.field()));
        List<List<Value>> rows = new ArrayList<>();
        for (double quantile : QUANTILES) {
            List<Value> row = new ArrayList<>(List.of(Value.of("flights-quantile", quantile)));
            SHOWN.forEach(each -> row.add(quantile(each, quantile)));
            // What no flight bounds is left out; a row that tells something tells what it lacks.
            if (row.stream().skip(1).anyMatch(value -> value.band().isPresent())) {
                rows.add(row);
            }
        }
        List<Value> greatest = new ArrayList<>(List.of(Value.words("flights-quantile", "all")));
        for (FlightFigure each : SHOWN) {
            double[] sorted = sorted(each);
            greatest.add(Value.of(each.field(), sorted[sorted.length - 1]));
        }
        rows.add(greatest);
        return new Section.Table(
                "flights-quantiles", "Within what so many of them stay", columns, rows);
    }

    Value quantile(FlightFigure figure, double quantile) {
        double[] sorted = sorted(figure);
        QuantileInterval ranks = QuantileInterval.of(sorted.length, quantile, WellShare.CONFIDENCE);
        if (ranks.lowerRank() < 1 || ranks.upperRank() > sorted.length) {
            return new Value(
                    figure.field(), new Value.Figure.NotComputed("too few flights to bound it"));
        }
        return Value.of(
                figure.field(),
                Quantiles.ofSorted(sorted, quantile),
                new Band(
                        sorted[ranks.lowerRank() - 1],
                        sorted[ranks.upperRank() - 1],
                        WellShare.CONFIDENCE,
                        "order statistics",
                        sorted.length,
                        0));
    }

    private double[] sorted(FlightFigure figure) {
        return ended.stream().mapToDouble(figure::of).sorted().toArray();
    }
}
