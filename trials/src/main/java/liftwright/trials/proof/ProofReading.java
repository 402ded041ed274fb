package liftwright.trials.proof;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Problem;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.text.YamlText;

/**
 * A file and the proof of the kills that it holds.
 *
 * @param proof empty when there is any problem
 * @param problems everything wrong with it, in the order of the file
 */
public record ProofReading(Optional<KillProof> proof, List<Problem> problems) {

    public ProofReading {
        problems = List.copyOf(problems);
    }

    /**
     * Reads a file. Never throws, whatever stands in it.
     *
     * @param fileName as problems shall call it
     * @param bytes the file
     */
    public static ProofReading read(String fileName, byte[] bytes) {
        var text = YamlText.read(fileName, bytes);
        if (!text.problems().isEmpty()) {
            return new ProofReading(Optional.empty(), text.problems());
        }
        if (text.root().isEmpty()) {
            return new ProofReading(
                    Optional.empty(),
                    List.of(
                            new Problem(
                                    Problem.Code.MISSING_KEY,
                                    new Problem.Place(fileName, 1, 1, ""),
                                    "a file that says nothing",
                                    "a proof of the kills",
                                    "Make one from a log: docs/how-to/prove-the-kills.md.")));
        }
        var problems = new Problems(fileName);
        Optional<KillProof> proof = new ProofBinder(problems).read(text.root().get());
        return new ProofReading(
                problems.hasErrors() ? Optional.empty() : proof, problems.inOrder());
    }
}
