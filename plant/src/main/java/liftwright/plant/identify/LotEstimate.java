package liftwright.plant.identify;

import liftwright.numerics.StudentT;

/**
 * What a few measured fans of a lot tell of those that nobody measured. Every value is a ratio to
 * the label: 0.86 is 86 % of the thrust that is printed on it.
 *
 * <p>Fans of a lot are taken as normal about the lot's mean, mean and scatter both unknown, so that
 * intervals are Student's: m ± t s/√n for the mean, m ± t s √(1 + 1/n) for the next fan, t at 95 %
 * for n − 1 (ISO 16269-8 gives the second as a prediction interval; textbook results). What all
 * readings share, the doubt of the stand, is added by squares: it does not shrink with n.
 *
 * @param mean worth of the lot, over its label
 * @param fans how many were measured
 * @param scatter standard deviation from fan to fan, as found or as assumed
 * @param meanHalfWidth half of the 95 % interval of the mean
 * @param siblingHalfWidth half of the 95 % interval of one more fan of the lot
 * @param scatterAssumed whether the scatter was told and not found
 */
public record LotEstimate(
        double mean,
        int fans,
        double scatter,
        double meanHalfWidth,
        double siblingHalfWidth,
        boolean scatterAssumed) {

    private static final double COVERAGE = 0.95;

    /** Half-width of 95 % of a normal distribution, in standard deviations. */
    private static final double NORMAL = 1.959963984540054;

    /**
     * From two fans or more.
     *
     * @param ratios measured thrust over the label's, each finite and above 0
     * @param sharedDeviation standard uncertainty that all readings share (the stand's), as a share
     *     of the reading, ≥ 0
     * @throws IllegalArgumentException for fewer, or for values outside those ranges
     */
    public static LotEstimate of(double[] ratios, double sharedDeviation) {
        if (ratios.length < 2) {
            throw new IllegalArgumentException("one fan shows no scatter: say what to assume");
        }
        double mean = mean(ratios);
        double squares = 0;
        for (double ratio : ratios) {
            squares += (ratio - mean) * (ratio - mean);
        }
        double scatter = Math.sqrt(squares / (ratios.length - 1));
        return of(
                mean,
                ratios.length,
                scatter,
                StudentT.within(COVERAGE, ratios.length - 1),
                sharedDeviation,
                false);
    }

    /**
     * From one fan or more, with a scatter that is known from elsewhere.
     *
     * @param scatter standard deviation from fan to fan over the label, ≥ 0
     * @throws IllegalArgumentException for no fan, or for values outside their ranges
     */
    public static LotEstimate ofKnownScatter(
            double[] ratios, double scatter, double sharedDeviation) {
        if (ratios.length == 0 || !(scatter >= 0) || Double.isInfinite(scatter)) {
            throw new IllegalArgumentException("at least one fan, and a scatter of at least 0");
        }
        return of(mean(ratios), ratios.length, scatter, NORMAL, sharedDeviation, true);
    }

    private static LotEstimate of(
            double mean, int n, double scatter, double t, double shared, boolean assumed) {
        if (!(shared >= 0) || Double.isInfinite(shared)) {
            throw new IllegalArgumentException("a shared doubt is at least 0, not " + shared);
        }
        double stand = NORMAL * shared * mean;
        return new LotEstimate(
                mean,
                n,
                scatter,
                Math.hypot(t * scatter / Math.sqrt(n), stand),
                Math.hypot(t * scatter * Math.sqrt(1 + 1.0 / n), stand),
                assumed);
    }

    private static double mean(double[] ratios) {
        double sum = 0;
        for (double ratio : ratios) {
            if (!(ratio > 0) || Double.isInfinite(ratio)) {
                throw new IllegalArgumentException("a ratio to the label is above 0, not " + ratio);
            }
            sum += ratio;
        }
        return sum / ratios.length;
    }

    /**
     * Standard deviation of the lot's mean that a normal draw may take so that its 95 % band is
     * this estimate's.
     */
    public double meanDeviation() {
        return meanHalfWidth / NORMAL;
    }

    /** Standard deviation, in the same sense, of one more fan of the lot. */
    public double siblingDeviation() {
        return siblingHalfWidth / NORMAL;
    }
}
