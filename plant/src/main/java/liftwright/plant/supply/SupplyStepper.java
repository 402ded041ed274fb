package liftwright.plant.supply;

import java.util.Optional;
import liftwright.physics.CellLaw;
import liftwright.plant.heat.HeatLoad;

/**
 * The one stepper of charge and heat. The order within a moment is duty → network → Ω → heat →
 * charge: the {@link Consumer} sets duties and solves the network, where the fans' speeds follow;
 * what flows then warms the parts and moves charge and slow voltages.
 *
 * <p>Within a step the packs' currents run linearly between its ends. Charge is then a parabola and
 * each slow voltage dv/dt = i/C − v/(RC) has its exact solution, however short RC is. The current
 * at the far end is predicted with that at the near end held (order 1), found there, and found once
 * more at the corrected end (order 2), where it serves as the near end of the next step. What the
 * last correction changes tells the error of the step.
 *
 * <p>Where heat is computed ({@link WarmSupply}), temperatures go the same way: predicted from the
 * near end, corrected with what flows at the far end, with an error of their own. Every evaluation
 * takes resistances as warm as the state says.
 *
 * <p>Allocates nothing per step. Not for several threads.
 *
 * <pre>{@code
 * stepper.begin(cells, state);            // state reset or copied from a run that ended
 * while (state.timeS() < 60 && stepper.step(60)) {
 *     stepper.network().packA(0);         // now
 * }
 * }</pre>
 */
public final class SupplyStepper {

    /** Error of one step allowed in charge, as a share of a pack's capacity. */
    private static final double CHARGE_ERROR = 1e-5;

    private static final double FIRST_STEP_S = 0.5;

    /** First step where heat is computed: thin walls warm in tenths of a second. */
    private static final double FIRST_WARM_STEP_S = 0.05;

    private static final double LEAST_STEP_S = 1e-6;
    private static final double LONGEST_STEP_S = 60;

    private final Circuit circuit;
    private final Consumer consumer;
    private final Optional<WarmSupply> warm;
    private final double firstStepS;
    private final SupplyState start;
    private final SupplyState end;

    /** Currents now, at the near and far end of the last step, and scratch. */
    private final double[] presentA;

    private final double[] nearA;
    private final double[] farA;
    private final double[] foundA;

    private Cells cells;
    private SupplyState state;
    private double nextS;
    private double lastS;
    private boolean failed;

    /**
     * @param circuit scratch that the consumer solves
     * @param cells numbers of the cells; replaced by {@link #begin}
     * @param warm heat; empty where none is computed
     */
    public SupplyStepper(
            Circuit circuit, Consumer consumer, Cells cells, Optional<WarmSupply> warm) {
        this.circuit = circuit;
        this.consumer = consumer;
        this.cells = cells;
        this.warm = warm;
        firstStepS = warm.isPresent() ? FIRST_WARM_STEP_S : FIRST_STEP_S;
        start = newState();
        end = newState();
        state = start;
        presentA = new double[cells.packs()];
        nearA = new double[cells.packs()];
        farA = new double[cells.packs()];
        foundA = new double[cells.packs()];
    }

    /** A state for the packs of this rig. */
    public SupplyState newState() {
        return new SupplyState(cells.packs(), warm.map(WarmSupply::newState));
    }

    /**
     * Starts at a state and finds the operating point there.
     *
     * @param at moved by the steps that follow
     * @return whether there is an operating point
     */
    public boolean begin(Cells of, SupplyState at) {
        cells = of;
        state = at;
        nextS = firstStepS;
        lastS = 0;
        return resume();
    }

    /**
     * Finds the operating point at the present state after something else was asked of the
     * consumer, or before it is; steps stay as long as they were.
     *
     * @return whether there is an operating point
     */
    public boolean resume() {
        failed = !evaluate(state, presentA);
        if (!failed && warm.isPresent()) {
            warm.get().settle(state, circuit.state(), cells);
        }
        return !failed;
    }

    /**
     * Finds the operating point at the present state anew, after orders have changed at once.
     *
     * @return whether there is one
     */
    public boolean restart() {
        nextS = Math.min(nextS, firstStepS);
        return resume();
    }

