package liftwright.review;

import liftwright.quantity.Band;

/**
 * Takes away what is only rounding: magnitudes that no rig shows and no scale reads. The fields say
 * so.
 */
final class Rounding {

    /** Angular acceleration that is none, rad/s². */
    static final double RADPS2 = 1e-6;

    /** Length that is none, m. */
    static final double M = 1e-9;

    /** Moment over weight that is none, m. */
    private static final double LEVER_M = 1e-8;

    private Rounding() {}

    /** Moment that is none for such a weight, N·m. */
    static double momentNm(double weightN) {
        return LEVER_M * weightN;
    }

    static double off(double si, double none) {
        return Math.abs(si) < none ? 0 : si;
    }

    static Band off(Band band, double none) {
        return new Band(
                off(band.low(), none),
                off(band.high(), none),
                band.coverage(),
                band.method(),
                band.draws(),
                band.monteCarloError());
    }

    /** The same band seen the other way round. */
    static Band turned(Band band) {
        return new Band(
                0.0 - band.high(),
                0.0 - band.low(),
                band.coverage(),
                band.method(),
                band.draws(),
                band.monteCarloError());
    }
}
