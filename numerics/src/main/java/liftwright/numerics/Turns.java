package liftwright.numerics;

/** Columns in the order in which their worths turn round along a step. */
final class Turns {

    /** Ratios this near are one. */
    private static final double ALIKE = 1e-12;

    private final int[] column;
    private final double[] ratio;
    private int count;

    Turns(int columns) {
        column = new int[columns];
        ratio = new double[columns];
    }

    void clear() {
        count = 0;
    }

    /** Adds a column that turns round so far along the step. */
    void add(int j, double at) {
        column[count] = j;
        ratio[count++] = at;
    }

    /** Column at a place of the order, as far as {@link #passes} has found it. */
    int column(int place) {
        return column[place];
    }

    /**
     * How many columns go from bound to bound before one is needed in the basis; it has the place
     * after them. −1 where all of them do not suffice.
     *
     * @param row share of each column
     * @param outside what they are to make up
     * @param careful whether the first is taken in any case
     */
    int passes(double[] row, double[] lower, double[] upper, double outside, boolean careful) {
        double left = outside;
        for (int k = 0; k < count; k++) {
            int first = next(row, k);
            int j = column[first];
            column[first] = column[k];
            column[k] = j;
            ratio[first] = ratio[k];
            left -= Math.abs(row[j]) * (upper[j] - lower[j]);
            if (left <= 0 || careful) {
                return k;
            }
        }
        return -1;
    }

    /** From a place on the one with the least ratio, among alike that with the largest share. */
    private int next(double[] row, int from) {
        int best = from;
        for (int k = from + 1; k < count; k++) {
            double least = ratio[best];
            if (ratio[k] < least * (1 - ALIKE)
                    || (ratio[k] <= least * (1 + ALIKE)
                            && Math.abs(row[column[k]]) > Math.abs(row[column[best]]))) {
                best = k;
            }
        }
        return best;
    }
}
