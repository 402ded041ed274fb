package liftwright.trials.predict;

import java.util.Arrays;

/**
 * Where to stop, from one reading's own course. Looked at are runs that go s times as far from
 * their start as declared, at every moment: a resistance too high, a fan too hungry, air too slow.
 * Their s goes from 1 to what could still have been in the band at the end of the step before, and
 * half as much again for what comes later, 3 at most: whoever is further out stopped there. Of each
 * such run that comes to the limit, the value is where it was the time of a stop before.
 *
 * <p>All values are distances from the start, towards the limit.
 */
final class Margins {

    /** Beyond this no run is looked at: from memory. */
    static final double MOST = 3;

    /** For what comes after the last look at the bands: from memory. */
    static final double LATER = 1.5;

    private final double[] timeS;
    private final double[] gone;
    private final double[] most;
    private final double limit;

    /**
     * @param timeS moments, rising
     * @param gone how far from its start the reading has gone towards the limit at each
     * @param most greatest s at each moment
     * @param limit distance of the limit from the start, &gt; 0
     */
    Margins(double[] timeS, double[] gone, double[] most, double limit) {
        this.timeS = timeS;
        this.most = most;
        this.limit = limit;
        this.gone = gone.clone();
        // The farthest so far: one that came back has already been seen there.
        for (int k = 1; k < gone.length; k++) {
            this.gone[k] = Math.max(this.gone[k - 1], this.gone[k]);
        }
    }

    /** Whether a run that is looked at is at the limit there. */
    private boolean comes(int k) {
        return gone[k] > 0 && limit >= gone[k] && limit <= most[k] * gone[k];
    }

    /** Where a run is at the limit whose s is no greater than it must be to come there at all. */
    private int farthest() {
        int first = gone.length - 1;
        while (first > 0 && gone[first - 1] == gone[gone.length - 1]) {
            first--;
        }
        return first;
    }

    /**
     * Farthest value from which a stop comes before the limit. Where no run that is looked at comes
     * to the limit, it is that of the run that only just does.
     *
     * @param stopS time of a stop, s
     */
    double latest(double stopS) {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < gone.length; k++) {
            if (comes(k)) {
                least = Math.min(least, limit / gone[k] * at(timeS[k] - stopS));
            }
        }
        int last = farthest();
        return least < Double.POSITIVE_INFINITY || !(gone[last] > 0)
                ? Math.min(least, limit)
                : limit / gone[last] * at(timeS[last] - stopS);
    }

    /** Least time from a value to the limit, s; infinite where nothing moves. */
    double secondsS(double value) {
        double least = Double.POSITIVE_INFINITY;
        boolean any = false;
        for (int k = 0; k < gone.length; k++) {
            if (comes(k)) {
                any = true;
                least = Math.min(least, timeS[k] - reached(value * gone[k] / limit));
            }
        }
        int last = farthest();
        return any || !(gone[last] > 0)
                ? least
                : Math.min(least, timeS[last] - reached(value * gone[last] / limit));
    }

    /** How far it has gone at a time; linear between moments. */
    private double at(double whenS) {
        if (whenS <= timeS[0]) {
            return gone[0];
        }
        int found = Arrays.binarySearch(timeS, whenS);
        if (found >= 0) {
            return gone[found];
        }
        int after = -found - 1;
        if (after >= gone.length) {
            return gone[gone.length - 1];
        }
        double part = (whenS - timeS[after - 1]) / (timeS[after] - timeS[after - 1]);
        return gone[after - 1] + part * (gone[after] - gone[after - 1]);
    }

    /** When it has first gone so far, s. */
    private double reached(double distance) {
        for (int k = 0; k < gone.length; k++) {
            if (gone[k] >= distance) {
                if (k == 0 || gone[k] == gone[k - 1]) {
                    return timeS[k];
                }
                double part = (distance - gone[k - 1]) / (gone[k] - gone[k - 1]);
                return timeS[k - 1] + part * (timeS[k] - timeS[k - 1]);
            }
        }
        return timeS[gone.length - 1];
    }
}
