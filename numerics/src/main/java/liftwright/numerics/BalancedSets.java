package liftwright.numerics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * Parts a number of plane vectors into sets of given sizes so that, whichever set is taken away,
 * what is left is small: least of the greatest |total − Σ of a set|, the total being the sum of all
 * vectors and of a rest that stays.
 *
 * <p>Where all sets that could be are few enough they are listed, and the least limit is found for
 * which some of those below it cover every vector once: bisection over limits, each decided by a
 * search that always covers next the vector with the fewest sets left. Otherwise exchanges of two
 * vectors between sets, while they help, from the sets there are; that is no proof. {@link
 * Found#bound} holds in either case: the sum of all residuals is known beforehand, and one is no
 * smaller than their mean.
 */
public final class BalancedSets {

    /** Sets that are listed at most. */
    private static final int MOST_SETS = 60_000;

    /** Branches of one search for a cover. */
    private static final int MOST_STEPS = 300_000;

    private static final double SAME = 1e-10;

    private final double[][] vector;
    private final int[] size;
    private final double[] total;
    private final double[] sum;
    private final double[] rest;
    private final double tiny;
    private final List<int[]> sets = new ArrayList<>();
    private double[] cost = new double[0];
    private final boolean[] covered;
    private final int[] open;
    private final List<int[]> cover = new ArrayList<>();
    private int steps;
    private boolean gaveUp;

    /**
     * A partition.
     *
     * @param set number of the set of each vector; sets count as their sizes were given
     * @param worst greatest residual
     * @param bound no partition has less
     */
    @SuppressWarnings("ArrayRecordComponent") // handed out once, never compared
    public record Found(int[] set, double worst, double bound) {
        /** Whether none is better. */
        public boolean proven() {
            return worst <= bound * (1 + 1e-9) + 1e-12;
        }
    }

    private BalancedSets(double[][] vector, int[] size, double[] rest) {
        this.vector = vector;
        this.size = size;
        this.rest = rest;
        total = rest.clone();
        sum = new double[2];
        double largest = 0;
        for (double[] each : vector) {
            for (int axis = 0; axis < 2; axis++) {
                total[axis] += each[axis];
                sum[axis] += each[axis];
            }
            largest = Math.max(largest, Math.hypot(each[0], each[1]));
        }
        tiny = SAME * largest;
        covered = new boolean[vector.length];
        open = new int[vector.length + 1];
    }

    /**
     * Finds one.
     *
     * @param vector in: two numbers each
     * @param given in: set of each vector now, from 0; every set has at least one
     * @param rest in: two numbers that stay whichever set is taken away
     */
    public static Found of(double[][] vector, int[] given, double[] rest) {
        int count = Arrays.stream(given).max().orElse(-1) + 1;
        int[] size = new int[count];
        for (int set : given) {
            size[set]++;
        }
        for (int members : size) {
            if (members == 0 || given.length != vector.length) {
                throw new IllegalArgumentException("a set for each vector, and none empty");
            }
        }
        var search = new BalancedSets(vector, size, rest);
        return search.list() ? search.exact(given) : search.exchange(given);
    }

    /** Greatest residual of a partition. */
    public static double worst(double[][] vector, int[] set, double[] rest) {
        double[] total = rest.clone();
        double[][] own = new double[Arrays.stream(set).max().orElse(-1) + 1][2];
        for (int k = 0; k < vector.length; k++) {
            for (int axis = 0; axis < 2; axis++) {
                total[axis] += vector[k][axis];
                own[set[k]][axis] += vector[k][axis];
            }
        }
        double worst = 0;
        for (double[] each : own) {
            worst = Math.max(worst, Math.hypot(total[0] - each[0], total[1] - each[1]));
        }
        return worst;
    }

    private double mean() {
        double sets = size.length;
        return Math.hypot(total[0] - sum[0] / sets, total[1] - sum[1] / sets);
    }

    /** All sets of all sizes; false where they are too many. */
    private boolean list() {
        TreeSet<Integer> sizes = new TreeSet<>();
        for (int members : size) {
            sizes.add(members);
        }
        double many = 0;
        for (int members : sizes) {
            double ways = 1;
            for (int k = 0; k < members; k++) {
                ways *= (double) (vector.length - k) / (k + 1);
            }
            many += ways;
        }
        if (many > MOST_SETS) {
            return false;
        }
        for (int members : sizes) {
            choose(new int[members], 0, 0);
        }
        cost = new double[sets.size()];
        for (int s = 0; s < cost.length; s++) {
            cost[s] = residual(sets.get(s));
        }
        return true;
    }

    private void choose(int[] chosen, int next, int from) {
        if (next == chosen.length) {
            sets.add(chosen.clone());
            return;
        }
        for (int k = from; k < vector.length; k++) {
            chosen[next] = k;
            choose(chosen, next + 1, k + 1);
        }
    }

    private double residual(int[] members) {
        double x = total[0];
        double y = total[1];
        for (int k : members) {
            x -= vector[k][0];
            y -= vector[k][1];
        }
        return Math.hypot(x, y);
    }

    private Found exact(int[] given) {
        double best = worst(vector, given, rest);
        int[] set = given.clone();
        double[] limits = Arrays.stream(cost).sorted().toArray();
        int low = 0;
        int high = Arrays.binarySearch(limits, best - tiny);
        high = high < 0 ? -high - 1 : high;
        double proven = mean();
        boolean unknown = false;
        while (low < high) {
            int middle = (low + high) / 2;
            if (covers(limits[middle])) {
                set = numbered();
                best = worst(vector, set, rest);
                high = middle;
            } else {
                low = middle + 1;
                unknown |= gaveUp; // what is above is still searched for something better
                proven = gaveUp ? proven : Math.max(proven, limits[middle]);
            }
        }
        return new Found(set, best, unknown ? Math.min(best, proven) : best);
    }

    private boolean covers(double limit) {
        List<Integer> usable = new ArrayList<>();
        for (int s = 0; s < cost.length; s++) {
            if (cost[s] <= limit + tiny) {
                usable.add(s);
            }
        }
        Arrays.fill(covered, false);
        Arrays.fill(open, 0);
        for (int members : size) {
            open[members]++;
        }
        cover.clear();
        steps = 0;
        gaveUp = false;
        return descend(usable, vector.length);
    }

    private boolean descend(List<Integer> usable, int left) {
        if (left == 0) {
            return true;
        }
        if (++steps > MOST_STEPS) {
            gaveUp = true;
            return false;
        }
        int[] ways = new int[vector.length];
        for (int s : usable) {
            for (int k : sets.get(s)) {
                ways[k]++;
            }
        }
        int next = -1;
        for (int k = 0; k < ways.length; k++) {
            if (!covered[k] && (next < 0 || ways[k] < ways[next])) {
                next = k;
            }
        }
        for (int s : usable) {
            int[] members = sets.get(s);
            if (contains(members, next) && open[members.length] > 0) {
                open[members.length]--;
                cover.add(members);
                for (int k : members) {
                    covered[k] = true;
                }
                List<Integer> rest = new ArrayList<>();
                for (int other : usable) {
                    if (isOpen(sets.get(other))) {
                        rest.add(other);
                    }
                }
                if (descend(rest, left - members.length)) {
                    return true;
                }
                for (int k : members) {
                    covered[k] = false;
                }
                cover.removeLast();
                open[members.length]++;
                if (gaveUp) {
                    return false;
                }
            }
        }
        return false;
    }

    private boolean isOpen(int[] members) {
        for (int k : members) {
            if (covered[k]) {
                return false;
            }
        }
        return open[members.length] > 0;
    }

    private static boolean contains(int[] members, int k) {
        for (int member : members) {
            if (member == k) {
                return true;
            }
        }
        return false;
    }

    /** The sets of the cover, given numbers of sets of their sizes. */
    private int[] numbered() {
        int[] set = new int[vector.length];
        boolean[] taken = new boolean[size.length];
        for (int[] members : cover) {
            int number = 0;
            while (taken[number] || size[number] != members.length) {
                number++;
            }
            taken[number] = true;
            for (int k : members) {
                set[k] = number;
            }
        }
        return set;
    }

    private Found exchange(int[] given) {
        int[] set = given.clone();
        double best = worst(vector, set, rest);
        boolean better = true;
        while (better) {
            better = false;
            for (int i = 0; i < set.length; i++) {
                for (int j = 0; j < i; j++) {
                    swap(set, i, j);
                    double reached = worst(vector, set, rest);
                    if (reached < best - tiny) {
                        best = reached;
                        better = true;
                    } else {
                        swap(set, i, j);
                    }
                }
            }
        }
        return new Found(set, best, Math.min(best, mean()));
    }

    private static void swap(int[] set, int i, int j) {
        int kept = set[i];
        set[i] = set[j];
        set[j] = kept;
    }
}
