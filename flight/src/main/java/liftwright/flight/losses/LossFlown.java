package liftwright.flight.losses;

import liftwright.flight.run.FlightOutcome;
import liftwright.review.LossFates;
import liftwright.review.failures.FaultGroup;

/**
 * One loss, as the review of failures calls it and as it was flown.
 *
 * @param told which, with all that come to the same, and what review says of it
 * @param called in a word
 * @param came of the flight
 * @param flown the flight
 */
public record LossFlown(LossFates.Told told, Called called, Came came, FlightOutcome flown) {

    /** How flight and statics stand to each other. */
    public enum Agreement {
        AGREE("agree"),
        /** Statics call it borne, and the flight is lost. */
        WORSE("flown worse than called"),
        /** Statics call it not borne, and the flight is not lost. */
        BETTER("flown better than called"),
        /** Statics say neither yes nor no. */
        TOLD("told, not judged");

        private final String words;

        Agreement(String words) {
            this.words = words;
        }

        /** As tables say it. */
        public String words() {
            return words;
        }
    }

    /** Which loss, with all that come to the same. */
    public FaultGroup group() {
        return told.group();
    }

    /** Why it does not. */
    public Reason reason() {
        return Reason.of(this);
    }

    /** Whether the flight bears out what review calls it. */
    public Agreement agreement() {
        return switch (called) {
            case FLIES_ON -> came == Came.RECOVERED ? Agreement.AGREE : Agreement.WORSE;
            case COMES_DOWN -> came == Came.LOST ? Agreement.WORSE : Agreement.AGREE;
            case NOT_BORNE -> came == Came.LOST ? Agreement.AGREE : Agreement.BETTER;
            case SHORT, BY_HAND, UNTOLD, ON_GROUND -> Agreement.TOLD;
        };
    }
}
