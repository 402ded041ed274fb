package liftwright.numerics;

import org.hipparchus.special.Erf;

/** The standard normal distribution. */
@SuppressWarnings("FloatingPointLiteralPrecision") // coefficients stand as they were published
public final class Gaussian {

    /** Coverage of ± 2 standard deviations, which a tolerance "±" (k = 2) states as 95 %. */
    public static final double COVERAGE_K2 = 0.954499736103642;

    private static final double SPLIT_CENTRE = 0.425;
    private static final double SPLIT_TAIL = 5;

    private Gaussian() {}

    /** Probability of a value at or below {@code x}; relative accuracy 1e-12 down to x = −37. */
    public static double cdf(double x) {
        return 0.5 * Erf.erfc(-x / Math.sqrt(2));
    }

    /**
     * Inverse of the distribution function, algorithm AS 241, PPND16: relative accuracy about 1e-16
     * [WICHURA88].
     *
     * @param probability in the open interval (0, 1)
     * @throws IllegalArgumentException outside it
     */
    public static double quantile(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException(
                    "a probability lies between 0 and 1, not " + probability);
        }
        double q = probability - 0.5;
        if (Math.abs(q) <= SPLIT_CENTRE) {
            return q * centre(SPLIT_CENTRE * SPLIT_CENTRE - q * q);
        }
        double r = Math.sqrt(-Math.log(q < 0 ? probability : 1 - probability));
        double size = r <= SPLIT_TAIL ? shoulder(r - 1.6) : tail(r - SPLIT_TAIL);
        return q < 0 ? -size : size;
    }

    /**
     * The same of many: all as if each lay in the centre, then those that do not.
     *
     * @param probabilities in the open interval (0, 1)
     * @param out as long
     */
    static void quantiles(double[] probabilities, double[] out) {
        for (int k = 0; k < out.length; k++) {
            double q = probabilities[k] - 0.5;
            out[k] = q * centre(SPLIT_CENTRE * SPLIT_CENTRE - q * q);
        }
        for (int k = 0; k < out.length; k++) {
            if (Math.abs(probabilities[k] - 0.5) > SPLIT_CENTRE) {
                out[k] = quantile(probabilities[k]);
            }
        }
    }

    private static double centre(double r) {
        double numerator = 2.5090809287301226727e+3;
        numerator = numerator * r + 3.3430575583588128105e+4;
        numerator = numerator * r + 6.7265770927008700853e+4;
        numerator = numerator * r + 4.5921953931549871457e+4;
        numerator = numerator * r + 1.3731693765509461125e+4;
        numerator = numerator * r + 1.9715909503065514427e+3;
        numerator = numerator * r + 1.3314166789178437745e+2;
        numerator = numerator * r + 3.3871328727963666080e0;
        double denominator = 5.2264952788528545610e+3;
        denominator = denominator * r + 2.8729085735721942674e+4;
        denominator = denominator * r + 3.9307895800092710610e+4;
        denominator = denominator * r + 2.1213794301586595867e+4;
        denominator = denominator * r + 5.3941960214247511077e+3;
        denominator = denominator * r + 6.8718700749205790830e+2;
        denominator = denominator * r + 4.2313330701600911252e+1;
        return numerator / (denominator * r + 1);
    }

    private static double shoulder(double r) {
        double numerator = 7.74545014278341407640e-4;
        numerator = numerator * r + 2.27238449892691845833e-2;
        numerator = numerator * r + 2.41780725177450611770e-1;
        numerator = numerator * r + 1.27045825245236838258e0;
        numerator = numerator * r + 3.64784832476320460504e0;
        numerator = numerator * r + 5.76949722146069140550e0;
        numerator = numerator * r + 4.63033784615654529590e0;
        numerator = numerator * r + 1.42343711074968357734e0;
        double denominator = 1.05075007164441684324e-9;
        denominator = denominator * r + 5.47593808499534494600e-4;
        denominator = denominator * r + 1.51986665636164571966e-2;
        denominator = denominator * r + 1.48103976427480074590e-1;
        denominator = denominator * r + 6.89767334985100004550e-1;
        denominator = denominator * r + 1.67638483018380384940e0;
        denominator = denominator * r + 2.05319162663775882187e0;
        return numerator / (denominator * r + 1);
    }

    private static double tail(double r) {
        double numerator = 2.01033439929228813265e-7;
        numerator = numerator * r + 2.71155556874348757815e-5;
        numerator = numerator * r + 1.24266094738807843860e-3;
        numerator = numerator * r + 2.65321895265761230930e-2;
        numerator = numerator * r + 2.96560571828504891230e-1;
        numerator = numerator * r + 1.78482653991729133580e0;
        numerator = numerator * r + 5.46378491116411436990e0;
        numerator = numerator * r + 6.65790464350110377720e0;
        double denominator = 2.04426310338993978564e-15;
        denominator = denominator * r + 1.42151175831644588870e-7;
        denominator = denominator * r + 1.84631831751005468180e-5;
        denominator = denominator * r + 7.86869131145613259100e-4;
        denominator = denominator * r + 1.48753612908506148525e-2;
        denominator = denominator * r + 1.36929880922735805310e-1;
        denominator = denominator * r + 5.99832206555887937690e-1;
        return numerator / (denominator * r + 1);
    }
}
