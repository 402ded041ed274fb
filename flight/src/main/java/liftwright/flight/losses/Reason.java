package liftwright.flight.losses;

import liftwright.review.failures.FaultFate;
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
    /** Statics ask for a reserve both ways about every axis; the flight came by without. */
    NO_RESERVE_NEEDED("the reserves that statics ask for were not needed"),
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
        boolean falls = one.told().fate().map(Reason::falls).orElse(false);
        return falls ? UNEXPLAINED : NO_RESERVE_NEEDED;
    }

    /** Without lift nothing flies on, reserves or not. */
    private static boolean falls(FaultFate fate) {
        return switch (fate.outcome()) {
            case FALLS -> true;
            case NO_EFFECT, FLIES_ON, TURNS, SINKS, STARTS_BY_ITSELF, UNSTEERED, TIPS, CLIMBS ->
                    false;
        };
    }
}
