package liftwright.plant.drive;

import java.util.Arrays;

/**
 * What reaches the fans of what their channels are told, and when: a controller follows late by its
 * delay and no faster than its slew; a channel may reach another fan; a fan may be stuck or
 * limited. Delays are whole steps: what is declared is rounded up. Allocates only where steps get
 * another length; for one thread.
 */
public final class Commands {

    /** A delay of this share of a step more than whole steps is rounding. */
    private static final double ROUNDING = 1e-9;

    private final double[] delayS;
    private final double[] slewPerS;

    /** Duty of each channel at full. */
    private final double[] full;

    private final double[] told;
    private final double[] least;
    private final double[] most;
    private final int[] channel;

    /** Duty in effect now, by fan. */
    private final double[] duty;

    private final int[] late;

    /** What was told until now, a row of all channels a step, in a ring; where now stands in it. */
    private double[] past = new double[0];

    private int now;
    private double stepS;

    /** Fastest change in a step, and what each fan is told now, at the latest. */
    private final double[] far;

    private final double[] wanted;

    /**
     * @param delayS of each fan's controller, ≥ 0, s
     * @param slewPerS fastest change of duty of each, 1/s; may be infinite
     */
    public Commands(double[] delayS, double[] slewPerS) {
        this.delayS = delayS.clone();
        this.slewPerS = slewPerS.clone();
        int fans = delayS.length;
        full = new double[fans];
        told = new double[fans];
        least = new double[fans];
        most = new double[fans];
        channel = new int[fans];
        duty = new double[fans];
        late = new int[fans];
        far = new double[fans];
        wanted = new double[fans];
        start();
    }

    /** Nothing is told, nothing lost, nothing on its way. */
    public void start() {
        Arrays.fill(told, 0);
        Arrays.fill(least, 0);
        Arrays.fill(most, 1);
        Arrays.fill(duty, 0);
        for (int fan = 0; fan < channel.length; fan++) {
            channel[fan] = fan;
        }
        Arrays.fill(past, 0);
        now = 0;
    }

    /** Duty of a channel at full, 0 to 1. */
    public void full(int fan, double share) {
        full[fan] = share;
    }

    public double full(int fan) {
        return full[fan];
    }

    /** Tells a channel a share of its full duty; what lies outside 0 to 1 is the nearer end. */
    public void tell(int fan, double share) {
        told[fan] = Math.max(0, Math.min(1, share)) * full[fan];
    }

    /** The same of every channel. */
    public void tell(double[] shares) {
        for (int fan = 0; fan < told.length; fan++) {
            told[fan] = Math.max(0, Math.min(1, shares[fan])) * full[fan];
        }
    }

    /**
     * Takes what the channels are told now as told for ever and reached: a run that begins in the
     * middle.
     */
    public void reach() {
        for (int row = 0; row < past.length; row += told.length) {
            System.arraycopy(told, 0, past, row, told.length);
        }
        for (int fan = 0; fan < duty.length; fan++) {
            duty[fan] = confined(fan, told[channel[fan]]);
        }
    }

    /** Two channels reach each other's fan from now on. */
    public void exchange(int one, int other) {
        int kept = channel[one];
        channel[one] = channel[other];
        channel[other] = kept;
    }

    /** A fan keeps between two duties whatever it is told, 0 ≤ least ≤ most ≤ 1. */
    public void confine(int fan, double least, double most) {
        this.least[fan] = least;
        this.most[fan] = most;
    }

    /** The next step begins, of a length s. */
    public void step(double dtS) {
        if (dtS != stepS) {
            lay(dtS);
        }
        System.arraycopy(told, 0, past, now, told.length);
        for (int fan = 0; fan < wanted.length; fan++) {
            int from = now - late[fan] * wanted.length;
            wanted[fan] = past[(from < 0 ? from + past.length : from) + channel[fan]];
        }
        // A loop of its own, without a branch.
        for (int fan = 0; fan < duty.length; fan++) {
            double up = Math.min(duty[fan] + far[fan], wanted[fan]);
            duty[fan] = confined(fan, Math.max(duty[fan] - far[fan], up));
        }
        now = now + told.length == past.length ? 0 : now + told.length;
    }

    private double confined(int fan, double within) {
        return Math.max(least[fan], Math.min(most[fan], within));
    }

    /** Room for what is on its way; what the fans follow now counts as told until now. */
    private void lay(double dtS) {
        stepS = dtS;
        int longest = 0;
        for (int fan = 0; fan < late.length; fan++) {
            late[fan] = (int) Math.ceil(delayS[fan] / dtS - ROUNDING);
            longest = Math.max(longest, late[fan]);
            far[fan] = slewPerS[fan] * dtS;
        }
        past = new double[(longest + 1) * duty.length];
        for (int row = 0; row < past.length; row += duty.length) {
            for (int fan = 0; fan < duty.length; fan++) {
                past[row + channel[fan]] = duty[fan];
            }
        }
        now = 0;
    }

    /** Duty in effect, by fan, 0 to 1. */
    public double duty(int fan) {
        return duty[fan];
    }

    /** By how much a fan follows late at the present steps, s. */
    public double lateS(int fan) {
        return late[fan] * stepS;
    }
}
