package liftwright.plant;

import liftwright.plant.supply.SupplyStepper;

/**
 * Looks for moments within the last step of a run. Every look leaves the stepper at the share of
 * the step that was looked at. Allocates nothing; for one thread.
 */
final class StepSearch {

    private static final int MOST_SECANTS = 40;
    private static final double TIME_ERROR_S = 1e-4;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /** Share of a step to which the place of a crest is found. */
    private static final double CREST_SHARE = 0.005;

    private final SupplyStepper stepper;
    private final RunLimits limits;
    private final FansUnderOrder fans;

    private boolean failed;

    StepSearch(SupplyStepper stepper, RunLimits limits, FansUnderOrder fans) {
        this.stepper = stepper;
        this.limits = limits;
        this.fans = fans;
    }

    /** A new run: nothing has failed. */
    void start() {
        failed = false;
    }

    /** From a failure on nothing that is found means anything. */
    void failIf(boolean noPoint) {
        failed |= noPoint;
    }

    /** Whether a point without a solution was met since the start. */
    boolean failed() {
        return failed;
    }

    /** How far a limit is at the present moment; not above 0 where it is reached. */
    double distance(Cause cause, int part) {
        return limits.distance(cause, part, stepper, stepper.network(), fans);
    }

    /** Goes back into the last step, solving the network there or not. */
    boolean back(double share, boolean solved) {
        if (solved) {
            failed |= !stepper.within(share);
        } else {
            stepper.look(share);
        }
        return !failed;
    }

    /**
     * Share of the last step at which a distance falls to zero, between two shares: the Illinois
     * method (Dowell and Jarratt, A modified regula falsi, BIT 11, 1971).
     */
    double root(Cause cause, int part, double h, double from, double to, boolean solved) {
        double low = from;
        double high = to;
        if (!back(high, solved)) {
            return to;
        }
        double highD = distance(cause, part);
        if (!back(low, solved)) {
            return to;
        }
        double lowD = distance(cause, part);
        if (lowD <= 0) {
            return from;
        }
        if (highD > 0) {
            return to;
        }
        int side = 0;
        for (int tries = 0; tries < MOST_SECANTS && (high - low) * h > TIME_ERROR_S; tries++) {
            double share = high - highD * (high - low) / (highD - lowD);
            if (!back(share, solved)) {
                return to;
            }
            double d = distance(cause, part);
            if (d > 0) {
                low = share;
                lowD = d;
                highD = side > 0 ? highD / 2 : highD;
                side = 1;
            } else {
                high = share;
                highD = d;
                lowD = side < 0 ? lowD / 2 : lowD;
                side = -1;
            }
            if (Math.abs(d) < 1e-12) {
                return share;
            }
        }
        return high;
    }

    /**
     * The same root with the network solved at each try: within a step currents bend a little, and
     * a cell's voltage falls slowly enough for that to matter.
     */
    double refined(Cause cause, int part, double h, double share) {
        double low = Math.max(0, share - 0.05);
        double high = Math.min(1, share + 0.05);
        if (failed || !stepper.within(high) || distance(cause, part) > 0) {
            high = 1;
        }
        if (failed || !stepper.within(low) || distance(cause, part) <= 0) {
            low = 0;
        }
        return root(cause, part, h, low, high, true);
    }

    /**
     * Share of the step at which the current of a pack is greatest (golden section); stays there.
     */
    double crest(int pack) {
        double low = 0;
        double high = 1;
        double left = high - GOLDEN * (high - low);
        double right = low + GOLDEN * (high - low);
        double atLeft = distanceAt(left, pack);
        double atRight = distanceAt(right, pack);
        while (high - low > CREST_SHARE) {
            if (atLeft < atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = distanceAt(left, pack);
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = distanceAt(right, pack);
            }
        }
        double crest = atLeft < atRight ? left : right;
        back(crest, true);
        return crest;
    }

    double distanceAt(double share, int pack) {
        back(share, true);
        return distance(Cause.CELL_CURRENT, pack);
    }
}
