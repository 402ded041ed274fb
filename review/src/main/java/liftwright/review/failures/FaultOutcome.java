package liftwright.review.failures;

/** What a rig does with a fault, from the mildest to the worst that moves it. */
public enum FaultOutcome {
    /** Nothing that moves the rig; at most something is missing that the next fault would need. */
    NO_EFFECT("shows nothing"),

    /** Weight is held and every axis that is asked for keeps a reserve. */
    FLIES_ON("flies on"),

    /** Weight, roll and pitch are held, yaw is not: it turns about the upright axis. */
    TURNS("turns"),

    /** Upright but too weak: it comes down with what lift is left. */
    SINKS("sinks"),

    /** No lift is left, or none that is held upright for long: it drops. */
    FALLS("falls"),

    /** Fans push by themselves while people stand about a rig that shall be still. */
    STARTS_BY_ITSELF("starts by itself"),

    /** Nothing tells the fans what to do any more, and they push on. */
    UNSTEERED("goes unsteered"),

    /** Roll or pitch cannot be held against what the fans do. */
    TIPS("tips over"),

    /** More lift than weight, and nothing that takes it back. */
    CLIMBS("climbs");

    private final String words;

    FaultOutcome(String words) {
        this.words = words;
    }

    /** As tables say it. */
    public String words() {
        return words;
    }
}
