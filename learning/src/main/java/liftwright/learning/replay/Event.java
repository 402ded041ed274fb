package liftwright.learning.replay;

import liftwright.answer.Sentence;

/**
 * Something that happened in a test, as the recording shows it.
 *
 * @param kind what it is
 * @param timeS when, on the clock of the recording, s
 * @param part of what: the id of a fan, a pack, a part that warms, or {@code all}
 * @param channel on which it was seen
 * @param evidence what was measured before and after, against what, in numbers
 */
public record Event(Kind kind, double timeS, String part, String channel, Sentence evidence) {

    /** What can happen. */
    public enum Kind {
        NEVER_TURNED("never turned"),
        FAN_STOPPED("stopped"),
        LOST_SPEED("lost speed or thrust"),
        RAN_AWAY("ran faster than it was told"),
        CURRENT_GONE("current went to nought while the throttle stayed"),
        LOST_CURRENT("drew less than before at the same throttle"),
        SAG("voltage below its limit"),
        BROWN_OUT("voltage below where its controller cuts off"),
        LIMIT_REACHED("limit reached"),
        TURNING("turning began"),
        THROTTLE_MOVED("throttle moved without command"),
        ENDS_AT_LOAD("the recording ends under load");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** As it is told. */
        public String words() {
            return words;
        }

        /** Whether it is a fault rather than something to know. */
        public boolean isFault() {
            return this != ENDS_AT_LOAD;
        }
    }
}
