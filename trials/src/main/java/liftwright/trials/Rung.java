package liftwright.trials;

/** How far a rig has come: each rung trusts the rig with more than the one before. */
public enum Rung {
    MEASURED("no thrust"),
    ONE_FAN("one fan"),
    ONE_POD("one pod"),
    ALL_FANS("all fans"),
    SCALE("scale"),
    HANGING("hanging"),
    HOP("hop"),
    FREE("free");

    private final String words;

    Rung(String words) {
        this.words = words;
    }

    /** For a reader, lower case. */
    public String words() {
        return words;
    }
}
