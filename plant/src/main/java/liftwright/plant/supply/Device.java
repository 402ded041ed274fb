package liftwright.plant.supply;

/**
 * The seam between the supply and what hangs on it: all loads of one rig, each at its own node.
 * Implemented by the fans.
 */
public interface Device {

    /**
     * Current and slope of one load at a terminal voltage. Called in the solver's loop; a trial
     * voltage may lie anywhere, so the current is finite and continuous for every voltage.
     *
     * @param load number of the load
     * @param terminalV voltage at its terminals, V
     */
    void operate(int load, double terminalV);

    /**
     * Currents of all loads at once, as one by one {@link #operate} finds them. What those draw
     * that no pack reaches is not looked at.
     *
     * @param terminalV in: one a load, V
     * @param outA out: one a load, A
     */
    default void operate(double[] terminalV, double[] outA) {
        for (int load = 0; load < outA.length; load++) {
            operate(load, terminalV[load]);
            outA[load] = currentA(load);
        }
    }

    /**
     * Currents and slopes of some loads at once, as one by one {@link #operate} finds them.
     *
     * @param loads the numbers of those that a pack reaches
     * @param terminalV in: one a load, V
     * @param outA out: one a load, A
     * @param outS out: one a load, S
     */
    default void operate(int[] loads, double[] terminalV, double[] outA, double[] outS) {
        for (int load : loads) {
            operate(load, terminalV[load]);
            outA[load] = currentA(load);
            outS[load] = slopeS(load);
        }
    }

    /** Current that the load of the last {@link #operate} draws, A. */
    double currentA(int load);

    /** Derivative of that current by the terminal voltage, S; negative for a constant power. */
    double slopeS(int load);
}
