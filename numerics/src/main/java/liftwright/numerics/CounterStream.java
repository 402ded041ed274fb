package liftwright.numerics;

import java.nio.charset.StandardCharsets;

/**
 * Random numbers addressed by what they are for: a pure function of (seed, channel, draw, step),
 * with no state. Philox 4×32-10 [SALMON11].
 *
 * <p>A channel is the hash of a parameter's name, so a new parameter changes no other draw, and
 * draw k is the same number whether 256 or 16,384 draws are made (draws are nested). The 64-bit
 * seed is the key; the 128-bit counter holds channel (64 bits), step (32) and draw (32), so that no
 * two addresses share a block.
 */
public final class CounterStream {

    static final int MULTIPLIER_0 = 0xD2511F53;
    static final int MULTIPLIER_1 = 0xCD9E8D57;
    static final int WEYL_0 = 0x9E3779B9;
    static final int WEYL_1 = 0xBB67AE85;
    static final int ROUNDS = 10;

    private CounterStream() {}

    /**
     * Stable address of a name: FNV-1a, 64 bits [FNV1A], over its UTF-8 bytes, then the 64-bit
     * finaliser of MurmurHash3 (without it, names that differ in the last letter differ in few
     * bits). The value is part of what makes answers reproducible: it never changes.
     */
    public static long channel(String name) {
        long hash = fnv1a(name.getBytes(StandardCharsets.UTF_8));
        hash ^= hash >>> 33;
        hash *= 0xFF51AFD7ED558CCDL;
        hash ^= hash >>> 33;
        hash *= 0xC4CEB9FE1A85EC53L;
        return hash ^ (hash >>> 33);
    }

    static long fnv1a(byte[] bytes) {
        long hash = 0xCBF29CE484222325L;
        for (byte next : bytes) {
            hash = (hash ^ (next & 0xFF)) * 0x100000001B3L;
        }
        return hash;
    }

    /** Uniform in the open interval (0, 1), step 0: see {@link #uniform(long, long, int, int)}. */
    public static double uniform(long seed, long channel, int draw) {
        return uniform(seed, channel, draw, 0);
    }

    /**
     * Uniform in the open interval (0, 1): 2⁵² equal cells, each represented by its middle, so that
     * neither end occurs and 1 − u is exact.
     *
     * @param channel address, from {@link #channel}
     * @param draw number of the draw or case, ≥ 0
     * @param step position within the channel: a time step, or a component of a group
     */
    public static double uniform(long seed, long channel, int draw, int step) {
        return uniform(bits(seed, channel, draw, step));
    }

    /** The uniform number that so many bits make. */
    static double uniform(long bits) {
        return ((bits >>> 12) + 0.5) * 0x1p-52;
    }

    /** Standard normal deviate, step 0: see {@link #normal(long, long, int, int)}. */
    public static double normal(long seed, long channel, int draw) {
        return normal(seed, channel, draw, 0);
    }

    /** Standard normal deviate: the normal quantile of {@link #uniform(long, long, int, int)}. */
    public static double normal(long seed, long channel, int draw, int step) {
        return Gaussian.quantile(uniform(seed, channel, draw, step));
    }

    /** 64 random bits of an address. */
    public static long bits(long seed, long channel, int draw, int step) {
        return block(
                (int) channel,
                (int) (channel >>> 32),
                step,
                draw,
                (int) seed,
                (int) (seed >>> 32),
                false);
    }

    /**
     * One Philox block.
     *
     * @param second which half: words 2 and 3 rather than 0 and 1
     * @return the first word of the half in the upper 32 bits, the second in the lower
     */
    static long block(int c0, int c1, int c2, int c3, int k0, int k1, boolean second) {
        for (int round = 0; round < ROUNDS; round++) {
            long product0 = (MULTIPLIER_0 & 0xFFFFFFFFL) * (c0 & 0xFFFFFFFFL);
            long product1 = (MULTIPLIER_1 & 0xFFFFFFFFL) * (c2 & 0xFFFFFFFFL);
            c0 = (int) (product1 >>> 32) ^ c1 ^ k0;
            c1 = (int) product1;
            c2 = (int) (product0 >>> 32) ^ c3 ^ k1;
            c3 = (int) product0;
            k0 += WEYL_0;
            k1 += WEYL_1;
        }
        return second ? (long) c2 << 32 | (c3 & 0xFFFFFFFFL) : (long) c0 << 32 | (c1 & 0xFFFFFFFFL);
    }
}
