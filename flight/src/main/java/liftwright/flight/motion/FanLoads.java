package liftwright.flight.motion;

import liftwright.plant.Drive;

/**
 * What fans do to the frame over one step, at its start, its middle and its end. Filled by who
 * steps them; number of an entry: {@code moment · fans + fan}.
 */
public final class FanLoads {

    public static final int START = 0;
    public static final int MIDDLE = 1;
    public static final int END = 2;
    static final int MOMENTS = 3;

    /** How many fans. */
    public final int fans;

    /** Thrust along the thrust line, N. */
    public final double[] thrustN;

    /**
     * Moment on the frame about the thrust line, right-hand: swirl left in the jet and what speeds
     * the rotor up, N·m.
     */
    public final double[] reactionNm;

    /** Angular momentum of what spins, right-hand about the thrust line, N·m·s. */
    public final double[] spinNms;

    /** Air taken in, kg/s; 0 of a fan at rest. */
    public final double[] flowKgps;

    /** Whether all but thrust is the same all through the step, and stands at its start alone. */
    boolean even;

    public FanLoads(int fans) {
        this.fans = fans;
        thrustN = new double[MOMENTS * fans];
        reactionNm = new double[MOMENTS * fans];
        spinNms = new double[MOMENTS * fans];
        flowKgps = new double[MOMENTS * fans];
    }

    /** Sets a fan to what it does all through the step. */
    public void steady(
            int fan, double thrustN, double reactionNm, double spinNms, double flowKgps) {
        even = false;
        for (int moment = 0; moment < MOMENTS; moment++) {
            int at = moment * fans + fan;
            this.thrustN[at] = thrustN;
            this.reactionNm[at] = reactionNm;
            this.spinNms[at] = spinNms;
            this.flowKgps[at] = flowKgps;
        }
    }

    /**
     * Takes the step that a drive has just gone: what turns and what flows holds for all of it, and
     * stands once, at its start.
     */
    public void take(Drive drive) {
        even = true;
        drive.loads(thrustN, reactionNm, spinNms, flowKgps);
    }

    /** Where the flow of the middle stands. */
    int middleFlow() {
        return even ? 0 : MIDDLE * fans;
    }
}
