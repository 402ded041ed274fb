package liftwright.numerics;

import java.util.Arrays;

/**
 * A small linear programme that is solved again and again: greatest c·x under A x = b and l ≤ x ≤
 * h, for few rows (up to some ten) and up to some hundred columns, of which bounds, right sides and
 * prices change between solves. Since every column has two bounds, any basis is dual feasible with
 * each other column at the bound that its price points to; so a basis of another programme is a
 * start, however much has changed, and few steps lead on. Dual simplex method with steps that pass
 * bounds on their way (Maros, Computational Techniques of the Simplex Method, 2003, chapter 10,
 * from memory).
 *
 * <p>What it finds carries its own proof: {@link #gap} is the distance of the primal from the dual
 * value, and of a programme without a point {@link #shortfall} tells by how much a sum of rows
 * misses whatever the columns do. Holds its scratch and allocates nothing after it was made; for
 * one thread.
 */
public final class WarmProgram {

    /** What came of it. */
    public enum Outcome {
        /** An optimum, with {@link #gap} for proof. */
        FOUND,
        /** No point meets the rows within the bounds, by {@link #shortfall}. */
        IMPOSSIBLE,
        /** Steps ran out. */
        UNDECIDED
    }

    /** A basis to start from, of a programme of the same size. */
    public static final class Start {
        final int[] basis;
        final boolean[] atUpper;
        final BasisInverse inverse;
        final double[] price;
        final double[] reduced;
        boolean made;

        /** Steps that the inverse has followed. */
        int followed;

        /** For which worths prices were found; none where below 0. */
        long worths = -1;

        /** Whether A has changed since: the inverse is to be made anew. */
        boolean stale;

        Start(int rows, int columns) {
            basis = new int[rows];
            atUpper = new boolean[columns + rows];
            inverse = new BasisInverse(rows, columns + rows);
            price = new double[rows];
            reduced = new double[columns + rows];
        }

        /** Takes over another start of the same size. */
        public void copy(Start other) {
            System.arraycopy(other.basis, 0, basis, 0, basis.length);
            System.arraycopy(other.atUpper, 0, atUpper, 0, atUpper.length);
            inverse.copy(other.inverse);
            System.arraycopy(other.price, 0, price, 0, price.length);
            System.arraycopy(other.reduced, 0, reduced, 0, reduced.length);
            worths = other.worths;
            followed = other.followed;
            made = other.made;
            stale = other.stale;
        }

        /** Tells that A has changed: the basis is a start still, its inverse is none. */
        public void renew() {
            stale = true;
            worths = -1;
        }

        /** Forgets where it ended: the next solve begins with nothing. */
        public void clear() {
            made = false;
            stale = false;
            worths = -1;
        }
    }

    /** Gaps and misses beyond this are looked at again with all that follows steps made anew. */
    private static final double PROVED = 1e-12;

    private final int rows;
    private final int columns;

    /** Row by row, with one artificial column a row at the end, which stays at 0. */
    private final double[] a;

    private final double[] b;
    private final double[] c;
    private final double[] lower;
    private final double[] upper;

    /** Greatest number of each row of A; to be found again where below 0. */
    private final double[] greatest;

    private final DualSteps steps;
    private boolean worthKnown;
    private double value;
    private double gap;
    private double miss;

    public WarmProgram(int rows, int columns) {
        this.rows = rows;
        this.columns = columns;
        int all = columns + rows;
        a = new double[all * rows];
        for (int i = 0; i < rows; i++) {
            a[i * all + columns + i] = 1;
        }
        b = new double[rows];
        c = new double[all];
        lower = new double[all];
        upper = new double[all];
        greatest = new double[rows];
        Arrays.fill(greatest, -1);
        steps = new DualSteps(rows, columns, a, b, c);
    }

    /** An empty start for programmes of this size. */
    public Start newStart() {
        return new Start(rows, columns);
    }

    /**
     * Sets a number of A; starts made before are to {@link Start#renew}. Rows best of like size.
     */
    public void coefficient(int i, int j, double number) {
        a[i * c.length + j] = number;
        greatest[i] = -1;
        worthKnown = false;
    }

    /** Sets a right side. */
    public void right(int i, double number) {
        b[i] = number;
    }

