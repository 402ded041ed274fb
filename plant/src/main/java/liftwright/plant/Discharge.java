package liftwright.plant;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.fault.Effect;
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
    private final ReachedTimes times;
    private final StepSearch search;
    private final RunEvents events;

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
        RunLimits limits = new RunLimits(rig, heat);
        search = new StepSearch(stepper, limits, fans);
        times =
                new ReachedTimes(
                        rig.packs().size(), rig.fans().size(), heat.map(HeatRun::parts).orElse(0));
        events = new RunEvents(stepper, state, limits, search, times, fans, circuit, heat);
    }

    /** Takes the numbers of a vector; the next {@link #start} begins with rested packs. */
    public void load(double[] p, CellDraw draw) {
        plant.load(p, draw, own, fans, cells);
        heat.ifPresent(of -> of.load(p));
    }

    /** Whether a run ends with the first limit of all, or goes on as long as it can. */
    public void stopAtFirst(boolean stops) {
        stopsAtFirst = stops;
        events.stopAtFirst(stops);
    }

    /**
     * Whether controllers that would cut off and fuses that would open do nothing but be told of:
     * for a run beside one that was measured, in which they did not.
     */
    public void hold(boolean hold) {
        events.hold(hold);
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
        fans.whole();
        search.start();
        followed = Optional.empty();
    }

    /**
     * Something is lost at the present moment and until the next {@link #start}: chains open, packs
     * give nothing, fans stop or keep a duty. What was lost before stays lost. The next {@link
     * #follow} goes on from here; where the loss leaves no operating point, it tells so.
     */
    public void fail(Effect effect) {
        if (!effect.isNone()) {
            Losses.lose(effect, circuit);
            fans.lose(effect, Losses.reversedShare(rig));
            followed = Optional.empty();
        }
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
        return heat.orElseThrow().now(state, cells, times.of(Cause.FUSE_OPENED));
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
        events.note();
        events.settleHeat();
        watcher.at(this);
        while (!over() && state.timeS() < untilS) {
            double before = state.timeS();
            if (!stepper.step(untilS)) {
                search.failIf(stepper.failed());
                return !search.failed();
            }
            events.locate(before);
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

    /** How near a fuse is to opening, 0 to 1, which is open; 0 for any other part. */
    public double fuseShare(int part) {
        return opened(part) ? 1 : watch().fuseShare(HeatRun.heat(state), part);
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
