package liftwright.flight.loops;

import java.util.Arrays;

/**
 * Shares of fans that give what is wanted with the least Σ share², between bounds: least of Σ
 * share² + Σ miss²/c by active sets, warm from the shares of the last time. For one run; allocates
 * nothing.
 *
 * <p>The products of the rows are summed and factorised once for all fans that are not lost. While
 * no fan is at a bound, a step is two triangles of four rows and one product a fan; where some are,
 * only those at their bounds are taken off the sums.
 */
final class ActiveSet {

    private static final int ROWS = FanMatrix.ROWS;

    /** How cheap a miss is: lift, roll, pitch, yaw, over what all fans give at their most. */
    private static final double[] CHEAP = {1e-9, 1e-10, 1e-10, 1e-4};

    private static final int FREE = 0;
    private static final int LOW = -1;
    private static final int HIGH = 1;

    /** What each fan gives at its most, row by row, over the scale of the row. */
    private final double[][] gives;

    private final boolean[] lost;

    /** What a lost fan gives, whatever it is told, over its most. */
    private final double[] stuck;

    private boolean anyStuck;

    /** To be filled before {@link #confine}. */
    final double[] least;

    final double[] upper;

    /** The shares found. */
    final double[] share;

    private final double[] next;
    private final int[] side;
    private int bound;

    /** Of all fans that are not lost: products of the rows, and their triangle. */
    private final double[] whole = new double[ROWS * ROWS];

    private final double[] wholeFactor = new double[ROWS * ROWS];

    private final double[] gram = new double[ROWS * ROWS];
    private final double[] factor = new double[ROWS * ROWS];
    private final double[] right = new double[ROWS];
    private final double[] price = new double[ROWS];

    /**
     * @param gives rows of all fans
     */
    ActiveSet(double[][] gives) {
        this.gives = gives;
        int fans = gives[0].length;
        lost = new boolean[fans];
        stuck = new double[fans];
        least = new double[fans];
        upper = new double[fans];
        share = new double[fans];
        next = new double[fans];
        side = new int[fans];
        sumUp();
    }

    /** Which fans take no part; what was said of them before is forgotten. */
    void lose(boolean[] which) {
        System.arraycopy(which, 0, lost, 0, lost.length);
        Arrays.fill(stuck, 0);
        anyStuck = false;
        sumUp();
    }

    boolean isLost(int fan) {
        return lost[fan];
    }

    /** A lost fan gives so much whatever happens. */
    void stick(int fan, double share) {
        stuck[fan] = share;
        anyStuck = true;
    }

    private void sumUp() {
        Arrays.fill(whole, 0);
        for (int f = 0; f < lost.length; f++) {
            if (!lost[f]) {
                add(f, 1, whole);
            }
        }
        Small.factor(ROWS, whole, wholeFactor);
    }

    /** Adds the products of a fan, below the diagonal alone. */
    private void add(int f, double times, double[] to) {
        for (int i = 0; i < ROWS; i++) {
            double one = times * gives[i][f];
            for (int j = 0; j <= i; j++) {
                to[i * ROWS + j] += one * gives[j][f];
            }
        }
    }

    /**
     * Shares without bounds: those of least squares that give what is wanted.
     *
     * @return out, to be {@link #take taken} or not
     */
    double[] unbounded(double[] wanted) {
        System.arraycopy(wanted, 0, right, 0, ROWS);
        if (anyStuck) {
            takeOffStuck();
        }
        Small.solveFactored(ROWS, wholeFactor, right, price);
        shareOut();
        for (int f = 0; f < next.length; f++) {
            next[f] = lost[f] ? 0 : next[f];
        }
        return next;
    }

    /** Keeps what {@link #unbounded} found. */
    void take() {
        System.arraycopy(next, 0, share, 0, share.length);
    }

    private void takeOffStuck() {
        for (int i = 0; i < ROWS; i++) {
            for (int f = 0; f < stuck.length; f++) {
                right[i] -= lost[f] ? gives[i][f] * stuck[f] : 0;
            }
        }
    }

