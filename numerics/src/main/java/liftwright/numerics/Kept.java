package liftwright.numerics;

import java.util.Optional;

/**
 * Parts of a long computation that were finished before, by numbers that put them back bit for bit.
 * A computation comes to its batches in the same order every time, and a part of a batch is the
 * same every time: that is what a part is known by. Whoever keeps them answers for it that they are
 * of the same input.
 */
public interface Kept {

    /**
     * Opens the next batch.
     *
     * @param parts how many it has
     */
    Batch batch(int parts);

    /** One batch; its methods may be called from any thread. */
    interface Batch {

        /** A part that was finished before; empty where it was not. */
        Optional<double[]> of(int part);

        /** Keeps a part that is finished. */
        void keep(int part, double[] numbers);
    }

    /** What a part came to, as numbers and back. */
    interface Form {

        /** Everything that {@link #putBack} needs. */
        double[] numbers(int part);

        /** Puts it to where it would stand had it been computed now. */
        void putBack(int part, double[] numbers);
    }

    /** Keeps nothing. */
    static Kept nothing() {
        return KeepsNothing.NOTHING;
    }

    /** Rows of any lengths as one. */
    static double[] flat(double[]... rows) {
        int size = 1 + rows.length;
        for (double[] row : rows) {
            size += row.length;
        }
        double[] flat = new double[size];
        flat[0] = rows.length;
        int next = 1 + rows.length;
        for (int k = 0; k < rows.length; k++) {
            flat[1 + k] = rows[k].length;
            System.arraycopy(rows[k], 0, flat, next, rows[k].length);
            next += rows[k].length;
        }
        return flat;
    }

    /** The rows that were made one. */
    static double[][] rows(double[] flat) {
        double[][] rows = new double[(int) flat[0]][];
        int next = 1 + rows.length;
        for (int k = 0; k < rows.length; k++) {
            rows[k] = new double[(int) flat[1 + k]];
            System.arraycopy(flat, next, rows[k], 0, rows[k].length);
            next += rows[k].length;
        }
        return rows;
    }
}
