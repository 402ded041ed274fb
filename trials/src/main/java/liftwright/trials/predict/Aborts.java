package liftwright.trials.predict;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.physics.Gravity;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.trials.Abort;
import liftwright.trials.Run;

/** Where a run is stopped because a reading says so, one for each limit that is watched. */
final class Aborts {

    /** Holds are ended by a call, so late at most, s; common practice. */
    private static final double LATE_S = 5;

    /** A pilot or computer that is told a height goes so much higher now and then; from memory. */
    private static final double OVERSHOOT = 0.2;

    /** Lift over what was ordered, 95 %; from memory. */
    private static final double TOO_MUCH = 1.05;

    private final Rig rig;
    private final Run run;
    private final List<Watch> watches;
    private final Trace trace;
    private final Told told;
    private final Stopping stopping;

    Aborts(Rig rig, Run run, List<Watch> watches, Trace trace, Told told, Stopping stopping) {
        this.rig = rig;
        this.run = run;
        this.watches = watches;
        this.trace = trace;
        this.told = told;
        this.stopping = stopping;
    }

    List<Abort> list() {
        List<Abort> found = new ArrayList<>();
        if (told.whole() == 0) {
            return found;
        }
        for (int k = 0; k < watches.size(); k++) {
            if (watches.get(k).limit().isPresent()) {
                found.add(of(k, watches.get(k), watches.get(k).limit().get()));
            }
        }
        found.add(clock());
        if (run.held() == Run.Held.TETHER || run.held() == Run.Held.NOTHING) {
            height().ifPresent(found::add);
        }
        return found;
    }

    private Abort of(int number, Watch watch, Watch.Limit limit) {
        double predicted = told.predicted(number);
        return new Abort(
                watch.channel(),
                watch.gauge().side(),
                limit.si(),
                limit.origin(),
                predicted,
                worth(number, watch.gauge(), limit.si(), predicted));
    }

    private Abort.Worth worth(int number, Gauge gauge, double limitSi, double predictedSi) {
        int sign = gauge.sign();
        double start = trace.atStart(number);
        int moments = trace.end(told.whole() - 1) + 1;
        double[] gone = Arrays.copyOf(trace.of(number), moments);
        for (int k = 0; k < moments; k++) {
            gone[k] = sign * (gone[k] - start);
        }
        double farthest = Arrays.stream(gone).max().orElseThrow();
        // What goes on rising after the stop takes its share of the way.
        double after = farthest > 0 ? trace.afterwards(number) / farthest : 0;
        double limit = sign * (limitSi - start) / (1 + after);
        double predicted = sign * (predictedSi - start);
        double error = gauge.errorSi(limitSi);
        if (!(limit - error > predicted)) {
            return new Abort.Worth.None(
                    "the predicted band ends within what the instrument can tell of the limit"
                            + (after > 0.02 ? ", which still rises after a stop" : "")
                            + ": a lower last step or a shorter hold leaves room, or a part that bears more");
        }
        Margins margins = new Margins(trace.timesS(), gone, most(number, moments), limit);
        double si = shown(gauge, start, margins.latest(stopping.totalS()) - error);
        if (sign * (si - predictedSi) > 0) {
            double truth = sign * (si - start) + error;
            return new Abort.Worth.At(si, margins.secondsS(truth));
        }
        return none(gauge, margins, error, start, predictedSi);
    }

    private static double shown(Gauge gauge, double start, double distance) {
        return gauge.shown(start + gauge.sign() * distance);
    }

    /** What would have to change: the longest stop that leaves a value, found by halving. */
    private Abort.Worth none(
            Gauge gauge, Margins margins, double error, double start, double predictedSi) {
        double enough = 0;
        double tooLong = stopping.totalS();
        for (int k = 0; k < 12; k++) {
            double middle = (enough + tooLong) / 2;
            double si = shown(gauge, start, margins.latest(middle) - error);
            if (gauge.sign() * (si - predictedSi) > 0) {
                enough = middle;
            } else {
                tooLong = middle;
            }
        }
        String why =
                String.format(
                        Locale.ROOT,
                        "a stop takes %.1f s, in which a run that is further out than predicted goes from the predicted band to the limit",
                        stopping.totalS());
        return new Abort.Worth.None(
                enough > 0.1
                        ? why
                                + String.format(
                                        Locale.ROOT,
                                        ": rises %.1f times as long, a stop within %.1f s or a lower last step leave room",
                                        Math.ceil(10 * stopping.totalS() / enough + 0.5) / 10,
                                        Math.floor(10 * enough) / 10)
                        : why + ": a lower last step leaves room");
    }

