package liftwright.review.wiring;

/**
 * How hot a part became in a run.
 *
 * @param hottestK K
 * @param limitK what it is held against, K; infinite where it has no limit
 */
public record Warmth(double hottestK, double limitK) {

    boolean isLimited() {
        return limitK < Double.POSITIVE_INFINITY;
    }

    /** Kelvin left; negative where it is too hot. */
    public double leftK() {
        return limitK - hottestK;
    }
}
