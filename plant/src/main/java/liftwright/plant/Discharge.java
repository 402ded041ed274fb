package liftwright.plant;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.supply.CellDraw;
import liftwright.plant.supply.Cells;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.supply.SupplyState;
import liftwright.plant.supply.SupplyStepper;
import liftwright.rig.Rig;

/**
 * A run on the packs of one rig: hover, a throttle trace, hops with pauses. Steps the supply from
 * event to event and notes when each pack reaches each limit. Allocates nothing per step; for one
 * thread.
 *
 * <p>Cold motors, cell temperatures as at the start: heat joins when its laws do.
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

    private static final int MOST_SECANTS = 40;
    private static final double TIME_ERROR_S = 1e-4;

    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    /** Share of a step to which the place of a crest is found. */
    private static final double CREST_SHARE = 0.005;

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
     * @param part number of the pack (of the fan for {@link Cause#CUT_OFF}); empty where the whole
     *     rig is meant
     */
    public record End(Cause cause, double timeS, Optional<Integer> part) {}

    private final Plant plant;
    private final Rig rig;
    private final Workspace own;
    private final NetworkState network;
    private final FansUnderOrder fans;
    private final SupplyStepper stepper;
    private final Cells cells;
    private final SupplyState state;
    private final RunLimits limits;
    private final ReachedTimes times;

    /** Packs whose time within the last step the network was asked for. */
    private final boolean[] askedVoltage;

    private final boolean[] askedCurrent;

    private boolean stopsAtFirst;

    /** The order followed last since the start. */
    private Optional<Order> followed = Optional.empty();

    private boolean failed;

    Discharge(Plant plant, Workspace own, FansUnderOrder fans, Cells cells) {
        this.plant = plant;
        this.rig = plant.rig();
        this.own = own;
        network = own.network;
        this.fans = fans;
        this.cells = cells;
        stepper = new SupplyStepper(network, fans, cells);
        state = stepper.newState();
        limits = new RunLimits(rig);
        askedVoltage = new boolean[rig.packs().size()];
        askedCurrent = new boolean[rig.packs().size()];
        times = new ReachedTimes(rig.packs().size(), rig.fans().size());
    }

    /** Takes the numbers of a vector; the next {@link #start} begins with rested packs. */
    public void load(double[] p, CellDraw draw) {
        plant.load(p, draw, own, fans, cells);
    }

    /** Whether a run ends with the first limit of all, or goes on as long as it can. */
    public void stopAtFirst(boolean stops) {
        stopsAtFirst = stops;
    }

    /** Rested packs at their declared charge, nothing reached yet. */
    public void start() {
        state.reset();
        times.clear();
        for (int fan = 0; fan < rig.fans().size(); fan++) {
            fans.units().stop(fan, false);
        }
        failed = false;
        followed = Optional.empty();
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
            failed |= !stepper.begin(cells, state);
            followed = Optional.of(order);
        }
        if (failed) {
            return false;
        }
        noteAll();
        watcher.at(this);
        while (!over() && state.timeS() < untilS) {
            double before = state.timeS();
            if (!stepper.step(untilS)) {
                failed = stepper.failed();
                return !failed;
            }
            locate(before);
            if (failed) {
                return false;
            }
            watcher.at(this);
        }
        return !over();
    }

    private boolean over() {
        return (stopsAtFirst && firstS() < Double.POSITIVE_INFINITY)
                || times.first(Cause.EMPTY) < Double.POSITIVE_INFINITY
                || times.first(Cause.FULL_THROTTLE) < Double.POSITIVE_INFINITY;
    }

    /** Notes what holds at the present moment, fans that stop included. */
    private void noteAll() {
        boolean again = true;
        while (again) {
            again = false;
            for (Cause cause : Cause.values()) {
                double[] when = times.of(cause);
                for (int part = 0; part < when.length; part++) {
                    if (when[part] > state.timeS() && distance(cause, part) <= 0) {
                        when[part] = state.timeS();
                        if (cause == Cause.CUT_OFF) {
                            fans.units().stop(part, true);
                            failed |= !stepper.restart();
                            again = !failed;
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
            for (int part = 0; part < when.length && !failed; part++) {
                if (when[part] < Double.POSITIVE_INFINITY || !(distance(cause, part) < 0)) {
                    continue;
                }
                double share = root(cause, part, h, 0, 1, readOffTheNetwork(cause));
                if (!stopsAtFirst && goesWithTheCurrent(cause)) {
                    share = refined(cause, part, h, share);
                }
                when[part] = fromS + share * h;
                if (changesTheRun(cause) && share <= first) {
                    first = share;
                    ends = true;
                }
                back(1, readOffTheNetwork(cause) || goesWithTheCurrent(cause));
            }
        }
        if (stopsAtFirst && !failed) {
            refineFirst(fromS, h);
        }
        if (failed) {
            return;
        }
        if (ends) {
            double endS = fromS + first * h;
            times.forgetAfter(endS);
            failed |= !stepper.within(first);
            locateBefore(fromS, h, first);
            stopFans(endS);
            if (!failed) {
                noteAll();
            }
        } else {
            locateCrests(fromS, h);
        }
    }

    /** Finds the peak current that was passed and left again within the step. */
    private void locateCrests(double fromS, double h) {
        double[] when = times.of(Cause.CELL_CURRENT);
        for (int pack = 0; pack < when.length && !failed; pack++) {
            if (when[pack] == Double.POSITIVE_INFINITY && limits.isNearPeak(pack, stepper)) {
                double crest = crest(pack);
                if (!failed && distance(Cause.CELL_CURRENT, pack) < 0) {
                    when[pack] = fromS + h * root(Cause.CELL_CURRENT, pack, h, 0, crest, true);
                }
                back(1, true);
            }
        }
    }

    /**
     * Share of the step at which the current of a pack is greatest (golden section); stays there.
     */
    private double crest(int pack) {
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

    private double distanceAt(double share, int pack) {
        back(share, true);
        return distance(Cause.CELL_CURRENT, pack);
    }

    /**
     * Finds what was reached before the step was cut short and no longer holds at its far end: at
     * full throttle currents fall again.
     */
    private void locateBefore(double fromS, double h, double cut) {
        for (Cause cause : Cause.values()) {
            double[] when = times.of(cause);
            for (int part = 0; part < when.length && !failed && !changesTheRun(cause); part++) {
                if (when[part] == Double.POSITIVE_INFINITY && distance(cause, part) < 0) {
                    when[part] = fromS + h * root(cause, part, h, 0, cut, true);
                    back(cut, true);
                }
            }
        }
    }

    /** Stops the fans whose controllers were found to cut off at a moment. */
    private void stopFans(double whenS) {
        double[] when = times.of(Cause.CUT_OFF);
        boolean any = false;
        for (int fan = 0; fan < when.length; fan++) {
            if (when[fan] == whenS) {
                fans.units().stop(fan, true);
                any = true;
            }
        }
        if (any && !failed) {
            failed = !stepper.restart();
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
        while (!failed
                && (refine(Cause.CELL_VOLTAGE, askedVoltage, fromS, h)
                        || refine(Cause.CELL_CURRENT, askedCurrent, fromS, h))) {
            moved = true;
        }
        if (moved && !failed) {
            back(1, true);
        }
    }

    /** Asks the network about a part that is first of all and was not asked; whether one was. */
    private boolean refine(Cause cause, boolean[] asked, double fromS, double h) {
        double[] when = times.of(cause);
        for (int part = 0; part < when.length; part++) {
            boolean inThisStep = when[part] > fromS && when[part] <= fromS + h;
            if (inThisStep && !asked[part] && when[part] <= firstS()) {
                asked[part] = true;
                when[part] = fromS + h * refined(cause, part, h, (when[part] - fromS) / h);
                return true;
            }
        }
        return false;
    }

    /**
     * The same root with the network solved at each try: within a step currents bend a little, and
     * a cell's voltage falls slowly enough for that to matter.
     */
    private double refined(Cause cause, int part, double h, double share) {
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

    private static boolean goesWithTheCurrent(Cause cause) {
        return switch (cause) {
            case CELL_VOLTAGE, CELL_CURRENT -> true;
            case RESERVE, CUT_OFF, FULL_THROTTLE, EMPTY -> false;
        };
    }

    private static boolean changesTheRun(Cause cause) {
        return switch (cause) {
            case CUT_OFF, FULL_THROTTLE, EMPTY -> true;
            case RESERVE, CELL_VOLTAGE, CELL_CURRENT -> false;
        };
    }

    private static boolean readOffTheNetwork(Cause cause) {
        return switch (cause) {
            case CUT_OFF, FULL_THROTTLE -> true;
            case RESERVE, CELL_VOLTAGE, CELL_CURRENT, EMPTY -> false;
        };
    }

    /** Goes back into the last step, solving the network there or not. */
    private boolean back(double share, boolean solved) {
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
    private double root(Cause cause, int part, double h, double from, double to, boolean solved) {
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

    private double distance(Cause cause, int part) {
        return limits.distance(cause, part, stepper, network, fans);
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
        failed |= !stepper.resume();
        return found ? OptionalDouble.of(liftN) : OptionalDouble.empty();
    }

    /** Time since the start, s. */
    public double timeS() {
        return state.timeS();
    }

    /** Whether a point without a solution was met; then the run means nothing from there on. */
    public boolean failed() {
        return failed;
    }

    /** What the packs remember: charge passed and slow voltages. */
    public SupplyState state() {
        return state;
    }

    /** Voltages and currents at the present moment. */
    public NetworkState network() {
        return network;
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
}
