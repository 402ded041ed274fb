package liftwright.numerics;

import java.util.Arrays;

/**
 * A small linear programme with bounds: greatest c·x under A x = b and 0 ≤ x ≤ h, for few rows (up
 * to some ten) and up to some hundred columns. Simplex method for bounded variables; the inverse of
 * the basis follows each step, and is made anew now and then and before an end is believed, so that
 * rounding does not pile up.
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

    /** Steps that an inverse follows before it is made anew. */
    private static final int FOLLOWED = 16;

    private final int rows;
    private final int columns;

    /** Column by column, with one artificial column a row at the end. */
    private final double[] a;

    private final double[] b;
    private final double[] upper;
    private final int[] basis;
    private final boolean[] atUpper;
    private final boolean[] basic;
    private final double[] x;

    /** Of the basis, row by row. */
    private final double[] inverse;

    private final double scale;

    // Scratch.
    private final double[] price;
    private final double[] along;
    private final double[] work;

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
        a = new double[(columns + rows) * rows];
        this.b = b.clone();
        this.upper = Arrays.copyOf(upper, columns + rows);
        double largest = 0;
        for (int i = 0; i < rows; i++) {
            a[(columns + i) * rows + i] = b[i] < 0 ? -1 : 1;
            this.upper[columns + i] = Double.POSITIVE_INFINITY;
            largest = Math.max(largest, Math.abs(b[i]));
            for (int j = 0; j < columns; j++) {
                a[j * rows + i] = rowsOfA[i][j];
                largest = Math.max(largest, Math.abs(rowsOfA[i][j] * upper[j]));
            }
        }
        scale = Math.max(largest, Double.MIN_NORMAL);
        basis = new int[rows];
        basic = new boolean[columns + rows];
        atUpper = new boolean[columns + rows];
        x = new double[columns + rows];
        inverse = new double[rows * rows];
        price = new double[rows];
        along = new double[rows];
        work = new double[2 * rows * rows];
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
        prices(cost);
        return found(c);
    }

    private Found found(double[] c) {
        double value = 0;
        double dual = 0;
        for (int i = 0; i < rows; i++) {
            dual += price[i] * b[i];
        }
        for (int j = 0; j < columns; j++) {
            value += c[j] * x[j];
            double reduced = c[j];
            for (int i = 0; i < rows; i++) {
                reduced -= price[i] * a[j * rows + i];
            }
            dual += Math.max(0, reduced) * upper[j];
        }
        double miss = 0;
        for (int i = 0; i < rows; i++) {
            double sum = -b[i];
            for (int j = 0; j < columns; j++) {
                sum += a[j * rows + i] * x[j];
            }
            miss = Math.max(miss, Math.abs(sum));
        }
        return new Found(
                Arrays.copyOf(x, columns),
                value,
                price.clone(),
                Math.abs(dual - value) / (1 + Math.abs(value)),
                miss / scale);
    }

    /** Simplex steps until no column improves; false when they run out. */
    private boolean climb(double[] cost) {
        refactor();
        int followed = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            prices(cost);
            int in = entering(cost, step > GREEDY_STEPS);
            if (in < 0 && followed == 0) {
                return true;
            }
            if (in >= 0) {
                move(in);
                followed++;
            }
            if (in < 0 || followed == FOLLOWED) {
                refactor();
                followed = 0;
            }
        }
        return false;
    }

    private void prices(double[] cost) {
        for (int i = 0; i < rows; i++) {
            double sum = 0;
            for (int k = 0; k < rows; k++) {
                sum += cost[basis[k]] * inverse[k * rows + i];
            }
            price[i] = sum;
        }
    }

    /** An artificial column never comes back. */
    private int entering(double[] cost, boolean leastIndex) {
        int best = -1;
        double most = 0;
        for (int j = 0; j < columns; j++) {
            if (basic[j] || upper[j] == 0) {
                continue;
            }
            double reduced = cost[j];
            double size = Math.abs(cost[j]);
            for (int i = 0; i < rows; i++) {
                double part = price[i] * a[j * rows + i];
                reduced -= part;
                size += Math.abs(part);
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
        for (int k = 0; k < rows; k++) {
            double sum = 0;
            for (int i = 0; i < rows; i++) {
                sum += inverse[k * rows + i] * a[in * rows + i];
            }
            along[k] = sum;
        }
        double way = upper[in];
        int out = -1;
        for (int k = 0; k < rows; k++) {
            double rate = -direction * along[k];
            if (Math.abs(rate) <= PIVOT) {
                continue;
            }
            double room = rate < 0 ? x[basis[k]] / -rate : (upper[basis[k]] - x[basis[k]]) / rate;
            room = Math.max(0, room);
            boolean sooner = room < way - 1e-12 * (1 + way);
            boolean alike = !sooner && room <= way;
            if (sooner || (alike && out >= 0 && Math.abs(along[k]) > Math.abs(along[out]))) {
                way = Math.min(way, room);
                out = k;
            }
        }
        for (int k = 0; k < rows; k++) {
            x[basis[k]] -= direction * way * along[k];
        }
        if (out < 0) {
            atUpper[in] = !atUpper[in];
            x[in] = atUpper[in] ? upper[in] : 0;
            return;
        }
        int leaves = basis[out];
        boolean toUpper = -direction * along[out] > 0;
        basic[leaves] = false;
        atUpper[leaves] = toUpper;
        x[leaves] = toUpper ? upper[leaves] : 0;
        x[in] += direction * way;
        basic[in] = true;
        basis[out] = in;
        pivot(out);
    }

    /** Lets the inverse follow a column that took a place in the basis. */
    private void pivot(int out) {
        int row = out * rows;
        for (int i = 0; i < rows; i++) {
            inverse[row + i] /= along[out];
        }
        for (int k = 0; k < rows; k++) {
            if (k != out && along[k] != 0) {
                for (int i = 0; i < rows; i++) {
                    inverse[k * rows + i] -= along[k] * inverse[row + i];
                }
            }
        }
    }

    /** Inverse of the basis, and the values of its variables from those of all others. */
    private void refactor() {
        int wide = 2 * rows;
        Arrays.fill(work, 0);
        for (int i = 0; i < rows; i++) {
            for (int k = 0; k < rows; k++) {
                work[i * wide + k] = a[basis[k] * rows + i];
            }
            work[i * wide + rows + i] = 1;
        }
        for (int k = 0; k < rows; k++) {
            exchange(k, wide);
            double by = work[k * wide + k];
            for (int j = 0; j < wide; j++) {
                work[k * wide + j] /= by;
            }
            for (int i = 0; i < rows; i++) {
                double factor = work[i * wide + k];
                if (i != k && factor != 0) {
                    for (int j = 0; j < wide; j++) {
                        work[i * wide + j] -= factor * work[k * wide + j];
                    }
                }
            }
        }
        for (int k = 0; k < rows; k++) {
            System.arraycopy(work, k * wide + rows, inverse, k * rows, rows);
        }
        System.arraycopy(b, 0, along, 0, rows);
        for (int j = 0; j < columns + rows; j++) {
            if (!basic[j] && x[j] != 0) {
                for (int i = 0; i < rows; i++) {
                    along[i] -= a[j * rows + i] * x[j];
                }
            }
        }
        for (int k = 0; k < rows; k++) {
            double value = 0;
            for (int i = 0; i < rows; i++) {
                value += inverse[k * rows + i] * along[i];
            }
            x[basis[k]] = value;
        }
    }

    /** Brings the largest of a column to its place. */
    private void exchange(int k, int wide) {
        int pivot = k;
        for (int i = k + 1; i < rows; i++) {
            if (Math.abs(work[i * wide + k]) > Math.abs(work[pivot * wide + k])) {
                pivot = i;
            }
        }
        for (int j = 0; pivot != k && j < wide; j++) {
            double swap = work[k * wide + j];
            work[k * wide + j] = work[pivot * wide + j];
            work[pivot * wide + j] = swap;
        }
    }
}
