package liftwright.review.measured;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import liftwright.numerics.ProportionInterval;

/**
 * Computed values against measured ones that played no part in the coefficients.
 *
 * @param channel what is compared
 * @param points one a measured row
 */
record Comparison(String channel, List<Point> points) {

    /**
     * @param measured what was measured
     * @param low lower end of the computed 95 % band
     * @param computed with the declared values
     * @param high upper end of the band
     * @param byHand what ratings, momentum theory and a constant voltage give
     */
    record Point(
            String name, double measured, double low, double computed, double high, double byHand) {

        boolean inside() {
            return low <= measured && measured <= high;
        }
    }

    static Comparison pooled(Stream<Comparison> all) {
        return new Comparison("all", all.flatMap(each -> each.points.stream()).toList());
    }

    int inside() {
        return (int) points.stream().filter(Point::inside).count();
    }

    double share() {
        return (double) inside() / points.size();
    }

    /** What shares the count of rows is compatible with, at 95 %. */
    ProportionInterval shareInterval() {
        return ProportionInterval.clopperPearson(inside(), points.size(), 0.95);
    }

    double rms() {
        return rms(Point::computed);
    }

    double rmsByHand() {
        return rms(Point::byHand);
    }

    private double rms(ToDoubleFunction<Point> of) {
        return Math.sqrt(
                points.stream()
                        .mapToDouble(point -> of.applyAsDouble(point) - point.measured)
                        .map(error -> error * error)
                        .average()
                        .orElseThrow());
    }

    /** For a failing test: the count, the errors, and the rows outside. */
    String report() {
        StringBuilder text = new StringBuilder();
        text.append(
                String.format(
                        "%s: %d of %d inside, rms %.4g, by hand %.4g",
                        channel, inside(), points.size(), rms(), rmsByHand()));
        points.stream()
                .filter(point -> !point.inside())
                .forEach(point -> text.append("\n  outside: ").append(point));
        return text.toString();
    }
}
