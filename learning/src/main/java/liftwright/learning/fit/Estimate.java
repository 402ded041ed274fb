package liftwright.learning.fit;

import liftwright.quantity.Dimension;

/**
 * One number of the parameter table after a fit.
 *
 * @param row its name in the table
 * @param label what it is, in words
 * @param declaredSi as declared, SI
 * @param positive whether its coordinate is ln x; else x itself
 * @param mean of the coordinate
 * @param deviation standard deviation of the coordinate
 * @param priorDeviation the same as declared
 */
public record Estimate(
        String row,
        String label,
        Dimension dimension,
        double declaredSi,
        boolean positive,
        double mean,
        double deviation,
        double priorDeviation) {

    /** Most probable value, SI. */
    public double si() {
        return at(0);
    }

    /** Value so many standard deviations from there, SI. */
    public double at(double deviations) {
        double coordinate = mean + deviations * deviation;
        return positive ? Math.exp(coordinate) : coordinate;
    }

    /** Spread that is left over that declared: 1 where the test told nothing. */
    public double leftOpen() {
        return deviation / priorDeviation;
    }

    /** How far it went from what was declared, in declared standard deviations. */
    public double moved() {
        double declared = positive ? Math.log(declaredSi) : declaredSi;
        return (mean - declared) / priorDeviation;
    }
}
