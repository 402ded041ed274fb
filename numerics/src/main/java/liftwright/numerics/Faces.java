package liftwright.numerics;

/**
 * Sums of rows that leave the columns in them one point alone, within rounding. No price of a basis
 * proves an optimum there: the prices go on along the sum until every column in it wants to be
 * where it has to be, which costs nothing but rounding.
 */
final class Faces {

    /** Shares of columns in a sum of rows that are more than rounding. */
    static final double IN = 1e-9;

    private final int rows;
    private final int columns;
    private final int width;
    private final double[][] sum;
    private final double[] sign;
    private int count;

    Faces(int rows, int columns, int width) {
        this.rows = rows;
        this.columns = columns;
        this.width = width;
        sum = new double[rows][rows];
        sign = new double[rows];
    }

    void clear() {
        count = 0;
    }

    boolean none() {
        return count == 0;
    }

    /** Whether there are as many as rows. */
    boolean full() {
        return count == rows;
    }

    /** Adds the sum of rows of one place of a basis, whose columns all stand on one side. */
    void add(BasisInverse inverse, int place, double side) {
        for (int i = 0; i < rows; i++) {
            sum[count][i] = inverse.at(place, i);
        }
        sign[count++] = side;
    }

    /**
     * Moves the prices along all of them, the latest first.
     *
     * @param price in: of a basis; out: that prove it
     * @param reduced in: worths beside these prices; out: likewise
     */
    void price(double[] a, double[] c, double[] price, double[] reduced) {
        for (int face = count - 1; face >= 0; face--) {
            double turn = 0;
            for (int j = 0; j < columns; j++) {
                double share = 0;
                for (int i = 0; i < rows; i++) {
                    share += sum[face][i] * a[i * width + j];
                }
                if (Math.abs(share) > IN && reduced[j] * sign[face] * share < 0) {
                    turn = Math.max(turn, Math.abs(reduced[j] / share));
                }
            }
            for (int i = 0; i < rows; i++) {
                price[i] -= sign[face] * turn * sum[face][i];
            }
            DualSteps.worths(a, c, price, reduced);
        }
    }
}
