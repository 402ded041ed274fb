package liftwright.numerics;

import java.util.Arrays;

/**
 * The least power that meets a few sums: least Σ (p_j x_j^1.5 + q_j x_j²) under A x = b and 0 ≤ x ≤
 * 1. A fan's shaft power goes with its thrust to the power 1.5 and the heat in its winding with the
 * square; both are convex, so the optimum is one.
 *
 * <p>Primal–dual interior point with predictor and corrector (Mehrotra, SIAM J. Optim. 2(4), 1992,
 * 575–601); each step solves as many linear equations as there are rows. What it finds carries its
 * own proof: for any prices y, y·b + Σ min over 0 ≤ x ≤ 1 of (power − (Aᵀy) x) is a bound from
 * below, in closed form here, and {@link Found#gap} is the distance to it. Where the sums leave so
 * little room that no point is inside all bounds, the columns that a linear programme proves to
 * stand at a bound are set there and the rest is solved again.
 *
 * <p>Holds its scratch: one object for one thread and one size. {@link #solve} allocates only where
 * nothing seems to meet the sums, which a linear programme then decides.
 */
public final class LeastPower {

    /** A gap that counts as proof, over 1 + |value|. */
    private static final double PROVED = 1e-10;

    /** A gap that rounding makes: more steps would not narrow it. */
    private static final double CLOSED = 1e-15;

    private static final int MOST_STEPS = 120;

    /** Steps after which the corrector, which can go round in circles, is left out. */
    private static final int BOLD_STEPS = 25;

    /** Share of the mean product that a cautious step goes for. */
    private static final double CENTRED = 0.2;

    /** Share of the way to the nearest bound. */
    private static final double INSIDE = 0.995;

    /** A pivot below this share of its diagonal is a row that others make up. */
    private static final double DEPENDENT = 1e-13;

    /** Sums are met to this share of the greatest term. */
    private static final double MET = 1e-10;

    private final int rows;
    private final int columns;
    private final double[] p;
    private final double[] q;
    private final double[][] a;
    private final double[] b;
    private final boolean[] idle;
    private final double[] x;
    private final double[] price;
    private final double[] atLower;
    private final double[] atUpper;
    private final double[] stepX;
    private final double[] stepLower;
    private final double[] stepUpper;
    private final double[] stepPrice;
    private final double[] theta;
    private final double[] right;
    private final double[][] normal;
    private double value;
    private double gap;
    private double miss;
    private double unit;

    /** What came of it. */
    public sealed interface Result {}

    /**
     * An optimum.
     *
     * @param value of the sum
     * @param gap distance to the bound from below, over 1 + |value|, with powers over the greatest
     * @param miss greatest |A x − b| over the greatest term
     */
    public record Found(double value, double gap, double miss) implements Result {}

    /** No point meets the sums within the bounds. */
    public record Impossible() implements Result {}

    /** Steps ran out before the proof. */
    public record Undecided() implements Result {}

    public LeastPower(int rows, int columns) {
        this.rows = rows;
        this.columns = columns;
        p = new double[columns];
        q = new double[columns];
        a = new double[rows][columns];
        b = new double[rows];
        idle = new boolean[columns];
        x = new double[columns];
        price = new double[rows];
        atLower = new double[columns];
        atUpper = new double[columns];
        stepX = new double[columns];
        stepLower = new double[columns];
        stepUpper = new double[columns];
        stepPrice = new double[rows];
        theta = new double[columns];
        right = new double[columns];
        normal = new double[rows][rows + 1];
    }

    /**
     * Solves it.
     *
     * @param shaft in: p_j ≥ 0
     * @param heat in: q_j ≥ 0; a column without power must be nought in all rows, and rests at 0
     * @param rowsOfA in: of like size
     * @param sums in: b
     */
    public Result solve(double[] shaft, double[] heat, double[][] rowsOfA, double[] sums) {
        load(shaft, heat, rowsOfA, sums);
        if (descend()) {
            return new Found(value * unit, gap, miss);
        }
        double[] share = new double[columns];
        Arrays.fill(share, 1);
        return BoundedProgram.greatest(new double[columns], a, b, share)
                        instanceof BoundedProgram.Impossible
                ? new Impossible()
                : new Undecided();
    }

    /** The point found last; the caller must not change it. */
    public double[] x() {
        return x;
    }

    /** The prices that prove it: what one more of each sum costs, over the greatest power. */
    public double[] price() {
        return price;
    }

    /** The greatest power of a column, in which {@link #price} is told. */
    public double unit() {
        return unit;
    }

