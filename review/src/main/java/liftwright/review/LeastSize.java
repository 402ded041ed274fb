package liftwright.review;

/**
 * Closes in on the least size of a remedy that clears a verdict, between one that does not and one
 * that does. A size costs a whole sample, so few are tried: the judged end of the band is taken to
 * run straight between the two sizes known so far. Where what is judged rises with the size, the
 * size found clears it and one less does not, whatever the first guess.
 */
final class LeastSize {

    private final double demand;
    private int fails;
    private double failsAt;
    private int clears;
    private double clearsAt;
    private final int most;
    private int next;
    private int leap = 1;
    private int middles;

    /**
     * @param most greatest size, ≥ 1
     * @param guess first size to try, 1 to {@code most}
     * @param atNone the judged end without any of it
     * @param demand what the judged end has to reach
     */
    LeastSize(int most, int guess, double atNone, double demand) {
        this.most = most;
        this.demand = demand;
        failsAt = atNone;
        clears = most + 1;
        next = guess;
    }

    /** Whether a size is still to be tried. */
    boolean isOpen() {
        return clears - fails > 1;
    }

    /** The size to try now. */
    int next() {
        return next;
    }

    /** The size tried clears it. */
    void clears(double at) {
        clears = next;
        clearsAt = at;
        aim();
    }

    /** The size tried does not. */
    void fails(double at) {
        fails = next;
        failsAt = at;
        if (clears > most) {
            next = Math.min(most, fails + leap);
            leap *= 2;
        } else {
            aim();
        }
    }

    /** Straight between the two; the middle at every third time, so that no bend can hold it up. */
    private void aim() {
        middles++;
        double share =
                middles % 3 == 0 || !(clearsAt > failsAt)
                        ? 0.5
                        : (demand - failsAt) / (clearsAt - failsAt);
        int aimed = fails + (int) Math.ceil(share * (clears - fails));
        next = Math.max(fails + 1, Math.min(clears - 1, aimed));
    }
}
