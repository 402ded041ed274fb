package liftwright.flight.ask;

import liftwright.numerics.StudentT;
import liftwright.quantity.Band;

/**
 * What one more drawn flight shows, told from those that were drawn: the prediction interval of a
 * normal sample, mean ± t s √(1 + 1/n), t of n − 1 degrees of freedom (textbooks of statistics;
 * held against drawn samples by a test). Taken, as {@link Clearance} takes it, that figures are
 * spread about normally: a dozen flights cannot show otherwise.
 *
 * @param mean of the drawn flights
 * @param half width of the interval to each side
 * @param drawn how many they are, ≥ 2
 */
record NextFlight(double mean, double half, int drawn) {

    static final double COVERAGE = 0.95;

    /**
     * @param values one of each drawn flight, at least two
     */
    static NextFlight of(double[] values) {
        int n = values.length;
        double mean = 0;
        for (double value : values) {
            mean += value / n;
        }
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        double deviation = Math.sqrt(squares / (n - 1));
        double half = StudentT.within(COVERAGE, n - 1.0) * deviation * Math.sqrt(1 + 1.0 / n);
        return new NextFlight(mean, half, n);
    }

    double low() {
        return mean - half;
    }

    double high() {
        return mean + half;
    }

    /** Of a figure that is never below nought. */
    Band band() {
        return new Band(
                Math.max(0, low()),
                high(),
                COVERAGE,
                "one more drawn flight, by mean and spread of those drawn; none is below nought",
                drawn,
                0);
    }
}
