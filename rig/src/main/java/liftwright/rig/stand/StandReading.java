package liftwright.rig.stand;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Problem;
import liftwright.rig.file.RigReading;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.text.YamlText;

/**
 * A stand file and the stand that it declares.
 *
 * @param stand the stand; empty when there is any problem
 * @param problems everything wrong with it, in the order of the file
 * @param digest SHA-256 of its bytes
 */
public record StandReading(Optional<Stand> stand, List<Problem> problems, String digest) {

    public StandReading {
        problems = List.copyOf(problems);
    }

    /**
     * Reads a file. Never throws, whatever stands in it. What it says is looked at only where all
     * of it could be read as YAML: what seems to be missing may stand in a line that a slip spoils.
     *
     * @param fileName as problems shall call it
     * @param bytes the file
     */
    public static StandReading read(String fileName, byte[] bytes) {
        var text = YamlText.read(fileName, bytes);
        if (!text.problems().isEmpty()) {
            return new StandReading(Optional.empty(), text.problems(), RigReading.digest(bytes));
        }
        if (text.root().isEmpty()) {
            var nothing =
                    new Problem(
                            Problem.Code.MISSING_KEY,
                            new Problem.Place(fileName, 1, 1, ""),
                            "a file that says nothing",
                            "a thrust stand",
                            "docs/how-to/plan-a-thrust-stand.md has one to start from.");
            return new StandReading(Optional.empty(), List.of(nothing), RigReading.digest(bytes));
        }
        var problems = new Problems(fileName);
        Optional<Stand> stand = new StandBinder(problems).read(text.root().get());
        return new StandReading(
                problems.hasErrors() ? Optional.empty() : stand,
                problems.inOrder(),
                RigReading.digest(bytes));
    }
}
