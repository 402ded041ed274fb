package liftwright.plant;

import java.util.Arrays;
import java.util.Optional;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.SupplyState;
import liftwright.plant.supply.SupplyStepper;

/**
 * What happens on the way of a run: finds within each step when limits were reached, and does what
 * follows from it. A controller that cuts off stops its fan, a fuse that opens takes its chain out.
 * Allocates nothing but for an opening; for one thread.
 */
final class RunEvents {

    private static final Cause[] CAUSES = Cause.values();

    private final SupplyStepper stepper;
    private final SupplyState state;
    private final RunLimits limits;
    private final StepSearch search;
    private final ReachedTimes times;
    private final FansUnderOrder fans;
    private final Circuit circuit;
    private final Optional<HeatRun> heat;

    /** Packs whose time within the last step the network was asked for. */
    private final boolean[] askedVoltage;

    private final boolean[] askedCurrent;

    private boolean stopsAtFirst;
    private boolean holds;

    RunEvents(
            SupplyStepper stepper,
            SupplyState state,
            RunLimits limits,
            StepSearch search,
            ReachedTimes times,
            FansUnderOrder fans,
            Circuit circuit,
            Optional<HeatRun> heat) {
        this.stepper = stepper;
        this.state = state;
        this.limits = limits;
        this.search = search;
        this.times = times;
        this.fans = fans;
        this.circuit = circuit;
        this.heat = heat;
        int packs = times.of(Cause.CELL_VOLTAGE).length;
        askedVoltage = new boolean[packs];
        askedCurrent = new boolean[packs];
    }

    /** Whether only the first limit of all is told of the run. */
    void stopAtFirst(boolean stops) {
        stopsAtFirst = stops;
    }

    /** Whether controllers that would cut off and fuses that would open are told of, and hold. */
    void hold(boolean hold) {
        holds = hold;
    }

    /** Notes what holds at the present moment, fans that stop included. */
    void note() {
        boolean again = true;
        while (again) {
            again = false;
            for (Cause cause : CAUSES) {
                double[] when = times.of(cause);
                for (int part = 0; part < when.length; part++) {
                    if (when[part] > state.timeS() && search.distance(cause, part) <= 0) {
                        when[part] = state.timeS();
                        if (cause == Cause.CUT_OFF || cause == Cause.FUSE_OPENED) {
                            out(cause, part);
                            search.failIf(!stepper.restart());
                            again = !search.failed();
                        }
                    }
                }
            }
        }
    }

    /** Finds what was reached within the last step, in the order of time. */
    void locate(double fromS) {
        double h = stepper.lastStepS();
        double first = 1;
        boolean ends = false;
        for (Cause cause : CAUSES) {
            double[] when = times.of(cause);
            for (int part = 0; part < when.length && !search.failed(); part++) {
                if (cause.readOffTheHeat()
                        || when[part] < Double.POSITIVE_INFINITY
                        || !(search.distance(cause, part) < 0)) {
                    continue;
                }
                double share = search.root(cause, part, h, 0, 1, cause.readOffTheNetwork());
                if (!stopsAtFirst && cause.goesWithTheCurrent()) {
                    share = search.refined(cause, part, h, share);
                }
                when[part] = fromS + share * h;
                if (cause.changesTheRun() && share <= first) {
                    first = share;
                    ends = true;
                }
                search.back(1, cause.readOffTheNetwork() || cause.goesWithTheCurrent());
            }
        }
        if (stopsAtFirst && !search.failed()) {
            refineFirst(fromS, h);
        }
        if (search.failed()) {
            return;
        }
        if (ends) {
            double endS = fromS + first * h;
            times.forgetAfter(endS);
            search.failIf(!stepper.within(first));
            locateBefore(fromS, h, first);
            watchHeat(fromS);
            takeOut(endS);
            if (!search.failed()) {
                note();
            }
            settleHeat();
        } else {
            locateCrests(fromS, h);
            watchHeat(fromS);
        }
    }

