package liftwright.flight.loops;

import java.util.Optional;

/**
 * One loop as designed, on the numbers as declared. Gains: of a rate loop angular acceleration over
 * rate error (1/s), of an attitude loop rate over angle (1/s), of a velocity loop acceleration over
 * velocity error (1/s), of a position loop velocity over distance (1/s); integrals the same over s.
 *
 * @param axis what it steers
 * @param level how far out it is
 * @param gainPerS proportional gain, 1/s
 * @param integralPerS2 integral gain, 1/s²; 0 without one
 * @param crossoverRadps where the open loop's gain is one, rad/s
 * @param phaseMarginRad least over all crossings, rad
 * @param gainMargin factor by which the gain may rise, 1; infinite where no rise is too much
 * @param bandwidth as ADS-33 defines it
 * @param step answer to a step of its command
 * @param worst with ± 30 % of inertia and lag
 * @param harness with a wearer who gives in the harness; empty where nobody does, or where the loop
 *     is so slow that it does not matter
 * @param cascade it and the loops inside it
 * @param bound what kept the crossover from being higher, in words
 */
public record Loop(
        Axis axis,
        Level level,
        double gainPerS,
        double integralPerS2,
        double crossoverRadps,
        double phaseMarginRad,
        double gainMargin,
        Bandwidth bandwidth,
        Step step,
        Worst worst,
        Optional<Harness> harness,
        Cascade cascade,
        String bound) {

    /** Inner to outer. */
    public enum Level {
        RATE("rate"),
        ATTITUDE("attitude"),
        VELOCITY("velocity"),
        POSITION("position");

        private final String words;

        Level(String words) {
            this.words = words;
        }

        /** Its name in a rig file. */
        public String words() {
            return words;
        }
    }

    /**
     * @param phaseRadps where the phase of the closed loop is −135°, rad/s
     * @param gainRadps where its gain is 6 dB above that at −180°, rad/s
     * @param phaseDelayS lag beyond 180° at twice the frequency of −180°, over twice that
     *     frequency, s
     */
    public record Bandwidth(double phaseRadps, double gainRadps, double phaseDelayS) {}

    /**
     * @param overshoot over the step, 1
     * @param riseS from a tenth to nine tenths, s
     * @param settleS until it stays within 5 %, s
     */
    public record Step(double overshoot, double riseS, double settleS) {}

    /**
     * @param phaseMarginRad least, rad
     * @param gainMargin least, 1
     */
    public record Worst(double phaseMarginRad, double gainMargin) {}

    /**
     * @param distance least distance of the open loop from −1 over all frequencies of the mode from
     *     the lowest to the highest of practice; 0 where it swings, 1
     * @param radps frequency of the mode that it comes nearest with, rad/s
     */
    public record Harness(double distance, double radps) {}
}
