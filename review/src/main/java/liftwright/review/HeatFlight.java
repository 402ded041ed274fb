package liftwright.review;

import java.util.Optional;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.rig.Rig;
import liftwright.rig.table.StartState;

/**
 * A task as heat asks it: flown as asked and let rest, or flown on until something ends it. Times
 * <em>in the air</em> leave out pauses.
 *
 * @param task what is flown
 * @param start what the parts start from; empty for the declared temperatures and charge
 * @param weightN weight to hover with, N
 */
record HeatFlight(Rig rig, Task task, Optional<StartState> start, double weightN) {

    /**
     * Rest after a task, s: what its own flow cooled is warmest 10 to 60 s after it stops (common
     * practice), so that two minutes see the peak.
     */
    static final double SOAK_S = 120;

    /** A longest flight is found to this share of the flight that is asked for. */
    private static final double LONGEST_SHARE = 1.0 / 512;

    /** Where in time the parts stand before anything runs. */
    void begin(Discharge run) {
        if (start.isPresent()) {
            run.start(start.get());
        } else {
            run.start();
        }
    }

    /** Time in the air that is asked for, s. */
    double askedS() {
        return task.demandS(rig);
    }

    /** Flies what is asked; whether it went so far. */
    boolean asked(Discharge run, Discharge.Watcher watcher) {
        return fly(run, askedS(), watcher);
    }

    /** Rests after a flight. */
    void soak(Discharge run, Discharge.Watcher watcher) {
        run.follow(new Order.Throttle(0), SOAK_S, watcher);
    }

    /** Flies on until a limit that ends all flying, or the horizon; a trace ends with itself. */
    void onwards(Discharge run, Discharge.Watcher watcher) {
        fly(
                run,
                switch (task) {
                    case Task.Hover(), Task.FullThrottle() -> Task.HORIZON_S;
                    case Task.Hops _ -> askedS() + Task.HORIZON_S;
                    case Task.Trace _ -> askedS();
                },
                watcher);
    }

    /**
     * Flies a time in the air, s: the last of several hops as long as that takes.
     *
     * @return whether it went so far
     */
    boolean fly(Discharge run, double airS, Discharge.Watcher watcher) {
        return switch (task) {
            case Task.Hover() -> run.follow(new Order.Lift(weightN), airS, watcher);
            case Task.FullThrottle() -> run.follow(new Order.Throttle(1), airS, watcher);
            case Task.Hops hops -> hops(hops, run, airS, watcher);
            case Task.Trace(var trace) -> Task.follow(rig, trace, run, airS, watcher);
        };
    }

    private boolean hops(Task.Hops hops, Discharge run, double airS, Discharge.Watcher watcher) {
        double hoverS = rig.demands().hover().si();
        double leftS = airS;
        for (int hop = 0; hop < hops.count(); hop++) {
            boolean last = hop == hops.count() - 1 || leftS <= hoverS;
            if (!run.follow(new Order.Lift(weightN), last ? leftS : hoverS, watcher)) {
                return false;
            }
            if (last) {
                return true;
            }
            leftS -= hoverS;
            if (!run.follow(new Order.Throttle(0), hops.pauseS(), watcher)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Time in the air at a moment of a flight onwards, s.
     *
     * @param clockS since the start, s; infinite gives the horizon, or the end of a trace
     */
    double airS(double clockS) {
        return switch (task) {
            case Task.Hover(), Task.FullThrottle() -> Math.min(clockS, Task.HORIZON_S);
            case Task.Trace _ -> Math.min(clockS, askedS());
            case Task.Hops hops -> {
                double hoverS = rig.demands().hover().si();
                double cycleS = hoverS + hops.pauseS();
                double before = Math.min(Math.floor(clockS / cycleS), hops.count() - 1.0);
                double within = clockS - before * cycleS;
                boolean last = before == hops.count() - 1;
                yield before * hoverS + Math.min(within, last ? Task.HORIZON_S + hoverS : hoverS);
            }
        };
    }

    /**
     * The longest time in the air after which even the rest that follows reaches no limit, s; found
     * by halving, since such flights are few.
     */
    double longestS(Discharge run) {
        double none = 0;
        double some = askedS();
        while (some - none > LONGEST_SHARE * askedS()) {
            double middle = (none + some) / 2;
            begin(run);
            if (fly(run, middle, moment -> {})) {
                soak(run, moment -> {});
            }
            if (run.firstS() < Double.POSITIVE_INFINITY) {
                some = middle;
            } else {
                none = middle;
            }
        }
        return none;
    }

    /**
     * Time in the air within every limit, s: until the first limit of a flight onwards; where that
     * is as long as asked but the rest after the asked flight reaches a limit, the longest flight
     * whose rest reaches none.
     *
     * @param run loaded; stops at its first limit
     */
    double withinLimitsS(Discharge run) {
        begin(run);
        onwards(run, moment -> {});
        double flownS = airS(run.firstS());
        if (flownS < askedS() || run.failed()) {
            return flownS;
        }
        begin(run);
        if (asked(run, moment -> {})) {
            soak(run, moment -> {});
        }
        return run.firstS() < Double.POSITIVE_INFINITY ? longestS(run) : flownS;
    }
}
