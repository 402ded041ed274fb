package liftwright.plant;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.plant.drive.Commands;
import liftwright.plant.drive.SpinningFans;
import liftwright.plant.fault.Effect;
import liftwright.plant.heat.HeatNumbers;
import liftwright.plant.motion.RotorInertia;
import liftwright.plant.supply.CellDraw;
import liftwright.plant.supply.Cells;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.supply.SupplyState;
import liftwright.plant.supply.SupplyStepper;
import liftwright.rig.Element;
import liftwright.rig.Wiring;
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

    private final Assembler parts;
    private final Workspace own;
    private final Circuit circuit;
    private final Cells cells;
    private final DriveFans rotors;
    private final SpinningFans fans;
    private final Commands commands;
    private final Optional<HeatRun> heat;
    private final SupplySchedule schedule;
    private final SupplyStepper stepper;
    private final SupplyState state;
    private final DriveLimits limits;

    Drive(Assembler parts, Workspace own, Circuit circuit) {
        this.parts = parts;
        this.own = own;
        this.circuit = circuit;
        cells = parts.packs.newCells();
        rotors = new DriveFans(parts.rig, own.units);
        fans = rotors.spinning;
        commands = rotors.commands;
        heat =
                parts.heat.map(
                        bank -> new HeatRun(parts, bank, own, numbersOf -> warming(numbersOf)));
        schedule = new SupplySchedule(parts.rig, circuit, cells, fans, commands, heat);
        stepper = schedule.stepper();
        state = schedule.state();
        limits = schedule.limits();
    }

    private WarmRotors warming(HeatNumbers of) {
        return new WarmRotors(parts.fans, own.units, fans, parts.heat.orElseThrow(), of, circuit);
    }

    /** Takes the numbers of a vector, rotors as declared; {@link #start} comes next. */
    public void load(double[] p, CellDraw draw) {
        load(p, draw, rotors.inertia.table().nominal());
    }

    /**
     * Takes the numbers of two vectors.
     *
     * @param p of the plant's table
     * @param turning of the table of {@link #inertia}
     */
    public void load(double[] p, CellDraw draw, double[] turning) {
        double airK = parts.air.temperatureK(p);
        circuit.close();
        rotors.load(parts, p, turning);
        parts.wires.resistance(p, airK, own.network.chainOhm);
        parts.packs.load(p, parts.table, draw, airK, cells);
        heat.ifPresent(of -> of.load(p));
        rotors.takeUnits();
    }

    /** Inertias of the rotors, with a table of their own. */
    public RotorInertia inertia() {
        return rotors.inertia;
    }

    /** Rested packs at their declared charge, rotors at rest, nothing lost, time 0. */
    public void start() {
        schedule.start();
        rotors.start();
    }

    /**
     * The same with what an earlier run left behind. Of a heated plant alone.
     *
     * @throws IllegalArgumentException if it names what the rig has not
     */
    public void start(StartState from) {
        start();
        heat.orElseThrow().start(state, cells, from);
    }

    /**
     * Begins in the middle of a run: rotors turn already, and what the channels are told now they
     * were told long ago. After {@link #start} and {@link #duty}.
     *
     * @param radps one a fan, ≥ 0
     */
    public void spin(double[] radps) {
        for (int fan = 0; fan < radps.length; fan++) {
            fans.turn(fan, radps[fan]);
        }
        commands.reach();
    }

    /**
     * Orders the duty of a channel: so much of the full share of its fan's control group. The
     * controller's delay and slew come after it.
     *
     * @param share 0 to 1; what lies outside is taken as the nearer end
     */
    public void duty(int fan, double share) {
        commands.tell(fan, share);
    }

    /** Orders the duty of every channel, as one by one. */
    public void duties(double[] shares) {
        commands.tell(shares);
    }

    /**
     * The air that meets every fan over the next step, as one by one.
     *
     * @param axialMps one a fan
     * @param acrossMps one a fan, ≥ 0
     */
    public void inflow(double[] axialMps, double[] acrossMps) {
        fans.inflow(axialMps, acrossMps);
    }

    /**
     * The air that meets a fan over the next step.
     *
     * @param axialMps air-relative speed of the fan along its thrust, m/s: above 0 in a climb
     * @param acrossMps the same across it, ≥ 0, m/s
     */
    public void inflow(int fan, double axialMps, double acrossMps) {
        fans.inflow(fan, axialMps, acrossMps);
    }

    /**
     * Something is lost now and until the next {@link #start}; adds to what was lost before. What
     * flowed until now is booked first. Allocates.
     */
    public void fail(Effect effect) {
        schedule.book();
        Losses.lose(effect, circuit);
        rotors.lose(effect);
        schedule.jump();
    }

    /**
     * Opens chains now: what hangs behind them alone coasts. Allocates.
     *
     * @param opens one a chain of the wiring
     */
    public void kill(boolean[] opens) {
        schedule.book();
        for (int chain = 0; chain < opens.length; chain++) {
            if (opens[chain]) {
                circuit.open(chain);
            }
        }
        schedule.jump();
    }

    /** Chains that a contactor opens, one a chain of the wiring. Allocates. */
    public boolean[] chainsOf(String contactor) {
        List<Wiring.Chain> chains = parts.rig.wiring().chains();
        boolean[] opens = new boolean[chains.size()];
        for (int chain = 0; chain < opens.length; chain++) {
            opens[chain] =
                    chains.get(chain).elements().stream()
                            .anyMatch(
                                    element ->
                                            element instanceof Element.Pole pole
                                                    && pole.contactor().name().equals(contactor));
        }
        return opens;
    }

    /**
     * Goes one step.
     *
     * @param dtS the same from one {@link #start} to the next, s; 1 ms is usual
     * @return whether an operating point was found, now and before
     */
    public boolean step(double dtS) {
        return schedule.step(dtS);
    }

    /**
     * How often the network is solved in full at least, &gt; 0, s; 5 ms unless told otherwise. In
     * between its voltages follow the rotors at every step by the slopes of the last solution, for
     * as long as every fan stays on the same piece of its law.
     */
    public void networkEvery(double seconds) {
        schedule.networkEvery(seconds);
    }

    /** How often temperatures move at least, &gt; 0, s; 0.1 s unless told otherwise. */
    public void heatEvery(double seconds) {
        schedule.heatEvery(seconds);
    }

    /** Time since the start, s. */
    public double timeS() {
        return schedule.timeS();
    }

    /** Whether a point without a solution was met; nothing means anything from there on. */
    public boolean failed() {
        return schedule.failed();
    }

    /** Number of fans. */
    public int fans() {
        return rotors.sense.length;
    }

    /** Thrust along the thrust line at the end of the last step, N; below 0 where reversed. */
    public double thrustN(int fan) {
        return rotors.sense[fan] * fans.thrustN()[2 * fans() + fan];
    }

    /** Sizes of the same of all fans together, N. */
    public double allThrustN() {
        return rotors.allThrustN();
    }

    /** The same in the middle of the step, N. */
    public double thrustMiddleN(int fan) {
        return rotors.sense[fan] * fans.thrustN()[fans() + fan];
    }

    /** The same at its start, N. */
    public double thrustStartN(int fan) {
        return rotors.sense[fan] * fans.thrustN()[fan];
    }

    /** Torque of the air on the rotor against its turning in the middle of the step, ≥ 0, N·m. */
    public double dragTorqueNm(int fan) {
        return fans.airNm(fan);
    }

    /**
     * Moment on the frame about the direction of thrust, right-hand, in the middle of the step,
     * N·m: what swirl the jet keeps, −σ s_r Q, and what speeds the rotor up, −σ J dΩ/dt (its mean
     * over the step); σ is 1 for a right-hand fan, −1 for a left-hand one, and the other way round
     * where its leads are swapped. Gyroscopic moments are not in it.
     */
    public double reactionNm(int fan) {
        double turns = Math.signum(rotors.sense[fan]);
        return turns
                * (rotors.swirl[fan] * fans.airNm(fan) - rotors.hand[fan] * fans.speedingUpNm(fan));
    }

    /** Speed at the end of the step, ≥ 0, rad/s. */
    public double speedRadps(int fan) {
        return fans.endRadps(fan);
    }

    /** The same of all fans. */
    public void speedsRadps(double[] out) {
        fans.endRadps(out);
    }

    /** Speed at the start of the step, ≥ 0, rad/s. */
    public double speedStartRadps(int fan) {
        return fans.startRadps(fan);
    }

    /** Speed in the middle of the step, ≥ 0, rad/s. */
    public double speedMiddleRadps(int fan) {
        return fans.middleRadps(fan);
    }

    /** Angular momentum about the direction of thrust at the end, right-hand, σ J Ω, kg·m²/s. */
    public double angularMomentum(int fan) {
        return Math.signum(rotors.sense[fan])
                * rotors.hand[fan]
                * rotors.numbers.inertiaKgm2[fan]
                * fans.endRadps(fan);
    }

    /**
     * Air through the fan in the middle of the step, ≥ 0, kg/s: momentum drag is it × cross-flow.
     */
    public double massFlowKgps(int fan) {
        return fans.massFlowKgps(fan);
    }

    /**
     * What all fans did over the last step, as one by one the calls above tell it: all that moves a
     * body at once, since that is asked at every step.
     *
     * @param thrustN out: {@link #thrustStartN} of all fans, then {@link #thrustMiddleN}, then
     *     {@link #thrustN}
     * @param reactionNm out: {@link #reactionNm}, one a fan
     * @param spinNms out: {@link #angularMomentum}
     * @param flowKgps out: {@link #massFlowKgps}
     */
    public void loads(double[] thrustN, double[] reactionNm, double[] spinNms, double[] flowKgps) {
        rotors.loads(thrustN, reactionNm, spinNms);
        fans.massFlowKgps(flowKgps);
    }

    /** Whether the thrust at the end of the last step is in a stream beyond the law. */
    public boolean isBeyondLaw(int fan) {
        return fans.isBeyondLaw(fan);
    }

    /** Whether it is for any fan. */
    public boolean isAnyBeyondLaw() {
        return fans.isAnyBeyondLaw();
    }

    /** Duty in effect at the last step, after delay, slew and losses, 0 to 1. */
    public double dutyInEffect(int fan) {
        return commands.duty(fan);
    }

    /** Duty of a fan's channel at full throttle, 0 to 1. */
    public double fullDuty(int fan) {
        return commands.full(fan);
    }

    /** By how much a fan's controller follows late at the present steps, s. */
    public double lateS(int fan) {
        return commands.lateS(fan);
    }

    /** Voltage at the controller at the network's last point, V; 0 without supply. */
    public double busV(int fan) {
        return fans.fed().volt(fan);
    }

    /** The same of all fans. */
    public void busesV(double[] out) {
        fans.fed().volt(out);
    }

    /** Power that all controllers draw there, W. */
    public double powerW() {
        return fans.fed().powerW();
    }

    /** Current that the controller draws there, A; below 0 while it gives back. */
    public double busA(int fan) {
        return fans.fed().busA(fan);
    }

    /** Current of the winding there, A; below 0 while it brakes. */
    public double windingA(int fan) {
        return fans.fed().windingA(fan);
    }

    /** Whether the controller holds its current limit there. */
    public boolean isLimited(int fan) {
        return fans.fed().limited(fan);
    }

    /** Whether any controller does. */
    public boolean isAnyLimited() {
        return fans.fed().anyLimited();
    }

    /**
     * Whether the fan is fed and was not stopped: by a loss, a kill or its controller's cut-off.
     */
    public boolean isLive(int fan) {
        return fans.fed().isLive(fan);
    }

    /** Highest declared speed of a rotor, rad/s; infinite where none is. */
    public double topRadps(int fan) {
        return rotors.topRadps[fan];
    }

    /** Inertia of a rotor at the vector loaded, kg·m². */
    public double inertiaKgm2(int fan) {
        return rotors.numbers.inertiaKgm2[fan];
    }

    /**
     * What a fan spends at the network's last point, W: heat of winding and controller, friction,
     * and the air. What is left of what it draws speeds the rotor up.
     */
    public double spentW(int fan) {
        return fans.fed().spentW(fan);
    }

    /** Number of packs. */
    public int packs() {
        return parts.rig.packs().size();
    }

    /** Current of a pack at the network's last point, A. */
    public double packA(int pack) {
        return stepper.packA(pack);
    }

    /** Voltage of a pack's weakest cell there, V. */
    public double leastCellV(int pack) {
        return stepper.leastCellV(pack);
    }

    /** Share of charge left in the emptiest cell of a pack there. */
    public double chargeLeft(int pack) {
        return stepper.leastChargeLeft(pack);
    }

    /** Voltages and currents at the network's last point. */
    public NetworkState network() {
        return circuit.state();
    }

    /** What packs and parts remember at the network's last point. */
    public SupplyState state() {
        return state;
    }

    /** Temperature of a part that warms, K: its hottest place. Of a heated plant alone. */
    public double nowK(int part) {
        return heat.orElseThrow().watch().nowK(HeatRun.heat(state), part);
    }

    /** The first limit of all that was reached; empty if none was. The flight goes on. */
    public Optional<Discharge.End> ended() {
        return limits.ended();
    }

    /** First time of each cause that was reached. */
    public Map<Cause, Double> firsts() {
        return limits.firsts();
    }

    /** Time of the first limit of all, s; infinite if none was reached. For loops. */
    public double firstS() {
        return limits.firstS();
    }

    /** When a cause first held in one part, s since the start; infinite if it never did. */
    public double reachedS(Cause cause, int part) {
        return limits.reachedS(cause, part);
    }
}
