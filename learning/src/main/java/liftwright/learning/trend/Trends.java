package liftwright.learning.trend;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.learning.trend.Trend.Reached;
import liftwright.numerics.CholeskyFactor;
import liftwright.numerics.Roots;
import liftwright.numerics.StudentT;

/**
 * A straight line through what several tests found of one number, their doubts and what these have
 * in common counted, and a scatter from test to test that no doubt names (random effects after
 * DerSimonian and Laird [DERSIMONIAN86]). Generalised least squares. Since that scatter is told by
 * the same few tests, the slope is as doubtful as in any straight line through n points: Student's
 * t with n − 2 degrees of freedom (Knapp and Hartung [KNAPP03]), and never less doubtful than the
 * tests' own doubts make it.
 */
public final class Trends {

    /** Fewer tests make no trend. */
    public static final int LEAST = 3;

    private static final double LEVEL = 0.95;

    private Trends() {}

    /**
     * What tests found.
     *
     * @param at on the abscissa: number of the test, hours, days
     * @param si the number
     * @param covariance of the numbers, positive definite
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    public record Found(double[] at, double[] si, double[][] covariance) {
        public Found {
            if (at.length != si.length || covariance.length != si.length) {
                throw new IllegalArgumentException("each test found one number");
            }
            for (int k = 0; k < si.length; k++) {
                if (!(covariance[k][k] > 0)) {
                    throw new IllegalArgumentException("what a test found is in doubt");
                }
            }
        }

        /** Of tests that have no doubt in common. */
        public static Found apart(double[] at, double[] si, double[] deviations) {
            double[][] covariance = new double[si.length][si.length];
            for (int k = 0; k < si.length; k++) {
                covariance[k][k] = deviations[k] * deviations[k];
            }
            return new Found(at, si, covariance);
        }

        /** Whether a line can be laid through them. */
        public boolean makesTrend() {
            return at.length >= LEAST && Arrays.stream(at).distinct().count() > 1;
        }

        int freedom() {
            return at.length - 2;
        }
    }

    /** The line through one number; empty where {@link Found#makesTrend} is not so. */
    public static Optional<Trend> of(Found found, OptionalDouble limitSi) {
        return of(found, 0, 0, limitSi);
    }

    /**
     * The same, where other numbers of the kind tell what scatters from test to test.
     *
     * @param least variance from test to test, at least
     * @param freedom degrees of freedom with which they tell it
     */
    static Optional<Trend> of(Found found, double least, int freedom, OptionalDouble limitSi) {
        if (!found.makesTrend()) {
            return Optional.empty();
        }
        double own = between(List.of(found));
        double[] line = line(found, Math.max(least, own));
        double deviation = Math.sqrt(line[2]);
        int told = own > least ? found.freedom() : Math.max(freedom, found.freedom());
        double wide = StudentT.within(LEVEL, told) * deviation;
        double low = line[1] - wide;
        double high = line[1] + wide;
        Optional<Reached> reached = Optional.empty();
        if (limitSi.isPresent() && (low > 0 || high < 0)) {
            double last = Arrays.stream(found.at).max().orElseThrow();
            reached =
                    reached(
                            limitSi.getAsDouble() - (line[0] + line[1] * last),
                            line[1],
                            low,
                            high,
                            last);
        }
        return Optional.of(new Trend(line[1], low, high, line[1] / deviation, reached));
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

    private static CholeskyFactor factor(Found found, double between) {
        double[][] covariance = new double[found.si.length][];
        for (int k = 0; k < covariance.length; k++) {
            covariance[k] = found.covariance[k].clone();
            covariance[k][k] += between;
        }
        return CholeskyFactor.of(covariance);
    }

    /** Value at 0, slope, variance of the slope, squares left. */
    private static double[] line(Found found, double between) {
        CholeskyFactor factor = factor(found, between);
        double[] one = new double[found.si.length];
        Arrays.fill(one, 1);
        double[] at = found.at.clone();
        double[] si = found.si.clone();
        factor.whiten(one, 0);
        factor.whiten(at, 0);
        factor.whiten(si, 0);
        double a = dot(one, one);
        double b = dot(one, at);
        double c = dot(at, at);
        double determinant = a * c - b * b;
        double p = dot(one, si);
        double q = dot(at, si);
        double zero = (c * p - b * q) / determinant;
        double slope = (a * q - b * p) / determinant;
        double left = 0;
        for (int k = 0; k < si.length; k++) {
            double off = si[k] - zero * one[k] - slope * at[k];
            left += off * off;
        }
        return new double[] {zero, slope, a / determinant, left};
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int k = 0; k < a.length; k++) {
            sum += a[k] * b[k];
        }
        return sum;
    }

    /**
     * Variance from test to test besides their own doubts, the same for several numbers: what makes
     * χ² about their lines even.
     */
    static double between(List<Found> numbers) {
        List<Found> told = numbers.stream().filter(Found::makesTrend).toList();
        double freedom = told.stream().mapToInt(Found::freedom).sum();
        if (freedom == 0 || squares(told, 0) <= freedom) {
            return 0;
        }
        double high = 0;
        for (Found one : told) {
            for (double si : one.si) {
                high = Math.max(high, si * si);
            }
        }
        double most = high;
        if (squares(told, most) >= freedom) {
            return most;
        }
        return Roots.bracketed(x -> squares(told, x) - freedom, 0, most, 1e-9 * most);
    }

    private static double squares(List<Found> numbers, double between) {
        return numbers.stream().mapToDouble(one -> line(one, between)[3]).sum();
    }
}
