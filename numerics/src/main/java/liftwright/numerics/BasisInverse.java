package liftwright.numerics;

import java.util.Arrays;

/**
 * Inverse of a basis of a small linear programme: as many columns of A as it has rows. It follows
 * when one column takes the place of another, and is made anew now and then, so that rounding does
 * not pile up.
 */
final class BasisInverse {

    private final int rows;

    /** Columns of A, which lies row by row. */
    private final int width;

    /** Row by row; a row a place in the basis. */
    private final double[] inverse;

    private final double[] work;

    BasisInverse(int rows, int width) {
        this.rows = rows;
        this.width = width;
        inverse = new double[rows * rows];
        work = new double[2 * rows * rows];
    }

    double at(int place, int row) {
        return inverse[place * rows + row];
    }

    /** That of the unit columns. */
    void one() {
        Arrays.fill(inverse, 0);
        for (int i = 0; i < rows; i++) {
            inverse[i * rows + i] = 1;
        }
    }

    void copy(BasisInverse other) {
        System.arraycopy(other.inverse, 0, inverse, 0, inverse.length);
    }

    /** A place's share of a column of A. */
    double share(int place, double[] a, int column) {
        double sum = 0;
        for (int i = 0; i < rows; i++) {
            sum += inverse[place * rows + i] * a[i * width + column];
        }
        return sum;
    }

    /** A place's share of a vector of one number a row. */
    double share(int place, double[] vector) {
        double sum = 0;
        for (int i = 0; i < rows; i++) {
            sum += inverse[place * rows + i] * vector[i];
        }
        return sum;
    }

    /**
     * Follows a column into the place of another.
     *
     * @param along share of every place of the column that comes in
     * @param place whose column goes; its share is not 0
     */
    void follow(double[] along, int place) {
        int at = place * rows;
        for (int i = 0; i < rows; i++) {
            inverse[at + i] /= along[place];
        }
        for (int k = 0; k < rows; k++) {
            if (k != place && along[k] != 0) {
                for (int i = 0; i < rows; i++) {
                    inverse[k * rows + i] -= along[k] * inverse[at + i];
                }
            }
        }
    }

    /**
     * Makes it anew.
     *
     * @param a row by row
     * @param basis column of each place
     * @return false where there is none
     */
    boolean make(double[] a, int[] basis) {
        int wide = 2 * rows;
        Arrays.fill(work, 0);
        for (int i = 0; i < rows; i++) {
            for (int k = 0; k < rows; k++) {
                work[i * wide + k] = a[i * width + basis[k]];
            }
            work[i * wide + rows + i] = 1;
        }
        for (int k = 0; k < rows; k++) {
            exchange(k, wide);
            double by = work[k * wide + k];
            if (by == 0) {
                return false;
            }
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
        return true;
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
