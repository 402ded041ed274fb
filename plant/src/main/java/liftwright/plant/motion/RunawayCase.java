package liftwright.plant.motion;

/**
 * What is asked about a runaway.
 *
 * @param trigger what goes wrong, at time 0
 * @param start where the rig is then
 * @param stop when what acts against it
 * @param around what it meets
 * @param horizonS how long it is followed at most, s
 */
public record RunawayCase(
        Trigger trigger, Start start, Stop stop, Surroundings around, double horizonS) {

    /** What goes wrong. */
    public sealed interface Trigger {

        /** Every fan at the duty of full throttle. */
        record AllFull() implements Trigger {}

        /**
         * The fans of one control group at the duty of full throttle; the others stay as they were.
         *
         * @param group its name
         */
        record GroupFull(String group) implements Trigger {}

        /**
         * A throttle frozen at hover, on a rig that lifts more than it weighs since then: it was
         * made lighter, or its motors are warm.
         *
         * @param excess lift over weight less 1; below 0 it sinks
         */
        record FrozenHover(double excess) implements Trigger {}
    }

    /** Where the rig is at the fault. */
    public sealed interface Start {

        /** Standing on the ground, rotors at rest. */
        record Ground() implements Start {}

        /**
         * Hovering on full packs.
         *
         * @param heightM of the soles, &gt; 0, m
         */
        record Hover(double heightM) implements Start {}
    }

    public RunawayCase {
        if (!(horizonS > 0) || horizonS == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("a runaway is followed for a time");
        }
    }
}