    /** Something else flows from now on. */
    void settleHeat() {
        if (heat.isPresent() && !search.failed()) {
            heat.get().settle(state, stepper);
        }
    }

    /** Looks how warm it got since the start of the last step. */
    private void watchHeat(double fromS) {
        if (heat.isPresent() && !search.failed()) {
            heat.get().step(fromS, state, stepper, times.of(Cause.OVERHEATED));
        }
    }

    /** Finds the peak current that was passed and left again within the step. */
    private void locateCrests(double fromS, double h) {
        double[] when = times.of(Cause.CELL_CURRENT);
        for (int pack = 0; pack < when.length && !search.failed(); pack++) {
            if (when[pack] == Double.POSITIVE_INFINITY && limits.isNearPeak(pack, stepper)) {
                double crest = search.crest(pack);
                if (!search.failed() && search.distance(Cause.CELL_CURRENT, pack) < 0) {
                    when[pack] =
                            fromS + h * search.root(Cause.CELL_CURRENT, pack, h, 0, crest, true);
                }
                search.back(1, true);
            }
        }
    }

    /**
     * Finds what was reached before the step was cut short and no longer holds at its far end: at
     * full throttle currents fall again.
     */
    private void locateBefore(double fromS, double h, double cut) {
        for (Cause cause : CAUSES) {
            double[] when = times.of(cause);
            for (int part = 0;
                    part < when.length
                            && !search.failed()
                            && !cause.changesTheRun()
                            && !cause.readOffTheHeat();
                    part++) {
                if (when[part] == Double.POSITIVE_INFINITY && search.distance(cause, part) < 0) {
                    when[part] = fromS + h * search.root(cause, part, h, 0, cut, true);
                    search.back(cut, true);
                }
            }
        }
    }

    /** Stops the fans whose controllers cut off at a moment, and opens the fuses that do. */
    private void takeOut(double whenS) {
        boolean cutOff = takeOut(Cause.CUT_OFF, whenS);
        boolean opened = takeOut(Cause.FUSE_OPENED, whenS);
        if ((cutOff || opened) && !search.failed()) {
            search.failIf(!stepper.restart());
        }
    }

    private boolean takeOut(Cause cause, double whenS) {
        double[] when = times.of(cause);
        boolean any = false;
        for (int part = 0; part < when.length; part++) {
            if (when[part] == whenS) {
                out(cause, part);
                any = true;
            }
        }
        return any;
    }

    private void out(Cause cause, int part) {
        if (holds) {
            return;
        }
        if (cause == Cause.CUT_OFF) {
            fans.units().stop(part, true);
        } else {
            circuit.open(heat.orElseThrow().chain(part));
        }
    }

    /**
     * The first limit alone is told of such a run: only its time needs the network's word. Where
     * that puts it behind another, the other is asked in turn.
     */
    private void refineFirst(double fromS, double h) {
        Arrays.fill(askedVoltage, false);
        Arrays.fill(askedCurrent, false);
        boolean moved = false;
        while (!search.failed()
                && (refine(Cause.CELL_VOLTAGE, askedVoltage, fromS, h)
                        || refine(Cause.CELL_CURRENT, askedCurrent, fromS, h))) {
            moved = true;
        }
        if (moved && !search.failed()) {
            search.back(1, true);
        }
    }

    /** Asks the network about a part that is first of all and was not asked; whether one was. */
    private boolean refine(Cause cause, boolean[] asked, double fromS, double h) {
        double[] when = times.of(cause);
        for (int part = 0; part < when.length; part++) {
            boolean inThisStep = when[part] > fromS && when[part] <= fromS + h;
            if (inThisStep && !asked[part] && when[part] <= times.first()) {
                asked[part] = true;
                when[part] = fromS + h * search.refined(cause, part, h, (when[part] - fromS) / h);
                return true;
            }
        }
        return false;
    }
}