    /**
     * Goes one step, as long as its error allows.
     *
     * @param untilS time not to step beyond, s
     * @return whether time moved; else it is {@code untilS}, or there is no operating point
     */
    public boolean step(double untilS) {
        double left = untilS - state.timeS;
        if (failed || left <= 0) {
            return false;
        }
        start.copyFrom(state);
        System.arraycopy(presentA, 0, nearA, 0, nearA.length);
        double longest = LONGEST_STEP_S;
        if (warm.isPresent()) {
            warm.get().begin();
            longest = Math.min(longest, consumer.longestStepS());
        }
        nextS = Math.min(nextS, longest);
        while (true) {
            // Two halves rather than a step and a sliver.
            double h = nextS >= left ? left : Math.min(nextS, left / 2);
            double error = attempt(h);
            if (error <= 1) {
                double grow = 0.9 / Math.cbrt(Math.max(error, 1e-6));
                nextS = Math.min(longest, Math.max(h, nextS) * Math.min(grow, 4));
                lastS = h;
                if (h == left) {
                    end.timeS = untilS; // without the rounding of a sum
                }
                look(1);
                return true;
            }
            if (h <= LEAST_STEP_S) {
                failed = true;
                return false;
            }
            double shrink = error < Double.POSITIVE_INFINITY ? 0.9 / Math.cbrt(error) : 0.25;
            nextS = Math.max(LEAST_STEP_S, h * Math.clamp(shrink, 0.1, 0.5));
        }
    }

    /**
     * Looks back into the last step without solving the network: charge, slow voltages and currents
     * as they run within the step. Look at 1 again before anything else is done.
     *
     * @param share of the last step, 0 to 1
     */
    public void look(double share) {
        if (share == 1) {
            state.copyFrom(end);
            System.arraycopy(foundA, 0, presentA, 0, presentA.length);
            if (warm.isPresent()) {
                warm.get().arrive();
            }
            return;
        }
        for (int k = 0; k < presentA.length; k++) {
            presentA[k] = nearA[k] + share * (farA[k] - nearA[k]);
        }
        if (warm.isPresent()) {
            warm.get().look(start, share, lastS, state);
            for (int k = 0; k < presentA.length; k++) {
                state.warmth[k] = start.warmth[k] + share * (end.warmth[k] - start.warmth[k]);
            }
        }
        move(start, nearA, presentA, lastS * share, state);
    }

    /**
     * Goes a step of a given length with charge and slow voltages alone, for a consumer that moves
     * by itself meanwhile (rotors): it is asked once, at the far end with the currents of the near
     * end held (order 1), and charge then moves with currents that run linearly between what was
     * found at both (order 2). Temperatures wait for {@link #warm}; there is no looking back.
     *
     * @param h &gt; 0, s
     * @return whether there is an operating point, now and before
     */
    public boolean flow(double h) {
        if (failed) {
            return false;
        }
        start.chargeFrom(state);
        System.arraycopy(presentA, 0, nearA, 0, nearA.length);
        move(start, nearA, nearA, h, state);
        failed = !ask(state, presentA);
        move(start, nearA, presentA, h, state);
        lastS = h;
        return !failed;
    }

    /**
     * Finds the operating point at the present moment and temperatures, after something else was
     * asked of the consumer between two calls of {@link #flow}.
     *
     * @return whether there is one
     */
    public boolean again() {
        failed |= !ask(state, presentA);
        return !failed;
    }

    /**
     * Moves temperatures over a time that {@link #flow} has gone since they were moved last, with
     * what makes heat running linearly between its ends.
     *
     * @param h &gt; 0, s
     */
    public void warm(double h) {
        warm.orElseThrow().follow(start, state, h, circuit.state(), cells);
    }

    /** What makes heat is that of the point last solved. */
    public void settleHeat() {
        warm.orElseThrow().settle(state, circuit.state(), cells);
    }

