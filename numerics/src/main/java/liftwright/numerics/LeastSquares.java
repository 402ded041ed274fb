package liftwright.numerics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresFactory;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * Nonlinear least squares: the values of some unknowns that make the sum of squared rows least.
 * Levenberg–Marquardt finds a place [MORE78]; whether it is a least is then proven apart from how
 * it was found: the first-order step must be negligible, every unknown must count, and going a
 * little either way along each principal axis must not lower the sum. Held against certified fits
 * [NISTSTRD].
 *
 * <p>A row is (model − measured) / standard deviation. What was known before is a row too ({@link
 * #prior}). Positive unknowns are fitted in logarithms, so no bound is ever run into.
 */
public final class LeastSquares {

    /** The model: rows from unknowns. */
    @FunctionalInterface
    public interface Rows {
        /**
         * @param unknowns natural values (not logarithms) with their slopes
         * @param rows takes every row
         */
        void at(Dual[] unknowns, Dual[] rows);

        /**
         * The rows alone, for who asks no slopes; the same numbers.
         *
         * @param unknowns natural values
         * @param rows takes every row
         */
        default void valuesAt(double[] unknowns, double[] rows) {
            int n = unknowns.length;
            Dual[] told = new Dual[n];
            for (int k = 0; k < n; k++) {
                told[k] = Dual.unknown(unknowns[k], k, n);
            }
            Dual[] out = new Dual[rows.length];
            at(told, out);
            for (int i = 0; i < rows.length; i++) {
                rows[i] = out[i].value();
            }
        }
    }

    private record Prior(int unknown, double mean, double deviation) {

        double row(double[] coordinate) {
            return (coordinate[unknown] - mean) / deviation;
        }
    }

    /**
     * Singular values of the scaled slopes below this share of the greatest: an open combination.
     */
    private static final double OPEN = 1e-10;

    /** Steps left must be below this share of what the rows' scatter leaves open. */
    private static final double SETTLED = 1e-4;

    /** Of a coordinate: a step this small is rounding, whatever the scatter. */
    private static final double ROUNDING = 1e-9;

    /** How far to either side the proof looks, in standard deviations. */
    private static final double LOOK = 0.03;

    /** Rounding of a sum of squares, as a share of it. */
    private static final double FLAT = 1e-13;

    /** Share of the rise that a bowl of the same slopes would show, to call a place a least. */
    private static final double BOWL = 0.1;

    private static final int MOST_EVALUATIONS = 20_000;
    private static final int MOST_POLISHING = 30;

    /** A row without a value; its square still adds up in doubles. */
    private static final double NOWHERE = 1e100;

    private final int rows;
    private final boolean[] positive;
    private final Rows model;
    private final List<Prior> priors = new ArrayList<>();
    private double tolerance = 1e-15;

    /**
     * @param rows how many the model gives
     * @param positive for each unknown, whether it is above 0
     */
    public LeastSquares(int rows, boolean[] positive, Rows model) {
        this.rows = rows;
        this.positive = positive.clone();
        this.model = model;
    }

    /**
     * Where the walk ends: at a change of the sum or of every unknown by this share. Slopes by
     * differences leave some 1e-9 in doubt, within which a walk never comes to rest.
     */
    public LeastSquares tolerance(double share) {
        tolerance = share;
        return this;
    }

    /**
     * Adds what was known before.
     *
     * @param mean of the coordinate: of ln x for a positive unknown
     * @param deviation standard deviation of the coordinate, &gt; 0
     */
    public LeastSquares prior(int unknown, double mean, double deviation) {
        Objects.checkIndex(unknown, positive.length);
        if (!(deviation > 0)) {
            throw new IllegalArgumentException("a prior has a deviation above 0");
        }
        priors.add(new Prior(unknown, mean, deviation));
        return this;
    }

    /** One evaluation: rows, priors, slopes by coordinate. */
    private static final class Place {
        final double[] coordinate;
        final double[] row;
        final double[][] slope;
        final double sum;

        Place(double[] coordinate, double[] row, double[][] slope) {
            this.coordinate = coordinate;
            this.row = row;
            this.slope = slope;
            double squares = 0;
            for (double r : row) {
                squares += r * r;
            }
            sum = squares;
        }

        boolean exists() {
            return sum < NOWHERE;
        }
    }

    /** The best place met, and how many were. */
    private static final class Walk {
        Place best;
        int evaluations;

        Walk(Place start) {
            best = start;
            evaluations = 1;
        }

        Place met(Place place) {
            evaluations++;
            if (place.sum < best.sum) {
                best = place;
            }
            return place;
        }
    }

    /**
     * Fits from a start.
     *
     * @param start a value for each unknown, above 0 for positive ones; the rows exist there
     * @throws IllegalArgumentException if there are fewer rows and priors than unknowns, or the
     *     model has no value at the start
     */
    public LeastSquaresFit fit(double[] start) {
        int n = positive.length;
        if (start.length != n || n == 0 || rows + priors.size() < n) {
            throw new IllegalArgumentException(
                    rows + " rows and " + priors.size() + " priors for " + n + " unknowns");
        }
        double[] coordinate = new double[n];
        for (int k = 0; k < n; k++) {
            if (positive[k] && !(start[k] > 0)) {
                throw new IllegalArgumentException("a positive unknown starts at " + start[k]);
            }
            coordinate[k] = positive[k] ? Math.log(start[k]) : start[k];
        }
        Place first = place(coordinate);
        if (!first.exists()) {
            throw new IllegalArgumentException("the rows have no value at the start");
        }
        Walk walk = new Walk(first);
        walk(walk);
        return judged(walk);
    }

    private void walk(Walk walk) {
        try {
            LevenbergMarquardtOptimizer walker =
                    new LevenbergMarquardtOptimizer()
                            .withCostRelativeTolerance(tolerance)
                            .withParameterRelativeTolerance(tolerance)
                            .withOrthoTolerance(tolerance);
            walker.optimize(
                    LeastSquaresFactory.create(
                            point -> {
                                Place at = walk.met(place(point.toArray()));
                                return new Pair<>(
                                        new ArrayRealVector(at.row, false),
                                        new Array2DRowRealMatrix(at.slope, false));
                            },
                            new ArrayRealVector(walk.best.row.length),
                            new ArrayRealVector(walk.best.coordinate),
                            null,
                            MOST_EVALUATIONS,
                            MOST_EVALUATIONS));
        } catch (MathRuntimeException _) {
            // It says that it cannot improve further, or gives up: the proof judges the best place
            // met, whatever the walker thought of it.
        }
    }

    private LeastSquaresFit judged(Walk walk) {
        Solved solved = solve(walk.best);
        // The sum is flat to half the digits near its least; the step left there still falls.
        for (int k = 0; k < MOST_POLISHING && !solved.open; k++) {
            Place next = place(plus(walk.best.coordinate, solved.step, 1));
            walk.evaluations++;
            if (!(next.sum <= walk.best.sum * (1 + FLAT))) {
                break;
            }
            Solved after = solve(next);
            if (after.open || !(after.decrease < solved.decrease)) {
                break;
            }
            walk.best = next;
            solved = after;
        }
        LeastSquaresFit.Status status;
        if (solved.open) {
            status = LeastSquaresFit.Status.UNDETERMINED;
        } else if (settled(walk.best, solved) && least(walk, solved)) {
            status = LeastSquaresFit.Status.CONVERGED;
        } else {
            status = LeastSquaresFit.Status.NOT_CONVERGED;
        }
        Place best = walk.best;
        double[] solution = new double[positive.length];
        for (int k = 0; k < solution.length; k++) {
            solution[k] = positive[k] ? Math.exp(best.coordinate[k]) : best.coordinate[k];
        }
        return new LeastSquaresFit(
                solution,
                solved.covariance,
                Arrays.copyOf(best.row, rows),
                best.sum,
                best.row.length - positive.length,
                walk.evaluations,
                status);
    }

    /** The linear problem at a place. */
    private static final class Solved {
        final boolean open;

        /** To its least, per coordinate. */
        final double[] step;

        /** Of the sum of squares, that the step promises. */
        final double decrease;

        final double[] covariance;

        /** Principal axes, each one standard deviation of a unit row long. */
        final double[][] axes;

        Solved(boolean open, double[] step, double decrease, double[] covariance, double[][] axes) {
            this.open = open;
            this.step = step;
            this.decrease = decrease;
            this.covariance = covariance;
            this.axes = axes;
        }
    }

    private static Solved solve(Place at) {
        int n = at.coordinate.length;
        double[] scale = new double[n];
        for (double[] by : at.slope) {
            for (int k = 0; k < n; k++) {
                scale[k] = Math.hypot(scale[k], by[k]);
            }
        }
        Array2DRowRealMatrix scaled = new Array2DRowRealMatrix(at.row.length, n);
        boolean open = false;
        for (int k = 0; k < n; k++) {
            open |= !(scale[k] > 0);
            for (int i = 0; i < at.row.length; i++) {
                scaled.setEntry(i, k, scale[k] > 0 ? at.slope[i][k] / scale[k] : 0);
            }
        }
        double[] step = new double[n];
        double[] covariance = new double[n * n];
        double[][] axes = new double[n][n];
        if (open) {
            return new Solved(true, step, 0, covariance, axes);
        }
        SingularValueDecomposition parts = new SingularValueDecomposition(scaled);
        double[] singular = parts.getSingularValues();
        double decrease = 0;
        for (int j = 0; j < n; j++) {
            if (singular[j] <= OPEN * singular[0]) {
                return new Solved(true, new double[n], 0, covariance, axes);
            }
            double along = 0;
            for (int i = 0; i < at.row.length; i++) {
                along += parts.getU().getEntry(i, j) * at.row[i];
            }
            decrease += along * along;
            for (int k = 0; k < n; k++) {
                axes[j][k] = parts.getV().getEntry(k, j) / singular[j] / scale[k];
                step[k] -= along * axes[j][k];
            }
        }
        for (double[] axis : axes) {
            for (int k = 0; k < n; k++) {
                for (int l = 0; l < n; l++) {
                    covariance[k * n + l] += axis[k] * axis[l];
                }
            }
        }
        return new Solved(false, step, decrease, covariance, axes);
    }

    /** Whether the step that is left is nothing beside the scatter, or beside rounding. */
    private static boolean settled(Place at, Solved solved) {
        int freedom = at.row.length - at.coordinate.length;
        if (freedom > 0 && solved.decrease <= SETTLED * SETTLED * at.sum / freedom) {
            return true;
        }
        for (int k = 0; k < at.coordinate.length; k++) {
            if (!(Math.abs(solved.step[k]) <= ROUNDING * Math.max(1, Math.abs(at.coordinate[k])))) {
                return false;
            }
        }
        return true;
    }

    /** Whether the sum rises to both sides along every axis, as it does around a least. */
    private boolean least(Walk walk, Solved solved) {
        Place best = walk.best;
        int freedom = best.row.length - best.coordinate.length;
        double unit = freedom > 0 ? Math.sqrt(best.sum / freedom) : 0;
        double length = Math.max(LOOK * unit, 1e-7 * Math.sqrt(best.row.length));
        for (double[] axis : solved.axes) {
            for (int side = -1; side <= 1; side += 2) {
                double sum = sum(plus(best.coordinate, axis, side * length));
                walk.evaluations++;
                if (!(sum - best.sum >= BOWL * length * length)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static double[] plus(double[] from, double[] step, double factor) {
        double[] to = from.clone();
        for (int k = 0; k < to.length; k++) {
            to[k] += factor * step[k];
        }
        return to;
    }

    /** Sum of squares at a place; no number where the model has no value. */
    private double sum(double[] coordinate) {
        double[] unknowns = new double[coordinate.length];
        for (int k = 0; k < unknowns.length; k++) {
            unknowns[k] = positive[k] ? Math.exp(coordinate[k]) : coordinate[k];
        }
        double[] row = new double[rows];
        model.valuesAt(unknowns, row);
        double sum = 0;
        for (double r : row) {
            sum += r * r;
        }
        for (Prior prior : priors) {
            double r = prior.row(coordinate);
            sum += r * r;
        }
        return sum;
    }

    private Place place(double[] coordinate) {
        int n = positive.length;
        int all = rows + priors.size();
        Dual[] unknowns = new Dual[n];
        for (int k = 0; k < n; k++) {
            Dual plain = Dual.unknown(coordinate[k], k, n);
            unknowns[k] = positive[k] ? plain.exp() : plain;
        }
        Dual[] out = new Dual[rows];
        model.at(unknowns, out);
        double[] row = new double[all];
        double[][] slope = new double[all][n];
        for (int i = 0; i < rows; i++) {
            boolean finite = Double.isFinite(out[i].value());
            for (int k = 0; k < n; k++) {
                finite &= Double.isFinite(out[i].slope(k));
            }
            if (!finite) {
                Arrays.fill(row, NOWHERE);
                for (double[] by : slope) {
                    Arrays.fill(by, 0);
                }
                return new Place(coordinate, row, slope);
            }
            row[i] = out[i].value();
            for (int k = 0; k < n; k++) {
                slope[i][k] = out[i].slope(k);
            }
        }
        for (int i = rows; i < all; i++) {
            Prior prior = priors.get(i - rows);
            row[i] = prior.row(coordinate);
            slope[i][prior.unknown] = 1 / prior.deviation;
        }
        return new Place(coordinate, row, slope);
    }
}
