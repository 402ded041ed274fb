package liftwright.flight.loops;

/**
 * Bandwidth and phase delay as ADS-33E-PRF defines them, of an answer in attitude (or of any answer
 * that falls off like it): phase bandwidth where the phase is −135°, gain bandwidth where the gain
 * is 6 dB above that at −180°, phase delay from the lag at twice the frequency of −180°. The
 * delay's formula is from memory.
 */
final class Bandwidths {

    private static final double SIX_DB = Math.pow(10, 6.0 / 20);

    private Bandwidths() {}

    /** Of a transfer whose phase reaches −180° within the range; zeros where it does not. */
    static Loop.Bandwidth of(Transfer answer, double leastRadps, double mostRadps) {
        Sweep sweep = new Sweep(answer, leastRadps, mostRadps);
        double phase = falls(sweep, -0.75 * Math.PI);
        double turned = falls(sweep, -Math.PI);
        if (phase == 0 || turned == 0 || 2 * turned > mostRadps) {
            return new Loop.Bandwidth(phase, 0, 0);
        }
        double level = SIX_DB * sweep.gainAt(turned);
        double gain = 0;
        for (int k = 0; k < sweep.steps() && sweep.radps(k) < turned; k++) {
            if (sweep.isOver(k, level) && !sweep.isOver(k + 1, level)) {
                gain = sweep.gainCrossing(k, level);
                break;
            }
        }
        double twice = 2 * turned;
        double beyond = -Math.PI - sweep.phaseAt(sweep.below(twice), twice);
        return new Loop.Bandwidth(phase, gain, beyond / twice);
    }

    private static double falls(Sweep sweep, double level) {
        for (int k = 0; k < sweep.steps(); k++) {
            if (sweep.above(k, level) > 0 && sweep.above(k + 1, level) <= 0) {
                return sweep.phaseCrossing(k, level);
            }
        }
        return 0;
    }
}
