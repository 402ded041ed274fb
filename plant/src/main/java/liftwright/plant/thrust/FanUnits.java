package liftwright.plant.thrust;

import java.util.Arrays;
import liftwright.physics.FanUnit;
import liftwright.plant.supply.Device;

/** All fan units of a rig at work, in one thread: coefficients, duties, operating points. */
public final class FanUnits implements Device {

    final double[] unit;
    final double[] duty;

    /** Speed to hold instead of a duty, rad/s; negative where the duty counts. */
    private final double[] heldRadps;

    /** Share of the winding in the resistance of a unit; only of one that was warmed by itself. */
    final double[] windingShare;

    private final boolean[] stopped;

    /** Duties between which a unit stays, whatever is ordered. */
    private final double[] leastDuty;

    private final double[] mostDuty;
    private final boolean[] confined;
    private final boolean[] held;
    private final double[] point;
    private final double[] account;

    FanUnits(int fans) {
        unit = new double[fans * FanUnit.COEFFICIENTS];
        duty = new double[fans];
        heldRadps = new double[fans];
        Arrays.fill(heldRadps, -1);
        windingShare = new double[fans];
        stopped = new boolean[fans];
        leastDuty = new double[fans];
        mostDuty = new double[fans];
        Arrays.fill(mostDuty, 1);
        confined = new boolean[fans];
        held = new boolean[fans];
        point = new double[fans * FanUnit.RESULTS];
        account = new double[FanUnit.ACCOUNTS];
    }

    @Override
    public void operate(int fan, double terminalV) {
        int at = fan * FanUnit.COEFFICIENTS;
        int to = fan * FanUnit.RESULTS;
        if (stopped[fan]) {
            Arrays.fill(point, to, to + FanUnit.RESULTS, 0);
        } else if (confined[fan]) {
            confined(fan, terminalV);
        } else if (heldRadps[fan] >= 0) {
            FanUnit.holdSpeed(unit, at, terminalV, heldRadps[fan], point, to);
        } else {
            FanUnit.operate(unit, at, terminalV, duty[fan], point, to);
        }
    }

    private void confined(int fan, double terminalV) {
        int at = fan * FanUnit.COEFFICIENTS;
        int to = fan * FanUnit.RESULTS;
        double wanted = duty[fan];
        if (heldRadps[fan] >= 0) {
            FanUnit.holdSpeed(unit, at, terminalV, heldRadps[fan], point, to);
            wanted = point[to + FanUnit.DUTY];
        }
        double within = Math.clamp(wanted, leastDuty[fan], mostDuty[fan]);
        held[fan] = within != wanted;
        if (held[fan] || heldRadps[fan] < 0) {
            FanUnit.operate(unit, at, terminalV, within, point, to);
        }
    }

    /**
     * Keeps the duty of a fan between two, whatever is ordered: stuck where they are one. Lasts
     * until it is told otherwise.
     *
     * @param least 0 to {@code most}
     * @param most up to 1; 0 and 1 leave the fan free
     */
    public void confine(int fan, double least, double most) {
        leastDuty[fan] = least;
        mostDuty[fan] = most;
        confined[fan] = least > 0 || most < 1;
        held[fan] = false;
    }

    /** Whether a fan keeps one duty, whatever is ordered. */
    public boolean isStuck(int fan) {
        return confined[fan] && leastDuty[fan] == mostDuty[fan];
    }

    public int fans() {
        return duty.length;
    }

    /** Orders a duty, 0 to 1. */
    public void order(int fan, double share) {
        duty[fan] = share;
        heldRadps[fan] = -1;
    }

    /** Orders a thrust along the axis, ≥ 0 N; as much of it as full duty and current limit give. */
    public void orderThrust(int fan, double newton) {
        heldRadps[fan] = FanUnit.speedAtThrustRadps(unit, fan * FanUnit.COEFFICIENTS, newton);
    }

    /** Stops a fan for good, or lets all run: it draws nothing, whatever is ordered. */
    public void stop(int fan, boolean stays) {
        stopped[fan] = stays;
    }

    public boolean isStopped(int fan) {
        return stopped[fan];
    }

    /** Duty that {@link FanBank#load} or {@link #order} gave. */
    public double orderedDuty(int fan) {
        return duty[fan];
    }

    /**
     * One number of a unit as it was loaded.
     *
     * @param which a place in the coefficient block of {@link FanUnit}
     */
    public double coefficient(int fan, int which) {
        return unit[fan * FanUnit.COEFFICIENTS + which];
    }

    /** Thrust at the last point, N. */
    public double thrustAtPointN(int fan) {
        return FanUnit.thrustN(unit, fan * FanUnit.COEFFICIENTS, speedRadps(fan));
    }

    /**
     * Whether the thrust ordered was beyond what duty and current limit allow at the last point.
     */
    public boolean falls(int fan) {
        return held[fan] || point[fan * FanUnit.RESULTS + FanUnit.STATE] != FanUnit.FREE;
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
        if (stopped[fan]) {
            Arrays.fill(account, 0);
            return;
        }
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

    /** Heat of the current in winding and switches of the fan accounted for, W. */
    public double copperW() {
        return account[FanUnit.COPPER_W];
    }

    /** Share of the winding in the resistance of a unit that was warmed by itself. */
    public double windingShare(int fan) {
        return windingShare[fan];
    }

    /** Loss in iron, bearings and air of the motor of the fan accounted for, W. */
    public double ironW() {
        return account[FanUnit.IRON_W];
    }

    /** What the controller of the fan accounted for loses beside its conducting switches, W. */
    public double controllerW() {
        return account[FanUnit.SWITCHING_W] + account[FanUnit.FIXED_W];
    }

    /** Heat in motor and controller of the fan accounted for, W. */
    public double heatW() {
        return account[FanUnit.COPPER_W]
                + account[FanUnit.IRON_W]
                + account[FanUnit.SWITCHING_W]
                + account[FanUnit.FIXED_W];
    }
}