    /** Error of a step over what is allowed; infinite where a point was not found. */
    private double attempt(double h) {
        if (warm.isPresent()) {
            System.arraycopy(start.warmth, 0, end.warmth, 0, end.warmth.length);
            warm.get().predict(start, h, end);
        }
        move(start, nearA, nearA, h, end);
        if (!evaluate(end, farA)) {
            return Double.POSITIVE_INFINITY;
        }
        if (warm.isPresent()) {
            warm.get().meet(end, circuit.state(), cells);
            warm.get().correct(start, h, end);
        }
        move(start, nearA, farA, h, end);
        if (!evaluate(end, foundA)) {
            return Double.POSITIVE_INFINITY;
        }
        double worst = 0;
        if (warm.isPresent()) {
            worst = warm.get().close(start, end, h, circuit.state(), cells);
        }
        for (int k = 0; k < foundA.length; k++) {
            double charge = h / 2 * Math.abs(foundA[k] - farA[k]);
            worst = Math.max(worst, charge / (CHARGE_ERROR * cells.packCapacityAs(k)));
        }
        return worst;
    }

    /**
     * Goes back into the last step and finds the operating point there. The present state moves;
     * the next step starts from it.
     *
     * @param share of the last step, 0 to 1
     * @return whether there is an operating point
     */
    public boolean within(double share) {
        look(share);
        return resume();
    }

    private void move(SupplyState from, double[] nearA, double[] farA, double h, SupplyState to) {
        to.timeS = from.timeS + h;
        for (int k = 0; k < nearA.length; k++) {
            to.passedAs[k] = from.passedAs[k] + h * (nearA[k] + farA[k]) / 2;
            // Resistances change with charge: that of the middle serves the step.
            double shape =
                    cells.meanShape(k, (from.passedAs[k] + to.passedAs[k]) / 2)
                            * ((from.warmth[k] + to.warmth[k]) / 2);
            for (int pair = 0; pair < Cells.PAIRS; pair++) {
                int at = k * Cells.PAIRS + pair;
                if (cells.slowOhm[at] == 0) {
                    continue;
                }
                double ohm = cells.slowOhm[at] * shape;
                to.slowV[at] =
                        CellLaw.pairAfterV(
                                from.slowV[at],
                                nearA[k] / cells.parallel[k],
                                farA[k] / cells.parallel[k],
                                ohm,
                                cells.slowS[at] * shape,
                                h);
            }
        }
    }

    private boolean evaluate(SupplyState at, double[] packA) {
        NetworkState network = circuit.state();
        if (warm.isPresent()) {
            warm.get().take(at, network, cells);
        }
        return ask(at, packA);
    }

    /** The same with resistances as they are. */
    private boolean ask(SupplyState at, double[] packA) {
        NetworkState network = circuit.state();
        for (int k = 0; k < packA.length; k++) {
            network.emfV[k] = cells.emfV(k, at.passedAs[k], at.slowV);
            network.packOhm[k] = cells.packOhm(k, at.passedAs[k], at.warmth[k]);
        }
        if (!consumer.settle(at.timeS, network)) {
            return false;
        }
        for (int k = 0; k < packA.length; k++) {
            packA[k] = network.packA(k);
        }
        return true;
    }

    /** Current of a pack now, A. */
    public double packA(int pack) {
        return presentA[pack];
    }

    /** The network at the last point solved: the present state, unless one only looked back. */
    public NetworkState network() {
        return circuit.state();
    }

    /** The state that is stepped. */
    public SupplyState state() {
        return state;
    }

    /** The state at the start of the last step. */
    public SupplyState start() {
        return start;
    }

    /** What makes heat now; only where heat is computed. */
    public HeatLoad load() {
        return warm.orElseThrow().present();
    }

    /** Least cell voltage of a pack now, V. */
    public double leastCellV(int pack) {
        return cells.leastCellV(
                pack, state.passedAs[pack], state.slowV, state.warmth[pack], presentA[pack]);
    }

    /** Group of cells with that voltage, counted through the rig. */
    public int weakestGroup(int pack) {
        return cells.weakest(
                pack, state.passedAs[pack], state.slowV, state.warmth[pack], presentA[pack]);
    }

    /** Share of charge left in the emptiest cell of a pack now; may be a little below 0. */
    public double leastChargeLeft(int pack) {
        return cells.leastChargeLeft(pack, state.passedAs[pack]);
    }

    /** Length of the last step, s. */
    public double lastStepS() {
        return lastS;
    }

    /** Whether no operating point was found. */
    public boolean failed() {
        return failed;
    }
}
