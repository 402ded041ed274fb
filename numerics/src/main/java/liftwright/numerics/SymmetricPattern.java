package liftwright.numerics;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Where a symmetric sparse matrix has its entries, and the plan of its factorisation L D Lᵀ: order
 * of elimination (least degree first, smallest index among equals), fill, and for every update the
 * place it goes. Made once for a network; {@link #newFactor} gives each worker its own numbers.
 *
 * <p>A tree is eliminated from its leaves without any fill. [GEORGE81]
 */
public final class SymmetricPattern {

    final int size;

    /** Row of the matrix eliminated k-th. */
    final int[] order;

    /** Place in the elimination of each row of the matrix. */
    final int[] placeOf;

    /** Column k of L occupies {@code columnStart[k]} to {@code columnStart[k + 1]}. */
    final int[] columnStart;

    /** Place (not row) of each entry of L, rising within a column. */
    final int[] entryPlace;

    /** Entry of L that a coupling is added to. */
    final int[] couplingEntry;

    /**
     * For column k, one target per pair p ≤ q of its entries, in that order: a place below {@code
     * size} is a diagonal, others are entries shifted by {@code size}.
     */
    final int[] target;

    /** Whether no column has more than one entry: trees, whose solution is two plain passes. */
    final boolean forest;

    /** Of a forest: place of the one entry of each column; its own of a column that has none. */
    final int[] parent;

    private SymmetricPattern(
            int size,
            int[] order,
            int[] placeOf,
            int[] columnStart,
            int[] entryPlace,
            int[] couplingEntry,
            int[] target) {
        this.size = size;
        this.order = order;
        this.placeOf = placeOf;
        this.columnStart = columnStart;
        this.entryPlace = entryPlace;
        this.couplingEntry = couplingEntry;
        this.target = target;
        boolean single = true;
        parent = new int[size];
        for (int k = 0; k < size; k++) {
            int entries = columnStart[k + 1] - columnStart[k];
            single &= entries <= 1;
            parent[k] = entries == 0 ? k : entryPlace[columnStart[k]];
        }
        forest = single;
    }

    /**
     * Analyses a pattern.
     *
     * @param size rows, ≥ 1
     * @param rows one end of each coupling (off-diagonal entry); a pair may occur several times and
     *     then its values are added
     * @param columns the other end, different from the first
     * @throws IllegalArgumentException for an end outside 0…size − 1 or a coupling with itself
     */
    public static SymmetricPattern analyse(int size, int[] rows, int[] columns) {
        if (size < 1 || rows.length != columns.length) {
            throw new IllegalArgumentException("a pattern needs a row, and two ends per coupling");
        }
        BitSet[] near = new BitSet[size];
        Arrays.setAll(near, i -> new BitSet(size));
        for (int k = 0; k < rows.length; k++) {
            if (rows[k] < 0
                    || rows[k] >= size
                    || columns[k] < 0
                    || columns[k] >= size
                    || rows[k] == columns[k]) {
                throw new IllegalArgumentException(
                        "coupling " + k + " joins " + rows[k] + " and " + columns[k]);
            }
            near[rows[k]].set(columns[k]);
            near[columns[k]].set(rows[k]);
        }
        int[] order = new int[size];
        int[] placeOf = new int[size];
        BitSet[] below = eliminate(near, order, placeOf);
        int[] columnStart = new int[size + 1];
        for (int k = 0; k < size; k++) {
            columnStart[k + 1] = columnStart[k] + below[k].cardinality();
        }
        int[] entryPlace = new int[columnStart[size]];
        for (int k = 0; k < size; k++) {
            int at = columnStart[k];
            for (int row : below[k].stream().toArray()) {
                entryPlace[at++] = placeOf[row];
            }
            Arrays.sort(entryPlace, columnStart[k], at);
        }
        int[] couplingEntry = new int[rows.length];
        for (int k = 0; k < rows.length; k++) {
            int one = placeOf[rows[k]];
            int two = placeOf[columns[k]];
            couplingEntry[k] =
                    entry(columnStart, entryPlace, Math.min(one, two), Math.max(one, two));
        }
        int[] target = targets(size, columnStart, entryPlace);
        return new SymmetricPattern(
                size, order, placeOf, columnStart, entryPlace, couplingEntry, target);
    }

    /** Least-degree elimination on the graph; returns the rows below each pivot. */
    private static BitSet[] eliminate(BitSet[] near, int[] order, int[] placeOf) {
        int size = near.length;
        BitSet[] below = new BitSet[size];
        BitSet left = new BitSet(size);
        left.set(0, size);
        for (int place = 0; place < size; place++) {
            int pivot = -1;
            int least = Integer.MAX_VALUE;
            for (int i = left.nextSetBit(0); i >= 0; i = left.nextSetBit(i + 1)) {
                int degree = near[i].cardinality();
                if (degree < least) {
                    least = degree;
                    pivot = i;
                }
            }
            order[place] = pivot;
            placeOf[pivot] = place;
            left.clear(pivot);
            BitSet clique = near[pivot];
            below[place] = clique;
            for (int i = clique.nextSetBit(0); i >= 0; i = clique.nextSetBit(i + 1)) {
                near[i].or(clique);
                near[i].clear(i);
                near[i].clear(pivot);
            }
        }
        return below;
    }

    private static int entry(int[] columnStart, int[] entryPlace, int column, int place) {
        int found =
                Arrays.binarySearch(
                        entryPlace, columnStart[column], columnStart[column + 1], place);
        if (found < 0) {
            throw new IllegalStateException("the pattern lacks an entry of its own fill");
        }
        return found;
    }

    private static int[] targets(int size, int[] columnStart, int[] entryPlace) {
        int count = 0;
        for (int k = 0; k < size; k++) {
            int entries = columnStart[k + 1] - columnStart[k];
            count = Math.addExact(count, entries * (entries + 1) / 2);
        }
        int[] target = new int[count];
        int at = 0;
        for (int k = 0; k < size; k++) {
            for (int p = columnStart[k]; p < columnStart[k + 1]; p++) {
                target[at++] = entryPlace[p];
                for (int q = p + 1; q < columnStart[k + 1]; q++) {
                    target[at++] =
                            size + entry(columnStart, entryPlace, entryPlace[p], entryPlace[q]);
                }
            }
        }
        return target;
    }

    /** Rows of the matrix. */
    public int size() {
        return size;
    }

    /** Couplings the pattern was made from. */
    public int couplings() {
        return couplingEntry.length;
    }

    /** Entries of L below its diagonal, fill included. */
    public int entries() {
        return entryPlace.length;
    }

    /** A workspace for the numbers; not to be shared between threads. */
    public SymmetricFactor newFactor() {
        return new SymmetricFactor(this);
    }
}
