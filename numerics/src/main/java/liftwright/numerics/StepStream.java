package liftwright.numerics;

import java.util.Arrays;

/**
 * Random numbers of one channel for steps that are asked one after another: to the last bit the
 * same as {@link CounterStream} tells one by one. A block of steps is computed at once, in loops
 * without a branch, which the machine goes through several numbers at a time. For one thread;
 * allocates nothing after it was made.
 */
public final class StepStream {

    /** Steps computed at once. */
    private static final int BLOCK = 64;

    private static final long WORD = 0xFFFFFFFFL;

    private final long seed;
    private final long channel;
    private final int draw;

    // Words of the counters, one a step of the block.
    private final long[] word0 = new long[BLOCK];
    private final long[] word1 = new long[BLOCK];
    private final long[] word2 = new long[BLOCK];
    private final long[] word3 = new long[BLOCK];

    private final double[] uniform = new double[BLOCK];
    private final double[] normal = new double[BLOCK];

    /** First step of the block that is held. */
    private int first;

    private boolean filled;
    private boolean shaped;

    /** Parameters as {@link CounterStream#uniform(long, long, int, int)} has them. */
    public StepStream(long seed, long channel, int draw) {
        this.seed = seed;
        this.channel = channel;
        this.draw = draw;
    }

    /** {@link CounterStream#uniform(long, long, int, int)} of a step. */
    public double uniform(int step) {
        hold(step);
        return uniform[step - first];
    }

    /** {@link CounterStream#normal(long, long, int, int)} of a step. */
    public double normal(int step) {
        hold(step);
        if (!shaped) {
            Gaussian.quantiles(uniform, normal);
            shaped = true;
        }
        return normal[step - first];
    }

    private void hold(int step) {
        int from = step & -BLOCK;
        if (filled && from == first) {
            return;
        }
        first = from;
        filled = true;
        shaped = false;
        Arrays.fill(word0, channel & WORD);
        Arrays.fill(word1, channel >>> 32);
        for (int k = 0; k < BLOCK; k++) {
            word2[k] = (from + k) & WORD;
        }
        Arrays.fill(word3, draw & WORD);
        int key0 = (int) seed;
        int key1 = (int) (seed >>> 32);
        for (int round = 0; round < CounterStream.ROUNDS; round++) {
            round(key0 & WORD, key1 & WORD);
            key0 += CounterStream.WEYL_0;
            key1 += CounterStream.WEYL_1;
        }
        for (int k = 0; k < BLOCK; k++) {
            uniform[k] = CounterStream.uniform(word0[k] << 32 | word1[k]);
        }
    }

    /**
     * A round of all counters, as {@link CounterStream#block} has it, words in the place of ints.
     */
    private void round(long key0, long key1) {
        long[] w0 = word0;
        long[] w1 = word1;
        long[] w2 = word2;
        long[] w3 = word3;
        for (int k = 0; k < BLOCK; k++) {
            long product0 = (CounterStream.MULTIPLIER_0 & WORD) * w0[k];
            long product1 = (CounterStream.MULTIPLIER_1 & WORD) * w2[k];
            w0[k] = (product1 >>> 32) ^ w1[k] ^ key0;
            w1[k] = product1 & WORD;
            w2[k] = (product0 >>> 32) ^ w3[k] ^ key1;
            w3[k] = product0 & WORD;
        }
    }
}
