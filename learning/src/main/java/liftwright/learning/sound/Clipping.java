package liftwright.learning.sound;

import java.util.Locale;
import java.util.Optional;

/**
 * Whether the tops of a recording were cut off, at full scale or, where a recorder turned it down
 * afterwards, below it. A cut top is flat: neighbouring samples at the very greatest value, which
 * waves with noise on them do not show. Cut tops make sums and multiples of lines that no fan turns
 * at.
 *
 * @param share of all samples that lie on a flat top, 0 to 1
 * @param level at which they were cut, full scale 1
 */
record Clipping(double share, double level) {

    /** One step of 16 bit, and what rounding does to it. */
    private static final double STEP = 1.01 / 32_768;

    /** Samples beside each other that make a top flat. */
    private static final int FLAT = 2;

    /** Fewer flat tops are chance. */
    private static final int LEAST_TOPS = 10;

    private static final double LEAST_SHARE = 2e-4;

    /** Quieter than this, whole waves are a few steps high, and every top is flat. */
    private static final double QUIET = 0.01;

    /** Empty where none is seen. */
    static Optional<Clipping> of(Waveform sound) {
        float[] x = sound.samples();
        double high = 0;
        double low = 0;
        for (float sample : x) {
            high = Math.max(high, sample);
            low = Math.min(low, sample);
        }
        int tops = 0;
        int flat = 0;
        int run = 0;
        for (int k = 0; k <= x.length; k++) {
            boolean top =
                    k < x.length
                            && ((high > QUIET && x[k] >= high - STEP)
                                    || (low < -QUIET && x[k] <= low + STEP));
            if (top) {
                run++;
                continue;
            }
            if (run >= FLAT) {
                tops++;
                flat += run;
            }
            run = 0;
        }
        double share = flat / (double) x.length;
        return tops >= LEAST_TOPS && share >= LEAST_SHARE
                ? Optional.of(new Clipping(share, Math.max(high, -low)))
                : Optional.empty();
    }

    /** For the one who reads what was heard. */
    String words() {
        return String.format(
                Locale.ROOT,
                "The recording is cut off at its loudest: %.2g %% of the samples lie on flat tops at"
                        + " %.0f %% of full scale. Lines that are sums or multiples of others may be of no"
                        + " fan; record it again at a lower level.",
                100 * share,
                100 * level);
    }
}
