package liftwright.rig.correction;

import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * One value that tests found.
 *
 * @param parameter name of the parameter it stands for: the path of a declaration, or {@code <part
 *     id>: <path>} where the part has a number of its own
 * @param label what it is, in words
 * @param declared the value and doubt that the fit started from; where the rig declares another
 *     now, the correction is void
 * @param value middle of what was found, SI: the median of its draws
 * @param deviation standard deviation; of ln x where it is drawn in logarithms, so that it is a
 *     share of the value, else SI; ≥ 0
 * @param inLogarithms whether it is drawn in logarithms, as what can only be above 0
 */
public record Found(
        String parameter,
        String label,
        Quantity declared,
        double value,
        double deviation,
        boolean inLogarithms) {

    private static final String OF = ": ";

    /** Half-width of a 95 % band in standard deviations (k = 2, JCGM 100). */
    private static final double K = 2;

    public Found {
        if (!Double.isFinite(value) || !(deviation >= 0) || Double.isInfinite(deviation)) {
            throw new IllegalArgumentException(
                    parameter + " was found as " + value + " with deviation " + deviation);
        }
        if (inLogarithms && !(value > 0)) {
            throw new IllegalArgumentException(parameter + " has no logarithm: " + value);
        }
    }

    /** Id of the part that its name says; empty for what many parts share. */
    public Optional<String> part() {
        int colon = parameter.indexOf(OF);
        return colon < 1 ? Optional.empty() : Optional.of(parameter.substring(0, colon));
    }

    /** Path of its declaration in the rig file. */
    public String path() {
        int colon = parameter.indexOf(OF);
        return colon < 1 ? parameter : parameter.substring(colon + OF.length());
    }

    /** Lower end of its 95 % band, SI. */
    public double low() {
        return inLogarithms ? value * Math.exp(-K * deviation) : value - K * deviation;
    }

    /** Upper end of its 95 % band, SI. */
    public double high() {
        return inLogarithms ? value * Math.exp(K * deviation) : value + K * deviation;
    }
}
