package liftwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import liftwright.answer.Fields;
import liftwright.answer.Section.Plot;
import liftwright.quantity.Measure;
import liftwright.quantity.QuantityFormat;

/** What a plot spans, in the reader's units. */
public record PlotFrame(Axis x, Axis y) {

    /** Free room beyond the outermost points, as a share of their span. */
    private static final double ROOM = 0.05;

    private static final int MOST_TICKS = 7;

    /** In the units that suit the greatest values. */
    public static PlotFrame of(Plot plot, QuantityFormat format) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (Plot.Series series : plot.series()) {
            for (Plot.Point point : series.points()) {
                x.add(point.x());
                y.add(point.y());
            }
        }
        for (Plot.Zone zone : plot.zones()) {
            x.add(zone.from());
            x.add(zone.to());
        }
        return new PlotFrame(Axis.of(plot.x(), x, format), Axis.of(plot.y(), y, format));
    }

    /**
     * Whether a legend explains a series: each line, and any other mark with its words once.
     *
     * @param at number of the series
     */
    public static boolean isExplained(Plot plot, int at) {
        Plot.Series of = plot.series().get(at);
        return !of.label().isEmpty()
                && (of.mark() == Plot.Mark.LINE
                        || plot.series().subList(0, at).stream()
                                .noneMatch(
                                        other ->
                                                other.mark() == of.mark()
                                                        && other.label().equals(of.label())));
    }

    /**
     * Which of the lines with a label the last one up to a series is, from 0: what tells lines
     * apart. −1 before the first.
     *
     * @param at number of the series
     */
    public static int lineOf(Plot plot, int at) {
        int line = -1;
        for (Plot.Series series : plot.series().subList(0, at + 1)) {
            line += series.mark() == Plot.Mark.LINE && !series.label().isEmpty() ? 1 : 0;
        }
        return line;
    }

    /** A zone with its ends in the unit of its axis: {@code no way out, 1.5 to 6 m}. */
    public String words(Plot.Zone zone) {
        double step = x.step() / 10;
        return zone.label()
                + ", "
                + x.number(zone.from(), step)
                + " to "
                + x.number(zone.to(), step)
                + (x.unit().isEmpty() ? "" : " " + x.unit());
    }

    /**
     * One axis.
     *
     * @param title with its unit
     * @param unit alone; empty where there is none
     * @param perSi how many of the shown unit one SI unit is
     * @param plus what is shown where SI is nought: degrees do not begin there
     * @param low lower end, SI
     * @param high upper end, SI, above it
     */
    public record Axis(
            String title, String unit, double perSi, double plus, double low, double high) {

        private static Axis of(String field, List<Double> values, QuantityFormat format) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (double value : values) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
            if (!(low <= high)) {
                throw new IllegalArgumentException("a plot without a point");
            }
            double room = high > low ? ROOM * (high - low) : Math.max(Math.abs(high), 1) * ROOM;
            return between(field, low - room, high + room, format);
        }

        /**
         * From end to end, in the unit that suits the greater.
         *
         * @param low SI
         * @param high SI, above it
         */
        public static Axis between(String field, double low, double high, QuantityFormat format) {
            Measure measure = Fields.of(field).measure();
            double size = Math.max(Math.abs(low), Math.abs(high));
            String unit = format.unitText(measure, size);
            double plus = format.inUnit(measure, 0, size);
            return new Axis(
                    Fields.of(field).label() + (unit.isEmpty() ? "" : " [" + unit + "]"),
                    unit,
                    format.inUnit(measure, 1, size) - plus,
                    plus,
                    low,
                    high);
        }

        private double shown(double si) {
            return si * perSi + plus;
        }

        /** Where a value lies between the ends, 0 to 1. */
        public double share(double si) {
            return (si - low) / (high - low);
        }

        /** The value at a share of the way. */
        double at(double share) {
            return low + share * (high - low);
        }

        /** To the digits that a step of the shown unit needs. */
        public String number(double si, double step) {
            int decimals = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
            String text = String.format(Locale.ROOT, "%." + decimals + "f", shown(si));
            return text.matches("-0(\\.0*)?") ? text.substring(1) : text.replace('-', '−');
        }

        /** Distance of round values in the shown unit: 1, 2 or 5 of some power of ten. */
        public double step() {
            double rough = (high - low) * perSi / MOST_TICKS;
            double ten = Math.pow(10, Math.floor(Math.log10(rough)));
            for (double round : new double[] {1, 2, 5}) {
                if (round * ten >= rough) {
                    return round * ten;
                }
            }
            return 10 * ten;
        }

        /** Round values between the ends, SI. */
        public List<Double> ticks() {
            List<Double> ticks = new ArrayList<>();
            double step = step();
            long first = (long) Math.ceil(shown(low) / step);
            long last = (long) Math.floor(shown(high) / step);
            for (long i = first; i <= last; i++) {
                ticks.add((i * step - plus) / perSi);
            }
            return ticks;
        }
    }
}
