package liftwright.plant.motion;

import liftwright.physics.FanLaw;
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

    private int from;

    /** Whether the network was solved a moment ago in this run, so that it can go on from there. */
    private boolean followed;

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
            double still = laws.stillN(fan, Math.max(0, y[at + OWN + fan]));
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
                    drawnW += volt[fan] * laws.currentA();
                    spentW += volt[fan] * laws.currentA() - driveW(fan, speed);
                } else {
                    windingA[fan] = brakedA(fan, speed);
                    spentW -= driveW(fan, speed);
                }
                winding = windingA[fan];
            }
            double friction = laws.frictionNm(fan, speed);
            double air = laws.airNm(fan, speed);
            slope[from + fan] =
                    (laws.drivenNm(fan, winding) - friction - air) / numbers.inertiaKgm2[fan];
            spentW += (friction + air) * speed;
        }
        slope[at + DRAWN_J] = drawnW;
        slope[at + SPENT_J] = spentW;
    }

    /** Voltage at every fan that turns as fast as this. */
    private void feed(double[] y) {
        for (int fan = 0; fan < duty.length; fan++) {
            backV[fan] = laws.backV(fan, Math.max(0, y[from + fan]));
        }
        // What a kill changed is another question than that of the run before.
        boolean asBegun = !commanded && !opened;
        if (asBegun && before.knows(y, from, volt, circuit.state())) {
            followed = true;
            return;
        }
        if (followed) {
            circuit.plan().resume(circuit.state(), this);
        } else {
            circuit.plan().solve(circuit.state(), this);
        }
        followed = circuit.state().converged();
        for (int fan = 0; fan < duty.length; fan++) {
            volt[fan] = circuit.state().loadTerminalV(fan);
        }
        if (asBegun && followed) {
            before.keep(y, from, volt, circuit.state());
        }
    }

    /** Power from the winding's field to the shaft, W. */
    private double driveW(int fan, double speed) {
        return laws.drivenNm(fan, windingA[fan]) * speed;
    }

    private boolean anyFed() {
        for (int fan = 0; fan < duty.length; fan++) {
            if (circuit.plan().isFed(fan)) {
                return true;
            }
        }
        return false;
    }

    private double brakedA(int fan, double speed) {
        return numbers.brakes[fan] ? laws.brakedA(fan, speed) : 0;
    }

    @Override
    public void operate(int fan, double terminalV) {
        laws.operate(fan, terminalV, backV[fan]);
        windingA[fan] = laws.windingA();
    }

    @Override
    public double currentA(int load) {
        return laws.currentA();
    }

    @Override
    public double slopeS(int load) {
        return laws.slopeS();
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
        followed = false;
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
