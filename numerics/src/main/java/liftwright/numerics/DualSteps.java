package liftwright.numerics;

import java.util.Arrays;
import liftwright.numerics.WarmProgram.Outcome;
import liftwright.numerics.WarmProgram.Start;

/**
 * The steps of a {@link WarmProgram}, from a basis to an optimum or to a proof that none is. Values
 * and reduced worths follow each step and are made anew now and then.
 */
final class DualSteps {

    private static final double REDUCED = 1e-12;
    private static final double PIVOT = 1e-11;

    /** A value is outside its bounds only by more than this share of the greatest bound. */
    private static final double OUTSIDE = 1e-12;

    /** Rows are missed only by more than this share of their terms. */
    private static final double MISSED = 1e-10;

    /** Steps after which the least index decides, so that no circle lasts. */
    private static final int GREEDY_STEPS = 100;

    private static final int MOST_STEPS = 2000;

    /** Steps that values and inverse follow before they are made anew. */
    private static final int FOLLOWED = 16;

    private final int rows;
    private final int columns;
    private final int width;
    private final double[] a;
    private final double[] b;
    private final double[] c;
    private final double[] lower;
    private final double[] upper;
    private final int[] basis;
    private final boolean[] basic;
    private final boolean[] atUpper;
    private final BasisInverse inverse;
    private final double[] row;
    private final double[] along;
    private final Turns turns;

    private final Faces faces;

    /** Steps since the inverse was made anew. */
    private int followed;

    /** Whether prices and worths are those of the basis, and followed no step. */
    private boolean exact;

    final double[] x;
    final double[] price;
    final double[] reduced;

    /** Greatest bound. */
    double size;

    /** Greatest of what columns are worth, and how often that was set. */
    private double greatestWorth;

    private long worths;

    double shortfall;
    int taken;

    /**
     * @param a row by row, artificial columns at the end
     */
    DualSteps(int rows, int columns, double[] a, double[] b, double[] c) {
        this.rows = rows;
        this.columns = columns;
        this.a = a;
        this.b = b;
        this.c = c;
        width = columns + rows;
        lower = new double[width];
        upper = new double[width];
        basis = new int[rows];
        basic = new boolean[width];
        atUpper = new boolean[width];
        x = new double[width];
        inverse = new BasisInverse(rows, width);
        price = new double[rows];
        reduced = new double[width];
        row = new double[width];
        along = new double[rows];
        turns = new Turns(columns);
        faces = new Faces(rows, columns, width);
    }

    /** Columns are worth something else from now on, this at most. */
    void worthsAre(double most) {
        greatestWorth = most;
        worths++;
    }

    void begin(Start start, double[] least, double[] most) {
        System.arraycopy(least, 0, lower, 0, width);
        System.arraycopy(most, 0, upper, 0, width);
        size = Double.MIN_NORMAL;
        for (int j = 0; j < columns; j++) {
            // Comparisons: a chain of max waits for each before it.
            if (upper[j] > size) {
                size = upper[j];
            }
            if (-lower[j] > size) {
                size = -lower[j];
            }
        }
        taken = 0;
        faces.clear();
        Arrays.fill(basic, false);
        if (!start.made || !take(start)) {
            Arrays.fill(atUpper, false);
            inverse.one();
            followed = 0;
            for (int i = 0; i < rows; i++) {
                basis[i] = columns + i;
            }
        }
        for (int k = 0; k < rows; k++) {
            basic[basis[k]] = true;
        }
        if (start.made && start.worths == worths) {
            exact = true;
            System.arraycopy(start.price, 0, price, 0, rows);
            System.arraycopy(start.reduced, 0, reduced, 0, width);
            for (int j = 0; j < width; j++) {
                x[j] = atUpper[j] ? upper[j] : lower[j];
            }
            values();
        } else {
            again();
        }
    }

    /** Whether a start is one: of another A its basis can have no inverse. */
    private boolean take(Start start) {
        System.arraycopy(start.basis, 0, basis, 0, rows);
        System.arraycopy(start.atUpper, 0, atUpper, 0, width);
        if (start.stale) {
            followed = 0;
            return inverse.make(a, basis);
        }
        followed = start.followed;
        inverse.copy(start.inverse);
        return true;
    }

    void end(Start start) {
        System.arraycopy(basis, 0, start.basis, 0, rows);
        System.arraycopy(atUpper, 0, start.atUpper, 0, width);
        start.inverse.copy(inverse);
        System.arraycopy(price, 0, start.price, 0, rows);
        System.arraycopy(reduced, 0, start.reduced, 0, width);
        start.followed = followed;
        start.worths = exact && faces.none() ? worths : -1;
        start.made = true;
        start.stale = false;
    }

