package liftwright.plant.motion;

import liftwright.physics.FanUnit;
import liftwright.plant.thrust.FanUnits;

/**
 * What the loop of {@link Rotors} asks of the units, one value a fan, and what follows from the
 * duties alone. For one run.
 */
final class RotorLaws {

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

    final double[] thrustDrift;
    final double[] referenceRadps;

    /** Current drawn over that of the winding, 1. */
    final double[] drawnShare;

    /** S. */
    final double[] dutyOverOhm;

    RotorLaws(FanUnits units) {
        kv = all(units, FanUnit.KV);
        ohm = all(units, FanUnit.RESISTANCE);
        limitA = all(units, FanUnit.CURRENT_LIMIT);
        switching = all(units, FanUnit.SWITCHING);
        fixedW = all(units, FanUnit.FIXED);
        noLoadA = all(units, FanUnit.NO_LOAD);
        noLoadSlope = all(units, FanUnit.NO_LOAD_SLOPE);
        torque = all(units, FanUnit.TORQUE);
        torqueDrift = all(units, FanUnit.TORQUE_DRIFT);
        thrust = all(units, FanUnit.THRUST);
        thrustDrift = all(units, FanUnit.THRUST_DRIFT);
        referenceRadps = all(units, FanUnit.REFERENCE_SPEED);
        drawnShare = new double[kv.length];
        dutyOverOhm = new double[kv.length];
    }

    private static double[] all(FanUnits units, int which) {
        double[] values = new double[units.fans()];
        for (int fan = 0; fan < values.length; fan++) {
            values[fan] = units.coefficient(fan, which);
        }
        return values;
    }

    /** Takes other duties. */
    void order(double[] duty) {
        for (int fan = 0; fan < duty.length; fan++) {
            drawnShare[fan] = duty[fan] + switching[fan] * (1 - duty[fan]);
            dutyOverOhm[fan] = duty[fan] / ohm[fan];
        }
    }
}
