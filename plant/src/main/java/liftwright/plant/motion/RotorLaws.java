package liftwright.plant.motion;

import liftwright.physics.FanLaw;
import liftwright.physics.FanUnit;
import liftwright.plant.thrust.FanUnits;

/**
 * What winding, controller and air do to a rotor that turns at some speed: the one law of all that
 * follows rotors in time, J dΩ/dt = (I − I₀)/K_v − κ Ω². The coefficients of the units are laid out
 * one array each, with what follows from the duties alone. For one thread.
 *
 * <p>The winding's current is (d V − Ω/K_v)/R: no less than 0 where the bridge does not conduct
 * against a faster rotor, no more than the controller's limit. At duty 0 a controller that brakes
 * shorts the winding; one that freewheels gives a faster rotor's energy back at any duty.
 */
public final class RotorLaws {

    /** Slower than this friction fades, so that a rotor comes to rest, rad/s. */
    static final double NEARLY_STILL_RADPS = 10;

    /** Speed over voltage, rad/(V·s). */
    final double[] kv;

    /** Of winding, controller and leads, Ω. */
    final double[] ohm;

    final double[] limitA;

    /** Share of the current that switching adds where it is not conducted, 1. */
    final double[] switching;

    final double[] fixedW;
    final double[] noLoadA;

    /** A·s/rad. */
    final double[] noLoadSlope;

    /** Of the air on the rotor over the square of its speed, N·m·s². */
    final double[] torque;

    final double[] torqueDrift;

    /** Over the square of the speed, N·s². */
    final double[] thrust;

    private final double[] rootThrust;

    final double[] thrustDrift;
    final double[] referenceRadps;

    /** Duty told, 0 to 1. */
    final double[] duty;

    /** Whether a faster rotor gives its energy back. */
    final boolean[] givesBack;

    /** 1/K_v, V·s. */
    final double[] perKv;

    /** 1/R, S. */
    final double[] perOhm;

    /** Current drawn over that of the winding, 1. */
    final double[] drawnShare;

    /** S. */
    final double[] dutyOverOhm;

    /** Whether a coefficient of some fan drifts with its speed. */
    private boolean drifts;

    // The last unit operated, written for the network.
    private double windingA;
    private double currentA;
    private double slopeS;
    private Piece piece = Piece.OFF;
    private double turningNm;
    private double turningSlope;

    /** Pieces of the law of a unit's current. */
    public enum Piece {
        /** Nothing flows through the bridge. */
        OFF,
        /** The duty told is in effect. */
        FREE,
        /** The controller holds its current limit. */
        LIMITED,
        /** The rotor gives its energy back. */
        BACK,
        /** The same at the current limit. */
        BACK_LIMITED
    }

    /** Takes the coefficients as they stand; duties are 0. */
    public RotorLaws(FanUnits units) {
        int fans = units.fans();
        kv = new double[fans];
        ohm = new double[fans];
        limitA = new double[fans];
        switching = new double[fans];
        fixedW = new double[fans];
        noLoadA = new double[fans];
        noLoadSlope = new double[fans];
        torque = new double[fans];
        torqueDrift = new double[fans];
        thrust = new double[fans];
        rootThrust = new double[fans];
        thrustDrift = new double[fans];
        referenceRadps = new double[fans];
        duty = new double[fans];
        givesBack = new boolean[fans];
        perKv = new double[fans];
        perOhm = new double[fans];
        drawnShare = new double[fans];
        dutyOverOhm = new double[fans];
        take(units);
    }

    /** Takes the coefficients anew: other numbers, or the same ones warmer. */
    public void take(FanUnits units) {
        drifts = false;
        for (int fan = 0; fan < kv.length; fan++) {
            kv[fan] = units.coefficient(fan, FanUnit.KV);
            ohm[fan] = units.coefficient(fan, FanUnit.RESISTANCE);
            perKv[fan] = 1 / kv[fan];
            perOhm[fan] = 1 / ohm[fan];
            limitA[fan] = units.coefficient(fan, FanUnit.CURRENT_LIMIT);
            switching[fan] = units.coefficient(fan, FanUnit.SWITCHING);
            fixedW[fan] = units.coefficient(fan, FanUnit.FIXED);
            noLoadA[fan] = units.coefficient(fan, FanUnit.NO_LOAD);
            noLoadSlope[fan] = units.coefficient(fan, FanUnit.NO_LOAD_SLOPE);
            torque[fan] = units.coefficient(fan, FanUnit.TORQUE);
            torqueDrift[fan] = units.coefficient(fan, FanUnit.TORQUE_DRIFT);
            thrust[fan] = units.coefficient(fan, FanUnit.THRUST);
            rootThrust[fan] = Math.sqrt(thrust[fan]);
            thrustDrift[fan] = units.coefficient(fan, FanUnit.THRUST_DRIFT);
            referenceRadps[fan] = units.coefficient(fan, FanUnit.REFERENCE_SPEED);
            drifts |= torqueDrift[fan] != 0 || thrustDrift[fan] != 0;
            order(fan, duty[fan]);
        }
    }

