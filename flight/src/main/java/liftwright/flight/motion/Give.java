package liftwright.flight.motion;

/**
 * How a wearer gives: the harness as one mode, legs as another. Both are measured nowhere in a rig
 * file; the usual values and their ranges are common practice.
 *
 * @param harnessHz of wearer against rig along each axis, both free, &gt; 0, Hz; 3 to 8
 * @param harnessDamping share of critical damping, ≥ 0; 0.1 to 0.3
 * @param legsHz of a leg that swings from a trunk held still, &gt; 0, Hz; 0.7 to 1
 * @param legsDamping share of critical damping, ≥ 0
 */
public record Give(double harnessHz, double harnessDamping, double legsHz, double legsDamping) {

    /** Of a wearer of whom nothing more is known: the middles of the ranges. */
    public static final Give USUAL = new Give(5.5, 0.2, 0.85, 0.1);

    /** Legs are this stiff along themselves, Hz, and this damped: well above what matters. */
    static final double LEG_ALONG_HZ = 15;

    static final double LEG_ALONG_DAMPING = 0.3;

    public Give {
        if (!(harnessHz > 0 && harnessDamping >= 0 && legsHz > 0 && legsDamping >= 0)) {
            throw new IllegalArgumentException("a wearer swings at some frequency");
        }
    }

    /** The same with every number times a factor. */
    public Give times(double harness, double damping, double legs) {
        return new Give(harness * harnessHz, damping * harnessDamping, legs * legsHz, legsDamping);
    }
}
