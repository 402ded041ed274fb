package liftwright.learning.replay;

import liftwright.quantity.Band;

/**
 * Lift promised and lift measured, as means over the blocks in which at least 80 % of the greatest
 * lift was promised.
 *
 * @param channel of what it was read
 * @param predictedN at the declared values, N
 * @param measuredN N
 * @param missingN predicted less measured, N; below 0 where there is more than promised
 * @param band of the missing lift: declared doubt, instrument, what the model leaves out, N
 * @param blocks over which it is averaged
 */
public record MissingLift(
        String channel,
        double predictedN,
        double measuredN,
        double missingN,
        Band band,
        int blocks) {

    /** Blocks with at least this share of the greatest lift count. */
    public static final double FULL = 0.8;

    /** Whether the measured lift is within what was promised. */
    public boolean isWithin() {
        return band.low() <= 0 && band.high() >= 0;
    }
}
