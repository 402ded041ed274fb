package liftwright.plant.thrust;

import liftwright.physics.FanUnit;
import liftwright.plant.supply.Device;

/** All fan units of a rig at work, in one thread: coefficients, duties, operating points. */
public final class FanUnits implements Device {

    final double[] unit;
    final double[] duty;
    private final double[] point;
    private final double[] account;

    FanUnits(int fans) {
        unit = new double[fans * FanUnit.COEFFICIENTS];
        duty = new double[fans];
        point = new double[fans * FanUnit.RESULTS];
        account = new double[FanUnit.ACCOUNTS];
    }

    @Override
    public void operate(int fan, double terminalV) {
        FanUnit.operate(
                unit,
                fan * FanUnit.COEFFICIENTS,
                terminalV,
                duty[fan],
                point,
                fan * FanUnit.RESULTS);
    }

    @Override
    public double currentA(int fan) {
        return point[fan * FanUnit.RESULTS + FanUnit.BUS_CURRENT];
    }

    @Override
    public double slopeS(int fan) {
        return point[fan * FanUnit.RESULTS + FanUnit.BUS_SLOPE];
    }

    /** Duty in effect at the last point. */
    public double duty(int fan) {
        return point[fan * FanUnit.RESULTS + FanUnit.DUTY];
    }

    /** Shaft speed at the last point, rad/s. */
    public double speedRadps(int fan) {
        return point[fan * FanUnit.RESULTS + FanUnit.SPEED];
    }

    /** Winding current at the last point, A. */
    public double windingA(int fan) {
        return point[fan * FanUnit.RESULTS + FanUnit.WINDING_CURRENT];
    }

    /** Whether the current limit lowers the duty at the last point. */
    public boolean limited(int fan) {
        return point[fan * FanUnit.RESULTS + FanUnit.STATE] == FanUnit.CURRENT_LIMITED;
    }

    /** Accounts for the power of one fan at its last point; the figures below then speak of it. */
    public void account(int fan, double terminalV) {
        FanUnit.account(
                unit,
                fan * FanUnit.COEFFICIENTS,
                terminalV,
                point,
                fan * FanUnit.RESULTS,
                account,
                0);
    }

    /** Thrust of the fan accounted for, N. */
    public double thrustN() {
        return account[FanUnit.THRUST_N];
    }

    /** Shaft power of the fan accounted for, W. */
    public double shaftW() {
        return account[FanUnit.SHAFT_W];
    }

    /** Heat in motor and controller of the fan accounted for, W. */
    public double heatW() {
        return account[FanUnit.COPPER_W]
                + account[FanUnit.IRON_W]
                + account[FanUnit.SWITCHING_W]
                + account[FanUnit.FIXED_W];
    }
}
