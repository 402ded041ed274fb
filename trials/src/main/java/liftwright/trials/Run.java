package liftwright.trials;

import java.util.List;
import liftwright.rig.PartId;

/**
 * What fans do on a card.
 *
 * @param fans those that run, of the rig's; all others are dead
 * @param held what keeps them where they are
 * @param worn whether somebody is in the rig
 * @param steps in order
 */
public record Run(List<PartId> fans, Held held, boolean worn, List<Step> steps) {

    public Run {
        fans = List.copyOf(fans);
        steps = List.copyOf(steps);
        if (fans.isEmpty() || steps.isEmpty()) {
            throw new IllegalArgumentException("nothing runs");
        }
    }

    /** What keeps a rig where it is. */
    public enum Held {
        /** A bench or thrust stand for a single fan. */
        BENCH,
        /** The declared stand that holds these fans. */
        STAND,
        /** Lies or stands on a scale; never rises. */
        SCALE,
        /** The declared tether bears what thrust does not. */
        TETHER,
        /** Nothing. */
        NOTHING
    }

    /**
     * @param level what is ordered
     * @param riseS time in which the level is reached from the one before, s, &gt; 0
     * @param holdS time for which it is held, s, &gt; 0
     */
    public record Step(Level level, double riseS, double holdS) {}

    /** How much is ordered. */
    public sealed interface Level {
        /**
         * Every running fan at the same throttle.
         *
         * @param share of full, 0 to 1
         */
        record Throttle(double share) implements Level {}

        /**
         * Thrust up against the weight of what is lifted.
         *
         * @param ofWeight thrust over weight, &gt; 0
         */
        record OfWeight(double ofWeight) implements Level {}
    }
}
