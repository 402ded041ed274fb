package liftwright.review.wiring;

/**
 * How hot a part became in a run.
 *
 * @param hottestK K
 * @param limitK what it is held against, K
 */
public record Warmth(double hottestK, double limitK) {

    /** Kelvin left; negative where it is too hot. */
    public double leftK() {
        return limitK - hottestK;
    }
}
