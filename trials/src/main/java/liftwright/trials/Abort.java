package liftwright.trials;

/**
 * Where a run is stopped by hand or machine because a reading says so.
 *
 * @param channel what is read
 * @param side whether too much or too little ends it
 * @param limitSi what must never be reached, SI
 * @param limitOrigin where the limit comes from
 * @param predictedSi end of the predicted bands over all steps on the side of the limit, SI
 * @param value where to stop
 */
public record Abort(
        Channel channel,
        Side side,
        double limitSi,
        String limitOrigin,
        double predictedSi,
        Worth value) {

    /** On which side the limit lies. */
    public enum Side {
        ABOVE,
        BELOW
    }

    /** The value, or that there is none. */
    public sealed interface Worth {
        /**
         * @param si between prediction and limit, SI
         * @param secondsToLimit at the steepest slope of this rig's own runs, s; from the abort to
         *     the limit
         */
        record At(double si, double secondsToLimit) implements Worth {}

        /**
         * @param reason why none lies between prediction and limit; the run must be shortened or
         *     the part changed
         */
        record None(String reason) implements Worth {}
    }
}