    private void load(double[] shaft, double[] heat, double[][] rowsOfA, double[] sums) {
        unit = 0;
        for (int j = 0; j < columns; j++) {
            if (!(shaft[j] >= 0 && heat[j] >= 0)) {
                throw new IllegalArgumentException("a power is not below 0");
            }
            unit = Math.max(unit, shaft[j] + heat[j]);
        }
        if (unit == 0) {
            unit = 1;
        }
        for (int i = 0; i < rows; i++) {
            System.arraycopy(rowsOfA[i], 0, a[i], 0, columns);
            b[i] = sums[i];
        }
        for (int j = 0; j < columns; j++) {
            p[j] = shaft[j] / unit;
            q[j] = heat[j] / unit;
            idle[j] = p[j] + q[j] == 0;
            x[j] = 0;
            for (int i = 0; idle[j] && i < rows; i++) {
                if (a[i][j] != 0) {
                    throw new IllegalArgumentException("a column without power gives nothing");
                }
            }
        }
    }

    /** Interior-point steps from the middle; whether the gap was closed. */
    private boolean descend() {
        for (int j = 0; j < columns; j++) {
            if (!idle[j]) {
                x[j] = 0.5;
                atLower[j] = 1;
                atUpper[j] = 1;
            }
        }
        Arrays.fill(price, 0);
        double before = Double.POSITIVE_INFINITY;
        for (int step = 0; step < MOST_STEPS; step++) {
            boolean proved = proved();
            if (proved && (gap <= CLOSED || gap > before / 2)) {
                return true;
            }
            before = gap;
            step(step >= BOLD_STEPS);
        }
        return proved();
    }

    private int free() {
        int free = 0;
        for (int j = 0; j < columns; j++) {
            free += idle[j] ? 0 : 1;
        }
        return free;
    }

    /**
     * @param cautious whether to go for a point well inside in place of the boldest one
     */
    private void step(boolean cautious) {
        int free = free();
        if (free == 0) {
            return;
        }
        double mu = 0;
        for (int j = 0; j < columns; j++) {
            if (!idle[j]) {
                mu += x[j] * atLower[j] + (1 - x[j]) * atUpper[j];
                theta[j] = 1 / (bend(j) + atLower[j] / x[j] + atUpper[j] / (1 - x[j]));
            }
        }
        mu /= 2 * free;
        if (cautious) {
            direction(CENTRED * mu, false);
        } else {
            // Predictor: straight for the bounds. Corrector: back towards the middle by as much as
            // the predictor fell short.
            direction(0, false);
            double share = left(Math.min(wayX(), wayDual())) / (2 * free) / mu;
            direction(share * share * share * mu, true);
        }
        double way = Math.min(1, INSIDE * Math.min(wayX(), wayDual()));
        for (int j = 0; j < columns; j++) {
            if (!idle[j]) {
                x[j] = Math.clamp(x[j] + way * stepX[j], 1e-300, Math.nextDown(1.0));
                atLower[j] += way * stepLower[j];
                atUpper[j] += way * stepUpper[j];
            }
        }
        for (int i = 0; i < rows; i++) {
            price[i] += way * stepPrice[i];
        }
    }

    /** Sum of the products of distances from bounds and their prices, so far along the step. */
    private double left(double far) {
        double left = 0;
        for (int j = 0; j < columns; j++) {
            if (!idle[j]) {
                double moved = x[j] + far * stepX[j];
                left +=
                        moved * (atLower[j] + far * stepLower[j])
                                + (1 - moved) * (atUpper[j] + far * stepUpper[j]);
            }
        }
        return left;
    }

    /**
     * Newton's step towards complementarity {@code mu}.
     *
     * @param corrected whether the products of the step before count
     */
    private void direction(double mu, boolean corrected) {
        for (int j = 0; j < columns; j++) {
            if (idle[j]) {
                continue;
            }
            double lower = mu - (corrected ? stepX[j] * stepLower[j] : 0);
            double upper = mu + (corrected ? stepX[j] * stepUpper[j] : 0);
            right[j] = -slope(j) + along(price, j) + lower / x[j] - upper / (1 - x[j]);
            // Kept until x has its step: what the bounds' prices come to without it.
            stepLower[j] = lower / x[j] - atLower[j];
            stepUpper[j] = upper / (1 - x[j]) - atUpper[j];
        }
        for (int i = 0; i < rows; i++) {
            Arrays.fill(normal[i], 0);
            double sum = b[i];
            for (int j = 0; j < columns; j++) {
                sum -= a[i][j] * x[j];
                if (!idle[j]) {
                    sum -= a[i][j] * theta[j] * right[j];
                    for (int k = 0; k <= i; k++) {
                        normal[i][k] += a[i][j] * theta[j] * a[k][j];
                    }
                }
            }
            normal[i][rows] = sum;
        }
        solveNormal();
        for (int j = 0; j < columns; j++) {
            if (!idle[j]) {
                stepX[j] = theta[j] * (right[j] + along(stepPrice, j));
                stepLower[j] -= atLower[j] / x[j] * stepX[j];
                stepUpper[j] += atUpper[j] / (1 - x[j]) * stepX[j];
            }
        }
    }

