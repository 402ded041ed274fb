package liftwright.rig.correction;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * Values that were found together, and so stand, are drawn and fall together.
 *
 * @param name what the group is called, in words; unlike that of any other
 * @param found at least one; their order decides which deviate of a draw moves what
 * @param correlations between each value and those before it, row by row: n (n − 1) / 2 numbers
 *     from −1 to 1, of the coordinates drawn
 * @param grounds what it rests on
 * @param serials serial number of every part that it is about, by id; empty text where the part had
 *     none
 */
public record Correction(
        String name,
        List<Found> found,
        List<Double> correlations,
        Grounds grounds,
        Map<String, String> serials) {

    /** Most values of one group. */
    public static final int MOST = 200;

    public Correction {
        found = List.copyOf(found);
        correlations = List.copyOf(correlations);
        serials = Collections.unmodifiableMap(new TreeMap<>(serials));
        int n = found.size();
        if (n == 0 || n > MOST || correlations.size() != n * (n - 1) / 2) {
            throw new IllegalArgumentException(
                    name + ": " + correlations.size() + " correlations of " + n + " values");
        }
        if (found.stream().map(Found::parameter).distinct().count() != n) {
            throw new IllegalArgumentException(name + " has a parameter twice");
        }
        if (!Correlations.arePossible(n, correlations)) {
            throw new IllegalArgumentException(name + ": no values can be correlated like this");
        }
    }

    /**
     * From the covariance of a fit.
     *
     * @param values what was found; their deviations are taken from the covariance
     * @param covariance row by row, of ln x for those in logarithms and of x for others
     * @throws IllegalArgumentException if it is none
     */
    public static Correction of(
            String name,
            List<Found> values,
            double[] covariance,
            Grounds grounds,
            Map<String, String> serials) {
        int n = values.size();
        if (covariance.length != n * n) {
            throw new IllegalArgumentException(name + ": a covariance of another size");
        }
        var found = new ArrayList<Found>();
        for (int i = 0; i < n; i++) {
            Found one = values.get(i);
            found.add(
                    new Found(
                            one.parameter(),
                            one.label(),
                            one.declared(),
                            one.value(),
                            Math.sqrt(covariance[i * n + i]),
                            one.inLogarithms()));
        }
        return new Correction(name, found, Correlations.of(n, covariance), grounds, serials);
    }

    /** Correlation of two of its values. */
    public double correlation(int i, int j) {
        if (i == j) {
            return 1;
        }
        int row = Math.max(i, j);
        return correlations.get(row * (row - 1) / 2 + Math.min(i, j));
    }

    /** Row by row, of the coordinates drawn. */
    public double[] covariance() {
        int n = found.size();
        double[] covariance = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                covariance[i * n + j] =
                        correlation(i, j) * found.get(i).deviation() * found.get(j).deviation();
            }
        }
        return covariance;
    }

    /**
     * What is known of some of its values when nothing is asked of the others: their marginal.
     *
     * @param which those that are kept; at least one
     */
    public Correction only(Predicate<Found> which) {
        var kept = new ArrayList<Found>();
        var among = new ArrayList<Double>();
        var places = new ArrayList<Integer>();
        for (int i = 0; i < found.size(); i++) {
            if (which.test(found.get(i))) {
                for (int place : places) {
                    among.add(correlation(i, place));
                }
                places.add(i);
                kept.add(found.get(i));
            }
        }
        return new Correction(name, kept, among, grounds, serials);
    }
}
