package liftwright.learning.fit;

import java.util.List;

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
