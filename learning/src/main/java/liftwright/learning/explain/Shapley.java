package liftwright.learning.explain;

import java.util.function.IntToDoubleFunction;

/**
 * What each of a few players adds to the worth of all, on average over all orders in which they may
 * come: the only shares that add up, treat equals alike, and give nothing to who adds nothing
 * [SHAPLEY53].
 */
final class Shapley {

    /** More players than this are too many sets. */
    static final int MOST = 8;

    private Shapley() {}

    /**
     * @param players 1 to {@link #MOST}
     * @param worth of a set of players, bit k for player k; asked once for each set
     */
    static double[] of(int players, IntToDoubleFunction worth) {
        if (players < 1 || players > MOST) {
            throw new IllegalArgumentException(players + " players");
        }
        int sets = 1 << players;
        double[] of = new double[sets];
        for (int set = 0; set < sets; set++) {
            of[set] = worth.applyAsDouble(set);
        }
        double[] weight = new double[players];
        for (int size = 0; size < players; size++) {
            weight[size] = factorial(size) * factorial(players - size - 1) / factorial(players);
        }
        double[] shares = new double[players];
        for (int set = 0; set < sets; set++) {
            for (int k = 0; k < players; k++) {
                if ((set & 1 << k) == 0) {
                    shares[k] += weight[Integer.bitCount(set)] * (of[set | 1 << k] - of[set]);
                }
            }
        }
        return shares;
    }

    private static double factorial(int n) {
        double product = 1;
        for (int k = 2; k <= n; k++) {
            product *= k;
        }
        return product;
    }
}
