package liftwright.rig.correction.text;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.rig.correction.Corrections;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.text.YamlText;

/**
 * The file of corrections and what it says.
 *
 * @param corrections empty when there is any problem: half of what was found is not what was found
 * @param problems everything wrong with it, in the order of the file
 */
public record CorrectionsReading(Optional<Corrections> corrections, List<Problem> problems) {

    /** What every problem of the file advises in the end. */
    static final String ADVICE =
            "Put back the file as `liftwright fit` wrote it, or fit again; --as-declared goes on"
                    + " without it.";

    public CorrectionsReading {
        problems = List.copyOf(problems);
    }

    /** Name of the file of a rig file: {@code rig.yaml} has {@code rig.corrections.yaml}. */
    public static String nameBeside(String rigFile) {
        int slash = Math.max(rigFile.lastIndexOf('/'), rigFile.lastIndexOf('\\'));
        String name = rigFile.substring(slash + 1);
        int dot = name.lastIndexOf('.');
        return (dot > 0 ? name.substring(0, dot) : name) + ".corrections.yaml";
    }

    /**
     * Reads a file. Never throws, whatever stands in it.
     *
     * @param fileName as problems shall call it
     * @param bytes the file
     */
    public static CorrectionsReading read(String fileName, byte[] bytes) {
        var text = YamlText.read(fileName, bytes);
        if (!text.problems().isEmpty()) {
            return new CorrectionsReading(Optional.empty(), text.problems());
        }
        if (text.root().isEmpty()) {
            var nothing =
                    new Problem(
                            Code.MISSING_KEY,
                            new Problem.Place(fileName, 1, 1, ""),
                            "a file that says nothing",
                            "what tests found",
                            ADVICE);
            return new CorrectionsReading(Optional.empty(), List.of(nothing));
        }
        var problems = new Problems(fileName);
        Optional<Corrections> read = new CorrectionsBinder(problems).read(text.root().get());
        return problems.hasErrors() || read.isEmpty()
                ? new CorrectionsReading(Optional.empty(), problems.inOrder())
                : new CorrectionsReading(read, List.of());
    }
}
