package liftwright.numerics;

import java.util.Arrays;
import liftwright.numerics.WarmProgram.Outcome;
import liftwright.numerics.WarmProgram.Start;

/** The steps of a {@link WarmProgram}, from a basis to an optimum or to a proof that none is. */
final class DualSteps {

    private static final double REDUCED = 1e-12;
    private static final double PIVOT = 1e-11;

    /** Shares of columns in a sum of rows that are more than rounding. */
    private static final double IN_FACE = 1e-9;

    /** A value is outside its bounds only by more than this share of the greatest bound. */
    private static final double OUTSIDE = 1e-12;

    /** Rows are missed only by more than this share of their terms. */
    private static final double MISSED = 1e-10;

    /** Steps after which the least index decides, so that no circle lasts. */
    private static final int GREEDY_STEPS = 100;

    private static final int MOST_STEPS = 2000;

    /** Steps that an inverse follows before it is made anew. */
    private static final int FOLLOWED = 16;

    private final int rows;
    private final int columns;
    private final double[] a;
    private final double[] b;
    private final double[] c;
    private final double[] lower;
    private final double[] upper;
    private final int[] basis;
    private final boolean[] basic;
    private final boolean[] atUpper;
    private final BasisInverse inverse;
    private final double[] reduced;
    private final double[] row;
    private final double[] along;
    private final int[] passed;

    /** Sums of rows that leave their columns no choice, and on which side. */
    private final double[][] face;

    private final double[] faceSign;
    private int faces;

    final double[] x;
    final double[] price;

    /** Greatest bound. */
    double size;

    double shortfall;
    int taken;

    /**
     * @param a column by column, artificial ones at the end
     */
    DualSteps(int rows, int columns, double[] a, double[] b, double[] c) {
        this.rows = rows;
        this.columns = columns;
        this.a = a;
        this.b = b;
        this.c = c;
        int all = columns + rows;
        lower = new double[all];
        upper = new double[all];
        basis = new int[rows];
        basic = new boolean[all];
        atUpper = new boolean[all];
        x = new double[all];
        inverse = new BasisInverse(rows);
        price = new double[rows];
        reduced = new double[all];
        row = new double[all];
        along = new double[rows];
        passed = new int[all];
        face = new double[rows][rows];
        faceSign = new double[rows];
    }

    void begin(Start start, double[] least, double[] most) {
        System.arraycopy(least, 0, lower, 0, lower.length);
        System.arraycopy(most, 0, upper, 0, upper.length);
        size = Double.MIN_NORMAL;
        for (int j = 0; j < columns; j++) {
            size = Math.max(size, Math.max(Math.abs(lower[j]), Math.abs(upper[j])));
        }
        taken = 0;
        faces = 0;
        Arrays.fill(basic, false);
        if (!start.made || !take(start)) {
            Arrays.fill(atUpper, false);
            inverse.one();
            for (int i = 0; i < rows; i++) {
                basis[i] = columns + i;
            }
        }
        for (int k = 0; k < rows; k++) {
            basic[basis[k]] = true;
        }
    }

    /** Whether a start is one: of another A its basis can have no inverse. */
    private boolean take(Start start) {
        System.arraycopy(start.basis, 0, basis, 0, rows);
        System.arraycopy(start.atUpper, 0, atUpper, 0, atUpper.length);
        if (start.stale) {
            return inverse.make(a, basis);
        }
        inverse.copy(start.inverse);
        return true;
    }

    void end(Start start) {
        System.arraycopy(basis, 0, start.basis, 0, rows);
        System.arraycopy(atUpper, 0, start.atUpper, 0, atUpper.length);
        start.inverse.copy(inverse);
        start.made = true;
        start.stale = false;
    }