    /** Cholesky; a row that the rows before it make up keeps its price. */
    private void solveNormal() {
        for (int i = 0; i < rows; i++) {
            for (int k = 0; k <= i; k++) {
                double sum = normal[i][k];
                for (int l = 0; l < k; l++) {
                    sum -= normal[i][l] * normal[k][l];
                }
                if (k < i) {
                    normal[i][k] = normal[k][k] > 0 ? sum / normal[k][k] : 0;
                } else {
                    normal[i][i] = sum > DEPENDENT * normal[i][i] ? Math.sqrt(sum) : 0;
                }
            }
        }
        for (int i = 0; i < rows; i++) {
            double sum = normal[i][rows];
            for (int k = 0; k < i; k++) {
                sum -= normal[i][k] * stepPrice[k];
            }
            stepPrice[i] = normal[i][i] > 0 ? sum / normal[i][i] : 0;
        }
        for (int i = rows - 1; i >= 0; i--) {
            double sum = stepPrice[i];
            for (int k = i + 1; k < rows; k++) {
                sum -= normal[k][i] * stepPrice[k];
            }
            stepPrice[i] = normal[i][i] > 0 ? sum / normal[i][i] : 0;
        }
    }

    private double wayX() {
        double way = 1 / INSIDE;
        for (int j = 0; j < columns; j++) {
            if (!idle[j]) {
                if (stepX[j] < 0) {
                    way = Math.min(way, x[j] / -stepX[j]);
                } else if (stepX[j] > 0) {
                    way = Math.min(way, (1 - x[j]) / stepX[j]);
                }
            }
        }
        return way;
    }

    private double wayDual() {
        double way = 1 / INSIDE;
        for (int j = 0; j < columns; j++) {
            if (!idle[j]) {
                if (stepLower[j] < 0) {
                    way = Math.min(way, atLower[j] / -stepLower[j]);
                }
                if (stepUpper[j] < 0) {
                    way = Math.min(way, atUpper[j] / -stepUpper[j]);
                }
            }
        }
        return way;
    }

    private double slope(int j) {
        return 1.5 * p[j] * Math.sqrt(x[j]) + 2 * q[j] * x[j];
    }

    private double bend(int j) {
        return 0.75 * p[j] / Math.sqrt(x[j]) + 2 * q[j];
    }

    private double power(int j, double at) {
        return at * (p[j] * Math.sqrt(at) + q[j] * at);
    }

    private double along(double[] prices, int j) {
        double sum = 0;
        for (int i = 0; i < rows; i++) {
            sum += prices[i] * a[i][j];
        }
        return sum;
    }

    /** Primal value, bound from below, and whether they meet. */
    private boolean proved() {
        double bound = 0;
        double largest = 1;
        value = 0;
        miss = 0;
        for (int i = 0; i < rows; i++) {
            bound += price[i] * b[i];
            double sum = -b[i];
            for (int j = 0; j < columns; j++) {
                sum += a[i][j] * x[j];
                largest = Math.max(largest, Math.abs(a[i][j]));
            }
            miss = Math.max(miss, Math.abs(sum));
        }
        miss /= largest;
        for (int j = 0; j < columns; j++) {
            double at = power(j, x[j]);
            value += at;
            double worth = along(price, j);
            double best = idle[j] ? 0 : best(j, worth);
            bound += power(j, best) - worth * best;
        }
        gap = Math.abs(value - bound) / (1 + Math.abs(value));
        return gap <= PROVED && miss <= MET;
    }

    /** Where power less worth is least: 2 q t² + 1.5 p t = worth, x = t². */
    private double best(int j, double worth) {
        if (worth <= 0) {
            return 0;
        }
        double half = 1.5 * p[j];
        double t = 2 * worth / (half + Math.sqrt(half * half + 8 * q[j] * worth));
        return Math.min(1, t * t);
    }
}
