package liftwright.plant;

/** What ends a run on packs, or would. */
public enum Cause {
    /** The charge kept for the landing is reached in the emptiest cell of a pack. */
    RESERVE,
    /** A cell falls to the least voltage allowed under load. */
    CELL_VOLTAGE,
    /** A cell gives its peak current. */
    CELL_CURRENT,
    /** A controller stops its motor because its voltage is too low. */
    CUT_OFF,
    /** Full throttle no longer gives the lift wanted. */
    FULL_THROTTLE,
    /** A cell is empty. */
    EMPTY
}
