package liftwright.numerics;

import java.util.Arrays;

/**
 * A small linear programme with bounds: greatest c·x under A x = b and 0 ≤ x ≤ h, for few rows (up
 * to some ten) and up to some hundred columns. Simplex method for bounded variables; the basis is
 * factored anew at every step, which costs little at this size and keeps rounding from piling up.
 *
 * <p>Source: Chvátal, Linear Programming, 1983, chapter 8 (from memory). What it finds carries its
 * own proof: {@link Found#gap} is the distance of the primal from the dual value.
 */
public final class BoundedProgram {

    private static final double PIVOT = 1e-11;
    private static final double REDUCED = 1e-11;
    private static final double FEASIBLE = 1e-9;

    /** Steps after which the least index decides, so that no circle lasts. */
    private static final int GREEDY_STEPS = 200;

    private static final int MOST_STEPS = 5000;

    private final int rows;
    private final int columns;

    /** Row by row, with one artificial column a row at the end. */
    private final double[][] a;

    private final double[] b;
    private final double[] upper;
    private final int[] basis;
    private final boolean[] atUpper;
    private final boolean[] basic;
    private final double[] x;
    private final double[][] inverse;
    private final double scale;

    /** What came of it. */
    public sealed interface Result {}

    /**
     * An optimum.
     *
     * @param x the point
     * @param value c·x
     * @param price dual value of each row: what one more of its right side adds
     * @param gap difference of primal and dual value over 1 + |value|; rounding leaves about 1e-12
     * @param miss greatest |A x − b| over the size of the terms
     */
    @SuppressWarnings("ArrayRecordComponent") // handed out once, never compared
    public record Found(double[] x, double value, double[] price, double gap, double miss)
            implements Result {}

    /** No point meets the rows within the bounds. */
    public record Impossible() implements Result {}

    /** Steps ran out, which bounded programmes of this size do not see. */
    public record Undecided() implements Result {}

    private BoundedProgram(double[][] rowsOfA, double[] b, double[] upper) {
        rows = b.length;
        columns = upper.length;
        a = new double[rows][columns + rows];
        this.b = b.clone();
        this.upper = Arrays.copyOf(upper, columns + rows);
        double largest = 0;
        for (int i = 0; i < rows; i++) {
            System.arraycopy(rowsOfA[i], 0, a[i], 0, columns);
            a[i][columns + i] = b[i] < 0 ? -1 : 1;
            this.upper[columns + i] = Double.POSITIVE_INFINITY;
            largest = Math.max(largest, Math.abs(b[i]));
            for (int j = 0; j < columns; j++) {
                largest = Math.max(largest, Math.abs(a[i][j] * upper[j]));
            }
        }
        scale = Math.max(largest, Double.MIN_NORMAL);
        basis = new int[rows];
        basic = new boolean[columns + rows];
        atUpper = new boolean[columns + rows];
        x = new double[columns + rows];
        inverse = new double[rows][rows];
        for (int i = 0; i < rows; i++) {
            basis[i] = columns + i;
            basic[columns + i] = true;
        }
    }

