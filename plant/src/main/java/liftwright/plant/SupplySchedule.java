package liftwright.plant;

import java.util.Optional;
import liftwright.plant.drive.Commands;
import liftwright.plant.drive.FedFans;
import liftwright.plant.drive.SpinningFans;
import liftwright.plant.motion.RotorLaws;
import liftwright.plant.supply.Cells;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.supply.SupplyState;
import liftwright.plant.supply.SupplyStepper;
import liftwright.rig.Rig;

/**
 * Keeps one supply in step with the rotors that hang on it. Rotors go at every step; the network is
 * solved in full every few of them and follows by its last slopes in between; charge moves from one
 * full solution to the next, heat more seldom. Where orders jump or something is lost, what flowed
 * until then is booked first, and the point is solved again. Allocates nothing per step but for an
 * opening; for one thread.
 */
final class SupplySchedule {

    /** A change of duty beyond this is a jump: the network is solved before and after it. */
    private static final double JUMP = 0.05;

    /** Beyond this temperatures move up to the moment before a jump, too. */
    private static final double GREAT_JUMP = 0.3;

    /** A time that falls short of whole steps by so much of one is rounding. */
    private static final double ROUNDING = 1e-9;

    private static final double NETWORK_S = 0.005;
    private static final double HEAT_S = 0.1;

    /** How often all limits are looked at, even those that nothing has come near to. */
    private static final double LOOK_S = 0.1;

    private final Circuit circuit;
    private final Cells cells;
    private final SpinningFans fans;
    private final FedFans fed;
    private final RotorLaws laws;
    private final Commands commands;
    private final int count;
    private final Optional<HeatRun> heat;
    private final SupplyStepper stepper;
    private final SupplyState state;
    private final DriveLimits limits;

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

    /**
     * @param fans on the circuit, one a fan of the rig
     * @param commands what reaches them
     * @param heat of this circuit and these fans; empty where temperatures stay
     */
    SupplySchedule(
            Rig rig,
            Circuit circuit,
            Cells cells,
            SpinningFans fans,
            Commands commands,
            Optional<HeatRun> heat) {
        this.circuit = circuit;
        this.cells = cells;
        this.fans = fans;
        this.commands = commands;
        this.heat = heat;
        laws = fans.laws();
        fed = fans.fed();
        count = rig.fans().size();
        stepper = new SupplyStepper(circuit, this::settle, cells, heat.map(HeatRun::supply));
        state = stepper.newState();
        limits =
                new DriveLimits(
                        new RunLimits(rig, heat),
                        new ReachedTimes(
                                rig.packs().size(), count, heat.map(HeatRun::parts).orElse(0)),
                        stepper,
                        state,
                        fed,
                        circuit,
                        heat,
                        rig.packs().stream().mapToInt(pack -> pack.series()).toArray());
    }

    /** Rested packs at their declared charge, rotors at rest, no order told, time 0. */
    void start() {
        state.reset();
        circuit.close();
        heat.ifPresent(of -> of.start(state, cells));
        limits.start();
        commands.start();
        fans.rest();
        for (int fan = 0; fan < count; fan++) {
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
     * Goes one step.
     *
     * @param dtS the same from one {@link #start} to the next, s
     * @return whether an operating point was found, now and before
     */
    boolean step(double dtS) {
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

    /** Something is lost or opens now; what flowed until now is to be {@link #book booked}. */
    void jump() {
        jumped = true;
    }

    /** Charge moves up to now with the orders that counted until now. */
    void book() {
        if (begun && steps > solvedAt) {
            solve();
        }
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
        fed.face();
        if (intervalS > 0) {
            circuit.plan().resume(supply, fed);
        } else {
            circuit.plan().solve(supply, fed);
        }
        fed.take(supply, intervalS > 0 ? stepS : 0);
        return supply.converged();
    }

    /** By how much the duties leave those of the last step, where that is a jump. */
    private double change() {
        boolean small = true;
        for (int fan = 0; fan < count; fan++) {
            small &= Math.abs(commands.duty(fan) - laws.duty(fan)) <= JUMP;
        }
        return small ? 0 : greatestChange();
    }

    private double greatestChange() {
        double most = 0;
        for (int fan = 0; fan < count; fan++) {
            most = Math.max(most, Math.abs(commands.duty(fan) - laws.duty(fan)));
        }
        return most;
    }

    private void follow() {
        for (int fan = 0; fan < count; fan++) {
            laws.order(fan, commands.duty(fan));
        }
    }

    private void fed() {
        for (int fan = 0; fan < count; fan++) {
            fed.feed(fan, circuit.plan().isFed(fan));
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
        fed.face();
        circuit.plan().follow(circuit.state(), fed);
        if (fed.moved()) {
            solve();
        } else {
            fed.follow(circuit.state(), stepS);
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

    /** How often the network is solved in full at least, &gt; 0, s. */
    void networkEvery(double seconds) {
        networkS = seconds;
    }

    /** How often temperatures move at least, &gt; 0, s. */
    void heatEvery(double seconds) {
        heatS = seconds;
    }

    /** Time since the start, s; the supply's own runs behind it by the steps not yet booked. */
    double timeS() {
        return state.timeS() + (steps - solvedAt) * stepS;
    }

    /** Whether a point without a solution was met. */
    boolean failed() {
        return failed;
    }

    /** Of the last point solved in full. */
    SupplyStepper stepper() {
        return stepper;
    }

    SupplyState state() {
        return state;
    }

    DriveLimits limits() {
        return limits;
    }
}
