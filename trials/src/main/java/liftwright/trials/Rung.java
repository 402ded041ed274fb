package liftwright.trials;

/** How far a rig has come: each rung trusts the rig with more than the one before. */
public enum Rung {
    MEASURED("measured, without thrust"),
    ONE_FAN("one bare fan"),
    ONE_POD("one pod"),
    ALL_FANS("all fans, held down"),
    SCALE("on the scale"),
    HANGING("hanging"),
    HOP("a restrained hop"),
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
