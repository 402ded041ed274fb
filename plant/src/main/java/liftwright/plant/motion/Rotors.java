package liftwright.plant.motion;

import liftwright.physics.FanLaw;
import liftwright.physics.FanUnit;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.Device;
import liftwright.plant.thrust.FanUnits;

/**
 * The fans of a rig as rotors that take time to spin up and down, on packs whose voltage sags under
 * them: J dΩ/dt = (I − I₀)/K_v − κ Ω². For one run.
 *
 * <p>Thrust falls as the rig climbs into its own intakes, by momentum theory at equal shaft power
 * ({@link FanLaw#exitSpeedWithInflowMps}); torque at a given speed is kept, so that thrust in a
 * climb is rather too high. In a descent faster than the law holds for, thrust is that at its end.
 *
 * <p>A rotor told zero coasts, or is braked through its winding where that is declared. Behind an
 * open contactor every rotor coasts: nothing feeds the controller that would brake it.
 */
final class Rotors implements Lifting, Device {

    /** Slower than this friction fades, so that a rotor comes to rest, rad/s. */
    private static final double NEARLY_STILL_RADPS = 10;

    /** A jet slower than this is told nothing by the inflow law, m/s. */
    private static final double LEAST_JET_MPS = 0.5;

    /** Thrust outside the law that is worth telling, of all upward thrust at its most. */
    private static final double WORTH_TELLING = 0.05;

    private static final int DRAWN_J = 0;
    private static final int SPENT_J = 1;
    private static final int OWN = 2;

    private final Circuit circuit;
    private final RotorNumbers numbers;
    private final Flight.Told told;
    private final SolvedBefore before;
    private final RotorLaws laws;
    private final double[] duty;
    private final double[] windingA;
    private final double[] volt;

    /** Voltage that each rotor makes at the speeds last asked, V. */
    private final double[] backV;

    // One load at work, written for the network.
    private int from;
    private double currentA;
    private double slopeS;

    private boolean commanded;
    private boolean stopped;
    private boolean opened;
    private boolean halved;
    private boolean gone;
    private double mostN;
    private double outsideN;

    Rotors(
            Circuit circuit,
            FanUnits units,
            RotorNumbers numbers,
            Flight.Told told,
            SolvedBefore before) {
        this.circuit = circuit;
        this.numbers = numbers;
        this.told = told;
        this.before = before;
        duty = told.duty().clone();
        laws = new RotorLaws(units);
        laws.order(duty);
        windingA = new double[duty.length];
        volt = new double[duty.length];
        backV = new double[duty.length];
        before.begin(told.startRadps(), duty);
    }

    @Override
    public int states() {
        return OWN + duty.length;
    }

    @Override
    public void begin(double[] y, int at) {
        System.arraycopy(told.startRadps(), 0, y, at + OWN, duty.length);
    }

    @Override
    public double upN(double timeS, double[] y, int at, double upMps) {
        double sum = 0;
        double outside = 0;
        for (int fan = 0; fan < duty.length; fan++) {
            double still = stillN(fan, y[at + OWN + fan]);
            double share = numbers.upShare[fan];
            double jetMps =
                    still > 0
                            ? FanLaw.exitSpeedMps(still, numbers.densityKgpm3, numbers.exitM2[fan])
                            : 0;
            if (jetMps < LEAST_JET_MPS) {
                sum += share * still;
                continue;
            }
            double inflow = share * upMps;
            if (!FanLaw.inflowInRange(jetMps, inflow)) {
                inflow = -FanLaw.GREATEST_DESCENT_SHARE * jetMps;
                outside += Math.abs(share * still);
            }
            double exit = FanLaw.exitSpeedWithInflowMps(jetMps, inflow, numbers.loss[fan]);
            sum += share * still * exit * (exit - inflow) / (jetMps * jetMps);
        }
        double left = Stop.left(halved, gone, upMps);
        mostN = Math.max(mostN, sum);
        outsideN = Math.max(outsideN, left * outside);
        return left * sum;
    }

    private double stillN(int fan, double speedRadps) {
        double speed = Math.max(0, speedRadps);
        return laws.thrust[fan]
                * speed
                * speed
                * FanLaw.drift(laws.thrustDrift[fan], speed, laws.referenceRadps[fan]);
    }

    @Override
    public void slopes(double timeS, double[] y, int at, double[] slope) {
        from = at + OWN;
        boolean fed = !stopped && anyFed();
        if (fed) {
            feed(y);
        }
        double drawnW = 0;
        double spentW = 0;
        for (int fan = 0; fan < duty.length; fan++) {
            double speed = Math.max(0, y[from + fan]);
            double winding = 0;
            if (circuit.plan().isFed(fan)) {
                if (fed) {
                    operate(fan, volt[fan]);
                    drawnW += volt[fan] * currentA;
                    spentW += volt[fan] * currentA - driveW(fan, speed);
                } else {
                    windingA[fan] = brakedA(fan, speed);
                    spentW -= driveW(fan, speed);
                }
                winding = windingA[fan];
            }
            double friction =
                    (laws.noLoadA[fan] + laws.noLoadSlope[fan] * speed)
                            / laws.kv[fan]
                            * Math.min(1, speed / NEARLY_STILL_RADPS);
            double air =
                    laws.torque[fan]
                            * speed
                            * speed
                            * FanLaw.drift(laws.torqueDrift[fan], speed, laws.referenceRadps[fan]);
            slope[from + fan] =
                    (winding / laws.kv[fan] - friction - air) / numbers.inertiaKgm2[fan];
            spentW += (friction + air) * speed;
        }
        slope[at + DRAWN_J] = drawnW;
        slope[at + SPENT_J] = spentW;
    }

