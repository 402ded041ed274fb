package liftwright.flight.run;

import liftwright.quantity.Quantity;
import liftwright.rig.Control;

/**
 * Which rates a flight goes by: the body moves every tick, the computer gives commands every few.
 *
 * @param tickS length of a tick, s
 * @param every ticks from one command to the next
 * @param delayS from sensor to command, s
 */
record Rates(double tickS, int every, double delayS) {

    /** Longest step of the body: contact with the ground is stiff. */
    static final double LONGEST_S = 1e-3;

    /** Where nothing is declared; common practice, as the loops take it. */
    static final double USUAL_HZ = 500;

    static final double USUAL_DELAY_S = 0.004;

    /**
     * @param finer how many times shorter a tick shall be than usual
     */
    static Rates of(Control control, int finer) {
        double periodS = 1 / control.rate().map(Quantity::si).orElse(USUAL_HZ);
        int every = finer * (int) Math.max(1, Math.ceil(periodS / LONGEST_S - 1e-9));
        return new Rates(
                periodS / every, every, control.delay().map(Quantity::si).orElse(USUAL_DELAY_S));
    }

    /** Ticks of the delay, times a factor. */
    int delayTicks(double factor) {
        return (int) Math.round(factor * delayS / tickS);
    }
}
