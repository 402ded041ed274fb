package liftwright.review.stand;

import java.util.List;
import liftwright.numerics.Gaussian;
import liftwright.numerics.Roots;
import liftwright.numerics.StudentT;

/**
 * Distribution of a sum of independent errors, by convolution on a grid: the expanded uncertainty
 * without the assumption of a normal sum (JCGM 101:2008 does the same by sampling). Bounded and
 * normal errors are laid together on the grid; the few runs, whose tails no grid holds, by the
 * distribution function of Student's t itself.
 */
final class ErrorSum {

    private static final int HALF = 768;
    private static final int CELLS = 2 * HALF;

    /** Of the table of Student's t, even. */
    private static final int ROWS = 600;

    private static final double NORMAL_REACH = 7;

    /** A width below this share of a cell changes nothing. */
    private static final double NOTHING = 1e-6;

    /** Probability below the lower end. */
    private static final double TAIL = (1 - Gaussian.COVERAGE_K2) / 2;

    private final double stepN;
    private double[] cdf = new double[CELLS + 1];
    private double scaleN;
    private int freedom;
    private double[] student = {};
    private boolean even = true;

    private ErrorSum(List<Distribution> parts) {
        double squares = 0;
        double reachN = 0;
        for (Distribution part : parts) {
            switch (part) {
                case Distribution.Normal(var standardN) -> squares += standardN * standardN;
                case Distribution.Rectangle(var halfN) -> reachN += halfN;
                case Distribution.Triangle(var halfN) -> reachN += halfN;
                case Distribution.Tilt tilt -> {
                    reachN += reach(tilt);
                    even = false;
                }
                case Distribution.Student one -> {
                    if (freedom > 0) {
                        throw new IllegalArgumentException("a stand repeats its runs once");
                    }
                    scaleN = one.scaleN();
                    freedom = one.freedom();
                }
            }
        }
        double normalN = Math.sqrt(squares);
        stepN = (reachN + NORMAL_REACH * normalN) / HALF;
        for (int i = 0; i <= CELLS; i++) {
            double xN = (i - HALF) * stepN;
            cdf[i] = normalN > 0 ? Gaussian.cdf(xN / normalN) : (1 + Math.signum(xN)) / 2;
        }
        for (Distribution part : parts) {
            switch (part) {
                case Distribution.Rectangle(var halfN) -> spread(halfN);
                case Distribution.Triangle(var halfN) -> {
                    spread(halfN / 2);
                    spread(halfN / 2);
                }
                case Distribution.Tilt tilt -> shift(tilt);
                case Distribution.Normal _, Distribution.Student _ -> {}
            }
        }
        if (freedom > 0) {
            student = table(freedom);
        }
    }

    private static double reach(Distribution.Tilt tilt) {
        double most = 0;
        for (Distribution.Tilt.Point point : tilt.points()) {
            most = Math.max(most, Math.abs(point.errorN()));
        }
        return most;
    }

    /** Half of the 95.45 % interval that leaves as much below as above, N. */
    static double expandedN(List<Distribution> parts) {
        return new ErrorSum(parts).halfN();
    }

    private double halfN() {
        double highN = quantileN(1 - TAIL);
        return even ? highN : (highN - quantileN(TAIL)) / 2;
    }

    private double quantileN(double probability) {
        double reachN = HALF * stepN;
        double far = scaleN > 0 ? scaleN * StudentT.within(1 - TAIL, freedom) : 0;
        double endN = 2 * (reachN + far);
        if (endN == 0) {
            return 0;
        }
        return Roots.bracketed(xN -> whole(xN) - probability, -endN, endN, 1e-6 * endN);
    }

    /** Probability of at most x, the runs included. */
    private double whole(double xN) {
        if (!(scaleN > 0)) {
            return at(xN);
        }
        if (stepN == 0) {
            return student(xN / scaleN);
        }
        double sum = cdf[0] * student((xN + HALF * stepN) / scaleN);
        for (int i = 0; i < CELLS; i++) {
            double mass = cdf[i + 1] - cdf[i];
            if (mass > 1e-9) {
                sum += mass * student((xN - (i + 0.5 - HALF) * stepN) / scaleN);
            }
        }
        return sum + (1 - cdf[CELLS]) * student((xN - HALF * stepN) / scaleN);
    }

    /** Straight between the points of the grid. */
    private double at(double xN) {
        double place = xN / stepN + HALF;
        if (!(place > 0)) {
            return 0;
        }
        if (place >= CELLS) {
            return 1;
        }
        int i = (int) place;
        return cdf[i] + (place - i) * (cdf[i + 1] - cdf[i]);
    }

    /** Adds a rectangle: the mean of the distribution function over its width. */
    private void spread(double halfN) {
        if (!(halfN > NOTHING * stepN)) {
            return;
        }
        double[] area = new double[CELLS + 1];
        for (int i = 1; i <= CELLS; i++) {
            area[i] = area[i - 1] + stepN * (cdf[i - 1] + cdf[i]) / 2;
        }
        double[] wider = new double[CELLS + 1];
        for (int i = 0; i <= CELLS; i++) {
            double xN = (i - HALF) * stepN;
            wider[i] = (area(area, xN + halfN) - area(area, xN - halfN)) / (2 * halfN);
        }
        cdf = wider;
    }

    /** Integral of the distribution function up to x. */
    private double area(double[] area, double xN) {
        double place = xN / stepN + HALF;
        if (!(place > 0)) {
            return 0;
        }
        if (place >= CELLS) {
            return area[CELLS] + (place - CELLS) * stepN;
        }
        int i = (int) place;
        double part = place - i;
        return area[i] + stepN * part * (cdf[i] + part * (cdf[i + 1] - cdf[i]) / 2);
    }

    private void shift(Distribution.Tilt tilt) {
        if (stepN == 0) {
            return;
        }
        double[] mass = new double[CELLS + 1];
        for (Distribution.Tilt.Point point : tilt.points()) {
            double place = point.errorN() / stepN + HALF;
            int i = Math.min((int) place, CELLS - 1);
            mass[i] += point.probability() * (1 - (place - i));
            mass[i + 1] += point.probability() * (place - i);
        }
        double[] shifted = new double[CELLS + 1];
        for (int k = 0; k <= CELLS; k++) {
            if (mass[k] > 0) {
                for (int i = 0; i <= CELLS; i++) {
                    int from = i - k + HALF;
                    shifted[i] += mass[k] * (from < 0 ? 0 : from > CELLS ? 1 : cdf[from]);
                }
            }
        }
        cdf = shifted;
    }

    /** Distribution function over atan(t/√ν), in which it is smooth and ends. */
    private static double[] table(int freedom) {
        double[] table = new double[ROWS + 1];
        for (int i = 1; i < ROWS / 2; i++) {
            double t = Math.sqrt(freedom) * Math.tan(Math.PI * ((double) i / ROWS - 0.5));
            table[i] = StudentT.cdf(t, freedom);
            table[ROWS - i] = 1 - table[i];
        }
        table[ROWS / 2] = 0.5;
        table[ROWS] = 1;
        return table;
    }

    private double student(double t) {
        double place = (Math.atan(t / Math.sqrt(freedom)) / Math.PI + 0.5) * ROWS;
        int i = Math.min((int) place, ROWS - 1);
        return student[i] + (place - i) * (student[i + 1] - student[i]);
    }
}
