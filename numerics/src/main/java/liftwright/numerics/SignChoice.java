package liftwright.numerics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Signs s_k = ±1 that keep sums b_l + Σ s_k q_kl small in every case l at once: least of the
 * greatest |sum|, all up to {@code enough} counting as equal; of equal ones the fewest signs that
 * differ from given ones; of these the least greatest |sum|.
 *
 * <p>Columns that are the same share one count of pluses, so symmetric rigs are small. Depth-first
 * branch and bound over these counts, largest columns first: what is left to decide can move each
 * sum by no more than the sizes left, and by no more than twice the largest so many where few
 * changes remain. It is exact where it ends by itself. Where the steps allowed run out, {@link
 * Found#bound} says what is proven.
 */
public final class SignChoice {

    /** Sums nearer than this share of their size are the same. */
    private static final double SAME = 1e-11;

    private final int cases;
    private final double enough;
    private final boolean[] given;
    private final double[][] column;
    private final int[] count;
    private final int[] before;
    private final int[][] members;
    private final double[] sum;

    /** Σ over the classes from this one on of count · |q|, case by case. */
    private final double[][] left;

    /** Sum with these classes as given, case by case. */
    private final double[][] asGiven;

    /** The largest |q| of the classes from this one on, added up to so many changes. */
    private final double[][][] largest;

    private final int[] chosen;
    private final double tiny;
    private final long mostSteps;
    private int[] best;
    private double bestWorst = Double.POSITIVE_INFINITY;
    private int bestChanges = Integer.MAX_VALUE;
    private long steps;

    /**
     * What was found.
     *
     * @param plus sign of each column, true for +
     * @param worst greatest |sum|
     * @param changes signs that differ from the given ones
     * @param bound no choice has a worst below this; {@code worst} itself where it is proven least,
     *     and 0 where any up to {@code enough} counts as equal
     * @param exact whether the whole order (worst, then changes, then worst) is proven
     * @param steps branches looked at
     */
    @SuppressWarnings("ArrayRecordComponent") // handed out once, never compared
    public record Found(
            boolean[] plus, double worst, int changes, double bound, boolean exact, long steps) {}

    private SignChoice(double[] b, double[][] q, boolean[] given, double enough, long mostSteps) {
        cases = b.length;
        this.enough = enough;
        this.given = given;
        this.mostSteps = mostSteps;
        double size = 0;
        for (double value : b) {
            size = Math.max(size, Math.abs(value));
        }
        for (double[] each : q) {
            for (double value : each) {
                size = Math.max(size, Math.abs(value));
            }
        }
        tiny = SAME * size;
        List<List<Integer>> classes = classes(q);
        int groups = classes.size();
        column = new double[groups][];
        count = new int[groups];
        before = new int[groups];
        members = new int[groups][];
        for (int c = 0; c < groups; c++) {
            members[c] = classes.get(c).stream().mapToInt(k -> k).toArray();
            column[c] = q[members[c][0]];
            count[c] = members[c].length;
            for (int k : members[c]) {
                before[c] += given[k] ? 1 : 0;
            }
        }
        sum = b.clone();
        left = new double[groups + 1][cases];
        asGiven = new double[groups + 1][cases];
        largest = new double[groups + 1][cases][q.length + 1];
        for (int c = groups - 1; c >= 0; c--) {
            for (int l = 0; l < cases; l++) {
                left[c][l] = left[c + 1][l] + count[c] * Math.abs(column[c][l]);
                asGiven[c][l] = asGiven[c + 1][l] + (2 * before[c] - count[c]) * column[c][l];
            }
        }
        for (int c = groups; c >= 0; c--) {
            for (int l = 0; l < cases; l++) {
                addUp(c, l);
            }
        }
        chosen = new int[groups];
        best = new int[groups];
    }

    private List<List<Integer>> classes(double[][] q) {
        List<List<Integer>> classes = new ArrayList<>();
        for (int k = 0; k < q.length; k++) {
            List<Integer> own = null;
            for (List<Integer> each : classes) {
                own = same(q[each.getFirst()], q[k]) ? each : own;
            }
            if (own == null) {
                own = new ArrayList<>();
                classes.add(own);
            }
            own.add(k);
        }
        classes.sort(
                Comparator.comparingDouble((List<Integer> each) -> -greatest(q[each.getFirst()])));
        return classes;
    }

    private boolean same(double[] a, double[] b) {
        for (int l = 0; l < cases; l++) {
            if (Math.abs(a[l] - b[l]) > tiny) {
                return false;
            }
        }
        return true;
    }

    private void addUp(int from, int l) {
        List<Double> sizes = new ArrayList<>();
        for (int c = from; c < count.length; c++) {
            for (int k = 0; k < count[c]; k++) {
                sizes.add(Math.abs(column[c][l]));
            }
        }
        sizes.sort(Comparator.reverseOrder());
        double[] sums = largest[from][l];
        for (int k = 1; k < sums.length; k++) {
            sums[k] = sums[k - 1] + (k <= sizes.size() ? sizes.get(k - 1) : 0);
        }
    }

    private static double greatest(double[] values) {
        double most = 0;
        for (double value : values) {
            most = Math.max(most, Math.abs(value));
        }
        return most;
    }

    /**
     * Finds them.
     *
     * @param b in: the part of each sum that no sign changes
     * @param q in: one column of {@code b.length} numbers for each sign
     * @param given in: the signs there are, true for +
     * @param enough sums of this size are as good as none, ≥ 0
     * @param mostSteps branches to look at before it gives up the proof
     */
    public static Found of(
            double[] b, double[][] q, boolean[] given, double enough, long mostSteps) {
        if (q.length != given.length || !(enough >= 0)) {
            throw new IllegalArgumentException("a sign for each column, and enough not below 0");
        }
        var choice = new SignChoice(b, q, given, enough, mostSteps);
        choice.start();
        choice.descend(0, 0);
        return choice.found();
    }

    /** The given signs, then one change at a time while that helps: something to beat. */
    private void start() {
        System.arraycopy(before, 0, chosen, 0, chosen.length);
        keep(worst(chosen), 0);
        boolean better = true;
        while (better) {
            better = false;
            int from = -1;
            int to = -1;
            double least = bestWorst;
            System.arraycopy(best, 0, chosen, 0, chosen.length);
            for (int c = 0; c < chosen.length; c++) {
                for (int way = -1; way <= 1; way += 2) {
                    if (chosen[c] + way >= 0 && chosen[c] + way <= count[c]) {
                        chosen[c] += way;
                        double reached = worst(chosen);
                        if (reached < least - tiny) {
                            least = reached;
                            from = c;
                            to = chosen[c];
                        }
                        chosen[c] -= way;
                    }
                }
            }
            if (from >= 0 && bestWorst > enough) {
                chosen[from] = to;
                keep(least, changes(chosen));
                better = true;
            }
        }
    }

    private void keep(double worst, int changes) {
        System.arraycopy(chosen, 0, best, 0, chosen.length);
        bestWorst = worst;
        bestChanges = changes;
    }

    private int changes(int[] pluses) {
        int changes = 0;
        for (int c = 0; c < pluses.length; c++) {
            changes += Math.abs(pluses[c] - before[c]);
        }
        return changes;
    }

    private double worst(int[] pluses) {
        double worst = 0;
        for (int l = 0; l < cases; l++) {
            double total = sum[l];
            for (int c = 0; c < pluses.length; c++) {
                total += (2 * pluses[c] - count[c]) * column[c][l];
            }
            worst = Math.max(worst, Math.abs(total));
        }
        return worst;
    }

    /** Classes from {@code at} on are open; {@link #sum} holds those before. */
    private void descend(int at, int changed) {
        steps++;
        if (steps > mostSteps || !promises(at, changed)) {
            return;
        }
        if (at == count.length) {
            double worst = 0;
            for (double total : sum) {
                worst = Math.max(worst, Math.abs(total));
            }
            if (beats(worst, changed)) {
                keep(worst, changed);
            }
            return;
        }
        for (int move = 0; move <= count[at]; move++) {
            for (int way = -1; way <= 1; way += 2) {
                int pluses = before[at] + way * move;
                if (pluses < 0 || pluses > count[at] || (move == 0 && way > 0)) {
                    continue;
                }
                int sign = 2 * pluses - count[at];
                double[] kept = sum.clone();
                for (int l = 0; l < cases; l++) {
                    sum[l] += sign * column[at][l];
                }
                chosen[at] = pluses;
                descend(at + 1, changed + move);
                System.arraycopy(kept, 0, sum, 0, cases);
            }
        }
    }

    private boolean beats(double worst, int changes) {
        double mine = Math.max(worst, enough);
        double theirs = Math.max(bestWorst, enough);
        if (mine < theirs - tiny) {
            return true;
        }
        if (mine > theirs + tiny) {
            return false;
        }
        return changes < bestChanges || (changes == bestChanges && worst < bestWorst - tiny);
    }

    /** Whether what is open can still lead to something better. */
    private boolean promises(int at, int changed) {
        double least = 0;
        for (int l = 0; l < cases; l++) {
            least = Math.max(least, Math.abs(sum[l]) - left[at][l]);
        }
        double theirs = Math.max(bestWorst, enough);
        if (least > theirs + tiny) {
            return false;
        }
        boolean canBeLess = Math.max(least, enough) < theirs - tiny;
        if (canBeLess) {
            return true;
        }
        // No less than the best: it must have no more changes, or as many and be less below enough.
        int more = bestChanges - changed;
        if (more < 0 || (more == 0 && least > bestWorst + tiny)) {
            return false;
        }
        for (int l = 0; l < cases; l++) {
            double reach = 2 * largest[at][l][Math.min(more, largest[at][l].length - 1)];
            if (Math.abs(sum[l] + asGiven[at][l]) - reach > theirs + tiny) {
                return false;
            }
        }
        return true;
    }

    private Found found() {
        boolean[] plus = new boolean[Arrays.stream(count).sum()];
        boolean exact = steps <= mostSteps;
        for (int c = 0; c < count.length; c++) {
            sign(c, plus);
        }
        double floor = 0;
        for (int l = 0; l < cases; l++) {
            floor = Math.max(floor, Math.abs(sum[l]) - left[0][l]);
        }
        double bound = bestWorst <= enough ? 0 : exact ? bestWorst : floor;
        return new Found(plus, bestWorst, bestChanges, bound, exact, steps);
    }

    /** Within a class, those that have the sign keep it as far as the count allows. */
    private void sign(int c, boolean[] plus) {
        int more = best[c] - before[c];
        for (int k : members[c]) {
            plus[k] = given[k];
            if (more > 0 && !given[k]) {
                plus[k] = true;
                more--;
            } else if (more < 0 && given[k]) {
                plus[k] = false;
                more++;
            }
        }
    }
}