    /** Greatest s at each moment. */
    private double[] most(int number, int moments) {
        double[] most = new double[moments];
        int from = 0;
        for (int step = 0; step < told.whole(); step++) {
            double in =
                    step == 0
                            ? Margins.MOST
                            : Math.min(Margins.MOST, Margins.LATER * told.within(step - 1, number));
            int to = trace.end(step) + 1;
            Arrays.fill(most, from, to, in);
            from = to;
        }
        return most;
    }

    /** Stop by the clock, before the last level held on comes to a limit. */
    private Abort clock() {
        double planned = told.steps().get(told.whole() - 1).endS();
        double limit = told.firstLimitS();
        double si = Math.ceil(planned + LATE_S);
        Abort.Worth worth =
                limit - si >= stopping.totalS()
                        ? new Abort.Worth.At(si, limit - si)
                        : new Abort.Worth.None(
                                "held on after its end, the last step comes to a limit before a late call and a stop are over: a shorter last hold leaves room");
        return new Abort(
                Gauge.CLOCK.channel("run"),
                Abort.Side.ABOVE,
                limit,
                "first limit of any kind when the last level is held on, lower end of its band; or as far as that was followed",
                planned,
                worth);
    }

    /**
     * Height from which a climb, a stop and the coasting up after it end no higher than whence a
     * fall is as fast as the limit of it: constant excess of lift, nothing left of it after the
     * stop. Empty where no step lifts more than the weight.
     */
    private Optional<Abort> height() {
        double most = 0;
        for (Run.Step step : run.steps().subList(0, told.whole())) {
            if (step.level() instanceof Run.Level.OfWeight(double ofWeight)) {
                most = Math.max(most, ofWeight);
            }
        }
        if (most < 1) {
            return Optional.empty();
        }
        double speed = rig.limits().si(LimitName.IMPACT_SPEED);
        double limit = speed * speed / (2 * Gravity.STANDARD_MPS2);
        double planned = rig.demands().height().si() * (1 + OVERSHOOT);
        double excess = (TOO_MUCH * most - 1) * Gravity.STANDARD_MPS2;
        Gauge gauge = Gauge.HEIGHT;
        double si = gauge.shown(from(limit, excess) - gauge.errorSi(limit));
        double predicted = planned + gauge.errorSi(planned);
        Abort.Worth worth =
                si > predicted
                        ? new Abort.Worth.At(si, climbS(si, limit, excess))
                        : new Abort.Worth.None(
                                String.format(
                                        Locale.ROOT,
                                        "at %.2f of the weight a stop of %.1f s and the coasting after it lead above the limit from %.2f m on, and up to %.2f m is planned: a tether with down-lines, a quicker stop, less lift or less height",
                                        TOO_MUCH * most,
                                        stopping.totalS(),
                                        Math.max(0, from(limit, excess)),
                                        predicted));
        return Optional.of(
                new Abort(
                        gauge.channel("lowest part of the rig"),
                        Abort.Side.ABOVE,
                        limit,
                        "a fall from there ends as fast as the impact speed, "
                                + rig.limits().origin(LimitName.IMPACT_SPEED),
                        predicted,
                        worth));
    }

    /** Height above which a stop comes too late, m; below 0 where it always does. */
    private double from(double limitM, double excess) {
        double none = -limitM - 100;
        double some = limitM;
        for (int k = 0; k < 60; k++) {
            double middle = (none + some) / 2;
            if (apex(middle, excess) > limitM) {
                some = middle;
            } else {
                none = middle;
            }
        }
        return none;
    }

    private double apex(double heightM, double excess) {
        double speed = Math.sqrt(2 * excess * Math.max(0, heightM));
        double stop = stopping.totalS();
        double then = speed + excess * stop;
        return heightM
                + speed * stop
                + excess * stop * stop / 2
                + then * then / (2 * Gravity.STANDARD_MPS2);
    }

    /** From a height to the limit of it, climbing on, s. */
    private static double climbS(double heightM, double limitM, double excess) {
        return (Math.sqrt(2 * limitM / excess) - Math.sqrt(2 * heightM / excess));
    }
}
