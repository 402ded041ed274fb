package liftwright.flight.loops;

/** What else than the fans holds the rig: no integral winds up unless it is free. */
public enum Standing {
    FREE,
    /** Stands on both feet, or lies. */
    STANDS,
    ONE_FOOT,
    /** Hangs in a line, or is held by hand or stand. */
    TIED
}
