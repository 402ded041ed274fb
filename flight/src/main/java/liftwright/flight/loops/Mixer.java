package liftwright.flight.loops;

import java.util.BitSet;
import java.util.List;

/**
 * Shares out lift and moments to the fans. Lift and tilt come before yaw, tilt before lift; never
 * asks outside 0 to 1. For one run; steps allocate nothing.
 *
 * <p>Of all thrusts that give what is wanted, those with the least Σ (thrust/most)². Where they go
 * beyond what a fan can give, the least of Σ (thrust/most)² + Σ miss²/c within the bounds, by
 * active sets: a miss in yaw is cheap, in lift dear, in tilt dearest. Source of the method:
 * Härkegård, “Efficient active set algorithms for solving constrained least squares problems in
 * aircraft control allocation”, CDC 2002 (from memory).
 */
public final class Mixer {

    private static final int ROWS = FanMatrix.ROWS;

    /** A thrust so little beyond a bound is within it, over the fan's most. */
    private static final double ROUNDING = 1e-12;

    private final List<Lifter> lifters;
    private final double[] scale = new double[ROWS];
    private final double[] most;
    private final ActiveSet sharing;

    // Volts of a share ({@link Lifter.Volts}): a + b √share + c share; its end at the controller's
    // limit and at idle.
    private final double[] stillV;
    private final double[] rootV;
    private final double[] linearV;
    private final double[] limit;
    private final double[] idle;

    private final double[] asked;
    private final double[] wanted = new double[ROWS];
    private boolean saturated;

    public Mixer(Craft craft) {
        lifters = craft.fans();
        int fans = lifters.size();
        most = new double[fans];
        stillV = new double[fans];
        rootV = new double[fans];
        linearV = new double[fans];
        limit = new double[fans];
        idle = new double[fans];
        asked = new double[fans];
        for (int f = 0; f < fans; f++) {
            Lifter fan = lifters.get(f);
            most[f] = fan.mostN();
            stillV[f] = fan.volts().stillV();
            rootV[f] = fan.volts().rootVpRootN() * Math.sqrt(Math.max(0, most[f]));
            linearV[f] = fan.volts().perNewtonVpN() * most[f];
            limit[f] = fan.limitN() / most[f];
            idle[f] = fan.idleN() / most[f];
        }
        sharing = new ActiveSet(gives(FanMatrix.of(lifters)));
        lost(new BitSet());
    }

    /** Rows over their scale for each fan's most; fills the scale. */
    private double[][] gives(FanMatrix matrix) {
        double[][] gives = new double[ROWS][most.length];
        for (int row = 0; row < ROWS; row++) {
            double squares = 0;
            for (int f = 0; f < most.length; f++) {
                double all = matrix.row(row, f) * most[f];
                squares += all * all;
            }
            scale[row] = squares > 0 ? Math.sqrt(squares) : 1;
            for (int f = 0; f < most.length; f++) {
                gives[row][f] = matrix.row(row, f) * most[f] / scale[row];
            }
        }
        return gives;
    }

    /** Fans that give nothing any more; the others take over. A later call forgets the earlier. */
    public void lost(BitSet fans) {
        boolean[] lost = new boolean[most.length];
        for (int f = 0; f < lost.length; f++) {
            lost[f] = fans.get(f) || !(most[f] > 0);
        }
        sharing.lose(lost);
    }

    /**
     * A lost fan pushes on, whatever it is told: the others work around that.
     *
     * @param thrustN as its reported speed tells, N
     */
    public void pushesOn(int fan, double thrustN) {
        if (sharing.isLost(fan) && most[fan] > 0) {
            sharing.stick(fan, thrustN / most[fan]);
        }
    }

    /**
     * Shares out.
     *
     * @param wrench in: lift along the body's upright (N), roll, pitch, yaw (N·m)
     * @param fanV in: voltage measured at each controller, V
     * @param duty out: 0 to 1
     */
    public void share(double[] wrench, double[] fanV, double[] duty) {
        for (int row = 0; row < ROWS; row++) {
            wanted[row] = wrench[row] / scale[row];
        }
        double[] free = sharing.unbounded(wanted);
        volts(free);
        saturated = !within(free, fanV);
        if (saturated) {
            bounds(fanV);
            sharing.confine(wanted);
            volts(sharing.share);
        } else {
            sharing.take();
        }
        double[] share = sharing.share;
        for (int f = 0; f < duty.length; f++) {
            boolean gives = share[f] > 0 && fanV[f] > 0 && !sharing.isLost(f);
            duty[f] = gives ? Math.max(0, Math.min(1, asked[f] / fanV[f])) : 0;
        }
    }

    /** Whether some fan was at its bound the last time. */
    public boolean saturated() {
        return saturated;
    }

    /** What the thrusts asked the last time give: lift (N), roll, pitch, yaw (N·m). */
    public double got(int row) {
        return sharing.given(row) * scale[row];
    }

    /** Thrust asked of a fan the last time, N. */
    public double thrustN(int fan) {
        return sharing.share[fan] * most[fan];
    }

    /** Volts that shares take; of none they mean nothing. */
    private void volts(double[] share) {
        double[] out = asked;
        for (int f = 0; f < out.length; f++) {
            double some = Math.max(share[f], 0);
            out[f] = stillV[f] + rootV[f] * Math.sqrt(some) + linearV[f] * some;
        }
    }

    /**
     * Whether shares are within what fans can give: volts rise with thrust, so that those asked
     * tell what else only the greatest thrust of each voltage would, a root and a quotient a fan.
     */
    private boolean within(double[] share, double[] fanV) {
        for (int f = 0; f < share.length; f++) {
            if (sharing.isLost(f)) {
                continue;
            }
            boolean low = share[f] < idle[f] - ROUNDING;
            boolean high = asked[f] > fanV[f] * (1 + ROUNDING) || share[f] > limit[f] + ROUNDING;
            if (low || high || !(fanV[f] > 0)) {
                return false;
            }
        }
        return true;
    }

    private void bounds(double[] fanV) {
        for (int f = 0; f < most.length; f++) {
            if (sharing.isLost(f) || !(fanV[f] > 0)) {
                sharing.least[f] = 0;
                sharing.upper[f] = 0;
                continue;
            }
            Lifter fan = lifters.get(f);
            double top = Math.min(fan.volts().thrustN(fanV[f]), fan.limitN());
            sharing.upper[f] = top / most[f];
            sharing.least[f] = Math.min(fan.idleN(), top) / most[f];
        }
    }
}
