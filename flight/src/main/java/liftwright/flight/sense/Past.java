package liftwright.flight.sense;

import java.util.Arrays;

/** What was estimated some steps ago, for measurements that come late. */
final class Past {

    private final int width;
    private final int length;
    private final double[] rows;
    private int at;

    Past(int width, int steps) {
        this.width = width;
        length = steps + 1;
        rows = new double[width * length];
    }

    /** It was so for ever. */
    void fill(double[] row) {
        for (int k = 0; k < length; k++) {
            System.arraycopy(row, 0, rows, k * width, width);
        }
        at = 0;
    }

    void push(double[] row) {
        at = (at + 1) % length;
        System.arraycopy(row, 0, rows, at * width, width);
    }

    double get(int column, int stepsAgo) {
        return rows[Math.floorMod(at - stepsAgo, length) * width + column];
    }

    /** Where a row of some steps ago begins in {@link #rows()}. */
    int row(int stepsAgo) {
        return Math.floorMod(at - stepsAgo, length) * width;
    }

    double[] rows() {
        return rows;
    }

    void clear() {
        Arrays.fill(rows, 0);
    }
}
