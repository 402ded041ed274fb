package liftwright.learning.correct;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.learning.fit.Fitted;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Found;

/**
 * What tests found of a rig.
 *
 * @param fitted what the fit says of all of them together
 * @param moved what they found of the rig, farthest first
 * @param heldOut how well tests are told by the others: root mean square of measured less
 *     predicted, over what was expected; empty for one test
 * @param correction all that was found together; empty where nothing was
 */
public record FitResult(
        Fitted fitted, List<Moved> moved, OptionalDouble heldOut, Optional<Correction> correction) {

    public FitResult {
        moved = List.copyOf(moved);
    }

    /**
     * A value that tests found.
     *
     * @param found the value with its doubt
     * @param by how far it went, in standard deviations of its declared doubt, with sign
     * @param left what is left of that doubt, 1 where the tests told nothing
     */
    public record Moved(Found found, double by, double left) {}
}
