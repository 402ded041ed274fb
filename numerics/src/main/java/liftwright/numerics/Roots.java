package liftwright.numerics;

import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntPredicate;

/** Where a function of one variable changes sign, and where a monotone statement becomes true. */
public final class Roots {

    private static final int MOST_STEPS = 200;

    private Roots() {}

    /**
     * Root in a bracket by Brent's method [BRENT73]: never leaves the bracket, and is superlinear
     * where the function is smooth.
     *
     * @param function continuous, finite in the bracket
     * @param low one end
     * @param high the other end
     * @param tolerance absolute, of the argument, ≥ 0; the spacing of doubles is added
     * @return the end of the last bracket with the smaller residual
     * @throws IllegalArgumentException if the ends do not bracket a root, or a value is NaN
     */
    public static double bracketed(
            DoubleUnaryOperator function, double low, double high, double tolerance) {
        double a = low;
        double b = high;
        double fa = function.applyAsDouble(a);
        double fb = function.applyAsDouble(b);
        if (fa == 0) {
            return a;
        }
        if (fb == 0) {
            return b;
        }
        if (!(fa < 0 && fb > 0) && !(fa > 0 && fb < 0)) {
            throw new IllegalArgumentException(
                    "no change of sign between f("
                            + low
                            + ") = "
                            + fa
                            + " and f("
                            + high
                            + ") = "
                            + fb);
        }
        double c = a;
        double fc = fa;
        double step = b - a;
        double before = step;
        for (int count = 0; count < MOST_STEPS; count++) {
            if (fb > 0 == fc > 0) {
                c = a;
                fc = fa;
                step = b - a;
                before = step;
            }
            if (Math.abs(fc) < Math.abs(fb)) {
                a = b;
                b = c;
                c = a;
                fa = fb;
                fb = fc;
                fc = fa;
            }
            double least = 2 * Math.ulp(b) + tolerance / 2;
            double half = (c - b) / 2;
            if (Math.abs(half) <= least || fb == 0) {
                return b;
            }
            if (Math.abs(before) >= least && Math.abs(fa) > Math.abs(fb)) {
                double s = fb / fa;
                double p;
                double q;
                if (a == c) {
                    p = 2 * half * s;
                    q = 1 - s;
                } else {
                    double t = fa / fc;
                    double r = fb / fc;
                    p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
                    q = (t - 1) * (r - 1) * (s - 1);
                }
                if (p > 0) {
                    q = -q;
                } else {
                    p = -p;
                }
                if (2 * p < Math.min(3 * half * q - Math.abs(least * q), Math.abs(before * q))) {
                    before = step;
                    step = p / q;
                } else {
                    step = half;
                    before = half;
                }
            } else {
                step = half;
                before = half;
            }
            a = b;
            fa = fb;
            b += Math.abs(step) > least ? step : Math.copySign(least, half);
            fb = function.applyAsDouble(b);
            if (Double.isNaN(fb)) {
                throw new IllegalArgumentException("the function is not a number at " + b);
            }
        }
        return b;
    }

    /**
     * Least integer in a range for which a monotone statement (false, then true) holds.
     *
     * @param low least candidate
     * @param high greatest candidate, ≥ low
     * @param holds asked about log₂ of the range times
     * @return empty if it does not hold for {@code high}
     */
    public static OptionalInt leastStep(int low, int high, IntPredicate holds) {
        if (low > high || !holds.test(high)) {
            return OptionalInt.empty();
        }
        int from = low;
        int to = high;
        while (from < to) {
            int middle = (int) (((long) from + to) >> 1);
            if (holds.test(middle)) {
                to = middle;
            } else {
                from = middle + 1;
            }
        }
        return OptionalInt.of(to);
    }
}
