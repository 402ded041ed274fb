package liftwright.learning.fit;

import java.util.List;
import java.util.stream.IntStream;
import liftwright.plant.CorrectionMaker;
import liftwright.plant.parameters.ParameterTable;

/**
 * What tests leave of the numbers of a rig.
 *
 * @param estimates rows that the tests moved or narrowed, in the order of the table; all others are
 *     as declared
 * @param covariance of the estimates' coordinates, row by row
 * @param converged whether the place found is proven to be a most probable one
 * @param untold combinations that the tests do not tell, each by its leading numbers
 * @param residuals of each channel of each test
 * @param outliers blocks that count for less than half
 * @param notes what else must be said, in words
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
public record Fitted(
        List<Estimate> estimates,
        double[][] covariance,
        boolean converged,
        List<Untold> untold,
        List<Residual> residuals,
        int outliers,
        List<String> notes) {

    public Fitted {
        estimates = List.copyOf(estimates);
        untold = List.copyOf(untold);
        residuals = List.copyOf(residuals);
        notes = List.copyOf(notes);
    }

    /**
     * What it says of the rig itself, for a correction: air, charge and temperature of the day are
     * left out.
     *
     * @param table of the plant of the rig as declared
     */
    public CorrectionMaker.Posterior posterior(ParameterTable table) {
        int[] kept =
                IntStream.range(0, estimates.size())
                        .filter(k -> !Unknowns.isOfTheDay(estimates.get(k).row()))
                        .toArray();
        int n = kept.length;
        int[] rows = new int[n];
        double[] values = new double[n];
        boolean[] inLogarithms = new boolean[n];
        double[] of = new double[n * n];
        for (int i = 0; i < n; i++) {
            Estimate one = estimates.get(kept[i]);
            rows[i] = table.indexOf(one.row());
            values[i] = one.si();
            inLogarithms[i] = one.positive();
            for (int j = 0; j < n; j++) {
                of[i * n + j] = covariance[kept[i]][kept[j]];
            }
        }
        return new CorrectionMaker.Posterior(rows, values, inLogarithms, of);
    }

    /** How far the number that moved most went, in declared standard deviations. */
    public double distance() {
        return estimates.stream()
                .filter(one -> !Unknowns.isOfTheDay(one.row()))
                .mapToDouble(one -> Math.abs(one.moved()))
                .max()
                .orElse(0);
    }

    /**
     * A direction in which what was declared is as good as what is known now.
     *
     * @param words the combination in words
     * @param rows its leading rows
     * @param leftOpen spread along it over that declared, above {@link Fit#OPEN}
     */
    public record Untold(String words, List<String> rows, double leftOpen) {
        public Untold {
            rows = List.copyOf(rows);
        }
    }

    /**
     * How one channel fits.
     *
     * @param test number of the test, from 0
     * @param channel its name
     * @param rmsSi root mean square of measured − fitted, SI
     * @param declaredRmsSi the same as declared
     * @param leftOut what the model leaves out of it, over what is usually left out
     */
    public record Residual(
            int test, String channel, double rmsSi, double declaredRmsSi, double leftOut) {}
}
