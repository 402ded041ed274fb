package liftwright.flight.loops;

/** What a loop steers. */
public enum Axis {
    ROLL("roll"),
    PITCH("pitch"),
    YAW("yaw"),
    /** Up and down. */
    CLIMB("climb"),
    /** Over the ground, both ways. */
    ACROSS("motion over the ground");

    private final String words;

    Axis(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
