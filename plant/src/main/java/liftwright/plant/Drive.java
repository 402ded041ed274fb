package liftwright.plant;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.plant.drive.Commands;
import liftwright.plant.drive.SpinningFans;
import liftwright.plant.fault.Effect;
import liftwright.plant.heat.HeatNumbers;
import liftwright.plant.motion.RotorInertia;
import liftwright.plant.motion.RotorLaws;
import liftwright.plant.motion.RotorNumbers;
import liftwright.plant.supply.CellDraw;
import liftwright.plant.supply.Cells;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.supply.SupplyState;
import liftwright.plant.supply.SupplyStepper;
import liftwright.plant.thrust.FanUnits;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
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

    /** A change of duty beyond this is a jump: the network is solved before and after it. */
    private static final double JUMP = 0.05;

    /** Beyond this temperatures move up to the moment before a jump, too. */
    private static final double GREAT_JUMP = 0.3;

    /** A time that falls short of whole steps by so much of one is rounding. */
    private static final double ROUNDING = 1e-9;

    private static final double NO_TOP = Double.POSITIVE_INFINITY;
    private static final double NETWORK_S = 0.005;
    private static final double HEAT_S = 0.1;

    /** How often all limits are looked at, even those that nothing has come near to. */
    private static final double LOOK_S = 0.1;

    private final Assembler parts;
    private final Rig rig;
    private final Workspace own;
    private final FanUnits units;
    private final Circuit circuit;
    private final Cells cells;
    private final RotorInertia inertia;
    private final RotorNumbers numbers;
    private final RotorLaws laws;
    private final SpinningFans fans;
    private final Commands commands;
    private final Optional<HeatRun> heat;
    private final SupplyStepper stepper;
    private final SupplyState state;
    private final DriveLimits limits;
    private final double[] reversedShare;
    private final boolean[] givesBack;
    private final double[] topRadps;

    /** Thrust of each fan as it turns over its own: 1, or below 0 for the wrong way round. */
    private final double[] sense;

    /** 1 for a right-hand fan, −1 for a left-hand one. */
    private final int[] hand;

    /** Moment on the rig for each N·m of torque of the air, about the thrust. */
    private final double[] swirl;

    private double networkS = NETWORK_S;
    private double heatS = HEAT_S;
    private double stepS;
    private boolean begun;
    private boolean failed;

    // In steps since the start, and moments of the supply, s.
    private long steps;
    private long solvedAt;
    private long solveNext;
    private double warmedS;
    private double warmNextS;
    private double lookNextS;

    /** Length of the step of the supply that is at work; 0 for a point at a jump, s. */
    private double intervalS;

    /** Something was lost or opened since the last point. */
    private boolean jumped;

    Drive(Assembler parts, Workspace own, Circuit circuit) {
        this.parts = parts;
        this.own = own;
        this.circuit = circuit;
        rig = parts.rig;
        units = own.units;
        cells = parts.packs.newCells();
        inertia = RotorInertia.of(rig);
        int count = rig.fans().size();
        numbers = new RotorNumbers(count);
        laws = new RotorLaws(units);
        fans = new SpinningFans(laws, numbers);
        givesBack = new boolean[count];
        topRadps = new double[count];
        sense = new double[count];
        hand = new int[count];
        swirl = new double[count];
        double[] delayS = new double[count];
        double[] slewPerS = new double[count];
        for (int fan = 0; fan < count; fan++) {
            declared(fan, delayS, slewPerS);
        }
        commands = new Commands(delayS, slewPerS);
        reversedShare = Losses.reversedShare(rig);
        heat =
                parts.heat.map(
                        bank -> new HeatRun(parts, bank, own, numbersOf -> warming(numbersOf)));
        stepper = new SupplyStepper(circuit, this::settle, cells, heat.map(HeatRun::supply));
        state = stepper.newState();
        limits =
                new DriveLimits(
                        new RunLimits(rig, heat),
                        new ReachedTimes(
                                rig.packs().size(), count, heat.map(HeatRun::parts).orElse(0)),
                        stepper,
                        state,
                        fans,
                        circuit,
                        heat,
                        rig.packs().stream().mapToInt(pack -> pack.series()).toArray());
    }

    private WarmRotors warming(HeatNumbers of) {
        return new WarmRotors(parts.fans, units, fans, parts.heat.orElseThrow(), of, circuit);
    }

    /** What a fan's type and seat say once and for all. */
    private void declared(int fan, double[] delayS, double[] slewPerS) {
        Fan of = rig.fans().get(fan);
        FanType.Controller controller = of.type().controller();
        numbers.exitM2[fan] = of.type().exitArea().si();
        topRadps[fan] = topRadps(of.type());
        delayS[fan] = controller.switching().delay().map(late -> late.si()).orElse(0.0);
        slewPerS[fan] =
                controller
                        .switching()
                        .slew()
                        .map(most -> most.si())
                        .orElse(Double.POSITIVE_INFINITY);
        hand[fan] =
                switch (of.spin()) {
                    case RIGHT_HAND -> 1;
                    case LEFT_HAND -> -1;
                };
        controller
                .switching()
                .braking()
                .ifPresent(
                        braking -> {
                            switch (braking) {
                                case COAST -> {
                                    // as where nothing is declared
                                }
                                case SHORT -> numbers.brakes[fan] = true;
                                case FREEWHEEL -> givesBack[fan] = true;
                            }
                        });
    }

    /** The lower of what the rotor and what its controller can follow. */
    private static double topRadps(FanType type) {
        double rotor = type.rotor().topSpeed().map(most -> most.si()).orElse(NO_TOP);
        int pairs = type.motor().polePairs().orElse(0);
        double electrical =
                type.controller().topElectricalSpeed().map(most -> most.si()).orElse(NO_TOP);
        return Math.min(rotor, pairs > 0 ? electrical / pairs : NO_TOP);
    }

    /** Takes the numbers of a vector, rotors as declared; {@link #start} comes next. */
    public void load(double[] p, CellDraw draw) {
        load(p, draw, inertia.table().nominal());
    }

    /**
     * Takes the numbers of two vectors.
     *
     * @param p of the plant's table
     * @param turning of the table of {@link #inertia}
     */
    public void load(double[] p, CellDraw draw, double[] turning) {
        double airK = parts.air.temperatureK(p);
        numbers.densityKgpm3 = parts.air.densityKgpm3(p);
        circuit.close();
        parts.fans.load(p, numbers.densityKgpm3, true, true, true, units);
        parts.wires.resistance(p, airK, own.network.chainOhm);
        parts.packs.load(p, parts.table, draw, airK, cells);
        for (int fan = 0; fan < sense.length; fan++) {
            commands.full(fan, units.orderedDuty(fan));
            numbers.loss[fan] = parts.fans.intakeLoss(p, fan);
            numbers.inertiaKgm2[fan] = inertia.kgm2(turning, fan);
            swirl[fan] = parts.swirls.momentNm(p, fan, 1);
            laws.giveBack(fan, givesBack[fan]);
        }
        heat.ifPresent(of -> of.load(p));
        laws.take(units);
    }

    /** Inertias of the rotors, with a table of their own. */
    public RotorInertia inertia() {
        return inertia;
    }

    /** Rested packs at their declared charge, rotors at rest, nothing lost, time 0. */
    public void start() {
        state.reset();
        circuit.close();
        heat.ifPresent(of -> of.start(state, cells));
        limits.start();
        commands.start();
        fans.rest();
        for (int fan = 0; fan < sense.length; fan++) {
            sense[fan] = 1;
            laws.order(fan, 0);
        }
        begun = false;
        jumped = false;
        failed = false;
        steps = 0;
        solvedAt = 0;
        solveNext = 0;
        warmedS = 0;
        warmNextS = 0;
        lookNextS = 0;
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
        book();
        Losses.lose(effect, circuit);
        for (int fan : effect.deadFans()) {
            fans.stop(fan);
        }
        effect.mostDuty().forEach((fan, duty) -> commands.confine(fan, 0, duty));
        effect.stuckDuty().forEach((fan, duty) -> commands.confine(fan, duty, duty));
        for (int fan : effect.reversedFans()) {
            sense[fan] = -reversedShare[fan];
        }
        for (int[] pair : effect.exchangedChannels()) {
            commands.exchange(pair[0], pair[1]);
        }
        jumped = true;
    }

    /**
     * Opens chains now: what hangs behind them alone coasts. Allocates.
     *
     * @param opens one a chain of the wiring
     */
    public void kill(boolean[] opens) {
        book();
        for (int chain = 0; chain < opens.length; chain++) {
            if (opens[chain]) {
                circuit.open(chain);
            }
        }
        jumped = true;
    }

    /** Chains that a contactor opens, one a chain of the wiring. Allocates. */
    public boolean[] chainsOf(String contactor) {
        List<Wiring.Chain> chains = rig.wiring().chains();
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
        if (dtS != stepS) {
            book();
            stepS = dtS;
            solveNext = steps;
        }
        commands.step(dtS);
        if (begun) {
            go(change());
        } else {
            begin();
        }
        fans.step(dtS);
        steps++;
        return !failed;
    }

    /** The first point of a run. */
    private void begin() {
        begun = true;
        jumped = false;
        follow();
        fed();
        intervalS = 0;
        failed |= !stepper.begin(cells, state);
        if (!failed && limits.look(true)) {
            again();
        }
        settled();
    }

    private boolean settle(double timeS, NetworkState supply) {
        fans.face();
        if (intervalS > 0) {
            circuit.plan().resume(supply, fans);
        } else {
            circuit.plan().solve(supply, fans);
        }
        fans.take(supply, intervalS > 0 ? stepS : 0);
        return supply.converged();
    }

    /** By how much the duties leave those of the last step. */
    private double change() {
        double most = 0;
        for (int fan = 0; fan < sense.length; fan++) {
            most = Math.max(most, Math.abs(commands.duty(fan) - laws.duty(fan)));
        }
        return most;
    }

    private void follow() {
        for (int fan = 0; fan < sense.length; fan++) {
            laws.order(fan, commands.duty(fan));
        }
    }

    private void fed() {
        for (int fan = 0; fan < sense.length; fan++) {
            fans.feed(fan, circuit.plan().isFed(fan));
        }
    }

    private void go(double change) {
        if (jumped || change > JUMP) {
            book();
            if (heat.isPresent() && (jumped || change > GREAT_JUMP)) {
                warm();
            }
            follow();
            again();
            return;
        }
        follow();
        if (steps >= solveNext) {
            solve();
            return;
        }
        fans.face();
        circuit.plan().follow(circuit.state(), fans);
        if (fans.moved()) {
            solve();
        } else {
            fans.follow(circuit.state(), stepS);
        }
    }

    /** Charge moves up to now with the orders that counted until now. */
    private void book() {
        if (begun && steps > solvedAt) {
            solve();
        }
    }

    /** The network at the speeds of now; charge, heat and limits follow. */
    private void solve() {
        intervalS = (steps - solvedAt) * stepS;
        failed |= !stepper.flow(intervalS);
        solvedAt = steps;
        solveNext = steps + everySteps();
        boolean whole = state.timeS() >= lookNextS - ROUNDING;
        boolean lost = limits.look(whole);
        if (whole) {
            lookNextS = state.timeS() + LOOK_S;
        }
        if (heat.isPresent() && state.timeS() >= warmNextS - ROUNDING) {
            lost |= warm();
        }
        if (lost) {
            again();
        }
    }

    private long everySteps() {
        return Math.max(1, (long) (networkS / stepS + ROUNDING));
    }

    /** Temperatures move up to now; whether a fuse opened. */
    private boolean warm() {
        double fromS = warmedS;
        warmedS = state.timeS();
        if (failed || warmedS <= fromS) {
            return false;
        }
        stepper.warm(warmedS - fromS);
        boolean opened = limits.lookAtHeat(fromS);
        double soonest = heat.orElseThrow().opensInS(state, stepper) / 2;
        warmNextS = warmedS + Math.clamp(soonest, Math.min(networkS, heatS), heatS);
        return opened;
    }

    /** Something jumped at this moment: solved again, until no controller stops. */
    private void again() {
        jumped = false;
        intervalS = 0;
        do {
            fed();
            failed |= !stepper.again();
        } while (!failed && limits.look(false));
        settled();
    }

    private void settled() {
        solvedAt = steps;
        solveNext = steps + everySteps();
        if (heat.isPresent() && !failed) {
            stepper.settleHeat();
            heat.get().settle(state, stepper);
        }
    }

    /**
     * How often the network is solved in full at least, &gt; 0, s; 5 ms unless told otherwise. In
     * between its voltages follow the rotors at every step by the slopes of the last solution, for
     * as long as every fan stays on the same piece of its law.
     */
    public void networkEvery(double seconds) {
        networkS = seconds;
    }

    /** How often temperatures move at least, &gt; 0, s; 0.1 s unless told otherwise. */
    public void heatEvery(double seconds) {
        heatS = seconds;
    }

    /** Time since the start, s. */
    public double timeS() {
        return state.timeS() + (steps - solvedAt) * stepS;
    }

    /** Whether a point without a solution was met; nothing means anything from there on. */
    public boolean failed() {
        return failed;
    }

    /** Number of fans. */
    public int fans() {
        return sense.length;
    }

    /** Thrust along the thrust line at the end of the last step, N; below 0 where reversed. */
    public double thrustN(int fan) {
        return sense[fan] * fans.thrustEndN(fan);
    }

    /** The same in the middle of the step, N. */
    public double thrustMiddleN(int fan) {
        return sense[fan] * fans.thrustMiddleN(fan);
    }

    /** The same at its start, N. */
    public double thrustStartN(int fan) {
        return sense[fan] * fans.thrustStartN(fan);
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
        double turns = Math.signum(sense[fan]);
        return turns * (swirl[fan] * fans.airNm(fan) - hand[fan] * fans.speedingUpNm(fan));
    }

    /** Speed at the end of the step, ≥ 0, rad/s. */
    public double speedRadps(int fan) {
        return fans.endRadps(fan);
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
        return Math.signum(sense[fan]) * hand[fan] * numbers.inertiaKgm2[fan] * fans.endRadps(fan);
    }

    /**
     * Air through the fan in the middle of the step, ≥ 0, kg/s: momentum drag is it × cross-flow.
     */
    public double massFlowKgps(int fan) {
        return fans.massFlowKgps(fan);
    }

    /** Whether the last thrust or flow asked of a fan was in a stream beyond the law. */
    public boolean isBeyondLaw(int fan) {
        return fans.isBeyondLaw(fan);
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
        return fans.volt(fan);
    }

    /** Current that the controller draws there, A; below 0 while it gives back. */
    public double busA(int fan) {
        return fans.busA(fan);
    }

    /** Current of the winding there, A; below 0 while it brakes. */
    public double windingA(int fan) {
        return fans.windingA(fan);
    }

    /** Whether the controller holds its current limit there. */
    public boolean isLimited(int fan) {
        return fans.limited(fan);
    }

    /**
     * Whether the fan is fed and was not stopped: by a loss, a kill or its controller's cut-off.
     */
    public boolean isLive(int fan) {
        return fans.isLive(fan);
    }

    /** Highest declared speed of a rotor, rad/s; infinite where none is. */
    public double topRadps(int fan) {
        return topRadps[fan];
    }

    /** Inertia of a rotor at the vector loaded, kg·m². */
    public double inertiaKgm2(int fan) {
        return numbers.inertiaKgm2[fan];
    }

    /**
     * What a fan spends at the network's last point, W: heat of winding and controller, friction,
     * and the air. What is left of what it draws speeds the rotor up.
     */
    public double spentW(int fan) {
        return fans.spentW(fan);
    }

    /** Number of packs. */
    public int packs() {
        return rig.packs().size();
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
