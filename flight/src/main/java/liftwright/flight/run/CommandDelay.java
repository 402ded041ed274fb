package liftwright.flight.run;

/** Commands on their way from the computer to the controllers: each arrives after the delay. */
final class CommandDelay {

    private final double[][] duty;
    private final long[] due;
    private int first;
    private int waiting;

    /**
     * @param most commands that can be under way at once
     */
    CommandDelay(int fans, int most) {
        duty = new double[most][fans];
        due = new long[most];
    }

    void begin() {
        first = 0;
        waiting = 0;
    }

    /** Room for the next command, which arrives at a tick. */
    double[] send(long atTick) {
        int slot = (first + waiting) % duty.length;
        due[slot] = atTick;
        waiting++;
        return duty[slot];
    }

    /**
     * Takes what has arrived by a tick.
     *
     * @param into takes the latest of it; stays where nothing arrived
     */
    void arrive(long tick, double[] into) {
        while (waiting > 0 && due[first] <= tick) {
            System.arraycopy(duty[first], 0, into, 0, into.length);
            first = (first + 1) % duty.length;
            waiting--;
        }
    }
}
