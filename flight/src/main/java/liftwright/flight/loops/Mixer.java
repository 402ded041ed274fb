package liftwright.flight.loops;

import java.util.BitSet;

/**
 * Shares out lift and moments to the fans. Lift and tilt come before yaw; never asks outside 0 to
 * 1. For one run; steps allocate nothing.
 */
public final class Mixer {

    private final Craft craft;

    public Mixer(Craft craft) {
        this.craft = craft;
    }

    /** Fans that give nothing any more. */
    public void lost(BitSet fans) {}

    /**
     * @param wrench in: lift along the body's upright (N), roll, pitch, yaw (N·m)
     * @param fanV in: voltage measured at each controller, V
     * @param duty out: 0 to 1
     */
    public void share(double[] wrench, double[] fanV, double[] duty) {
        for (int fan = 0; fan < duty.length; fan++) {
            Lifter lifter = craft.fans().get(fan);
            duty[fan] = Math.clamp(lifter.volts().at(lifter.hoverN()) / fanV[fan], 0, 1);
        }
    }
}
