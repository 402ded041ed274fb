package liftwright.flight.loops;

import java.util.List;

/** Loops for a rig: granted, or refused because of something that is named. */
public sealed interface LoopDesign {

    /** Loops for a rig of which these are the numbers. */
    static LoopDesign of(Craft craft) {
        return of(craft, Asked.USUAL);
    }

    /** The same where something else is asked of them. */
    static LoopDesign of(Craft craft, Asked asked) {
        return LoopMaking.design(craft, asked);
    }

    /**
     * All loops.
     *
     * @param craft for which
     * @param loops inner to outer, axis by axis
     * @param authority what the fans have left for moments
     */
    record Granted(Craft craft, List<Loop> loops, Authority authority) implements LoopDesign {
        public Granted {
            loops = List.copyOf(loops);
        }

        /** One of the loops. */
        public Loop loop(Axis axis, Loop.Level level) {
            return loops.stream()
                    .filter(loop -> loop.axis() == axis && loop.level() == level)
                    .findFirst()
                    .orElseThrow();
        }
    }

    /**
     * No loops.
     *
     * @param reason of all that would do, what has to change least
     * @param would what would do alone, least change first; empty where no one number would
     */
    record Refused(Reason reason, String words, List<Would> would) implements LoopDesign {
        public Refused {
            would = List.copyOf(would);
        }
    }

    /**
     * A number that would have to change.
     *
     * @param what it is, in words
     * @param unit of both
     * @param now its value
     * @param to the value that would do
     */
    record Would(Reason reason, String what, String unit, double now, double to) {}

    /**
     * What fans have left at hover.
     *
     * @param rollRadps2 angular acceleration either way, the lesser, rad/s²
     * @param pitchRadps2 the same
     * @param yawRadps2 the same
     * @param liftShare greatest lift without moments over weight, 1
     */
    record Authority(double rollRadps2, double pitchRadps2, double yawRadps2, double liftShare) {}
}
