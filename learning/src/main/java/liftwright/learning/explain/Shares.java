package liftwright.learning.explain;

import java.util.List;
import liftwright.numerics.StudentT;

/**
 * Rotor by rotor, the share of the command in a hover: which rotor works harder than its part, held
 * against hovers of the same airframe that were healthy. A healthy vehicle can have a rotor ten to
 * seventeen in a hundred above the mean, by its balance and its single parts; without hovers of its
 * own nothing is said against any.
 */
public final class Shares {

    /**
     * Spread of one rotor's share from flight to flight of one healthy vehicle, standard deviation:
     * from the ranges of rotor 3 in twelve healthy hovers of two airframes, 0.06 in seven and 0.02
     * in five ([MASALIMOV24]; a range over d₂ of its count). Few healthy hovers of one's own tell
     * little of it.
     */
    static final double USUAL = 0.018;

    /** Degrees of freedom of that. */
    private static final double USUAL_FREEDOM = 10;

    /** No rotor is accused while some rotor would stand so high once in so many healthy hovers. */
    private static final double ONE_IN = 20;

    private Shares() {}

    /** What is said of a hover. */
    public sealed interface Finding {}

    /** No healthy hover of the same airframe is known. */
    public record NoBaseline(int greatest, double share) implements Finding {}

    /** All shares are those of the healthy airframe, within its spread. */
    public record AsBefore() implements Finding {}

    /**
     * A rotor works harder than it did when all was well. A weak or damaged rotor does, and so does
     * one near which there is more weight: commands alone do not tell them apart.
     *
     * @param rotor its number, from 0
     * @param share of the command over the mean of all
     * @param before mean of the same in healthy hovers
     * @param low 2.5 % of what the rise may be lie below
     * @param high 2.5 % lie above
     */
    public record Harder(int rotor, double share, double before, double low, double high)
            implements Finding {}

    /**
     * Judges a hover.
     *
     * @param commands mean command of each rotor in the hover, in any unit, &gt; 0
     * @param healthy the same of healthy hovers of the same airframe
     */
    public static Finding judge(double[] commands, List<double[]> healthy) {
        double[] share = shares(commands);
        int greatest = 0;
        for (int k = 1; k < share.length; k++) {
            greatest = share[k] > share[greatest] ? k : greatest;
        }
        if (healthy.isEmpty()) {
            return new NoBaseline(greatest, share[greatest]);
        }
        double freedom = USUAL_FREEDOM + (healthy.size() - 1) * (share.length - 1.0);
        double[] before = new double[share.length];
        for (double[] one : healthy) {
            double[] own = shares(one);
            for (int k = 0; k < before.length; k++) {
                before[k] += own[k] / healthy.size();
            }
        }
        double squares = USUAL_FREEDOM * USUAL * USUAL;
        for (double[] one : healthy) {
            double[] own = shares(one);
            for (int k = 0; k < before.length; k++) {
                squares += (own[k] - before[k]) * (own[k] - before[k]);
            }
        }
        double deviation = Math.sqrt(squares / freedom * (1 + 1.0 / healthy.size()));
        int worst = 0;
        for (int k = 1; k < share.length; k++) {
            worst = share[k] - before[k] > share[worst] - before[worst] ? k : worst;
        }
        double rise = share[worst] - before[worst];
        // Any of the rotors could have been the one.
        double allowed = StudentT.within(1 - 2 / (ONE_IN * share.length), freedom) * deviation;
        double wide = StudentT.within(0.95, freedom) * deviation;
        return rise > allowed
                ? new Harder(worst, share[worst], before[worst], rise - wide, rise + wide)
                : new AsBefore();
    }

    /** Each over the mean of all. */
    static double[] shares(double[] commands) {
        double mean = 0;
        for (double one : commands) {
            if (!(one > 0)) {
                throw new IllegalArgumentException("a rotor that is told nothing does not hover");
            }
            mean += one / commands.length;
        }
        double[] shares = new double[commands.length];
        for (int k = 0; k < shares.length; k++) {
            shares[k] = commands[k] / mean;
        }
        return shares;
    }
}
