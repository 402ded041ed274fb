package liftwright.learning.sound;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import liftwright.numerics.Quantiles;

/**
 * Whether a recording was cut off above some frequency, as lossy coding and voice messages do: its
 * mean spectrum falls off a cliff there and does not come back. Microphones and rooms fall off by
 * slopes, and a recorder's own filter lies close below half its rate.
 *
 * @param hz where it is cut
 * @param drop how far the floor falls there, nepers of power
 */
record BandEdge(double hz, double drop) {

    /** 20 dB: more than any slope makes in the gap. */
    private static final double LEAST_DROP = 2 * Math.log(10);

    /** Of half the rate: the highest edge that is not the recorder's own filter's. */
    private static final double HIGHEST = 0.92;

    private static final double LOWEST = 0.08;

    /** Of half the rate: what is looked at below an edge, and half the width of its slope. */
    private static final double SHOULDER = 0.05;

    private static final double GAP = 0.01;

    /** Empty where none is seen. */
    static Optional<BandEdge> of(Levels levels) {
        double[] mean = levels.mean();
        int half = mean.length;
        int gap = Math.max(2, (int) (GAP * half));
        int shoulder = Math.max(8, (int) (SHOULDER * half));
        if (levels.frames() == 0 || half < 16 * gap) {
            return Optional.empty();
        }
        double drop = LEAST_DROP;
        int edge = -1;
        for (int n = (int) (LOWEST * half); n < HIGHEST * half; n++) {
            if (n - gap - shoulder < 1) {
                continue;
            }
            double fall =
                    quantile(mean, n - gap - shoulder, n - gap, 0.3)
                            - quantile(mean, n + gap, half - gap, 0.95);
            if (fall > drop) {
                drop = fall;
                edge = n;
            }
        }
        return edge < 0 ? Optional.empty() : Optional.of(new BandEdge(edge * levels.binHz(), drop));
    }

    private static double quantile(double[] of, int from, int to, double share) {
        double[] part = Arrays.copyOfRange(of, from, to);
        return Quantiles.ofPart(part, 0, part.length, (int) (share * (part.length - 1)));
    }

    /** For the one who reads what was heard. */
    String words() {
        return String.format(
                Locale.ROOT,
                "The recording holds next to nothing above %.1f kHz (its floor falls by %.0f dB there):"
                        + " it was coded with loss, sent as a voice message, or recorded at a lower rate. Lines above are missing, so"
                        + " fewer fans are told apart; speeds that are told stand. Record uncompressed (WAV).",
                hz / 1000,
                drop * 10 / Math.log(10));
    }
}
