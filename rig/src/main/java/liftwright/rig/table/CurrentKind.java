package liftwright.rig.table;

/** Where the current of a bench table was measured; the two differ at any duty below 1. */
public enum CurrentKind {
    /** Between supply and controller, where a clamp on a supply lead reads. */
    BUS,
    /** Between controller and motor: the mean while the switches conduct. */
    WINDING
}
