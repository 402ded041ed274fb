package liftwright.flight.run;

/** Why a flight cannot be told: neither well nor failed, it counts as what is worse. */
public enum Untold {
    /** What was drawn is no rig. */
    NOT_DRAWN("a drawn number cannot be"),
    /** The supply has no operating point that was found. */
    NOT_FOUND("no operating point of the supply was found at some moment"),
    /** More of its thrust than {@link FlightOutcome.Figures#GREATEST_BEYOND_LAW}. */
    BEYOND_LAWS("too much of the thrust came of fans in a stream that their law does not hold for");

    private final String words;

    Untold(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
