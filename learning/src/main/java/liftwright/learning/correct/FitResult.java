package liftwright.learning.correct;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Found;

/**
 * What tests found of a rig.
 *
 * @param moved what they found, farthest first
 * @param untold what they cannot tell, in sentences
 * @param residuals of every channel of every test
 * @param heldOut how well each test is told by the others, over what was expected; empty for one
 * @param outliers blocks that lost more than half their weight
 * @param converged whether a most probable place was found
 * @param correction all that was found together; empty where nothing was
 * @param notes what was taken for granted
 */
public record FitResult(
        List<Moved> moved,
        List<String> untold,
        List<Residual> residuals,
        OptionalDouble heldOut,
        int outliers,
        boolean converged,
        Optional<Correction> correction,
        List<String> notes) {

    public FitResult {
        moved = List.copyOf(moved);
        untold = List.copyOf(untold);
        residuals = List.copyOf(residuals);
        notes = List.copyOf(notes);
    }

    /**
     * A value that tests found.
     *
     * @param found the value with its doubt
     * @param by how far it went, in standard deviations of its declared doubt, with sign
     * @param left what is left of that doubt, 0 to 1
     */
    public record Moved(Found found, double by, double left) {}

    /**
     * How a channel fits.
     *
     * @param test name of the test
     * @param channel as in the head of a log's column
     * @param declaredSi root mean square of measured less predicted as declared, SI
     * @param fittedSi the same with what was found, SI
     */
    public record Residual(String test, String channel, double declaredSi, double fittedSi) {}
}
