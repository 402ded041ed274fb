package liftwright.plant;

import java.util.Optional;
import liftwright.plant.fault.Effect;
import liftwright.plant.motion.RotorInertia;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.table.StartState;

/**
 * All rotors of a rig on its one sagging supply, at fixed steps: what a flight steps. Within a
 * moment the order is duty → network → Ω → heat → charge; charge and heat move by the supply
 * stepper alone. Allocates nothing per step but for an opening (a fuse, a kill, a loss); for one
 * thread; the same calls give the same bits.
 *
 * <pre>{@code
 * Drive drive = plant.drive();
 * drive.load(p, new CellDraw.Expected());
 * drive.start();
 * for (int tick = 0; tick < 1000; tick++) {
 *     drive.duty(fan, 0.6);             // for every fan
 *     drive.inflow(fan, 0.3, 1.2);      // from the motion of the body
 *     drive.step(0.001);
 *     drive.thrustMiddleN(fan);         // moves the body over this step
 * }
 * }</pre>
 *
 * <p>Each figure of a fan can be had at the start, in the middle and at the end of the last step;
 * plain names speak of the end.
 */
public final class Drive {

    private final int fans;

    Drive(int fans) {
        this.fans = fans;
    }

    /** Takes the numbers of a vector, rotors as declared; {@link #start} comes next. */
    public void load(double[] p, CellDraw draw) {}

    /**
     * Takes the numbers of two vectors.
     *
     * @param p of the plant's table
     * @param turning of the table of {@link #inertia}
     */
    public void load(double[] p, CellDraw draw, double[] turning) {}

    /** Inertias of the rotors, with a table of their own. */
    public RotorInertia inertia() {
        throw new UnsupportedOperationException("soon");
    }

    /** Rested packs at their declared charge, rotors at rest, nothing lost, time 0. */
    public void start() {}

    /** The same with what an earlier run left behind. Of a heated plant alone. */
    public void start(StartState from) {}

    /** Rotors that turn already, rad/s; one a fan. After {@link #start}. */
    public void spin(double[] radps) {}

    /**
     * Orders the duty of a channel: so much of the full share of its fan's control group. The
     * controller's delay and slew come after it.
     *
     * @param share 0 to 1; what lies outside is taken as the nearer end
     */
    public void duty(int fan, double share) {}

    /**
     * The air that meets a fan over the next step.
     *
     * @param axialMps air-relative speed of the fan along its thrust, m/s: above 0 in a climb
     * @param acrossMps the same across it, ≥ 0, m/s
     */
    public void inflow(int fan, double axialMps, double acrossMps) {}

    /** Something is lost now and until the next {@link #start}; adds to what was lost before. */
    public void fail(Effect effect) {}

    /** Opens the contactors' chains now: what hangs behind them alone coasts. */
    public void kill(boolean[] opens) {}

    /**
     * Goes one step.
     *
     * @param dtS the same from one {@link #start} to the next, s; 1 ms is usual
     * @return whether an operating point was found, now and before
     */
    public boolean step(double dtS) {
        return true;
    }

    /** How often the network is solved at least, s; 5 ms unless told otherwise. */
    public void networkEvery(double seconds) {}

    /** How often temperatures move, s; 0.1 s unless told otherwise. */
    public void heatEvery(double seconds) {}

    /** Time since the start, s. */
    public double timeS() {
        return 0;
    }

    /** Whether a point without a solution was met; nothing means anything from there on. */
    public boolean failed() {
        return false;
    }

    /** Number of fans. */
    public int fans() {
        return fans;
    }

    /** Thrust along the thrust line at the end of the last step, N; below 0 where reversed. */
    public double thrustN(int fan) {
        return 0;
    }

    /** The same in the middle of the step, N. */
    public double thrustMiddleN(int fan) {
        return 0;
    }

    /** The same at its start, N. */
    public double thrustStartN(int fan) {
        return 0;
    }

    /** Torque of the air on the rotor against its turning, ≥ 0, N·m. */
    public double dragTorqueNm(int fan) {
        return 0;
    }

    /**
     * Moment on the frame about the direction of thrust, right-hand, in the middle of the step,
     * N·m: what swirl the jet keeps, −σ s_r Q, and what speeds the rotor up, −σ J dΩ/dt; σ is 1 for
     * a right-hand fan, −1 for a left-hand one. Gyroscopic moments are not in it.
     */
    public double reactionNm(int fan) {
        return 0;
    }

    /** Speed at the end of the step, ≥ 0, rad/s. */
    public double speedRadps(int fan) {
        return 0;
    }

    /** Speed in the middle of the step, ≥ 0, rad/s. */
    public double speedMiddleRadps(int fan) {
        return 0;
    }

    /** Angular momentum about the direction of thrust, right-hand, σ J Ω, kg·m²/s. */
    public double angularMomentum(int fan) {
        return 0;
    }

    /**
     * Air through the fan in the middle of the step, ≥ 0, kg/s: momentum drag is it × cross-flow.
     */
    public double massFlowKgps(int fan) {
        return 0;
    }

    /** Duty in effect at the last step, after delay, slew and losses, 0 to 1. */
    public double dutyInEffect(int fan) {
        return 0;
    }

    /** Duty of a fan's channel at full throttle, 0 to 1. */
    public double fullDuty(int fan) {
        return 1;
    }

    /** Voltage at the controller, V; 0 without supply. */
    public double busV(int fan) {
        return 0;
    }

    /** Current that the controller draws, A. */
    public double busA(int fan) {
        return 0;
    }

    /** Current of the winding, A; below 0 while it brakes. */
    public double windingA(int fan) {
        return 0;
    }

    /** Whether the controller holds its current limit. */
    public boolean isLimited(int fan) {
        return false;
    }

    /**
     * Whether the fan is fed and was not stopped: by a loss, a kill or its controller's cut-off.
     */
    public boolean isLive(int fan) {
        return true;
    }

    /** Current of a pack, A. */
    public double packA(int pack) {
        return 0;
    }

    /** Voltage of a pack's weakest cell, V. */
    public double leastCellV(int pack) {
        return 0;
    }

    /** Share of charge left in the emptiest cell of a pack. */
    public double chargeLeft(int pack) {
        return 0;
    }

    /** Temperature of a part that warms, K. Of a heated plant alone. */
    public double nowK(int part) {
        return 0;
    }

    /** The first limit of all that was reached; empty if none was. The flight goes on. */
    public Optional<Discharge.End> ended() {
        return Optional.empty();
    }

    /** When a cause first held in one part, s since the start; infinite if it never did. */
    public double reachedS(Cause cause, int part) {
        return Double.POSITIVE_INFINITY;
    }
}
