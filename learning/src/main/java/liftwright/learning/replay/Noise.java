package liftwright.learning.replay;

import java.util.Arrays;
import java.util.stream.IntStream;

/** How much the samples of a channel scatter from one to the next, whatever they follow. */
final class Noise {

    /** Standard deviation of a normal distribution over its median absolute deviation. */
    private static final double NORMAL = 1.4826;

    private Noise() {}

    /**
     * Standard deviation of independent noise on a smooth course, from second differences: a
     * straight course adds nothing, and steps of fewer than half the samples neither.
     *
     * @param values in the order of time
     * @return 0 of fewer than four
     */
    static double of(double[] values) {
        if (values.length < 4) {
            return 0;
        }
        double[] bends =
                IntStream.range(1, values.length - 1)
                        .mapToDouble(k -> Math.abs(values[k + 1] - 2 * values[k] + values[k - 1]))
                        .toArray();
        return NORMAL * median(bends) / Math.sqrt(6);
    }

    static double median(double[] values) {
        return median(values, 0, values.length);
    }

    /** Of those from one number up to another, which it does not hold. */
    static double median(double[] values, int from, int to) {
        double[] sorted = Arrays.copyOfRange(values, from, to);
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
