package liftwright.trials.evidence;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Problem;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.text.YamlText;

/**
 * The file of a pass and what it says.
 *
 * @param pass empty when there is any problem: half a pass opens nothing
 * @param problems everything wrong with it, in the order of the file
 */
public record PassReading(Optional<Pass> pass, List<Problem> problems) {

    public PassReading {
        problems = List.copyOf(problems);
    }

    /**
     * Reads a file. Never throws, whatever stands in it.
     *
     * @param fileName as problems shall call it
     * @param bytes the file
     */
    public static PassReading read(String fileName, byte[] bytes) {
        var text = YamlText.read(fileName, bytes);
        if (!text.problems().isEmpty()) {
            return new PassReading(Optional.empty(), text.problems());
        }
        if (text.root().isEmpty()) {
            var nothing =
                    new Problem(
                            Problem.Code.MISSING_KEY,
                            new Problem.Place(fileName, 1, 1, ""),
                            "a file that says nothing",
                            "a pass",
                            "Take it out of the folder of passes, or put back what stood there.");
            return new PassReading(Optional.empty(), List.of(nothing));
        }
        var problems = new Problems(fileName);
        Optional<Pass> pass = new PassBinder(problems).read(text.root().get());
        return problems.hasErrors() || pass.isEmpty()
                ? new PassReading(Optional.empty(), problems.inOrder())
                : new PassReading(pass, List.of());
    }

    /** The text of a pass: read again it gives the same. */
    public static String text(Pass pass) {
        return PassText.of(pass);
    }
}