    /** Prices into shares, of all fans alike. */
    private void shareOut() {
        double p0 = price[0];
        double p1 = price[1];
        double p2 = price[2];
        double p3 = price[3];
        double[] g0 = gives[0];
        double[] g1 = gives[1];
        double[] g2 = gives[2];
        double[] g3 = gives[3];
        for (int f = 0; f < next.length; f++) {
            next[f] = p0 * g0[f] + p1 * g1[f] + p2 * g2[f] + p3 * g3[f];
        }
    }

    /** Active sets from the last shares, held within the bounds of now. */
    void confine(double[] wanted) {
        bound = 0;
        for (int f = 0; f < share.length; f++) {
            share[f] = Math.min(Math.max(share[f], least[f]), upper[f]);
            side[f] = FREE;
            if (share[f] <= least[f]) {
                side[f] = LOW;
            } else if (share[f] >= upper[f]) {
                side[f] = HIGH;
            }
            bound += side[f] == FREE || lost[f] ? 0 : 1;
        }
        for (int round = 0; round < 6 * share.length + 20; round++) {
            solveFree(wanted);
            int blocking = advance();
            if (blocking < 0 && !release()) {
                return;
            }
        }
    }

    private boolean isFree(int f) {
        return side[f] == FREE && !lost[f];
    }

    /** Best shares of the free fans with the others where they are: into {@link #next}. */
    private void solveFree(double[] wanted) {
        System.arraycopy(wanted, 0, right, 0, ROWS);
        if (anyStuck) {
            takeOffStuck();
        }
        // Whichever are fewer: the bound ones off the whole, or the free ones from nothing.
        boolean off = 2 * bound < share.length;
        if (off) {
            System.arraycopy(whole, 0, gram, 0, gram.length);
        } else {
            Arrays.fill(gram, 0);
        }
        for (int f = 0; f < share.length; f++) {
            if (lost[f]) {
                continue;
            }
            if (side[f] == FREE) {
                if (!off) {
                    add(f, 1, gram);
                }
                continue;
            }
            if (off) {
                add(f, -1, gram);
            }
            for (int i = 0; i < ROWS; i++) {
                right[i] -= gives[i][f] * share[f];
            }
        }
        for (int row = 0; row < ROWS; row++) {
            gram[row * ROWS + row] += CHEAP[row];
        }
        Small.factor(ROWS, gram, factor);
        Small.solveFactored(ROWS, factor, right, price);
        shareOut();
    }

    /** Goes towards {@link #next} until a fan is at its bound: which, or −1. */
    private int advance() {
        double way = 1;
        int blocking = -1;
        for (int f = 0; f < share.length; f++) {
            double step = next[f] - share[f];
            if (!isFree(f) || step == 0) {
                continue;
            }
            double end = step > 0 ? upper[f] : least[f];
            double reach = (end - share[f]) / step;
            if (reach < way) {
                way = Math.max(0, reach);
                blocking = f;
            }
        }
        for (int f = 0; f < share.length; f++) {
            if (isFree(f)) {
                share[f] += way * (next[f] - share[f]);
            }
        }
        if (blocking >= 0) {
            boolean up = next[blocking] > share[blocking];
            side[blocking] = up ? HIGH : LOW;
            share[blocking] = up ? upper[blocking] : least[blocking];
            bound++;
        }
        return blocking;
    }

    /** Frees the fan at a bound that gains the most by leaving it; whether there is one. */
    private boolean release() {
        int best = -1;
        double most = 1e-9;
        for (int f = 0; f < share.length; f++) {
            if (side[f] == FREE || lost[f] || least[f] >= upper[f]) {
                continue;
            }
            // What the prices would have it share: the slope of the sum at its bound.
            double slope = share[f] - next[f];
            double gain = side[f] == LOW ? -slope : slope;
            if (gain > most) {
                most = gain;
                best = f;
            }
        }
        if (best < 0) {
            return false;
        }
        side[best] = FREE;
        bound--;
        return true;
    }

    /** What all fans give together in a row, over its scale. */
    double given(int row) {
        double sum = 0;
        for (int f = 0; f < share.length; f++) {
            sum += gives[row][f] * (lost[f] ? stuck[f] : share[f]);
        }
        return sum;
    }
}
