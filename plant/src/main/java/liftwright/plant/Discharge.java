package liftwright.plant;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.heat.HeatWatch;
import liftwright.plant.supply.CellDraw;
import liftwright.plant.supply.Cells;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.supply.SupplyState;
import liftwright.plant.supply.SupplyStepper;
import liftwright.rig.Rig;
import liftwright.rig.table.StartState;

/**
 * A run on the packs of one rig: hover, a throttle trace, hops with pauses. Steps the supply from
 * event to event and notes when each pack reaches each limit. Allocates nothing per step; for one
 * thread.
 *
 * <p>A run of a plant that is not {@link Plant#isHeated heated} has cold motors and cells as warm
 * as at the start. In a heated one every part warms; fuses open and take their chain out; {@code
 * part} of what is asked about heat counts through {@link Plant#heatParts}.
 *
 * <pre>{@code
 * Discharge run = plant.discharge();
 * run.load(plant.parameters().nominal(), new CellDraw.Expected());
 * run.start();
 * run.follow(new Order.Lift(plant.weightN(p)), 60, moment -> {});
 * run.ended().ifPresent(end -> end.timeS());
 * }</pre>
 */
public final class Discharge {

    /** Told of the start, of every step and of every event. */
    @FunctionalInterface
    public interface Watcher {
        /** The run stands at a moment; its figures are those of that moment. */
        void at(Discharge run);
    }

    /**
     * An end of the run.
     *
     * @param cause what ended it
     * @param timeS when, since the start, s
     * @param part number of the pack (of the fan for {@link Cause#CUT_OFF}, of the heat part for
     *     {@link Cause#OVERHEATED} and {@link Cause#FUSE_OPENED}); empty where the whole rig is
     *     meant
     */
    public record End(Cause cause, double timeS, Optional<Integer> part) {}

    private final Plant plant;
    private final Rig rig;
    private final Workspace own;
    private final Circuit circuit;
    private final Optional<HeatRun> heat;
    private final FansUnderOrder fans;
    private final SupplyStepper stepper;
    private final Cells cells;
    private final SupplyState state;
    private final RunLimits limits;
    private final ReachedTimes times;
    private final StepSearch search;

    /** Packs whose time within the last step the network was asked for. */
    private final boolean[] askedVoltage;

    private final boolean[] askedCurrent;

    private boolean stopsAtFirst;

    /** The order followed last since the start. */
    private Optional<Order> followed = Optional.empty();

    Discharge(
            Plant plant,
            Workspace own,
            Circuit circuit,
            FansUnderOrder fans,
            Cells cells,
            Optional<HeatRun> heat) {
        this.plant = plant;
        this.rig = plant.rig();
        this.own = own;
        this.circuit = circuit;
        this.heat = heat;
        this.fans = fans;
        this.cells = cells;
        stepper = new SupplyStepper(circuit, fans, cells, heat.map(HeatRun::supply));
        state = stepper.newState();
        limits = new RunLimits(rig, heat);
        askedVoltage = new boolean[rig.packs().size()];
        askedCurrent = new boolean[rig.packs().size()];
        search = new StepSearch(stepper, limits, fans);
        times =
                new ReachedTimes(
                        rig.packs().size(), rig.fans().size(), heat.map(HeatRun::parts).orElse(0));
    }

    /** Takes the numbers of a vector; the next {@link #start} begins with rested packs. */
    public void load(double[] p, CellDraw draw) {
        plant.load(p, draw, own, fans, cells);
        heat.ifPresent(of -> plant.loadHeat(p, own, of));
    }

    /** Whether a run ends with the first limit of all, or goes on as long as it can. */
    public void stopAtFirst(boolean stops) {
        stopsAtFirst = stops;
    }

    /**
     * Allows other errors of temperatures than usual in each step, to see what a run owes to its
     * steps. Of a heated plant alone.
     *
     * @param share of the usual errors, &gt; 0
     */
    public void allowError(double share) {
        heat.orElseThrow().supply().allow(share);
    }