    /** Voltage at every fan that turns as fast as this. */
    private void feed(double[] y) {
        for (int fan = 0; fan < duty.length; fan++) {
            backV[fan] = Math.max(0, y[from + fan]) / laws.kv[fan];
        }
        // What a kill changed is another question than that of the run before.
        boolean asBegun = !commanded && !opened;
        if (asBegun && before.knows(y, from, volt)) {
            return;
        }
        circuit.plan().solve(circuit.state(), this);
        for (int fan = 0; fan < duty.length; fan++) {
            volt[fan] = circuit.state().loadTerminalV(fan);
        }
        if (asBegun) {
            before.keep(y, from, volt);
        }
    }

    /** Power from the winding's field to the shaft, W. */
    private double driveW(int fan, double speed) {
        return windingA[fan] / laws.kv[fan] * speed;
    }

    private boolean anyFed() {
        for (int fan = 0; fan < duty.length; fan++) {
            if (circuit.plan().isFed(fan)) {
                return true;
            }
        }
        return false;
    }

    /** Current through a shorted winding, against the turning, no more than the limit. */
    private double brakedA(int fan, double speed) {
        if (!numbers.brakes[fan]) {
            return 0;
        }
        double short0 = speed / (laws.kv[fan] * laws.ohm[fan]);
        return -Math.min(short0, laws.limitA[fan]);
    }

    @Override
    public void operate(int fan, double terminalV) {
        double volts = Math.max(terminalV, 0);
        double winding = (duty[fan] * volts - backV[fan]) / laws.ohm[fan];
        double slope = terminalV > 0 ? laws.dutyOverOhm[fan] : 0;
        double share = laws.drawnShare[fan];
        if (winding <= 0) {
            // The bridge does not conduct against a faster rotor.
            winding = 0;
            slope = 0;
        }
        currentA = share * winding;
        slopeS = share * slope;
        double limit = laws.limitA[fan];
        if (winding > limit) {
            winding = limit;
            double switching = laws.switching[fan];
            double effective = (limit * laws.ohm[fan] + backV[fan]) / volts;
            currentA = limit * (effective + switching * (1 - effective));
            slopeS = -limit * (1 - switching) * effective / volts;
        }
        double fixedW = laws.fixedW[fan];
        double least = FanUnit.LEAST_CONTROLLER_V;
        if (terminalV >= least) {
            currentA += fixedW / terminalV;
            slopeS -= fixedW / (terminalV * terminalV);
        } else {
            currentA += fixedW * volts / (least * least);
            slopeS += terminalV > 0 ? fixedW / (least * least) : 0;
        }
        windingA[fan] = winding;
    }

    @Override
    public double currentA(int load) {
        return currentA;
    }

    @Override
    public double slopeS(int load) {
        return slopeS;
    }

    @Override
    public double nextChangeS(double timeS) {
        double next = Double.POSITIVE_INFINITY;
        if (!commanded) {
            next = told.stop().commandAtS();
        }
        if (!opened) {
            next = Math.min(next, told.stop().openAtS());
        }
        if (told.stop().measured().isPresent() && !gone) {
            Stop.Measured at = told.stop().measured().get();
            next = Math.min(next, halved ? at.tenthAtS() : at.halfAtS());
        }
        return next;
    }

    @Override
    public void change(double timeS) {
        if (told.stop().measured().isPresent()) {
            Stop.Measured at = told.stop().measured().get();
            halved |= at.halfAtS() <= timeS;
            gone |= at.tenthAtS() <= timeS;
        }
        if (!commanded && told.stop().commandAtS() <= timeS) {
            commanded = true;
            System.arraycopy(told.lowered(), 0, duty, 0, duty.length);
            laws.order(duty);
            stopped = told.stop().share() == 0;
        }
        if (!opened && told.stop().openAtS() <= timeS) {
            opened = true;
            for (int chain : told.opens()) {
                circuit.open(chain);
            }
        }
    }

    @Override
    public boolean beyondLaw() {
        return outsideN > WORTH_TELLING * mostN;
    }

    @Override
    public double closure(double[] y, int at) {
        double gained = 0;
        double turning = 0;
        for (int fan = 0; fan < duty.length; fan++) {
            double speed = y[at + OWN + fan];
            double start = told.startRadps()[fan];
            gained += numbers.inertiaKgm2[fan] * (speed * speed - start * start) / 2;
            turning += numbers.inertiaKgm2[fan] * (speed * speed + start * start) / 2;
        }
        double turned = turning + Math.abs(y[at + DRAWN_J]);
        return turned > 0 ? Math.abs(y[at + DRAWN_J] - y[at + SPENT_J] - gained) / turned : 0;
    }
}
