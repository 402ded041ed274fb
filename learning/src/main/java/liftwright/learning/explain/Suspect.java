package liftwright.learning.explain;

import java.util.function.DoubleFunction;
import liftwright.plant.fault.Effect;

/**
 * A cause that is to be computed.
 *
 * @param sizes at which it is computed, rising in amount; one where it has no sizes
 * @param least of its sizes in amount
 * @param unsaid of the sizes too small to be a cause, standard deviation, beyond what is declared:
 *     no part is exactly as declared; 0 where there are none
 * @param change what it changes
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
record Suspect(
        Cause cause,
        double prior,
        double[] sizes,
        double least,
        double unsaid,
        Change change,
        Hypothesis.Sizing words) {

    /** What a cause changes. */
    sealed interface Change {}

    /** Numbers of the opened rig, in place. */
    @FunctionalInterface
    interface Vector {
        void at(double size, double[] p);
    }

    record Numbers(Vector of) implements Change {}

    /** Something that is lost from the start on. */
    record Lost(DoubleFunction<Effect> of) implements Change {}

    /**
     * A fan that stops in mid-run.
     *
     * @param fan number
     */
    record Stops(int fan) implements Change {}

    /**
     * A channel that shows another value than is there: more by this share of it, and by this.
     *
     * @param channel number among the channels
     */
    record Shown(int channel, double gain, double zeroSi) implements Change {}
}
