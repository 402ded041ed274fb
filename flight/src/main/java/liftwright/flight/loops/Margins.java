package liftwright.flight.loops;

/**
 * What is left of a loop before it swings: read from its open loop.
 *
 * @param crossoverRadps highest frequency at which the gain is one, rad/s; 0 where it never is
 * @param phaseMarginRad least over all such frequencies, how far the phase is above −180°, rad; π
 *     where there is none
 * @param gainMargin least factor above one by which the gain may rise before the phase is −180° at
 *     a gain of one; below 1 where it is past it; infinite where the phase never gets there
 * @param lowGainMargin greatest factor below one to which the gain may fall; 0 where any fall is
 *     borne
 */
public record Margins(
        double crossoverRadps, double phaseMarginRad, double gainMargin, double lowGainMargin) {

    /**
     * Reads them from a sweep.
     *
     * @param open the open loop; its phase at {@code leastRadps} lies between −3/2 π and π/2
     */
    public static Margins of(Transfer open, double leastRadps, double mostRadps) {
        Sweep sweep = new Sweep(open, leastRadps, mostRadps);
        double crossover = 0;
        double phase = Math.PI;
        double gain = Double.POSITIVE_INFINITY;
        double low = 0;
        for (int k = 0; k < sweep.steps(); k++) {
            if (sweep.isOver(k, 1) != sweep.isOver(k + 1, 1)) {
                double at = sweep.gainCrossing(k, 1);
                crossover = at;
                phase = Math.min(phase, sweep.phaseAt(k, at) + Math.PI);
            }
            // −180° and a whole turn below it count alike.
            for (double level = -Math.PI; level > -7 * Math.PI; level -= 2 * Math.PI) {
                if (sweep.above(k, level) > 0 != sweep.above(k + 1, level) > 0) {
                    double size = sweep.gainAt(sweep.phaseCrossing(k, level));
                    boolean falling = sweep.above(k, level) > 0;
                    if (falling) {
                        gain = Math.min(gain, 1 / size);
                    } else {
                        low = Math.max(low, 1 / size);
                    }
                }
            }
        }
        return new Margins(crossover, phase, gain, low);
    }

    /** Whether phase and gain are on the right side of swinging. */
    public boolean stable() {
        return phaseMarginRad > 0 && gainMargin > 1 && lowGainMargin < 1;
    }
}