    /**
     * Solves it.
     *
     * @param c in: one number a column
     * @param rowsOfA in: rows of as many numbers; best scaled so that the rows are of like size
     * @param b in: right sides
     * @param upper in: finite, ≥ 0
     */
    public static Result greatest(double[] c, double[][] rowsOfA, double[] b, double[] upper) {
        for (double bound : upper) {
            if (!(bound >= 0 && bound < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("an upper bound is finite and not below 0");
            }
        }
        return new BoundedProgram(rowsOfA, b, upper).solve(c);
    }

    private Result solve(double[] c) {
        double[] toFeasible = new double[columns + rows];
        Arrays.fill(toFeasible, columns, columns + rows, -1);
        if (!climb(toFeasible)) {
            return new Undecided();
        }
        double left = 0;
        for (int j = columns; j < columns + rows; j++) {
            left += x[j];
        }
        if (left > FEASIBLE * scale) {
            return new Impossible();
        }
        Arrays.fill(upper, columns, columns + rows, 0);
        double[] cost = Arrays.copyOf(c, columns + rows);
        if (!climb(cost)) {
            return new Undecided();
        }
        return found(c, prices(cost));
    }

    private Found found(double[] c, double[] price) {
        double value = 0;
        double dual = 0;
        for (int i = 0; i < rows; i++) {
            dual += price[i] * b[i];
        }
        for (int j = 0; j < columns; j++) {
            value += c[j] * x[j];
            double reduced = c[j];
            for (int i = 0; i < rows; i++) {
                reduced -= price[i] * a[i][j];
            }
            dual += Math.max(0, reduced) * upper[j];
        }
        double miss = 0;
        for (int i = 0; i < rows; i++) {
            double sum = -b[i];
            for (int j = 0; j < columns; j++) {
                sum += a[i][j] * x[j];
            }
            miss = Math.max(miss, Math.abs(sum));
        }
        return new Found(
                Arrays.copyOf(x, columns),
                value,
                price,
                Math.abs(dual - value) / (1 + Math.abs(value)),
                miss / scale);
    }

    /** Simplex steps until no column improves; false when they run out. */
    private boolean climb(double[] cost) {
        for (int step = 0; step < MOST_STEPS; step++) {
            refactor();
            double[] price = prices(cost);
            int in = entering(cost, price, step > GREEDY_STEPS);
            if (in < 0) {
                return true;
            }
            move(in);
        }
        return false;
    }

    private double[] prices(double[] cost) {
        double[] price = new double[rows];
        for (int i = 0; i < rows; i++) {
            for (int k = 0; k < rows; k++) {
                price[i] += cost[basis[k]] * inverse[k][i];
            }
        }
        return price;
    }

    /** An artificial column never comes back. */
    private int entering(double[] cost, double[] price, boolean leastIndex) {
        int best = -1;
        double most = 0;
        for (int j = 0; j < columns; j++) {
            if (basic[j] || upper[j] == 0) {
                continue;
            }
            double reduced = cost[j];
            double size = Math.abs(cost[j]);
            for (int i = 0; i < rows; i++) {
                reduced -= price[i] * a[i][j];
                size += Math.abs(price[i] * a[i][j]);
            }
            double gain = atUpper[j] ? -reduced : reduced;
            if (gain > REDUCED * size) {
                if (leastIndex) {
                    return j;
                }
                if (gain > most) {
                    most = gain;
                    best = j;
                }
            }
        }
        return best;
    }

    private void move(int in) {
        double direction = atUpper[in] ? -1 : 1;
        double[] w = new double[rows];
        for (int k = 0; k < rows; k++) {
            for (int i = 0; i < rows; i++) {
                w[k] += inverse[k][i] * a[i][in];
            }
        }
        double way = upper[in];
        int out = -1;
        for (int k = 0; k < rows; k++) {
            double rate = -direction * w[k];
            if (Math.abs(rate) <= PIVOT) {
                continue;
            }
            double room = rate < 0 ? x[basis[k]] / -rate : (upper[basis[k]] - x[basis[k]]) / rate;
            room = Math.max(0, room);
            boolean sooner = room < way - 1e-12 * (1 + way);
            boolean alike = !sooner && room <= way;
            if (sooner || (alike && out >= 0 && Math.abs(w[k]) > Math.abs(w[out]))) {
                way = Math.min(way, room);
                out = k;
            }
        }
        if (out < 0) {
            atUpper[in] = !atUpper[in];
            x[in] = atUpper[in] ? upper[in] : 0;
            return;
        }
        int leaves = basis[out];
        boolean toUpper = -direction * w[out] > 0;
        basic[leaves] = false;
        atUpper[leaves] = toUpper;
        x[leaves] = toUpper ? upper[leaves] : 0;
        basic[in] = true;
        basis[out] = in;
    }

    /** Inverse of the basis, and the values of its variables from those of all others. */
    private void refactor() {
        double[][] work = new double[rows][2 * rows];
        for (int i = 0; i < rows; i++) {
            for (int k = 0; k < rows; k++) {
                work[i][k] = a[i][basis[k]];
            }
            work[i][rows + i] = 1;
        }
        for (int k = 0; k < rows; k++) {
            int pivot = k;
            for (int i = k + 1; i < rows; i++) {
                if (Math.abs(work[i][k]) > Math.abs(work[pivot][k])) {
                    pivot = i;
                }
            }
            double[] swap = work[k];
            work[k] = work[pivot];
            work[pivot] = swap;
            double by = work[k][k];
            for (int j = 0; j < 2 * rows; j++) {
                work[k][j] /= by;
            }
            for (int i = 0; i < rows; i++) {
                double factor = work[i][k];
                if (i != k && factor != 0) {
                    for (int j = 0; j < 2 * rows; j++) {
                        work[i][j] -= factor * work[k][j];
                    }
                }
            }
        }
        for (int k = 0; k < rows; k++) {
            System.arraycopy(work[k], rows, inverse[k], 0, rows);
        }
        double[] right = b.clone();
        for (int j = 0; j < columns + rows; j++) {
            if (!basic[j] && x[j] != 0) {
                for (int i = 0; i < rows; i++) {
                    right[i] -= a[i][j] * x[j];
                }
            }
        }
        for (int k = 0; k < rows; k++) {
            double value = 0;
            for (int i = 0; i < rows; i++) {
                value += inverse[k][i] * right[i];
            }
            x[basis[k]] = value;
        }
    }
}
