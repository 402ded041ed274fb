package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether a recorder turned itself down while fans ran. Fans add to the sound of a place and never
 * take from it: a floor that is lower while lines stand high over it than before and after was
 * turned down, and the lines with it by the same factor. How high lines stand over the floor does
 * not depend on the gain, and tells when fans ran. Where the fans' own rush covers the sound of the
 * place the floor does not fall, and nothing is told.
 *
 * @param factor of amplitude by which it was lower while fans ran, below 1
 */
record AutomaticGain(double factor) {

    /** Nepers of power: 1.5 dB. */
    private static final double LEAST_FALL = 0.35;

    /** Nepers of power over the floor between silence and fans; less tells nothing. */
    private static final double LEAST_CONTRAST = 1.5;

    private static final int LEAST_FRAMES = 4;

    /** Empty where none is seen. */
    static Optional<AutomaticGain> of(Levels levels) {
        if (levels.frames() < 4 * LEAST_FRAMES) {
            return Optional.empty();
        }
        double[] floor = levels.floor();
        double[] over = levels.loudness();
        for (int k = 0; k < over.length; k++) {
            over[k] -= floor[k];
        }
        double[] sorted = over.clone();
        Arrays.sort(sorted);
        double least = sorted[(int) (0.03 * sorted.length)];
        double contrast = sorted[(int) (0.95 * sorted.length)] - least;
        if (contrast < LEAST_CONTRAST) {
            return Optional.empty();
        }
        int first = 0;
        int last = over.length - 1;
        while (over[first] < least + 0.5 * contrast) {
            first++;
        }
        while (over[last] < least + 0.5 * contrast) {
            last--;
        }
        List<Double> ran = new ArrayList<>();
        List<Double> before = new ArrayList<>();
        List<Double> after = new ArrayList<>();
        for (int k = 0; k < over.length; k++) {
            boolean quiet = over[k] < least + 0.15 * contrast;
            if (over[k] > least + 0.6 * contrast) {
                ran.add(floor[k]);
            } else if (quiet && k < first) {
                before.add(floor[k]);
            } else if (quiet && k > last) {
                after.add(floor[k]);
            }
        }
        return fall(ran, before, after);
    }

    /** Lower than on both sides, where both are there. */
    private static Optional<AutomaticGain> fall(
            List<Double> ran, List<Double> before, List<Double> after) {
        double fall = Double.POSITIVE_INFINITY;
        for (List<Double> quiet : List.of(before, after)) {
            if (quiet.size() >= LEAST_FRAMES) {
                fall = Math.min(fall, median(quiet) - median(ran));
            }
        }
        return Double.isInfinite(fall) || ran.size() < LEAST_FRAMES || fall < LEAST_FALL
                ? Optional.empty()
                : Optional.of(new AutomaticGain(Math.exp(-fall / 2)));
    }

    private static double median(List<Double> values) {
        return Line.median(values.stream().mapToDouble(v -> v).toArray());
    }

    /** For the one who reads what was heard. */
    String words() {
        return String.format(
                Locale.ROOT,
                "The recorder turned itself down by %.0f %% while fans ran (automatic gain): the sound of"
                        + " the place is quieter then than in silence. Levels of lines cannot be compared from"
                        + " moment to moment; speeds stand.",
                100 * (1 - factor));
    }
}
