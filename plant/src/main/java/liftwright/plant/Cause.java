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
    EMPTY,
    /** A part reaches its limit of temperature; the run goes on. Only where heat is computed. */
    OVERHEATED,
    /** A fuse opens; the run goes on without its chain. Only where heat is computed. */
    FUSE_OPENED;

    /** Whether only a run that computes temperatures can meet it. */
    public boolean isOfHeat() {
        return switch (this) {
            case OVERHEATED, FUSE_OPENED -> true;
            case RESERVE, CELL_VOLTAGE, CELL_CURRENT, CUT_OFF, FULL_THROTTLE, EMPTY -> false;
        };
    }

    /** Whether it bends within a step as the currents do. */
    boolean goesWithTheCurrent() {
        return switch (this) {
            case CELL_VOLTAGE, CELL_CURRENT -> true;
            case RESERVE, CUT_OFF, FULL_THROTTLE, EMPTY, OVERHEATED, FUSE_OPENED -> false;
        };
    }

    /** Whether the run is another one from there on. */
    boolean changesTheRun() {
        return switch (this) {
            case CUT_OFF, FULL_THROTTLE, EMPTY, FUSE_OPENED -> true;
            case RESERVE, CELL_VOLTAGE, CELL_CURRENT, OVERHEATED -> false;
        };
    }

    /** Whether only a solved network tells how far it is. */
    boolean readOffTheNetwork() {
        return switch (this) {
            case CUT_OFF, FULL_THROTTLE -> true;
            case RESERVE, CELL_VOLTAGE, CELL_CURRENT, EMPTY, OVERHEATED, FUSE_OPENED -> false;
        };
    }

    /** Whether the course of temperatures tells when, without a look into the step. */
    boolean readOffTheHeat() {
        return this == OVERHEATED;
    }
}
