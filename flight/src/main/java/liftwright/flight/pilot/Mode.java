package liftwright.flight.pilot;

/**
 * One natural motion of a rig: it goes as e^(σt) cos(ωt).
 *
 * @param growthPerS σ, 1/s; above 0 it grows
 * @param turningRadps ω ≥ 0, rad/s; 0 where it does not swing
 */
public record Mode(double growthPerS, double turningRadps) {

    /** Slower than this it is neither growing nor fading: rounding, or neutral. */
    static final double NEUTRAL_PER_S = 1e-6;

    public boolean grows() {
        return growthPerS > NEUTRAL_PER_S;
    }

    public boolean swings() {
        return turningRadps > NEUTRAL_PER_S;
    }

    /** Time in which it doubles, ln 2 / σ, s; infinite where it does not grow. */
    public double doublesInS() {
        return grows() ? Math.log(2) / growthPerS : Double.POSITIVE_INFINITY;
    }

    /** Time in which it halves, s; infinite where it does not fade. */
    public double halvesInS() {
        return growthPerS < -NEUTRAL_PER_S ? -Math.log(2) / growthPerS : Double.POSITIVE_INFINITY;
    }

    /** Time of one swing, s; infinite where it does not swing. */
    public double periodS() {
        return swings() ? 2 * Math.PI / turningRadps : Double.POSITIVE_INFINITY;
    }

    /** Share of critical damping, −1 to 1; 1 or −1 where it does not swing. */
    public double damping() {
        double size = Math.hypot(growthPerS, turningRadps);
        return size > 0 ? -growthPerS / size : 0;
    }
}