    /** Rested packs at their declared charge, nothing reached yet. */
    public void start() {
        state.reset();
        circuit.close();
        heat.ifPresent(of -> of.start(state, cells));
        times.clear();
        for (int fan = 0; fan < rig.fans().size(); fan++) {
            fans.units().stop(fan, false);
        }
        search.start();
        followed = Optional.empty();
    }

    /**
     * Starts warm: with the temperatures, charges and fuses that an earlier run left behind. What
     * it does not name starts as declared; cells are rested. Of a heated plant alone.
     *
     * @throws IllegalArgumentException if it names what the rig has not
     */
    public void start(StartState from) {
        start();
        heat.orElseThrow().start(state, cells, from);
    }

    /**
     * What another run can start from to go on where this one stands. Of a heated plant alone;
     * allocates. ({@link #state} is what packs and parts remember in numbers.)
     */
    public StartState stateNow() {
        return heat.orElseThrow().now(state, cells);
    }

    /**
     * Follows an order for a time. Ends early when a cell is empty, when an ordered lift is beyond
     * full throttle, or when there is no operating point.
     *
     * @param order what the fans do
     * @param forS how long, s
     * @param watcher told of every step
     * @return whether it went on for the whole time
     */
    public boolean follow(Order order, double forS, Watcher watcher) {
        double untilS = state.timeS() + forS;
        fans.order(order);
        if (!followed.equals(Optional.of(order))) {
            search.failIf(!stepper.begin(cells, state));
            followed = Optional.of(order);
        }
        if (search.failed()) {
            return false;
        }
        noteAll();
        if (heat.isPresent() && !search.failed()) {
            heat.get().settle(state, stepper);
        }
        watcher.at(this);
        while (!over() && state.timeS() < untilS) {
            double before = state.timeS();
            if (!stepper.step(untilS)) {
                search.failIf(stepper.failed());
                return !search.failed();
            }
            locate(before);
            if (search.failed()) {
                return false;
            }
            watcher.at(this);
        }
        return !over();
    }

    private boolean over() {
        return (stopsAtFirst && firstS() < Double.POSITIVE_INFINITY)
                || (!soaks()
                        && (times.first(Cause.EMPTY) < Double.POSITIVE_INFINITY
                                || times.first(Cause.FULL_THROTTLE) < Double.POSITIVE_INFINITY));
    }

    /** With no throttle heat goes on to spread after the flight is over. */
    private boolean soaks() {
        return heat.isPresent()
                && fans.order() instanceof Order.Throttle(double share)
                && share == 0;
    }

