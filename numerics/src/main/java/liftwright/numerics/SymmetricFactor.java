package liftwright.numerics;

import java.util.Arrays;

/**
 * The factorisation L D Lᵀ of one matrix of a {@link SymmetricPattern}, in flat arrays, and
 * solutions with it. Neither {@link #factor} nor {@link #solve} allocates.
 *
 * <p>No pivoting by value: exact for positive definite matrices (electrical networks), and usable
 * for indefinite ones as long as no pivot is tiny, which {@link #factor} reports.
 */
public final class SymmetricFactor {

    /** A pivot below this share of the terms it is made of has lost its digits. */
    public static final double TINY_PIVOT = 1e-11;

    private final SymmetricPattern pattern;

    /** Diagonals by place, then entries. */
    private final double[] value;

    private final double[] inverse;

    /** Sum of the absolute terms of each pivot. */
    private final double[] termSum;

    private final double[] work;

    /** Of a forest: the one entry of each column of L; 0 of a column that has none. */
    private final double[] single;

    private boolean usable;
    private boolean positive;

    SymmetricFactor(SymmetricPattern pattern) {
        this.pattern = pattern;
        value = new double[pattern.size + pattern.entryPlace.length];
        inverse = new double[pattern.size];
        termSum = new double[pattern.size];
        work = new double[pattern.size];
        single = new double[pattern.size];
    }

    /**
     * Factorises.
     *
     * @param diagonal by row of the matrix
     * @param coupling off-diagonal values in the order the pattern was given
     * @return −1, or the row whose pivot is tiny (or not a number): the matrix is singular there as
     *     far as can be told, and {@link #solve} refuses
     */
    public int factor(double[] diagonal, double[] coupling) {
        SymmetricPattern p = pattern;
        int n = p.size;
        double[] v = value;
        double[] terms = termSum;
        int[] order = p.order;
        Arrays.fill(v, n, v.length, 0);
        for (int k = 0; k < n; k++) {
            double d = diagonal[order[k]];
            v[k] = d;
            terms[k] = Math.abs(d);
        }
        int[] couplingEntry = p.couplingEntry;
        for (int k = 0; k < couplingEntry.length; k++) {
            v[n + couplingEntry[k]] += coupling[k];
        }
        positive = true;
        int failed = p.forest ? eliminateForest() : eliminate();
        usable = failed < 0;
        return usable ? -1 : order[failed];
    }

    /** One over a pivot, kept; 0 where the pivot is tiny or no number. */
    private double invert(int k) {
        double pivot = value[k];
        // Written so that an empty row, an infinity and a NaN are caught as well.
        if (!(Math.abs(pivot) > TINY_PIVOT * termSum[k])) {
            return 0;
        }
        double over = 1 / pivot;
        positive &= over > 0;
        inverse[k] = over;
        return over;
    }

    /** Place of a tiny pivot, or −1. */
    private int eliminate() {
        int n = pattern.size;
        double[] v = value;
        int[] start = pattern.columnStart;
        int[] target = pattern.target;
        int at = 0;
        for (int k = 0; k < n; k++) {
            double over = invert(k);
            if (over == 0) {
                return k;
            }
            int end = n + start[k + 1];
            for (int i = n + start[k]; i < end; i++) {
                double entry = v[i];
                double l = entry * over;
                double change = l * entry;
                int place = target[at++];
                v[place] -= change;
                termSum[place] += Math.abs(change);
                for (int j = i + 1; j < end; j++) {
                    // v[j] is not yet divided: columns are scaled as i passes them.
                    v[target[at++]] -= l * v[j];
                }
                v[i] = l;
            }
        }
        return -1;
    }

    /** The same where each column has one entry at most: loops over columns cost more. */
    private int eliminateForest() {
        int n = pattern.size;
        double[] v = value;
        int[] start = pattern.columnStart;
        int[] parent = pattern.parent;
        for (int k = 0; k < n; k++) {
            double over = invert(k);
            if (over == 0) {
                return k;
            }
            int place = parent[k];
            if (place != k) {
                double entry = v[n + start[k]];
                double l = entry * over;
                double change = l * entry;
                v[place] -= change;
                termSum[place] += Math.abs(change);
                single[k] = l;
            }
        }
        return -1;
    }

    /**
     * Whether the matrix last factorised is positive definite: all pivots are above 0. A matrix
     * whose couplings are all below 0 is then an M-matrix: its inverse has no negative entry.
     *
     * @throws IllegalStateException if the last factorisation did not succeed
     */
    public boolean isPositive() {
        requireUsable();
        return positive;
    }

    /**
     * Least ratio of a pivot to the sum of the absolute terms it is made of, of the last
     * factorisation: small means lost digits (about as many as the decimal places).
     *
     * @throws IllegalStateException if the last factorisation did not succeed
     */
    public double leastPivotShare() {
        requireUsable();
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < inverse.length; k++) {
            least = Math.min(least, 1 / (Math.abs(inverse[k]) * termSum[k]));
        }
        return least;
    }

    /**
     * Solves with the last factorisation.
     *
     * @param right by row of the matrix
     * @param solution takes the result; may be the same array
     * @throws IllegalStateException if the last factorisation did not succeed
     */
    public void solve(double[] right, double[] solution) {
        requireUsable();
        int n = pattern.size;
        int[] order = pattern.order;
        double[] x = work;
        for (int k = 0; k < n; k++) {
            x[k] = right[order[k]];
        }
        if (pattern.forest) {
            substituteInForest(x, solution);
            return;
        }
        substitute(x);
        for (int k = 0; k < n; k++) {
            solution[order[k]] = x[k];
        }
    }

    /** Down the trees and up again; what has no parent is its own with nothing between. */
    private void substituteInForest(double[] x, double[] solution) {
        int[] parent = pattern.parent;
        int[] order = pattern.order;
        double[] l = single;
        double[] over = inverse;
        for (int k = 0; k < l.length; k++) {
            x[parent[k]] -= l[k] * x[k];
        }
        for (int k = l.length - 1; k >= 0; k--) {
            double found = x[k] * over[k] - l[k] * x[parent[k]];
            x[k] = found;
            solution[order[k]] = found;
        }
    }

    private void substitute(double[] x) {
        int n = pattern.size;
        int[] start = pattern.columnStart;
        int[] entryPlace = pattern.entryPlace;
        double[] v = value;
        double[] over = inverse;
        for (int k = 0; k < n; k++) {
            double known = x[k];
            int end = start[k + 1];
            for (int i = start[k]; i < end; i++) {
                x[entryPlace[i]] -= v[n + i] * known;
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            double sum = x[k] * over[k];
            int end = start[k + 1];
            for (int i = start[k]; i < end; i++) {
                sum -= v[n + i] * x[entryPlace[i]];
            }
            x[k] = sum;
        }
    }

    private void requireUsable() {
        if (!usable) {
            throw new IllegalStateException("there is no factorisation to solve with");
        }
    }
}
