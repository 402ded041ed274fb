package liftwright.quantity;

/**
 * The interval of a result, made by sampling.
 *
 * @param low lower end, SI
 * @param high upper end, SI
 * @param coverage share of the doubt between the ends, 0.95
 * @param method how it was made, in words
 * @param draws how many draws it rests on
 * @param monteCarloError standard error of the ends that comes from the finite number of draws, SI
 */
public record Band(
        double low,
        double high,
        double coverage,
        String method,
        int draws,
        double monteCarloError) {

    public Band {
        if (!(low <= high)) {
            throw new IllegalArgumentException(
                    "a band runs upwards, not from " + low + " to " + high);
        }
    }

    /** Distance between the ends, SI, ≥ 0. */
    public double width() {
        return high - low;
    }

    /** Whether the value is known to be at least {@code limit}: the lower end clears it. */
    public boolean isAtLeast(double limit) {
        return low >= limit;
    }

    /** Whether the value is known to be at most {@code limit}: the upper end clears it. */
    public boolean isAtMost(double limit) {
        return high <= limit;
    }
}