    /** Sets what one unit of a column is worth. */
    public void worth(int j, double number) {
        c[j] = number;
        worthKnown = false;
    }

    /**
     * Sets the bounds of a column.
     *
     * @param least finite
     * @param most finite, not below {@code least}
     */
    public void bounds(int j, double least, double most) {
        if (!(Math.abs(least) < Double.POSITIVE_INFINITY
                && most < Double.POSITIVE_INFINITY
                && most >= least)) {
            throw new IllegalArgumentException("bounds are finite and in order");
        }
        lower[j] = least;
        upper[j] = most;
    }

    /**
     * Solves what is set.
     *
     * @param start in: where to begin, or empty; out: where it ended
     */
    public Outcome solve(Start start) {
        Outcome outcome = solveFrom(start);
        steps.end(start);
        return outcome;
    }

    /**
     * The same from a start that stays as it is.
     *
     * @param start in: where to begin
     */
    public Outcome solveFrom(Start start) {
        if (!worthKnown) {
            double most = 0;
            for (int j = 0; j < columns; j++) {
                if (Math.abs(c[j]) > most) {
                    most = Math.abs(c[j]);
                }
            }
            steps.worthsAre(most);
            worthKnown = true;
        }
        steps.begin(start, lower, upper);
        Outcome outcome = steps.descend();
        if (outcome == Outcome.FOUND) {
            prove();
            if ((gap > PROVED || miss > PROVED) && steps.hasFollowed()) {
                outcome = steps.refresh() ? steps.descend() : Outcome.UNDECIDED;
                prove();
            }
        }
        return outcome;
    }

    /** Sets what one unit of every column is worth. */
    public void worths(double sign, double[] numbers) {
        for (int j = 0; j < columns; j++) {
            c[j] = sign * numbers[j];
        }
        worthKnown = false;
    }

    /** The point found last, one number a column; the caller must not change it. */
    public double[] x() {
        return steps.x;
    }

    /** Dual value of each row: what one more of its right side adds. */
    public double[] price() {
        return steps.price;
    }

    /** c·x. */
    public double value() {
        return value;
    }

    /** Difference of primal and dual value over 1 + |value|; rounding leaves about 1e-15. */
    public double gap() {
        return gap;
    }

    /**
     * Greatest of |A x − b| over the greatest term there can be and of x outside its bounds over
     * the greatest bound.
     */
    public double miss() {
        return miss;
    }

    /**
     * What every sum ρ·A x of columns within their bounds misses of ρ·b, over the terms, for one ρ;
     * above 0 this proves that no point meets the rows.
     */
    public double shortfall() {
        return steps.shortfall;
    }

    /** Steps of the last solve. */
    public int steps() {
        return steps.taken;
    }

    /** Value, its bound by the prices, and how well the point keeps to rows and bounds. */
    private void prove() {
        double[] x = steps.x;
        double[] worth = steps.reduced;
        int width = c.length;
        value = DualSteps.dot(c, 0, x, columns);
        miss = 0;
        double bound = 0;
        for (int i = 0; i < rows; i++) {
            double sum = DualSteps.dot(a, i * width, x, columns) - b[i];
            double terms = Math.abs(b[i]) + greatest(i) * steps.size;
            miss = Math.max(miss, Math.abs(sum) / Math.max(terms, Double.MIN_NORMAL));
            bound += steps.price[i] * b[i];
        }
        double outside = 0;
        for (int j = 0; j < columns; j++) {
            bound += worth[j] * (worth[j] > 0 ? upper[j] : lower[j]);
            if (x[j] - upper[j] > outside) {
                outside = x[j] - upper[j];
            }
            if (lower[j] - x[j] > outside) {
                outside = lower[j] - x[j];
            }
        }
        miss = Math.max(miss, outside / steps.size);
        gap = Math.abs(bound - value) / (1 + Math.abs(value));
    }

    private double greatest(int i) {
        if (greatest[i] < 0) {
            double most = 0;
            for (int j = 0; j < columns; j++) {
                most = Math.max(most, Math.abs(a[i * c.length + j]));
            }
            greatest[i] = most;
        }
        return greatest[i];
    }
}
