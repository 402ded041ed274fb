package liftwright.learning.explain;

/**
 * A cause with what it would do to the readings, size by size.
 *
 * @param cause which
 * @param prior how likely it is before anything is measured, over that of {@link Cause#NOTHING}
 * @param sizes for which it was computed, rising in amount, of one sign; a single one where the
 *     cause has no sizes
 * @param effects for each size: readings with it less readings without, all blocks of all channels
 * @param newtons for each size: what it takes of the lift
 * @param least size of its prior in amount; sizes from there to the last are as likely, octave by
 *     octave
 * @param unit what a size is in words, with one {@code %s} for the number
 * @param unsureN how unsure its newtons are at a given size, standard deviation, N
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
record Hypothesis(
        Cause cause,
        double prior,
        double[] sizes,
        double[][] effects,
        double[] newtons,
        double least,
        Sizing unit,
        double unsureN) {

    /** Tells a size. */
    interface Sizing {
        String of(double low, double size, double high);
    }

    Hypothesis {
        if (sizes.length == 0
                || effects.length != sizes.length
                || newtons.length != sizes.length
                || !(prior > 0)) {
            throw new IllegalArgumentException("a hypothesis has effects for each of its sizes");
        }
    }

    boolean isSized() {
        return sizes.length > 1;
    }

    double most() {
        return sizes[sizes.length - 1];
    }

    /**
     * Weights of the computed effects that give the effect at another size: the effect over the
     * size is straight between sizes and stays beyond them.
     *
     * @param out takes one weight for each size
     */
    void weights(double size, double[] out) {
        java.util.Arrays.fill(out, 0);
        if (!isSized()) {
            out[0] = 1;
            return;
        }
        double amount = Math.abs(size);
        int last = sizes.length - 1;
        int k = 0;
        while (k < last - 1 && amount > Math.abs(sizes[k + 1])) {
            k++;
        }
        double share =
                Math.clamp(
                        (amount - Math.abs(sizes[k]))
                                / (Math.abs(sizes[k + 1]) - Math.abs(sizes[k])),
                        0,
                        1);
        out[k] += (1 - share) * size / sizes[k];
        out[k + 1] += share * size / sizes[k + 1];
    }

    /** What a size does to the readings. */
    double[] effect(double size) {
        double[] weights = new double[sizes.length];
        weights(size, weights);
        double[] sum = new double[effects[0].length];
        for (int k = 0; k < weights.length; k++) {
            for (int i = 0; weights[k] != 0 && i < sum.length; i++) {
                sum[i] += weights[k] * effects[k][i];
            }
        }
        return sum;
    }

    /** What a size takes of the lift, N. */
    double newtons(double size) {
        double[] weights = new double[sizes.length];
        weights(size, weights);
        double sum = 0;
        for (int k = 0; k < weights.length; k++) {
            sum += weights[k] * newtons[k];
        }
        return sum;
    }
}
