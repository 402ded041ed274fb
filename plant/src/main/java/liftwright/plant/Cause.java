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
    EMPTY;

    /** Whether it bends within a step as the currents do. */
    boolean goesWithTheCurrent() {
        return switch (this) {
            case CELL_VOLTAGE, CELL_CURRENT -> true;
            case RESERVE, CUT_OFF, FULL_THROTTLE, EMPTY -> false;
        };
    }

    /** Whether the run is another one from there on. */
    boolean changesTheRun() {
        return switch (this) {
            case CUT_OFF, FULL_THROTTLE, EMPTY -> true;
            case RESERVE, CELL_VOLTAGE, CELL_CURRENT -> false;
        };
    }

    /** Whether only a solved network tells how far it is. */
    boolean readOffTheNetwork() {
        return switch (this) {
            case CUT_OFF, FULL_THROTTLE -> true;
            case RESERVE, CELL_VOLTAGE, CELL_CURRENT, EMPTY -> false;
        };
    }
}
