package liftwright.flight.losses;

import liftwright.review.LossFates;
import liftwright.review.failures.FaultFate;

/** What the review of failures calls a loss. */
public enum Called {
    /** The rig has what is asked, and flies on. */
    FLIES_ON("borne: it flies on"),
    /** The rig has what is asked, and comes down upright and slowly enough. */
    COMES_DOWN("borne: it comes down upright"),
    /** It flies on with less lift or reserve than is asked: statics say neither yes nor no. */
    SHORT("held, with less than is asked"),
    /** Neither. */
    NOT_BORNE("not borne"),
    /** The throttle stays where it was: a matter of whoever stands by, and of no profile. */
    BY_HAND("rests on whoever makes it dead"),
    /** No operating point, or two that disagree. */
    UNTOLD("cannot be told"),
    /** It happens on the ground, when the rig is made live. */
    ON_GROUND("happens on the ground");

    private final String words;

    Called(String words) {
        this.words = words;
    }

    /** As tables say it. */
    public String words() {
        return words;
    }

    /** What its words and numbers come to. */
    public static Called of(LossFates.Told told) {
        return switch (told.group().rule()) {
            case STARTS -> ON_GROUND;
            case HELD, HELD_THEN_CUT -> BY_HAND;
            case MOVES, CUTS, LOWERS, UNSTEERED, DISAGREES, NOTHING ->
                    told.fate().map(Called::of).orElse(UNTOLD);
        };
    }

    private static Called of(FaultFate fate) {
        boolean enough = fate.margin() >= 0;
        return switch (fate.outcome()) {
            case NO_EFFECT -> FLIES_ON;
            case FLIES_ON, TURNS -> enough ? FLIES_ON : SHORT;
            case SINKS, FALLS -> enough ? COMES_DOWN : NOT_BORNE;
            case STARTS_BY_ITSELF -> ON_GROUND;
            case UNSTEERED, TIPS, CLIMBS -> NOT_BORNE;
        };
    }
}