    /** Takes other duties, one a fan. */
    public void order(double[] told) {
        for (int fan = 0; fan < told.length; fan++) {
            order(fan, told[fan]);
        }
    }

    /** Takes another duty of one fan, 0 to 1. */
    public void order(int fan, double told) {
        duty[fan] = told;
        drawnShare[fan] = told + switching[fan] * (1 - told);
        dutyOverOhm[fan] = told * perOhm[fan];
    }

    /** Duty that a fan was told. */
    public double duty(int fan) {
        return duty[fan];
    }

    /**
     * Whether the controller of a fan gives a faster rotor's energy back to the supply (synchronous
     * rectification).
     */
    public void giveBack(int fan, boolean back) {
        givesBack[fan] = back;
    }

    /** Resistance of winding, switches and leads, Ω. */
    public double ohm(int fan) {
        return ohm[fan];
    }

    /** Voltage that a rotor makes, V. */
    public double backV(int fan, double speedRadps) {
        return speedRadps * perKv[fan];
    }

    /**
     * Winding, bus current and its slope at a voltage; the figures below then speak of them.
     *
     * @param terminalV any; a bus below 0 V is taken as none
     * @param backV what the rotor makes at its speed, ≥ 0, V
     */
    public void operate(int fan, double terminalV, double backV) {
        double volts = Math.max(terminalV, 0);
        double winding = (duty[fan] * volts - backV) * perOhm[fan];
        double slope = terminalV > 0 ? dutyOverOhm[fan] : 0;
        double share = drawnShare[fan];
        double limit = limitA[fan];
        piece = Piece.FREE;
        if (winding <= 0) {
            if (givesBack[fan]) {
                giveBack(fan, terminalV, backV, winding, slope);
                return;
            }
            // The bridge does not conduct against a faster rotor.
            piece = Piece.OFF;
            winding = 0;
            slope = 0;
        }
        currentA = share * winding;
        slopeS = share * slope;
        if (winding > limit) {
            piece = Piece.LIMITED;
            winding = limit;
            double effective = (limit * ohm[fan] + backV) / volts;
            currentA = limit * (effective + switching[fan] * (1 - effective));
            slopeS = -limit * (1 - switching[fan]) * effective / volts;
        }
        fixed(fan, terminalV, volts);
        windingA = winding;
    }

    /** What switching takes is a loss in this direction too. */
    private void giveBack(int fan, double terminalV, double backV, double winding, double slope) {
        double volts = Math.max(terminalV, 0);
        double share = 2 * duty[fan] - drawnShare[fan];
        double limit = limitA[fan];
        piece = Piece.BACK;
        windingA = winding;
        currentA = share * winding;
        slopeS = share * slope;
        if (winding < -limit) {
            piece = Piece.BACK_LIMITED;
            windingA = -limit;
            double effective = (backV - limit * ohm[fan]) / volts;
            boolean full = !(effective < 1);
            double within = full ? 1 : effective;
            currentA = -limit * (within - switching[fan] * (1 - within));
            slopeS = full ? 0 : limit * (1 + switching[fan]) * within / volts;
        }
        fixed(fan, terminalV, volts);
    }

    /** A live controller at a shorted winding, or at one that it leaves open. */
    public void idle(int fan, double terminalV, double braked) {
        currentA = 0;
        slopeS = 0;
        piece = Piece.OFF;
        windingA = braked;
        fixed(fan, terminalV, Math.max(terminalV, 0));
    }

    /** A stopped controller draws nothing. */
    public void dead() {
        windingA = 0;
        currentA = 0;
        slopeS = 0;
        piece = Piece.OFF;
    }

    private void fixed(int fan, double terminalV, double volts) {
        double fixed = fixedW[fan];
        double least = FanUnit.LEAST_CONTROLLER_V;
        if (terminalV >= least) {
            double over = 1 / terminalV;
            double ampere = fixed * over;
            currentA += ampere;
            slopeS -= ampere * over;
        } else {
            currentA += fixed * volts / (least * least);
            slopeS += terminalV > 0 ? fixed / (least * least) : 0;
        }
    }

    /** Current of the winding of the fan operated last, A. */
    public double windingA() {
        return windingA;
    }

    /** Current that it draws, A. */
    public double currentA() {
        return currentA;
    }

    /** Derivative of that by the voltage, S. */
    public double slopeS() {
        return slopeS;
    }

    /** Which piece of the law it was on. */
    public Piece piece() {
        return piece;
    }

    /**
     * Torque left on a rotor that a controller drives at a voltage, and how it goes with speed; the
     * two figures below then speak of it.
     *
     * @return the piece of the law on which it is
     */
    public Piece turn(int fan, double terminalV, double radps) {
        double winding = drivingA(fan, terminalV, radps);
        double limit = limitA[fan];
        double slope = -perKv[fan] * perOhm[fan];
        Piece on = piece(fan, winding);
        switch (on) {
            case FREE, BACK -> coast(fan, radps, winding, slope);
            case LIMITED -> coast(fan, radps, limit, 0);
            case BACK_LIMITED -> coast(fan, radps, -limit, 0);
            case OFF -> coast(fan, radps, 0, 0);
        }
        return on;
    }