    /** Whether something has followed steps, so that making it anew could tell more. */
    boolean hasFollowed() {
        return followed > 0;
    }

    /** Makes inverse and all that follows from it anew; false where there is none. */
    boolean refresh() {
        if (!inverse.make(a, basis)) {
            return false;
        }
        followed = 0;
        again();
        return true;
    }

    Outcome descend() {
        while (taken < MOST_STEPS) {
            if (followed == FOLLOWED && !refresh()) {
                return Outcome.UNDECIDED;
            }
            int out = leaving(taken > GREEDY_STEPS);
            if (out < 0) {
                if (!exact) {
                    prices();
                    worths();
                    exact = true;
                }
                if (!faces.none()) {
                    faces.price(a, c, price, reduced);
                }
                return Outcome.FOUND;
            }
            taken++;
            int leaves = basis[out];
            boolean above = x[leaves] > upper[leaves];
            double outside = above ? x[leaves] - upper[leaves] : lower[leaves] - x[leaves];
            int in = entering(out, above, outside, taken > GREEDY_STEPS);
            if (in >= 0) {
                change(out, in, above);
                followed++;
            } else if (followed > 0) {
                if (!refresh()) {
                    return Outcome.UNDECIDED;
                }
            } else if (isImpossible(out, above)) {
                return Outcome.IMPOSSIBLE;
            } else if (faces.full()) {
                return Outcome.UNDECIDED;
            } else {
                freeze(out, above);
            }
        }
        return Outcome.UNDECIDED;
    }

    /** Prices, what columns are worth beside them, where they stand, and values of the basis. */
    private void again() {
        exact = true;
        prices();
        worths();
        place();
        values();
    }

    private void prices() {
        for (int i = 0; i < rows; i++) {
            double sum = 0;
            for (int k = 0; k < rows; k++) {
                sum += c[basis[k]] * inverse.at(k, i);
            }
            price[i] = sum;
        }
    }

    private void worths() {
        worths(a, c, price, reduced);
    }

    /** What a unit of each column is worth beside the prices of its rows. */
    static void worths(double[] a, double[] c, double[] price, double[] reduced) {
        System.arraycopy(c, 0, reduced, 0, c.length);
        for (int i = 0; i < price.length; i++) {
            double own = price[i];
            int at = i * c.length;
            for (int j = 0; j < c.length; j++) {
                reduced[j] -= own * a[at + j];
            }
        }
    }

    /** Puts every column outside the basis at the bound that its worth points to. */
    private void place() {
        double rounding = REDUCED * greatestWorth;
        for (int j = 0; j < columns; j++) {
            if (Math.abs(reduced[j]) > rounding) {
                atUpper[j] = reduced[j] > 0;
            }
            x[j] = basic[j] ? 0 : atUpper[j] ? upper[j] : lower[j];
        }
        Arrays.fill(x, columns, width, 0);
    }

    /** Values of the basis from those of all others. */
    private void values() {
        for (int k = 0; k < rows; k++) {
            x[basis[k]] = 0;
        }
        for (int i = 0; i < rows; i++) {
            along[i] = b[i] - dot(a, i * width, x, width);
        }
        for (int k = 0; k < rows; k++) {
            x[basis[k]] = inverse.share(k, along);
        }
    }

    /** Sum of products, in four chains of additions side by side. */
    static double dot(double[] some, int at, double[] others, int length) {
        double one = 0;
        double two = 0;
        double three = 0;
        double four = 0;
        int j = 0;
        for (; j + 3 < length; j += 4) {
            one += some[at + j] * others[j];
            two += some[at + j + 1] * others[j + 1];
            three += some[at + j + 2] * others[j + 2];
            four += some[at + j + 3] * others[j + 3];
        }
        for (; j < length; j++) {
            one += some[at + j] * others[j];
        }
        return one + two + (three + four);
    }

