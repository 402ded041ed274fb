package liftwright.learning.truth;

/**
 * Something that is wrong in a test and is not told.
 *
 * @param kind what
 * @param part id of a fan, an element, a pack or a mount; {@code all}; or a channel's name
 * @param size by the kind: share of thrust that is lost, share of torque or of speed constant that
 *     came on top, ohms, times, share of charge, most duty
 * @param fromS since when, on the clock of the test
 */
public record Hidden(Kind kind, String part, double size, double fromS) {

    /** What can be wrong. */
    public enum Kind {
        /** A fan gives less thrust at equal speed. */
        WEAK_FAN(true),
        /** A fan needs more torque at equal speed: a rub, a bearing. */
        HUNGRY_FAN(true),
        /** Magnets lost strength: the speed constant is higher. */
        LOST_MAGNETS(true),
        /** Ohms on top in one element. */
        BAD_JOINT(true),
        /** Every cell of a pack has more resistance. */
        WORN_PACK(true),
        /** A pack was not as full as declared. */
        LOW_PACK(true),
        /** A controller gives no more than a duty. */
        HELD_BACK(true),
        /** A fan stops. */
        DEAD_FAN(true),
        /** The load cell shows less than is there. */
        WRONG_SCALE(true),
        /** All fans give less thrust where they are built in. */
        INSTALLATION(true),
        /** A bent lip stalls the rotor above a speed; it recovers only far below. */
        BENT_LIP(false),
        /** Water: the controller's most duty jumps about. */
        WET_CONTROLLER(false),
        /** The load cell's cable has contact now and then. */
        LOOSE_CABLE(false),
        /** A mount shakes in a band of throttle and takes thrust there. */
        RESONANCE(false),
        /** Another throttle curve than declared. */
        WRONG_CURVE(false);

        private final boolean listed;

        Kind(boolean listed) {
            this.listed = listed;
        }

        /** Whether it is one of those that a fit can name. */
        public boolean listed() {
            return listed;
        }

        /** Whether it spoils what is shown and not what is. */
        boolean ofInstrument() {
            return this == WRONG_SCALE || this == LOOSE_CABLE;
        }
    }
}