    Outcome descend() {
        int followed = 0;
        while (taken < MOST_STEPS) {
            if (followed == FOLLOWED) {
                followed = 0;
                if (!inverse.make(a, basis)) {
                    return Outcome.UNDECIDED;
                }
            }
            prices();
            place();
            values();
            int out = leaving(taken > GREEDY_STEPS);
            if (out < 0) {
                if (followed == 0) {
                    pricesOfFaces();
                    return Outcome.FOUND;
                }
                followed = FOLLOWED;
                continue;
            }
            taken++;
            int leaves = basis[out];
            boolean above = x[leaves] > upper[leaves];
            double outside = above ? x[leaves] - upper[leaves] : lower[leaves] - x[leaves];
            int in = entering(out, above, outside, taken > GREEDY_STEPS);
            if (in < 0) {
                if (followed > 0) {
                    followed = FOLLOWED;
                    continue;
                }
                if (isImpossible(out, above)) {
                    return Outcome.IMPOSSIBLE;
                }
                if (faces == rows) {
                    return Outcome.UNDECIDED;
                }
                freeze(out, above);
                continue;
            }
            change(out, in, above);
            followed++;
        }
        return Outcome.UNDECIDED;
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

    /** Puts every column outside the basis at the bound that its price points to. */
    private void place() {
        for (int j = 0; j < columns; j++) {
            if (basic[j]) {
                continue;
            }
            double worth = c[j];
            double terms = Math.abs(worth);
            for (int i = 0; i < rows; i++) {
                double part = price[i] * a[j * rows + i];
                worth -= part;
                terms += Math.abs(part);
            }
            reduced[j] = worth;
            if (Math.abs(worth) > REDUCED * terms) {
                atUpper[j] = worth > 0;
            }
            x[j] = atUpper[j] ? upper[j] : lower[j];
        }
    }

    /** Values of the basis from those of all others. */
    private void values() {
        System.arraycopy(b, 0, along, 0, rows);
        for (int j = 0; j < columns; j++) {
            if (!basic[j] && x[j] != 0) {
                for (int i = 0; i < rows; i++) {
                    along[i] -= a[j * rows + i] * x[j];
                }
            }
        }
        for (int k = 0; k < rows; k++) {
            double sum = 0;
            for (int i = 0; i < rows; i++) {
                sum += inverse.at(k, i) * along[i];
            }
            x[basis[k]] = sum;
        }
    }

    /** Place in the basis of the one that is farthest outside its bounds; −1 where none is. */
    private int leaving(boolean leastIndex) {
        int out = -1;
        double most = 0;
        for (int k = 0; k < rows; k++) {
            int j = basis[k];
            double outside = Math.max(x[j] - upper[j], lower[j] - x[j]);
            double squares = 0;
            double reach = 0;
            for (int i = 0; i < rows; i++) {
                double part = inverse.at(k, i);
                squares += part * part;
                reach = Math.max(reach, Math.abs(part * b[i]));
            }
            if (outside > OUTSIDE * Math.max(size, reach)) {
                double weighed = outside * outside / squares;
                boolean sooner = out < 0 || j < basis[out];
                if (leastIndex ? sooner : weighed > most) {
                    most = weighed;
                    out = k;
                }
            }
        }
        return out;
    }

    /**
     * The column that takes the place: the one whose price is the first to turn round, after those
     * that only go from bound to bound. −1 where all of them do.
     */
    private int entering(int out, boolean above, double outside, boolean careful) {
        double sign = above ? 1 : -1;
        int count = 0;
        for (int j = 0; j < columns; j++) {
            if (basic[j] || lower[j] == upper[j]) {
                continue;
            }
            double sum = 0;
            double terms = 0;
            for (int i = 0; i < rows; i++) {
                double part = inverse.at(out, i) * a[j * rows + i];
                sum += part;
                terms += Math.abs(part);
            }
            row[j] = sum;
            double helps = atUpper[j] ? -sign * sum : sign * sum;
            if (helps > PIVOT * terms) {
                passed[count++] = j;
            }
        }
        double left = outside;
        for (int k = 0; k < count; k++) {
            int first = next(k, count);
            int j = passed[first];
            passed[first] = passed[k];
            passed[k] = j;
            left -= Math.abs(row[j]) * (upper[j] - lower[j]);
            if (left <= 0 || careful) {
                for (int past = 0; past < k; past++) {
                    atUpper[passed[past]] = !atUpper[passed[past]];
                }
                return j;
            }
        }
        return -1;
    }

    /** Of the candidates from a place on the one with the least ratio, among alike the largest. */
    private int next(int from, int count) {
        int best = from;
        double least = Double.POSITIVE_INFINITY;
        for (int k = from; k < count; k++) {
            int j = passed[k];
            double ratio = Math.abs(reduced[j] / row[j]);
            boolean sooner = ratio < least * (1 - 1e-12);
            boolean alike = !sooner && ratio <= least * (1 + 1e-12);
            if (sooner || (alike && Math.abs(row[j]) > Math.abs(row[passed[best]]))) {
                least = Math.min(least, ratio);
                best = k;
            }
        }
        return best;
    }

    private void change(int out, int in, boolean above) {
        int leaves = basis[out];
        basic[leaves] = false;
        atUpper[leaves] = above;
        x[leaves] = above ? upper[leaves] : lower[leaves];
        basic[in] = true;
        basis[out] = in;
        inverse.follow(a, in, out);
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
            double sum = inverse.share(out, a, j);
            nearest -= sign * sum * (sign * sum > 0 ? upper[j] : lower[j]);
            terms += Math.abs(sum) * Math.max(Math.abs(lower[j]), Math.abs(upper[j]));
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
        for (int i = 0; i < rows; i++) {
            face[faces][i] = inverse.at(out, i);
        }
        faceSign[faces++] = sign;
        for (int j = 0; j < columns; j++) {
            double sum = inverse.share(out, a, j);
            if (!basic[j] && Math.abs(sum) > IN_FACE) {
                atUpper[j] = sign * sum > 0;
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

    /** Prices so far along each face that every column in it wants to be where it is. */
    private void pricesOfFaces() {
        while (faces > 0) {
            faces--;
            double turn = 0;
            for (int j = 0; j < columns; j++) {
                double sum = 0;
                double worth = c[j];
                for (int i = 0; i < rows; i++) {
                    sum += face[faces][i] * a[j * rows + i];
                    worth -= price[i] * a[j * rows + i];
                }
                double towards = faceSign[faces] * sum;
                if (Math.abs(sum) > IN_FACE && worth * towards < 0) {
                    turn = Math.max(turn, Math.abs(worth / sum));
                }
            }
            for (int i = 0; i < rows; i++) {
                price[i] -= faceSign[faces] * turn * face[faces][i];
            }
        }
    }
}
