package liftwright.plant.supply;

/** What the supply feeds, under orders that may change with time. */
@FunctionalInterface
public interface Consumer {

    /**
     * Finds the operating point: the packs' voltages and resistances stand in the network state.
     * Called in the stepper's loop.
     *
     * @param timeS time since the start, s
     * @param supply in: rest voltages and resistances; out: the solved network
     * @return whether a point was found
     */
    boolean settle(double timeS, NetworkState supply);

    /** Longest step over which what is ordered runs about straight, s. */
    default double longestStepS() {
        return Double.POSITIVE_INFINITY;
    }
}