    /** Notes what holds at the present moment, fans that stop included. */
    private void noteAll() {
        boolean again = true;
        while (again) {
            again = false;
            for (Cause cause : Cause.values()) {
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
    private void locate(double fromS) {
        double h = stepper.lastStepS();
        double first = 1;
        boolean ends = false;
        for (Cause cause : Cause.values()) {
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
                noteAll();
            }
            if (heat.isPresent() && !search.failed()) {
                heat.get().settle(state, stepper);
            }
        } else {
            locateCrests(fromS, h);
            watchHeat(fromS);
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
        for (Cause cause : Cause.values()) {
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
            if (inThisStep && !asked[part] && when[part] <= firstS()) {
                asked[part] = true;
                when[part] = fromS + h * search.refined(cause, part, h, (when[part] - fromS) / h);
                return true;
            }
        }
        return false;
    }

    /** When a cause first held anywhere, s since the start; empty if it never did. */
    public OptionalDouble reached(Cause cause) {
        return ReachedTimes.told(times.first(cause));
    }

    /**
     * When a cause first held in one part, s since the start; empty if it never did.
     *
     * @param part a pack; a fan for {@link Cause#CUT_OFF}; 0 for {@link Cause#FULL_THROTTLE}
     */
    public OptionalDouble reached(Cause cause, int part) {
        return ReachedTimes.told(times.of(cause)[part]);
    }

    /** The first limit of all; ties go to the cause and part that is listed first. */
    public Optional<End> ended() {
        return times.end();
    }

    /** Time of the first limit of all, s; infinite if none was reached. For loops. */
    public double firstS() {
        return times.first();
    }

    /** First time of each cause that was reached. */
    public Map<Cause, Double> firsts() {
        return times.firsts();
    }

    /**
     * Upward thrust that full throttle would give at the present charge and slow voltages, N. The
     * run goes on as it was.
     *
     * @return empty where there is no operating point
     */
    public OptionalDouble fullThrottleLiftN() {
        Order order = fans.order();
        fans.order(new Order.Throttle(1));
        boolean found = stepper.resume();
        double liftN = fans.liftN();
        fans.order(order);
        search.failIf(!stepper.resume());
        return found ? OptionalDouble.of(liftN) : OptionalDouble.empty();
    }

    /** Time since the start, s. */
    public double timeS() {
        return state.timeS();
    }

    /** Whether a point without a solution was met; then the run means nothing from there on. */
    public boolean failed() {
        return search.failed();
    }

    /** What the packs remember: charge passed and slow voltages. */
    public SupplyState state() {
        return state;
    }

    /** Voltages and currents at the present moment. */
    public NetworkState network() {
        return circuit.state();
    }

    /** The fans at the present moment. */
    public FansUnderOrder fans() {
        return fans;
    }

    /** Current of a pack at the present moment, A. */
    public double packA(int pack) {
        return stepper.packA(pack);
    }

    /** Charge of a full pack, A·s. */
    public double packCapacityAs(int pack) {
        return cells.packCapacityAs(pack);
    }

    /** Least cell voltage of a pack at the present moment, V. */
    public double leastCellV(int pack) {
        return stepper.leastCellV(pack);
    }

    /** Which of a pack's cells in series has it, from 1. */
    public int weakestCell(int pack) {
        return stepper.weakestGroup(pack) - cells.firstGroup(pack) + 1;
    }

    /** Share of charge left in the emptiest cell of a pack. */
    public double leastChargeLeft(int pack) {
        return stepper.leastChargeLeft(pack);
    }

    private HeatWatch watch() {
        return heat.orElseThrow().watch();
    }

    /** When a part first reached its limit, s since the start; empty if it never did. */
    public OptionalDouble heatReachedS(int part) {
        return reached(Cause.OVERHEATED, part);
    }

    /** Temperature of a part now, K: its hottest place. */
    public double nowK(int part) {
        return watch().nowK(HeatRun.heat(state), part);
    }

    /** Hottest that a part was, K. */
    public double hottestK(int part) {
        return watch().hottestK(part);
    }

    /** When that was, s since the start. */
    public double hottestAtS(int part) {
        return watch().hottestAtS(part);
    }

    /** How near a fuse is to opening, 0 to 1; 0 for any other part. */
    public double fuseShare(int part) {
        return watch().fuseShare(HeatRun.heat(state), part);
    }

    /** Whether a part is a fuse that opened. */
    public boolean opened(int part) {
        return openedS(part).isPresent();
    }

    /** When a fuse opened, s since the start; empty if it did not. */
    public OptionalDouble openedS(int part) {
        return reached(Cause.FUSE_OPENED, part);
    }

    /** Heat made in a part now, W; of a run or joint out and back. */
    public double lossW(int part) {
        return watch().lossW(part);
    }

    /** Heat made in a part since the start, J. */
    public double energyJ(int part) {
        return watch().energyJ(part);
    }

    /**
     * What the cells give up now, their own heat included, W: the losses of all parts and what
     * leaves at the shafts.
     */
    public double givenW() {
        return watch().givenW();
    }

    /** What leaves at the shafts now, W. */
    public double shaftW() {
        return watch().shaftW();
    }

    /** What the cells gave up since the start, J. */
    public double givenJ() {
        return watch().givenJ();
    }

    /** What left at the shafts since the start, J. */
    public double shaftJ() {
        return watch().shaftJ();
    }
}
