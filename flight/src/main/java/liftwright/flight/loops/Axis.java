package liftwright.flight.loops;

/** What a loop steers. */
public enum Axis {
    ROLL,
    PITCH,
    YAW,
    /** Up and down. */
    CLIMB,
    /** Over the ground, both ways. */
    ACROSS
}
