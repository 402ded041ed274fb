package liftwright.flight.losses;

import liftwright.review.failures.FaultFate;
import liftwright.review.failures.FaultOutcome;
import liftwright.review.failures.FaultRule;

/** Why a flight does not bear out what statics call a loss. */
public enum Reason {
    /** They agree, or statics say neither yes nor no. */
    NONE(""),
    /** A fan that blows the wrong way reports its speed like any other. */
    UNKNOWN("nothing tells the computer of it; statics take it to know"),
    /** It takes a tenth of a second until a loss is known, and lag beside it. */
    LITTLE_LEFT("the reserve left is spent before the loss is known"),
    /** A wrong or missing command that pulls away weakly, or in still air hardly at all. */
    SLOW("it runs away more slowly than it was watched"),
    /**
     * Statics ask for a reserve both ways about roll and pitch; nothing pushed the way it lacks.
     */
    LEVEL_WITHOUT("it stayed level: nothing pushed the way in which no reserve is left"),
    /** It would have tipped, had the ground not been so near. */
    DOWN_FIRST("it was on the ground before it had tipped"),
    /** Statics count a fall from rest at the declared height with what lift can be trimmed. */
    SOFTER("it came down more slowly than lift at its trim would let it fall"),
    /** Statics ask lift and reserves of who flies on with less lift than weight at its trim. */
    HELD_UP("lift held it up in the time watched, beyond what statics let be trimmed"),
    /** Fans that cannot be held down by the trim of statics, and were by the loops. */
    HELD_DOWN("the other fans took the lift away in time"),
    /** None of these. */
    UNEXPLAINED("not explained");

    /** Less than this share of the reserve asked of a whole rig is spent soon; see the tests. */
    static final double LITTLE = 0.5;

    private final String words;

    Reason(String words) {
        this.words = words;
    }

    /** As tables say it. */
    public String words() {
        return words;
    }

    static Reason of(LossFlown one) {
        return switch (one.agreement()) {
            case AGREE, TOLD -> NONE;
            case WORSE -> worse(one);
            case BETTER -> better(one);
        };
    }

    private static Reason worse(LossFlown one) {
        if (one.group().effect().reversedFans().length > 0) {
            return UNKNOWN;
        }
        double margin = one.told().fate().map(FaultFate::margin).orElse(0.0);
        return margin < LITTLE ? LITTLE_LEFT : UNEXPLAINED;
    }

    private static Reason better(LossFlown one) {
        if (one.group().rule() == FaultRule.UNSTEERED
                || !one.group().effect().exchangedChannels().isEmpty()) {
            return SLOW;
        }
        return one.told()
                .fate()
                .map(fate -> better(fate.outcome(), one.came()))
                .orElse(UNEXPLAINED);
    }

    /** Of what statics call not borne; without lift nothing flies on, whatever the reason. */
    static Reason better(FaultOutcome called, Came came) {
        boolean up = came == Came.RECOVERED;
        return switch (called) {
            case TIPS -> up ? LEVEL_WITHOUT : DOWN_FIRST;
            case SINKS -> up ? HELD_UP : SOFTER;
            case CLIMBS -> HELD_DOWN;
            case UNSTEERED -> SLOW;
            case FALLS -> up ? UNEXPLAINED : SOFTER;
            case NO_EFFECT, FLIES_ON, TURNS, STARTS_BY_ITSELF -> UNEXPLAINED;
        };
    }
}