    /** Place in the basis of the one that is farthest outside its bounds; −1 where none is. */
    private int leaving(boolean leastIndex) {
        int out = -1;
        double most = 0;
        for (int k = 0; k < rows; k++) {
            int j = basis[k];
            double over = x[j] - upper[j];
            double under = lower[j] - x[j];
            double outside = over > under ? over : under;
            if (outside <= OUTSIDE * size) {
                continue;
            }
            double squares = 0;
            double reach = size;
            for (int i = 0; i < rows; i++) {
                double part = inverse.at(k, i);
                squares += part * part;
                reach = Math.max(reach, Math.abs(part * b[i]));
            }
            if (outside > OUTSIDE * reach) {
                double weighed = outside * outside / squares;
                if (leastIndex ? out < 0 || j < basis[out] : weighed > most) {
                    most = weighed;
                    out = k;
                }
            }
        }
        return out;
    }

    /** Every column's share of one place of the basis. */
    private double row(int out) {
        Arrays.fill(row, 0);
        double most = 0;
        for (int i = 0; i < rows; i++) {
            double own = inverse.at(out, i);
            most = Math.max(most, Math.abs(own));
            int at = i * width;
            for (int j = 0; j < width; j++) {
                row[j] += own * a[at + j];
            }
        }
        return most;
    }

    /**
     * The column that takes the place: the one whose worth is the first to turn round, after those
     * that only go from bound to bound. −1 where all of them do.
     */
    private int entering(int out, boolean above, double outside, boolean careful) {
        double sign = above ? 1 : -1;
        double least = PIVOT * row(out);
        turns.clear();
        for (int j = 0; j < columns; j++) {
            double helps = atUpper[j] ? -sign * row[j] : sign * row[j];
            if (helps > least && !basic[j] && lower[j] != upper[j]) {
                turns.add(j, Math.abs(reduced[j] / row[j]));
            }
        }
        int passes = turns.passes(row, lower, upper, outside, careful);
        if (passes < 0) {
            return -1;
        }
        flip(passes);
        return turns.column(passes);
    }

    /** Takes the first so many of the passed ones to their other bound. */
    private void flip(int count) {
        if (count == 0) {
            return;
        }
        Arrays.fill(along, 0);
        for (int past = 0; past < count; past++) {
            int j = turns.column(past);
            atUpper[j] = !atUpper[j];
            double change = atUpper[j] ? upper[j] - lower[j] : lower[j] - upper[j];
            x[j] = atUpper[j] ? upper[j] : lower[j];
            for (int i = 0; i < rows; i++) {
                along[i] += change * a[i * width + j];
            }
        }
        for (int k = 0; k < rows; k++) {
            x[basis[k]] -= inverse.share(k, along);
        }
    }

    private void change(int out, int in, boolean above) {
        for (int k = 0; k < rows; k++) {
            along[k] = inverse.share(k, a, in);
        }
        int leaves = basis[out];
        double bound = above ? upper[leaves] : lower[leaves];
        double way = (x[leaves] - bound) / along[out];
        for (int k = 0; k < rows; k++) {
            x[basis[k]] -= way * along[k];
        }
        x[in] += way;
        x[leaves] = bound;
        double turn = reduced[in] / row[in];
        for (int j = 0; j < width; j++) {
            reduced[j] -= turn * row[j];
        }
        reduced[in] = 0;
        exact = false;
        basic[leaves] = false;
        atUpper[leaves] = above;
        basic[in] = true;
        basis[out] = in;
        inverse.follow(along, out);
    }

    /** Whether a row of the inverse proves that no point meets the rows. */
    private boolean isImpossible(int out, boolean above) {
        double sign = above ? 1 : -1;
        double nearest = 0;
        double terms = 0;
        for (int i = 0; i < rows; i++) {
            double part = inverse.at(out, i) * b[i];
            nearest += sign * part;
            terms += Math.abs(part);
        }
        for (int j = 0; j < columns; j++) {
            nearest -= sign * row[j] * (sign * row[j] > 0 ? upper[j] : lower[j]);
            terms += Math.abs(row[j]) * Math.max(Math.abs(lower[j]), Math.abs(upper[j]));
        }
        shortfall = nearest / terms;
        return shortfall > MISSED;
    }

    /**
     * A sum of rows leaves the columns in it one point alone, within rounding: there they stay, and
     * the rest goes on.
     */
    private void freeze(int out, boolean above) {
        double sign = above ? 1 : -1;
        faces.add(inverse, out, sign);
        for (int j = 0; j < columns; j++) {
            if (!basic[j] && Math.abs(row[j]) > Faces.IN) {
                atUpper[j] = sign * row[j] > 0;
                x[j] = atUpper[j] ? upper[j] : lower[j];
                lower[j] = x[j];
                upper[j] = x[j];
            }
        }
        values();
        int stays = basis[out];
        lower[stays] = x[stays];
        upper[stays] = x[stays];
    }
}
