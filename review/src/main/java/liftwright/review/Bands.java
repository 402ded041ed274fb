package liftwright.review;

import java.util.Arrays;
import java.util.Optional;
import liftwright.numerics.Quantiles;
import liftwright.quantity.Band;

/** Two-sided 95 % bands of samples (architecture contract 2). */
public final class Bands {

    static final double COVERAGE = 0.95;
    private static final double TAIL = (1 - COVERAGE) / 2;
    private static final String METHOD = "sampled from the declared tolerances";

    private Bands() {}

    /**
     * Band of a sample in any order about what is declared; without draws, that alone.
     *
     * @param nominal at the declared values
     */
    static Band about(double nominal, double[] sample) {
        return sample.length == 0
                ? new Band(nominal, nominal, COVERAGE, "the declared values alone", 0, 0)
                : of(sample);
    }

    /** To be shown: a band that rests on no draws is none. */
    static Optional<Band> shown(Band band) {
        return band.draws() == 0 ? Optional.empty() : Optional.of(band);
    }

    /** Band of a sample in any order; its Monte-Carlo error is that of the worse end. */
    public static Band of(double[] sample) {
        double[] sorted = sample.clone();
        Arrays.sort(sorted);
        return new Band(
                Quantiles.ofSorted(sorted, TAIL),
                Quantiles.ofSorted(sorted, 1 - TAIL),
                COVERAGE,
                METHOD,
                sample.length,
                Math.max(
                        Quantiles.standardError(sorted, TAIL),
                        Quantiles.standardError(sorted, 1 - TAIL)));
    }

    static double width(double[] sample) {
        Band band = of(sample);
        return band.high() - band.low();
    }

    /** Band of the difference of two samples made from the same draws. */
    public static Band ofDifference(double[] after, double[] before) {
        double[] difference = new double[Math.min(after.length, before.length)];
        for (int i = 0; i < difference.length; i++) {
            difference[i] = after[i] - before[i];
        }
        return of(difference);
    }
}