    /** The piece of the law alone on which {@link #turn} would find it. */
    public Piece pieceAt(int fan, double terminalV, double radps) {
        return piece(fan, drivingA(fan, terminalV, radps));
    }

    /** What the voltages would drive through the winding if nothing stopped it, A. */
    private double drivingA(int fan, double terminalV, double radps) {
        return (duty[fan] * Math.max(terminalV, 0) - radps * perKv[fan]) * perOhm[fan];
    }

    private Piece piece(int fan, double winding) {
        if (winding > 0) {
            return winding > limitA[fan] ? Piece.LIMITED : Piece.FREE;
        }
        if (!givesBack[fan]) {
            return Piece.OFF;
        }
        return winding < -limitA[fan] ? Piece.BACK_LIMITED : Piece.BACK;
    }

    /** The same for a rotor that no controller drives. */
    public Piece coast(int fan, double radps) {
        coast(fan, radps, 0, 0);
        return Piece.OFF;
    }

    /** The same for one whose winding is shorted. */
    public Piece brake(int fan, double radps) {
        double winding = brakedA(fan, radps);
        boolean most = winding == -limitA[fan];
        coast(fan, radps, winding, most ? 0 : -perKv[fan] * perOhm[fan]);
        return most ? Piece.BACK_LIMITED : Piece.BACK;
    }

    private void coast(int fan, double radps, double winding, double slope) {
        double still = radps < NEARLY_STILL_RADPS ? 1 / NEARLY_STILL_RADPS : 0;
        double air = airNm(fan, radps);
        double airSlope = radps > 0 ? (2 + torqueDrift[fan]) * air / radps : 0;
        double fades = (noLoadA[fan] + noLoadSlope[fan] * radps) * still;
        double rises = noLoadSlope[fan] * (still > 0 ? radps * still : 1);
        turningNm = winding * perKv[fan] - frictionNm(fan, radps) - air;
        turningSlope = (slope - fades - rises) * perKv[fan] - airSlope;
    }

    /** Torque left on the rotor asked last, N·m. */
    public double turningNm() {
        return turningNm;
    }

    /** Its derivative by the speed, ≤ 0, N·m·s/rad. */
    public double turningSlope() {
        return turningSlope;
    }

    /** Current through a shorted winding, against the turning, no more than the limit, ≤ 0 A. */
    public double brakedA(int fan, double speedRadps) {
        return -Math.min(speedRadps * perKv[fan] * perOhm[fan], limitA[fan]);
    }

    /** What iron and bearings hold a rotor back with, N·m. */
    public double frictionNm(int fan, double speedRadps) {
        return (noLoadA[fan] + noLoadSlope[fan] * speedRadps)
                * perKv[fan]
                * (speedRadps < NEARLY_STILL_RADPS ? speedRadps / NEARLY_STILL_RADPS : 1);
    }

    /** What the air holds a rotor back with, N·m. */
    public double airNm(int fan, double speedRadps) {
        return torque[fan]
                * speedRadps
                * speedRadps
                * FanLaw.drift(torqueDrift[fan], speedRadps, referenceRadps[fan]);
    }

    /** What a current of the winding turns a rotor with, N·m. */
    public double drivenNm(int fan, double windingA) {
        return windingA * perKv[fan];
    }

    /** Thrust in still air at a speed ≥ 0, N. */
    public double stillN(int fan, double speedRadps) {
        return thrust[fan]
                * speedRadps
                * speedRadps
                * FanLaw.drift(thrustDrift[fan], speedRadps, referenceRadps[fan]);
    }

    /**
     * The root of the same of all fans at once, at several moments, √N: it goes straight with the
     * speed.
     *
     * @param speedRadps in: of all fans at the first moment, then of all at the next
     * @param out out: as long
     */
    public void rootStillN(double[] speedRadps, double[] out) {
        double[] per = rootThrust;
        for (int from = 0; from < out.length; from += per.length) {
            for (int fan = 0; fan < per.length; fan++) {
                out[from + fan] = per[fan] * speedRadps[from + fan];
            }
        }
        if (drifts) {
            for (int at = 0; at < out.length; at++) {
                int fan = at % per.length;
                out[at] *= FanLaw.drift(thrustDrift[fan] / 2, speedRadps[at], referenceRadps[fan]);
            }
        }
    }

    /**
     * What the air holds all rotors back with, N·m.
     *
     * @param speedRadps in: one a fan
     * @param outNm out: no shorter
     */
    public void airNm(double[] speedRadps, double[] outNm) {
        double[] per = torque;
        for (int fan = 0; fan < speedRadps.length; fan++) {
            outNm[fan] = per[fan] * speedRadps[fan] * speedRadps[fan];
        }
        if (drifts) {
            for (int fan = 0; fan < speedRadps.length; fan++) {
                outNm[fan] *= FanLaw.drift(torqueDrift[fan], speedRadps[fan], referenceRadps[fan]);
            }
        }
    }
}
