package liftwright.learning.explain;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.learning.explain.Trend.Reached;
import liftwright.numerics.StudentT;

/**
 * A straight line through what several tests found of one number, each with its own doubt, and a
 * scatter from test to test that no doubt names (random effects after DerSimonian and Laird
 * [DERSIMONIAN86]). Nothing is claimed where the interval of the slope holds nought.
 */
public final class Trends {

    /** Fewer tests make no trend. */
    public static final int LEAST = 3;

    private Trends() {}

    /**
     * What one test found.
     *
     * @param at on the abscissa: number of the test, hours, days
     * @param si the number
     * @param deviation its standard deviation, &gt; 0
     */
    public record Found(double at, double si, double deviation) {
        public Found {
            if (!(deviation > 0)) {
                throw new IllegalArgumentException("what a test found is in doubt");
            }
        }
    }

    /** The line; empty of fewer than {@link #LEAST} tests, or of tests all at one place. */
    public static Optional<Trend> of(List<Found> tests, OptionalDouble limitSi) {
        if (tests.size() < LEAST || tests.stream().mapToDouble(Found::at).distinct().count() < 2) {
            return Optional.empty();
        }
        double between = between(tests);
        double[] line = line(tests, between);
        int freedom = tests.size() - 2;
        double wide = StudentT.within(0.95, freedom + 2) * Math.sqrt(line[2]);
        double low = line[1] - wide;
        double high = line[1] + wide;
        Optional<Reached> reached = Optional.empty();
        if (limitSi.isPresent() && (low > 0 || high < 0)) {
            double last = tests.stream().mapToDouble(Found::at).max().orElseThrow();
            double now = line[0] + line[1] * (last - line[3]);
            reached = reached(limitSi.getAsDouble() - now, line[1], low, high, last);
        }
        return Optional.of(new Trend(line[1], low, high, reached));
    }

    private static Optional<Reached> reached(
            double way, double slope, double low, double high, double last) {
        if (!(way / slope > 0)) {
            return Optional.empty();
        }
        double steep = slope > 0 ? high : low;
        double flat = slope > 0 ? low : high;
        return Optional.of(
                new Reached(
                        last + way / slope,
                        last + way / steep,
                        OptionalDouble.of(last + way / flat)));
    }

    /** Weighted: mean at the middle, slope, its variance, the middle. */
    private static double[] line(List<Found> tests, double between) {
        double sum = 0;
        double middle = 0;
        double mean = 0;
        for (Found test : tests) {
            double weight = 1 / (test.deviation * test.deviation + between);
            sum += weight;
            middle += weight * test.at;
            mean += weight * test.si;
        }
        middle /= sum;
        mean /= sum;
        double square = 0;
        double product = 0;
        for (Found test : tests) {
            double weight = 1 / (test.deviation * test.deviation + between);
            square += weight * (test.at - middle) * (test.at - middle);
            product += weight * (test.at - middle) * (test.si - mean);
        }
        return new double[] {mean, product / square, 1 / square, middle};
    }

    /** Variance from test to test besides their own doubts: what makes χ² about the line even. */
    private static double between(List<Found> tests) {
        double high = 0;
        for (Found test : tests) {
            high = Math.max(high, test.si * test.si);
        }
        if (squares(tests, 0) <= tests.size() - 2) {
            return 0;
        }
        double low = 0;
        for (int k = 0; k < 200; k++) {
            double middle = (low + high) / 2;
            if (squares(tests, middle) > tests.size() - 2) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static double squares(List<Found> tests, double between) {
        double[] line = line(tests, between);
        double sum = 0;
        for (Found test : tests) {
            double off = test.si - line[0] - line[1] * (test.at - line[3]);
            sum += off * off / (test.deviation * test.deviation + between);
        }
        return sum;
    }
}
