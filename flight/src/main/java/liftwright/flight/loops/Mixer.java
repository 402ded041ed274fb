package liftwright.flight.loops;

import java.util.Arrays;
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

    /** How cheap a miss is: lift, roll, pitch, yaw, over what all fans give at their most. */
    private static final double[] CHEAP = {1e-9, 1e-10, 1e-10, 1e-4};

    /** A thrust so little beyond a bound is within it, over the fan's most. */
    private static final double ROUNDING = 1e-12;

    private static final int FREE = 0;
    private static final int LOW = -1;
    private static final int HIGH = 1;

    private final List<Lifter> lifters;

    /** Rows over their scale for each fan's most, fan by fan. */
    private final double[] gives;

    private final double[] scale = new double[ROWS];
    private final double[] most;
    private final double[] least;
    private final double[] upper;
    private final boolean[] lost;

    /** What a lost fan gives, whatever it is told, over its most. */
    private final double[] stuck;

    private final double[] share;
    private final double[] next;
    private final int[] side;
    private final double[] wanted = new double[ROWS];
    private final double[] got = new double[ROWS];

    // Scratch of a solve.
    private final double[] gram = new double[ROWS * ROWS];
    private final double[] right = new double[ROWS];
    private final double[] price = new double[ROWS];
    private final double[] factor = new double[ROWS * ROWS];
    private boolean saturated;

    public Mixer(Craft craft) {
        lifters = craft.fans();
        int fans = lifters.size();
        FanMatrix matrix = FanMatrix.of(lifters);
        gives = new double[fans * ROWS];
        most = new double[fans];
        least = new double[fans];
        upper = new double[fans];
        lost = new boolean[fans];
        stuck = new double[fans];
        share = new double[fans];
        next = new double[fans];
        side = new int[fans];
        for (int f = 0; f < fans; f++) {
            most[f] = lifters.get(f).mostN();
            lost[f] = !(most[f] > 0);
        }
        for (int row = 0; row < ROWS; row++) {
            double squares = 0;
            for (int f = 0; f < fans; f++) {
                double all = matrix.row(row, f) * most[f];
                squares += all * all;
            }
            scale[row] = squares > 0 ? Math.sqrt(squares) : 1;
            for (int f = 0; f < fans; f++) {
                gives[f * ROWS + row] = matrix.row(row, f) * most[f] / scale[row];
            }
        }
    }

    /** Fans that give nothing any more; the others take over. A later call forgets the earlier. */
    public void lost(BitSet fans) {
        for (int f = 0; f < lost.length; f++) {
            lost[f] = fans.get(f) || !(most[f] > 0);
            stuck[f] = 0;
        }
    }

    /**
     * A lost fan pushes on, whatever it is told: the others work around that.
     *
     * @param thrustN as its reported speed tells, N
     */
    public void pushesOn(int fan, double thrustN) {
        if (lost[fan] && most[fan] > 0) {
            stuck[fan] = thrustN / most[fan];
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
        bounds(fanV);
        Arrays.fill(side, FREE);
        solveFree(0);
        saturated = !within();
        if (saturated) {
            confine();
        } else {
            System.arraycopy(next, 0, share, 0, share.length);
        }
        for (int f = 0; f < duty.length; f++) {
            double volt = fanV[f];
            double asked = lost[f] ? 0 : lifters.get(f).volts().at(share[f] * most[f]);
            duty[f] = volt > 0 ? Math.clamp(asked / volt, 0, 1) : 0;
        }
        account();
    }

    /** Whether some fan was at its bound the last time. */
    public boolean saturated() {
        return saturated;
    }

    /** What the thrusts asked the last time give: lift (N), roll, pitch, yaw (N·m). */
    public double got(int row) {
        return got[row];
    }

    /** Thrust asked of a fan the last time, N. */
    public double thrustN(int fan) {
        return share[fan] * most[fan];
    }

    private void bounds(double[] fanV) {
        for (int f = 0; f < most.length; f++) {
            if (lost[f] || !(fanV[f] > 0)) {
                least[f] = 0;
                upper[f] = 0;
                continue;
            }
            Lifter fan = lifters.get(f);
            double top = Math.min(fan.volts().thrustN(fanV[f]), fan.limitN());
            upper[f] = top / most[f];
            least[f] = Math.min(fan.idleN(), top) / most[f];
        }
    }

    private boolean within() {
        for (int f = 0; f < next.length; f++) {
            if (next[f] < least[f] - ROUNDING || next[f] > upper[f] + ROUNDING) {
                return false;
            }
        }
        return true;
    }

    /** Active sets from the last shares, held within the bounds of now. */
    private void confine() {
        for (int f = 0; f < share.length; f++) {
            share[f] = Math.min(Math.max(share[f], least[f]), upper[f]);
            side[f] = FREE;
            if (share[f] <= least[f]) {
                side[f] = LOW;
            } else if (share[f] >= upper[f]) {
                side[f] = HIGH;
            }
        }
        for (int round = 0; round < 6 * share.length + 20; round++) {
            solveFree(1);
            int blocking = advance();
            if (blocking < 0 && !release()) {
                return;
            }
        }
    }

    /** Best shares of the free fans with the others where they are: into {@link #next}. */
    private void solveFree(double cheap) {
        Arrays.fill(gram, 0);
        System.arraycopy(wanted, 0, right, 0, ROWS);
        for (int row = 0; row < ROWS; row++) {
            gram[row * ROWS + row] = cheap * CHEAP[row];
        }
        for (int f = 0; f < share.length; f++) {
            int at = f * ROWS;
            boolean free = side[f] == FREE && !lost[f];
            for (int i = 0; i < ROWS; i++) {
                if (free) {
                    for (int j = 0; j < ROWS; j++) {
                        gram[i * ROWS + j] += gives[at + i] * gives[at + j];
                    }
                } else {
                    right[i] -= gives[at + i] * (lost[f] ? stuck[f] : share[f]);
                }
            }
        }
        Small.solve(ROWS, gram, right, price, factor);
        for (int f = 0; f < share.length; f++) {
            if (side[f] == FREE && !lost[f]) {
                double sum = 0;
                for (int i = 0; i < ROWS; i++) {
                    sum += gives[f * ROWS + i] * price[i];
                }
                next[f] = sum;
            } else {
                next[f] = lost[f] ? 0 : share[f];
            }
        }
    }

    /** Goes towards {@link #next} until a fan is at its bound: which, or −1. */
    private int advance() {
        double way = 1;
        int blocking = -1;
        for (int f = 0; f < share.length; f++) {
            double step = next[f] - share[f];
            if (side[f] != FREE || lost[f] || step == 0) {
                continue;
            }
            double bound = step > 0 ? upper[f] : least[f];
            double reach = (bound - share[f]) / step;
            if (reach < way) {
                way = Math.max(0, reach);
                blocking = f;
            }
        }
        for (int f = 0; f < share.length; f++) {
            if (side[f] == FREE && !lost[f]) {
                share[f] += way * (next[f] - share[f]);
            }
        }
        if (blocking >= 0) {
            boolean up = next[blocking] > share[blocking];
            side[blocking] = up ? HIGH : LOW;
            share[blocking] = up ? upper[blocking] : least[blocking];
        }
        return blocking;
    }

    /** Frees the fan at a bound that gains the most by leaving it; whether there is one. */
    private boolean release() {
        int best = -1;
        double most = 1e-9;
        for (int f = 0; f < share.length; f++) {
            if (side[f] == FREE || lost[f] || least[f] >= upper[f]) {
                continue;
            }
            double slope = share[f];
            for (int i = 0; i < ROWS; i++) {
                slope -= gives[f * ROWS + i] * price[i];
            }
            double gain = side[f] == LOW ? -slope : slope;
            if (gain > most) {
                most = gain;
                best = f;
            }
        }
        if (best < 0) {
            return false;
        }
        side[best] = FREE;
        return true;
    }

    private void account() {
        for (int row = 0; row < ROWS; row++) {
            double sum = 0;
            for (int f = 0; f < share.length; f++) {
                sum += gives[f * ROWS + row] * (lost[f] ? stuck[f] : share[f]);
            }
            got[row] = sum * scale[row];
        }
    }
}
