package liftwright.trials.day;

/**
 * Why a card is not allowed today.
 *
 * @param rule which rule it would break
 * @param words for a reader
 */
public record Reason(Rule rule, String words) {

    /** What a day is held to. */
    public enum Rule {
        /** Two aborts, or something that nobody can explain: nothing runs any more. */
        STOPPED,
        /** A finding or something that is not declared keeps it closed. */
        CLOSED,
        /** What it rests on has not passed, and does not today. */
        NEEDS,
        /** The kills are not proved today. */
        KILLS,
        WIND,
        PEOPLE,
        /** A pack is not there or not fit. */
        PACKS,
        CHARGE,
        LIGHT,
        HOURS
    }
}
